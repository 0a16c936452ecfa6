import type { Citation, Cited, PrintedTable } from "../citation";
import type { Grade, LengthRounding } from "../port";
import type { ShapeRow, ShapeSources } from "../shared/shape-row";
import type { EndLegRow, FormerRow, HookRow, PrintedBar } from "../shared/standard-tables";

export const BARS: PrintedTable<PrintedBar> = {
  cite: { document: "SANS 920", edition: "2011", clause: "bar table", provenance: "memory" },
  rows: [
    { size: "6", diameter: 6, area: 28.3, massPerMetre: 0.222 },
    { size: "8", diameter: 8, area: 50.3, massPerMetre: 0.395 },
    { size: "10", diameter: 10, area: 78.5, massPerMetre: 0.617 },
    { size: "12", diameter: 12, area: 113, massPerMetre: 0.888 },
    { size: "16", diameter: 16, area: 201, massPerMetre: 1.58 },
    { size: "20", diameter: 20, area: 314, massPerMetre: 2.47 },
    { size: "25", diameter: 25, area: 491, massPerMetre: 3.85 },
    { size: "32", diameter: 32, area: 804, massPerMetre: 6.31 },
    { size: "40", diameter: 40, area: 1257, massPerMetre: 9.86 },
  ],
};

const STANDARD_BENDS: Citation = {
  document: "SANS 282",
  edition: "2011",
  clause: "standard radii, hook h and bend n",
  provenance: "memory",
  conflict:
    "recalled with little certainty; h and n of 9d and 5d (mild) and 11d and 5.5d (high yield) agree with the geometry of these radii",
};

/** Twice the standard radius: 2d for mild steel, 3d for high yield. */
export const FORMERS: PrintedTable<FormerRow> = {
  cite: STANDARD_BENDS,
  rows: [{ grades: ["mild steel"], perDiameter: 4 }, { perDiameter: 6 }],
};

export const END_LEGS: PrintedTable<EndLegRow> = {
  cite: STANDARD_BENDS,
  rows: [{ straightPerDiameter: 4 }],
};

export const HOOKS: PrintedTable<HookRow> = {
  cite: STANDARD_BENDS,
  rows: [{ turns: [90, 180], extensionPerDiameter: 4 }],
};

const ANNEX_A: Citation = {
  document: "SANS 282",
  edition: "2011",
  clause: "annex A",
  provenance: "memory",
};

export const SHAPE_SOURCES: ShapeSources = { formula: ANNEX_A, course: ANNEX_A, limits: ANNEX_A };

/** Codes that it is recalled to share with BS 4466. */
export const SHARED_CODES: readonly string[] = [
  "20",
  "37",
  "38",
  "39",
  "41",
  "43",
  "45",
  "48",
  "49",
  "51",
  "52",
  "53",
  "54",
  "55",
  "62",
  "65",
  "75",
  "83",
  "85",
  "99",
];

/** Links of its own, by their formula alone. */
export const LINK_SHAPES: readonly ShapeRow[] = [
  {
    code: "60",
    words: "closed link with hooked ends",
    dims: ["A", "B"],
    free: null,
    formula: "2(A + B) + 20d",
    path: null,
    use: "link",
    closed: true,
    limits: [],
  },
  {
    code: "72",
    words: "open link with hooked ends",
    dims: ["A", "B"],
    free: null,
    formula: "2A + B + 25d",
    path: null,
    use: "link",
    limits: [],
  },
  {
    code: "73",
    words: "open link with one end bent",
    dims: ["A", "B", "C"],
    free: null,
    formula: "2A + B + C + 10d",
    path: null,
    use: "link",
    limits: [],
  },
  {
    code: "74",
    words: "link with a double leg",
    dims: ["A", "B"],
    free: null,
    formula: "2A + 3B + 20d",
    path: null,
    use: "link",
    closed: true,
    limits: [],
  },
];

const STEEL: Citation = { document: "SANS 920", edition: "2011", provenance: "memory" };

export const GRADES: readonly Grade[] = [
  { name: "high yield", prefixes: ["Y"], yield: 450, cite: STEEL },
  { name: "mild steel", prefixes: ["R"], yield: 250, plain: true, cite: STEEL },
];

export const LENGTH_ROUNDING: LengthRounding = {
  step: 5,
  direction: "up",
  cite: {
    document: "SANS 282",
    edition: "2011",
    clause: "its step was not read",
    provenance: "common practice",
  },
};

const YARD_SHEET: Citation = {
  document: "South African yards",
  clause: "transport and stock",
  provenance: "published",
  seen: "Site Fundi sheet, scribd 503953176",
};

export const TRANSPORT_WIDTH: Cited<number> = { value: 2200, cite: YARD_SHEET };

export const STOCK_LENGTH: Cited<number> = { value: 13000, cite: YARD_SHEET };
