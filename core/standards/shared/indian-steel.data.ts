import type { Citation, Cited, PrintedTable } from "../citation";
import type { Grade } from "../port";
import type { EndLegRow, FormerRow, HookRow, PrintedBar, TestMandrelRow } from "./standard-tables";

/** Masses as read. The areas are pi d2/4 to 0.1 mm2. */
export const BARS: PrintedTable<PrintedBar> = {
  cite: {
    document: "IS 1786",
    edition: "2008",
    clause: "bar table; areas pi d2/4",
    provenance: "published",
    seen: "tehristeel.com (masses)",
  },
  rows: [
    { size: "4", diameter: 4, area: 12.6, massPerMetre: 0.099 },
    { size: "5", diameter: 5, area: 19.6, massPerMetre: 0.154 },
    { size: "6", diameter: 6, area: 28.3, massPerMetre: 0.222 },
    { size: "8", diameter: 8, area: 50.3, massPerMetre: 0.395 },
    { size: "10", diameter: 10, area: 78.5, massPerMetre: 0.617 },
    { size: "12", diameter: 12, area: 113.1, massPerMetre: 0.888 },
    { size: "16", diameter: 16, area: 201.1, massPerMetre: 1.58 },
    { size: "20", diameter: 20, area: 314.2, massPerMetre: 2.47 },
    {
      size: "25",
      diameter: 25,
      area: 490.9,
      massPerMetre: 3.85,
      conflict: "the page prints 3.88, a slip: others print 3.85 and 3.854, which pi d2/4 confirms",
    },
    { size: "28", diameter: 28, area: 615.8, massPerMetre: 4.83 },
    { size: "32", diameter: 32, area: 804.2, massPerMetre: 6.31 },
    { size: "36", diameter: 36, area: 1017.9, massPerMetre: 7.99 },
    { size: "40", diameter: 40, area: 1256.6, massPerMetre: 9.86 },
  ],
};

/**
 * Twice the k of Table II, which the printed hook and bend allowances confirm as an inside radius of k d.
 * The table speaks of hooks and bends that anchor an end, and of the steels of its year: links and the hot
 * rolled and quenched grades of today are no matter of it.
 */
export const ANCHORAGE_FORMERS: PrintedTable<FormerRow> = {
  cite: {
    document: "IS 2502",
    edition: "1963",
    clause: "Table II, k of hooks and bends that anchor an end, taken for every bend of the bar",
    provenance: "derived",
    seen: "lecture set CE 402, scribd 104139938, with scrambled text (k, H, B)",
  },
  rows: [
    { uses: ["main"], grades: ["mild steel"], below: 25, perDiameter: 4 },
    {
      uses: ["main"],
      grades: ["mild steel"],
      perDiameter: 6,
      conflict:
        "at 25 mm exactly the page is silent, and it is recalled as above 25: this, of 25 and over, is held",
    },
    { uses: ["main"], grades: ["medium tensile"], below: 25, perDiameter: 6 },
    {
      uses: ["main"],
      grades: ["medium tensile"],
      perDiameter: 8,
      conflict:
        "at 25 mm exactly the page is silent, and it is recalled as above 25: this, of 25 and over, is held",
    },
  ],
};

/** Above 20 mm the bar's own bend test is on 5d, so that 4d is not called safe there. */
export const USUAL_FORMERS: PrintedTable<FormerRow> = {
  cite: {
    document: "Indian yards",
    clause: "4d up to 20 mm, as the bend test of IS 1786 has; no document for links and Fe 500 was read",
    provenance: "common practice",
  },
  rows: [{ upTo: 20, perDiameter: 4 }],
};

export const END_LEGS: PrintedTable<EndLegRow> = {
  cite: {
    document: "IS 2502",
    edition: "1963",
    clause: "Table II, the straight of 4d",
    provenance: "derived",
  },
  rows: [{ uses: ["main"], straightPerDiameter: 4 }],
};

export const LINK_END_LEGS: PrintedTable<EndLegRow> = {
  cite: {
    document: "IS 456",
    edition: "2000",
    clause: "26.2.2.4 b)",
    provenance: "published",
    seen: "civilsnapshot.com anchoring-shear-reinforcement; civilengineeringtopics.com",
  },
  rows: [{ uses: ["link"], straightPerDiameter: 8 }],
};

/**
 * Hook H and bend B that anchor an end, about the former of that table's k: the straight is 4d, and neither
 * adds less than 75 mm. At 25 mm exactly the page is silent.
 */
export const HOOKS: PrintedTable<HookRow> = {
  cite: {
    document: "IS 2502",
    edition: "1963",
    clause: "Table II",
    provenance: "derived",
    seen: "lecture set CE 402, scribd 104139938 (H, B, least 75 mm)",
  },
  rows: [
    {
      uses: ["main"],
      turns: [90, 180],
      grades: ["mild steel"],
      below: 25,
      formerPerDiameter: 4,
      extensionPerDiameter: 4,
      leastAllowance: 75,
    },
    {
      uses: ["main"],
      turns: [90, 180],
      grades: ["mild steel"],
      formerPerDiameter: 6,
      extensionPerDiameter: 4,
      leastAllowance: 75,
    },
    {
      uses: ["main"],
      turns: [90, 180],
      grades: ["medium tensile"],
      below: 25,
      formerPerDiameter: 6,
      extensionPerDiameter: 4,
      leastAllowance: 75,
    },
    {
      uses: ["main"],
      turns: [90, 180],
      grades: ["medium tensile"],
      formerPerDiameter: 8,
      extensionPerDiameter: 4,
      leastAllowance: 75,
    },
    {
      uses: ["main"],
      turns: [90, 180],
      below: 25,
      formerPerDiameter: 8,
      extensionPerDiameter: 4,
      leastAllowance: 75,
    },
    { uses: ["main"], turns: [90, 180], formerPerDiameter: 12, extensionPerDiameter: 4, leastAllowance: 75 },
  ],
};

export const LINK_HOOKS: PrintedTable<HookRow> = {
  cite: {
    document: "IS 456",
    edition: "2000",
    clause: "26.2.2.4 b)",
    provenance: "published",
    seen: "civilsnapshot.com anchoring-shear-reinforcement; civilengineeringtopics.com",
  },
  rows: [
    { uses: ["link"], turns: [90], extensionPerDiameter: 8 },
    { uses: ["link"], turns: [180], extensionPerDiameter: 4 },
  ],
};

export const SEISMIC_LINK_HOOKS: PrintedTable<HookRow> = {
  cite: {
    document: "IS 13920",
    edition: "2016",
    clause: "link hooks",
    provenance: "published",
    seen: "scribd 705306520",
  },
  rows: [
    {
      uses: ["link"],
      turns: [135],
      extensionPerDiameter: 6,
      leastExtension: 65,
      conflict: "6d and 65 mm in IS 13920 of 2016, 10d and 75 mm before: 2016 is held",
    },
  ],
};

const STEEL: Citation = { document: "IS 1786", edition: "2008", provenance: "memory" };

export const GRADES: readonly Grade[] = [
  { name: "Fe 500", prefixes: ["T", "Y", "TMT", "TOR"], yield: 500, cite: STEEL },
  { name: "Fe 500D", prefixes: [], yield: 500, cite: STEEL },
  { name: "Fe 415", prefixes: [], yield: 415, cite: STEEL },
  { name: "Fe 550", prefixes: [], yield: 550, cite: STEEL },
  { name: "Fe 600", prefixes: [], yield: 600, cite: STEEL },
  {
    name: "mild steel",
    prefixes: ["R", "MS"],
    yield: 250,
    plain: true,
    cite: { document: "IS 432-1", edition: "1982", provenance: "memory" },
  },
  {
    name: "medium tensile",
    prefixes: [],
    yield: 350,
    plain: true,
    superseded: "medium tensile steel of IS 432, hardly rolled today: ask the designer",
    cite: { document: "IS 432-1", edition: "1982", provenance: "memory" },
  },
];

const TESTS: Citation = {
  document: "IS 1786",
  edition: "2008",
  clause: "bend and rebend tests, Fe 500",
  provenance: "published",
  seen: "gbrmetals.com, shivatmt.com; the former page's worked rows contain slips",
};

export const TEST_MANDRELS: PrintedTable<TestMandrelRow> = {
  cite: TESTS,
  rows: [
    { test: "bend", testGrades: ["Fe 500"], testUpTo: 20, testMandrelPerDiameter: 4 },
    { test: "bend", testGrades: ["Fe 500"], testUpTo: Infinity, testMandrelPerDiameter: 5 },
    { test: "rebend", testGrades: ["Fe 415", "Fe 500"], testUpTo: 10, testMandrelPerDiameter: 5 },
    { test: "rebend", testGrades: ["Fe 415", "Fe 500"], testUpTo: Infinity, testMandrelPerDiameter: 7 },
  ],
};

export const TEST_MANDRELS_RECALLED: PrintedTable<TestMandrelRow> = {
  cite: { document: "IS 1786", edition: "2008", clause: "bend and rebend tests", provenance: "memory" },
  rows: [
    { test: "bend", testGrades: ["Fe 415"], testUpTo: 20, testMandrelPerDiameter: 3 },
    { test: "bend", testGrades: ["Fe 415"], testUpTo: Infinity, testMandrelPerDiameter: 4 },
    { test: "bend", testGrades: ["Fe 550", "Fe 600"], testUpTo: 20, testMandrelPerDiameter: 5 },
    { test: "bend", testGrades: ["Fe 550", "Fe 600"], testUpTo: Infinity, testMandrelPerDiameter: 6 },
    { test: "rebend", testGrades: ["Fe 550", "Fe 600"], testUpTo: 10, testMandrelPerDiameter: 7 },
    { test: "rebend", testGrades: ["Fe 550", "Fe 600"], testUpTo: Infinity, testMandrelPerDiameter: 8 },
  ],
};

export const STOCK_LENGTH: Cited<number> = {
  value: 12000,
  cite: {
    document: "stock lengths in India: 11.7 to 12 m, delivered folded in two",
    provenance: "common practice",
  },
};
