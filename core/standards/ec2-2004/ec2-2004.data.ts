import type { Cited, PrintedTable } from "../citation";
import type { Grade, LengthRounding } from "../port";
import type { EndLegRow, FormerRow, HookRow, PrintedBar, TestMandrelRow } from "../shared/standard-tables";

export const BARS: PrintedTable<PrintedBar> = {
  cite: { document: "EN 10080", edition: "2005", clause: "Table 6", provenance: "memory" },
  rows: [
    { size: "5", diameter: 5, area: 19.6, massPerMetre: 0.154 },
    { size: "6", diameter: 6, area: 28.3, massPerMetre: 0.222 },
    { size: "7", diameter: 7, area: 38.5, massPerMetre: 0.302 },
    { size: "8", diameter: 8, area: 50.3, massPerMetre: 0.395 },
    { size: "9", diameter: 9, area: 63.6, massPerMetre: 0.499 },
    {
      size: "10",
      diameter: 10,
      area: 78.5,
      massPerMetre: 0.617,
      conflict: "UK three-decimal tables print 0.616, from the area rounded to 0.1 mm2",
    },
    { size: "12", diameter: 12, area: 113, massPerMetre: 0.888 },
    { size: "14", diameter: 14, area: 154, massPerMetre: 1.21 },
    { size: "16", diameter: 16, area: 201, massPerMetre: 1.58 },
    { size: "20", diameter: 20, area: 314, massPerMetre: 2.47 },
    { size: "25", diameter: 25, area: 491, massPerMetre: 3.85 },
    { size: "28", diameter: 28, area: 616, massPerMetre: 4.83 },
    { size: "32", diameter: 32, area: 804, massPerMetre: 6.31 },
    { size: "40", diameter: 40, area: 1257, massPerMetre: 9.86 },
    { size: "50", diameter: 50, area: 1963, massPerMetre: 15.4 },
  ],
};

/** Rolled beside them where a national document has them: in Italy, Poland, Czechia and Turkey among others. */
export const NATIONAL_BARS: PrintedTable<PrintedBar> = {
  cite: {
    document: "bars of national documents beside EN 10080 (Italy, Poland, Czechia, Turkey)",
    provenance: "common practice",
  },
  rows: [
    { size: "18", diameter: 18, area: 254, massPerMetre: 2 },
    { size: "22", diameter: 22, area: 380, massPerMetre: 2.98 },
    { size: "24", diameter: 24, area: 452, massPerMetre: 3.55 },
    { size: "26", diameter: 26, area: 531, massPerMetre: 4.17 },
    { size: "30", diameter: 30, area: 707, massPerMetre: 5.55 },
  ],
};

/** Bars and wire. */
export const FORMERS: PrintedTable<FormerRow> = {
  cite: {
    document: "EN 1992-1-1",
    edition: "2004",
    clause: "8.3(2), Table 8.1N a)",
    provenance: "published",
    seen: "JRC Eurocode 2 background slides, studylib.net/doc/18310154; buildinghow.com; crazyengineers.com thread 53933",
  },
  rows: [
    { uses: ["main", "link"], upTo: 16, perDiameter: 4 },
    { uses: ["main", "link"], perDiameter: 7 },
  ],
};

/** Welded reinforcement and mesh bent after welding; "welded near": weld nearer than 3d or in the bend. */
export const WELDED_FORMERS: PrintedTable<FormerRow> = {
  cite: {
    document: "EN 1992-1-1",
    edition: "2004",
    clause: "8.3(2), Table 8.1N b)",
    provenance: "memory",
    conflict: "5d is allowed for a near weld made to EN ISO 17660 Annex B; 20d, the safe one, is held",
  },
  rows: [
    { uses: ["welded clear"], perDiameter: 5 },
    { uses: ["welded near"], perDiameter: 20 },
  ],
};

export const END_LEGS: PrintedTable<EndLegRow> = {
  cite: { document: "EN 1992-1-1", edition: "2004", clause: "Figures 8.1 and 8.5", provenance: "memory" },
  rows: [{ uses: ["link"], straightPerDiameter: 10, leastStraight: 70 }, { straightPerDiameter: 5 }],
};

export const HOOKS: PrintedTable<HookRow> = {
  cite: {
    document: "EN 1992-1-1",
    edition: "2004",
    clause: "Figure 8.5",
    provenance: "published",
    seen: "eurocode.us 5.2.5(3), the text of ENV 1992-1-1: 10d and 70 mm at 90 degrees, 5d and 50 mm at 135 and 180",
  },
  rows: [
    { uses: ["link"], turns: [90], extensionPerDiameter: 10, leastExtension: 70 },
    { uses: ["link"], turns: [135, 180], extensionPerDiameter: 5, leastExtension: 50 },
  ],
};

export const MAIN_HOOKS: PrintedTable<HookRow> = {
  cite: { document: "EN 1992-1-1", edition: "2004", clause: "Figure 8.1", provenance: "memory" },
  rows: [{ turns: [90, 135, 180], extensionPerDiameter: 5 }],
};

const BAR_GRADES: Grade["cite"] = {
  document: "EN 1992-1-1",
  edition: "2004",
  clause: "Annex C",
  provenance: "memory",
};

export const GRADES: readonly Grade[] = [
  { name: "B500A", prefixes: ["A"], yield: 500, cite: BAR_GRADES },
  { name: "B500B", prefixes: ["B", "H", "HA"], yield: 500, cite: BAR_GRADES },
  { name: "B500C", prefixes: ["C"], yield: 500, cite: BAR_GRADES },
];

export const LENGTH_ROUNDING: LengthRounding = {
  step: 5,
  direction: "up",
  cite: { document: "EN 1992-1-1 prints no step", provenance: "common practice" },
};

export const COLD_BENDING: Cited<number> = {
  value: -5,
  cite: {
    document: "EN 13670",
    clause: "6.3",
    provenance: "published",
    seen: "concrete.org.uk fingertips-document id=1057",
  },
};

export const REBENDING: Cited<string> = {
  value: "only where the execution specification allows it",
  cite: { document: "EN 13670", clause: "6.3", provenance: "memory" },
};

export const STOCK_LENGTH: Cited<number> = {
  value: 12000,
  cite: { document: "stock lengths in Europe", provenance: "common practice" },
};

/** BS 4449 for B500 bars. Of the bar, not of the bender. */
export const TEST_MANDRELS: PrintedTable<TestMandrelRow> = {
  cite: { document: "BS 4449", edition: "2005", clause: "rebend test", provenance: "memory" },
  rows: [
    { test: "rebend", testUpTo: 16, testMandrelPerDiameter: 4 },
    { test: "rebend", testUpTo: Infinity, testMandrelPerDiameter: 7 },
  ],
};
