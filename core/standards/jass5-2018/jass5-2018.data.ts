import type { Citation, Cited, PrintedTable } from "../citation";
import type { Grade, LengthRounding, ToleranceRow } from "../port";
import type { EndLegRow, FormerRow, HookRow, PrintedBar, TestMandrelRow } from "../shared/standard-tables";

export const BARS: PrintedTable<PrintedBar> = {
  cite: {
    document: "JIS G 3112",
    clause: "deformed bars",
    provenance: "published",
    seen: "kamegai.on.coocan.jp/old/lib3/g3112.htm",
  },
  rows: [
    { size: "D6", diameter: 6.35, area: 31.67, massPerMetre: 0.249 },
    { size: "D8", diameter: 7.94, area: 49.51, massPerMetre: 0.389 },
    { size: "D10", diameter: 9.53, area: 71.33, massPerMetre: 0.56 },
    { size: "D13", diameter: 12.7, area: 126.7, massPerMetre: 0.995 },
    { size: "D16", diameter: 15.9, area: 198.6, massPerMetre: 1.56 },
    { size: "D19", diameter: 19.1, area: 286.5, massPerMetre: 2.25 },
    { size: "D22", diameter: 22.2, area: 387.1, massPerMetre: 3.04 },
    { size: "D25", diameter: 25.4, area: 506.7, massPerMetre: 3.98 },
    { size: "D29", diameter: 28.6, area: 642.4, massPerMetre: 5.04 },
    { size: "D32", diameter: 31.8, area: 794.2, massPerMetre: 6.23 },
    { size: "D35", diameter: 34.9, area: 956.6, massPerMetre: 7.51 },
    { size: "D38", diameter: 38.1, area: 1140, massPerMetre: 8.95 },
  ],
};

export const LARGE_BARS: PrintedTable<PrintedBar> = {
  cite: { document: "JIS G 3112", clause: "deformed bars", provenance: "memory" },
  rows: [
    { size: "D41", diameter: 41.3, area: 1340, massPerMetre: 10.5 },
    { size: "D51", diameter: 50.8, area: 2027, massPerMetre: 15.9 },
  ],
};

/** Inside diameters; d is the number in the bar's name. */
export const FORMERS: PrintedTable<FormerRow> = {
  cite: {
    document: "JASS 5",
    edition: "2018",
    clause: "bending of bars",
    provenance: "published",
    seen: "sekokan2.work post-1424",
  },
  rows: [
    { grades: ["SD295", "SD345", "SR235", "SR295"], upToSize: "D16", perDiameter: 3 },
    { grades: ["SD295", "SD345", "SR235", "SR295"], upToSize: "D41", perDiameter: 4 },
    { grades: ["SD390"], upToSize: "D41", perDiameter: 5 },
    { grades: ["SD490"], upToSize: "D25", perDiameter: 5 },
    { grades: ["SD490"], upToSize: "D41", perDiameter: 6 },
  ],
};

const TAILS: Citation = {
  document: "JASS 5",
  edition: "2018",
  clause: "straight after a bend",
  provenance: "memory",
};

export const END_LEGS: PrintedTable<EndLegRow> = {
  cite: TAILS,
  rows: [
    { uses: ["main"], straightPerDiameter: 8 },
    { uses: ["link"], straightPerDiameter: 6 },
  ],
};

export const HOOKS: PrintedTable<HookRow> = {
  cite: {
    document: "JASS 5",
    edition: "2018",
    clause: "straight after a bend",
    provenance: "published",
    seen: "kenchikushi.support 1-5-25081 (180); sakuyukai.jp 2020/06/02 (135)",
  },
  rows: [
    { turns: [180], extensionPerDiameter: 4 },
    { turns: [135], extensionPerDiameter: 6 },
  ],
};

export const RIGHT_ANGLE_HOOKS: PrintedTable<HookRow> = {
  cite: TAILS,
  rows: [{ turns: [90], extensionPerDiameter: 8 }],
};

const STEEL: Citation = { document: "JIS G 3112", provenance: "memory" };

export const GRADES: readonly Grade[] = [
  { name: "SD345", prefixes: ["D"], yield: 345, cite: STEEL },
  { name: "SD295", prefixes: [], yield: 295, cite: STEEL },
  { name: "SD390", prefixes: [], yield: 390, cite: STEEL },
  { name: "SD490", prefixes: [], yield: 490, cite: STEEL },
  { name: "SR235", prefixes: [], yield: 235, plain: true, cite: STEEL },
  { name: "SR295", prefixes: [], yield: 295, plain: true, cite: STEEL },
];

export const GRADE_UNSAID = { main: "SD345", link: "SD345" };

export const LENGTH_ROUNDING: LengthRounding = {
  step: 5,
  direction: "up",
  cite: { document: "JASS 5 prints no step", provenance: "common practice" },
};

/** The first line is of bars as delivered (JIS G 3112): each further metre adds 5 mm, to 120 mm at most. */
export const TOLERANCES: Cited<readonly ToleranceRow[]> = {
  value: [
    { applies: "delivered length", upTo: 7000, plus: 40, minus: 0 },
    { applies: "cut length", upTo: Infinity, plus: 20, minus: 20 },
    { applies: "bent dimension", upTo: Infinity, plus: 15, minus: 15 },
    { applies: "bent dimension, D29 and larger", upTo: Infinity, plus: 20, minus: 20 },
    { applies: "link dimension", upTo: Infinity, plus: 5, minus: 5 },
  ],
  cite: {
    document: "JASS 5",
    edition: "2018",
    clause: "fabrication tolerances; delivered length by JIS G 3112",
    provenance: "published",
    seen: "sekokan2.work post-1424 (main bars to D25, D29 to D41, links, total length); sankoseiko.co.jp (delivered)",
  },
};

export const STOCK_LENGTH: Cited<number> = {
  value: 12000,
  cite: { document: "stock lengths in Japan: 3.5 to 10 m by 0.5 m, to 12 m", provenance: "common practice" },
};

/** Printed as radii. SD490 is tested to 90 degrees only. */
export const TEST_MANDRELS: PrintedTable<TestMandrelRow> = {
  cite: {
    document: "JIS G 3112",
    clause: "bend test, inside radius",
    provenance: "published",
    seen: "sashikin-anchor.co.jp, sankoseiko.co.jp",
  },
  rows: [
    { test: "bend", testGrades: ["SD295", "SD345"], testUpTo: 16, testRadiusPerDiameter: 1.5 },
    { test: "bend", testGrades: ["SD295"], testUpTo: Infinity, testRadiusPerDiameter: 2 },
    { test: "bend", testGrades: ["SD345"], testUpTo: 41.3, testRadiusPerDiameter: 2 },
    { test: "bend", testGrades: ["SD345"], testUpTo: Infinity, testRadiusPerDiameter: 2.5 },
    { test: "bend", testGrades: ["SD390"], testUpTo: Infinity, testRadiusPerDiameter: 2.5 },
    { test: "bend", testGrades: ["SD490"], testUpTo: 25.4, testRadiusPerDiameter: 2.5 },
    { test: "bend", testGrades: ["SD490"], testUpTo: Infinity, testRadiusPerDiameter: 3 },
    { test: "bend", testGrades: ["SR235"], testUpTo: Infinity, testRadiusPerDiameter: 1.5 },
    { test: "bend", testGrades: ["SR295"], testUpTo: 16, testRadiusPerDiameter: 1.5 },
    { test: "bend", testGrades: ["SR295"], testUpTo: Infinity, testRadiusPerDiameter: 2 },
  ],
};
