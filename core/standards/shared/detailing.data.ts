import type { PrintedTable } from "../citation";
import type { DetailingRow } from "./standard-tables";

/*
 * What the design code beside each document asks of bars beside one another, so far as a schedule shows it:
 * recalled, so that it asks and never condemns, until its owner confirms it on the sheet Standard.
 */

/** Clauses 8.7.3, 8.8 and 9.5.3. */
export const EC2_DETAILING: PrintedTable<DetailingRow> = {
  cite: {
    document: "EN 1992-1-1",
    edition: "2004",
    clause: "8.7.3(1), 8.8(4), 9.5.3(1) and (3)",
    provenance: "memory",
  },
  rows: [
    { rule: "least lap", perDiameter: 15, atLeast: 200 },
    {
      rule: "lapped bars",
      atMost: 32,
      conflict:
        "the annex of the United Kingdom calls bars large from 40 mm; thick sections may lap larger bars",
    },
    { rule: "spacing of column links", perDiameter: 20, atMost: 400 },
  ],
};

export const EC2_LINK_SIZE: PrintedTable<DetailingRow> = {
  cite: {
    document: "EN 1992-1-1",
    edition: "2004",
    clause: "9.5.3(1), and EN 1992-2 9.5.3(101)",
    provenance: "published",
    seen: "usingeurocodes.com eurocode-2-2 953_101, with the recommended 6 mm",
  },
  rows: [{ rule: "size of column links", perDiameter: 0.25, atLeast: 6 }],
};

export const DIN_DETAILING: PrintedTable<DetailingRow> = {
  cite: {
    document: "DIN EN 1992-1-1/NA",
    edition: "2013",
    clause: "8.7.3(1), 8.8, 9.5.3(1) and (3)",
    provenance: "memory",
  },
  rows: [
    { rule: "least lap", perDiameter: 15, atLeast: 200 },
    { rule: "lapped bars", atMost: 32 },
    { rule: "spacing of column links", perDiameter: 12, atMost: 300 },
  ],
};

/** Inches. */
export const ACI_DETAILING: PrintedTable<DetailingRow> = {
  cite: {
    document: "ACI 318",
    edition: "2019",
    clause: "25.5.1.1, 25.7.2.1, 25.7.2.2, 25.7.3.1, 10.7.4.1",
    provenance: "memory",
  },
  rows: [
    { rule: "lapped bars", atMost: 1.41 },
    { rule: "spacing of column links", perDiameter: 16, perLink: 48 },
    { rule: "size of column links", upTo: 32.5, atLeast: 0.375 },
    { rule: "size of column links", atLeast: 0.5 },
    { rule: "spiral, clear between turns", atLeast: 1, atMost: 3 },
    { rule: "slope of a column bar's crank", run: 6 },
  ],
};

/** Inches. */
export const ACI_LAPS: PrintedTable<DetailingRow> = {
  cite: {
    document: "ACI 318",
    edition: "2019",
    clause: "25.5.2.1",
    provenance: "published",
    seen: "what-when-how.com, Simplified design of reinforced concrete buildings, page 260: not less than 12 in; the clause is recalled",
  },
  rows: [{ rule: "least lap", atLeast: 12 }],
};

export const CSA_DETAILING: PrintedTable<DetailingRow> = {
  cite: {
    document: "CSA A23.3",
    clause: "12.15.1, 12.14.2.1, 7.6.5, 7.6.4",
    provenance: "memory",
  },
  rows: [
    { rule: "least lap", atLeast: 300 },
    { rule: "lapped bars", atMost: 36 },
    { rule: "spacing of column links", perDiameter: 16, perLink: 48 },
    { rule: "size of column links", upTo: 30, perDiameter: 0.3 },
    { rule: "spiral, clear between turns", atLeast: 25, atMost: 75 },
  ],
};

export const AS_DETAILING: PrintedTable<DetailingRow> = {
  cite: { document: "AS 3600", edition: "2018", clause: "13.2.2, 10.7.4.3", provenance: "memory" },
  rows: [
    { rule: "least lap", perDiameter: 29 },
    { rule: "spacing of column links", perDiameter: 15 },
  ],
};

export const NZS_DETAILING: PrintedTable<DetailingRow> = {
  cite: { document: "NZS 3101", edition: "2006", clause: "8.7.2", provenance: "memory" },
  rows: [{ rule: "least lap", atLeast: 300 }],
};

export const IS_DETAILING: PrintedTable<DetailingRow> = {
  cite: {
    document: "IS 456",
    edition: "2000",
    clause: "26.5.3.2 c) and d), 26.5.3.3",
    provenance: "memory",
  },
  rows: [
    { rule: "spacing of column links", perDiameter: 16, atMost: 300 },
    { rule: "size of column links", perDiameter: 0.25, atLeast: 6 },
    { rule: "spiral, pitch", atLeast: 25, atMost: 75 },
    { rule: "slope of a column bar's crank", run: 6 },
  ],
};

export const IS_LAPS: PrintedTable<DetailingRow> = {
  cite: {
    document: "IS 456",
    edition: "2000",
    clause: "26.2.5.1",
    provenance: "published",
    seen: "gyanibabaofcivilengineering.blogspot.com 2024/02, the text of the clause; bissoy.com mcq 950327",
  },
  rows: [
    { rule: "least lap", perDiameter: 15, atLeast: 200 },
    { rule: "lapped bars", atMost: 36, conflict: "32 mm since the third amendment, one page says" },
  ],
};

export const IS_LINKS: PrintedTable<DetailingRow> = {
  cite: {
    document: "IS 456",
    edition: "2000",
    clause: "26.2.2.4 b): a link is bent round a bar of at least its own diameter",
    provenance: "published",
    seen: "civilsnapshot.com anchoring-shear-reinforcement; civilengineeringtopics.com",
  },
  rows: [{ rule: "bar that a link is bent round", perLink: 1 }],
};

/** South Africa's code of design follows it. */
export const BS8110_DETAILING: PrintedTable<DetailingRow> = {
  cite: {
    document: "BS 8110-1, and SANS 10100-1 after it",
    clause: "3.12.8.11, 3.12.7.1",
    provenance: "memory",
  },
  rows: [
    { rule: "least lap", perDiameter: 15, atLeast: 300 },
    { rule: "spacing of column links", perDiameter: 12 },
    { rule: "size of column links", perDiameter: 0.25, atLeast: 6 },
  ],
};

export const JASS_DETAILING: PrintedTable<DetailingRow> = {
  cite: {
    document: "JASS 5",
    edition: "2018",
    clause: "bars of D35 and over are as a rule not lapped",
    provenance: "memory",
  },
  rows: [{ rule: "lapped bars", atMost: 32 }],
};

export const GB_DETAILING: PrintedTable<DetailingRow> = {
  cite: { document: "GB 50010", edition: "2010", clause: "8.4.2, 8.4.4, 9.3.2", provenance: "memory" },
  rows: [
    { rule: "least lap", atLeast: 300 },
    { rule: "lapped bars", atMost: 28, conflict: "25 mm where the bar is in tension, 28 mm in compression" },
    { rule: "spacing of column links", perDiameter: 15, atMost: 400 },
    { rule: "size of column links", perDiameter: 0.25, atLeast: 6 },
  ],
};

export const GB_LINKS: PrintedTable<DetailingRow> = {
  cite: {
    document: "GB 50204",
    edition: "2015",
    clause: "5.3.1: the inside diameter of a link's bend is no less than the main bar",
    provenance: "published",
    seen: "1kaoti.com d088cda9ad and zjtcn.com 50007537, which repeat it",
  },
  rows: [{ rule: "former of a link about its bar", perDiameter: 1 }],
};
