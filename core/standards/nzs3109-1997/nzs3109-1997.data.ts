import type { Citation, Cited, PrintedTable } from "../citation";
import type { Grade, LengthRounding, RebendingLimit } from "../port";
import type { EndLegRow, FormerRow, HookRow, PrintedBar } from "../shared/standard-tables";

export const BARS: PrintedTable<PrintedBar> = {
  cite: { document: "AS/NZS 4671", edition: "2019", clause: "bars in New Zealand", provenance: "memory" },
  rows: [
    { size: "6", diameter: 6, area: 28.3, massPerMetre: 0.222 },
    { size: "10", diameter: 10, area: 78.5, massPerMetre: 0.617 },
    { size: "12", diameter: 12, area: 113, massPerMetre: 0.888 },
    { size: "16", diameter: 16, area: 201, massPerMetre: 1.58 },
    { size: "20", diameter: 20, area: 314, massPerMetre: 2.47 },
    { size: "24", diameter: 24, area: 452, massPerMetre: 3.55 },
    { size: "25", diameter: 25, area: 491, massPerMetre: 3.85 },
    { size: "28", diameter: 28, area: 616, massPerMetre: 4.83 },
    { size: "32", diameter: 32, area: 804, massPerMetre: 6.31 },
    { size: "36", diameter: 36, area: 1020, massPerMetre: 7.99 },
    { size: "40", diameter: 40, area: 1260, massPerMetre: 9.86 },
  ],
};

export const FORMERS: PrintedTable<FormerRow> = {
  cite: {
    document: "NZS 3109",
    edition: "1997",
    clause: "Table 3.1",
    provenance: "published",
    seen: "standards.govt.nz news on steel bending; Practice Advisory 1, de.scribd.com/document/96480881; ar.scribd.com/document/200389862: all agree",
  },
  rows: [
    { uses: ["link"], grades: ["300 plain", "500 plain"], upTo: 20, perDiameter: 2 },
    { uses: ["link"], grades: ["300 plain", "500 plain"], upTo: 24, perDiameter: 3 },
    { uses: ["link"], grades: ["300E", "500E"], upTo: 20, perDiameter: 4 },
    { uses: ["link"], grades: ["300E", "500E"], upTo: 24, perDiameter: 6 },
    { uses: ["main"], upTo: 20, perDiameter: 5 },
    { uses: ["main"], upTo: 40, perDiameter: 6 },
  ],
};

const ENDS: Citation = {
  document: "NZS 3101.1",
  edition: "2006",
  clause: "8.4.2",
  provenance: "memory",
};

export const END_LEGS: PrintedTable<EndLegRow> = {
  cite: ENDS,
  rows: [
    { uses: ["link"], grades: ["300 plain", "500 plain"], straightPerDiameter: 8 },
    { uses: ["link"], straightPerDiameter: 6 },
    { uses: ["main"], straightPerDiameter: 12 },
  ],
};

export const HOOKS: PrintedTable<HookRow> = {
  cite: ENDS,
  rows: [
    { uses: ["link"], turns: [135], grades: ["300 plain", "500 plain"], extensionPerDiameter: 8 },
    { uses: ["link"], turns: [135], extensionPerDiameter: 6 },
    { turns: [180], extensionPerDiameter: 4, leastExtension: 65 },
    { turns: [90], extensionPerDiameter: 12 },
  ],
};

const STEEL: Citation = { document: "AS/NZS 4671", edition: "2019", provenance: "memory" };

export const GRADES: readonly Grade[] = [
  { name: "300E", prefixes: ["D"], yield: 300, cite: STEEL },
  { name: "500E", prefixes: ["HD", "DH"], yield: 500, cite: STEEL },
  { name: "300 plain", prefixes: ["R"], yield: 300, plain: true, cite: STEEL },
  { name: "500 plain", prefixes: ["HR", "RH"], yield: 500, plain: true, cite: STEEL },
];

export const GRADE_UNSAID = { main: "500E", link: "500E" };

export const LENGTH_ROUNDING: LengthRounding = {
  step: 5,
  direction: "up",
  cite: { document: "NZS 3109 prints no step", provenance: "common practice" },
};

export const COLD_BENDING: Cited<number> = {
  value: 5,
  cite: {
    document: "Practice Advisory 11",
    clause: "micro-alloyed grade 500E",
    provenance: "published",
    seen: "scribd 137946991",
  },
};

const REBENDING_SOURCE: Citation = {
  document: "Practice Advisory 11 and IB 79",
  provenance: "published",
  seen: "standards.govt.nz news on steel bending; scribd 137946991; scribd 312187678",
};

export const REBENDING: Cited<string> = {
  value:
    "only where it cannot be avoided, planned, by a stated method with the tool for it; micro-alloyed 500E is not bent again; starters meant for it are 300E, 16 mm at most, the bend 3d or more from the concrete face",
  cite: REBENDING_SOURCE,
};

export const REBENDING_LIMIT: Cited<RebendingLimit> = {
  value: { upTo: 16, grade: "300E" },
  cite: REBENDING_SOURCE,
};

export const STOCK_LENGTH: Cited<number> = {
  value: 12000,
  cite: { document: "stock lengths in New Zealand: 6, 9 and 12 m", provenance: "common practice" },
};
