import type { Citation, Cited, PrintedTable } from "../citation";
import type { Grade, LengthRounding } from "../port";
import type { ShapeSources } from "../shared/shape-row";
import type { PrintedBar, TestMandrelRow } from "../shared/standard-tables";

export const BARS: PrintedTable<PrintedBar> = {
  cite: { document: "ISO 6935-2", clause: "bar table", provenance: "memory" },
  rows: [
    { size: "6", diameter: 6, area: 28.3, massPerMetre: 0.222 },
    { size: "8", diameter: 8, area: 50.3, massPerMetre: 0.395 },
    { size: "10", diameter: 10, area: 78.5, massPerMetre: 0.617 },
    { size: "12", diameter: 12, area: 113, massPerMetre: 0.888 },
    { size: "14", diameter: 14, area: 154, massPerMetre: 1.21 },
    { size: "16", diameter: 16, area: 201, massPerMetre: 1.58 },
    { size: "20", diameter: 20, area: 314, massPerMetre: 2.47 },
    { size: "25", diameter: 25, area: 491, massPerMetre: 3.85 },
    {
      size: "28",
      diameter: 28,
      area: 616,
      massPerMetre: 4.84,
      conflict: "others print 4.83, which pi d2/4 gives (4.834): the table's own figure is kept",
    },
    { size: "32", diameter: 32, area: 804, massPerMetre: 6.31 },
    {
      size: "40",
      diameter: 40,
      area: 1257,
      massPerMetre: 9.86,
      conflict: "recalled as 9.86 and as 9.87: 9.86, which pi d2/4 gives, is held",
    },
    { size: "50", diameter: 50, area: 1964, massPerMetre: 15.42 },
  ],
};

const SHAPE_LIST: Citation = {
  document: "ISO 3766",
  edition: "2003",
  clause: "preferred shapes",
  provenance: "memory",
};

export const SHAPE_SOURCES: ShapeSources = { formula: SHAPE_LIST, course: SHAPE_LIST, limits: SHAPE_LIST };

/** Recalled to agree in number and shape with the list that BS 8666 took from it. */
export const PREFERRED_CODES: readonly string[] = [
  "00",
  "11",
  "12",
  "13",
  "15",
  "21",
  "25",
  "26",
  "31",
  "33",
  "41",
  "44",
  "46",
  "51",
  "67",
  "77",
  "99",
];

const STEEL: Citation = { document: "ISO 6935-2", provenance: "memory" };

export const GRADES: readonly Grade[] = [
  { name: "B500A-R", prefixes: [], yield: 500, cite: STEEL },
  { name: "B500B-R", prefixes: [], yield: 500, cite: STEEL },
  { name: "B500C-R", prefixes: [], yield: 500, cite: STEEL },
];

export const LENGTH_ROUNDING: LengthRounding = {
  step: 5,
  direction: "up",
  cite: { document: "ISO 3766 prints no step that was read", provenance: "common practice" },
};

export const STOCK_LENGTH: Cited<number> = {
  value: 12000,
  cite: { document: "usual stock length", provenance: "common practice" },
};

/** Largest mandrel of the bar's own tests. */
export const TEST_MANDRELS: PrintedTable<TestMandrelRow> = {
  cite: { document: "ISO 6935-2", clause: "bend and rebend tests", provenance: "memory" },
  rows: [
    { test: "bend", testUpTo: 16, testMandrelPerDiameter: 3 },
    { test: "bend", testUpTo: 32, testMandrelPerDiameter: 6 },
    { test: "bend", testUpTo: 50, testMandrelPerDiameter: 7 },
    { test: "rebend", testUpTo: 16, testMandrelPerDiameter: 5 },
    { test: "rebend", testUpTo: 25, testMandrelPerDiameter: 8 },
    { test: "rebend", testUpTo: 50, testMandrelPerDiameter: 10 },
  ],
};
