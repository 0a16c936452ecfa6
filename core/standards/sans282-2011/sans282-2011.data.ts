import type { Citation, Cited, PrintedTable } from "../citation";
import type { Grade, LengthRounding, ToleranceRow } from "../port";
import type { ShapeRow, ShapeSources } from "../shared/shape-row";
import type { EndLegRow, FormerRow, HookRow, PrintedBar, RadiusRow } from "../shared/standard-tables";

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

const YARD_PAGE = "rms-sa.co.za/product/cutting-bending, table for SANS 282 edition 6";

const MILD_STEEL: Citation = {
  document: "SANS 282",
  edition: "2011",
  clause: "standard radius, hook and bend of mild steel",
  provenance: "memory",
  conflict: "recalled with little certainty; the straight of 5d of high yield bars may hold for it too",
};

const HIGH_YIELD: Citation = {
  document: "SANS 282",
  edition: "2011",
  clause: "least radii of high yield bars",
  provenance: "published",
  seen: YARD_PAGE,
};

/** What the printed h and n leave beside the bend of 3d: 12d and 6.5d, never below 100 mm. */
const STRAIGHT_OF_HOOKS: Citation = {
  document: "SANS 282",
  edition: "2011",
  clause: "5d of straight, out of the printed h and n of high yield bars",
  provenance: "derived",
  seen: YARD_PAGE,
};

/** The design code beside it, as BS 8110, which it follows, has them. */
const LINK_HOOKS: Citation = {
  document: "SANS 10100-1",
  clause: "anchorage of links",
  provenance: "memory",
  conflict:
    "recalled as BS 8110-1 3.12.8.6 has it, 8d past a bend of 90 degrees and 4d past a half circle: for 135 the longer straight is taken",
};

/** Twice the standard radius: 2d for mild steel. */
export const MILD_STEEL_FORMERS: PrintedTable<FormerRow> = {
  cite: MILD_STEEL,
  rows: [{ grades: ["mild steel"], perDiameter: 4 }],
};

/** Twice the printed radius, which is 3d at every size. */
export const FORMERS: PrintedTable<FormerRow> = {
  cite: HIGH_YIELD,
  rows: [{ perDiameter: 6 }],
};

export const END_LEGS: PrintedTable<EndLegRow> = {
  cite: STRAIGHT_OF_HOOKS,
  rows: [{ grades: ["mild steel"], straightPerDiameter: 4, cite: MILD_STEEL }, { straightPerDiameter: 5 }],
};

export const HOOKS: PrintedTable<HookRow> = {
  cite: STRAIGHT_OF_HOOKS,
  rows: [
    { grades: ["mild steel"], turns: [90, 180], extensionPerDiameter: 4, cite: MILD_STEEL },
    { turns: [90, 180], extensionPerDiameter: 5, leastAllowance: 100 },
    { uses: ["link"], turns: [135], extensionPerDiameter: 8, cite: LINK_HOOKS },
    { turns: [135], extensionPerDiameter: 5 },
  ],
};

export const TOLERANCES: Cited<readonly ToleranceRow[]> = {
  value: [
    { applies: "cut length", upTo: Infinity, plus: 25, minus: 25 },
    { applies: "bent dimension", upTo: 1000, plus: 5, minus: 5 },
    { applies: "bent dimension", upTo: 2000, plus: 5, minus: 10 },
    { applies: "bent dimension", upTo: Infinity, plus: 5, minus: 25 },
  ],
  cite: { ...HIGH_YIELD, clause: "cutting and bending tolerances" },
};

/** Radii from which a bar is sprung in on site. */
export const CRITICAL_RADII: PrintedTable<RadiusRow> = {
  cite: { ...HIGH_YIELD, clause: "critical radii" },
  rows: [
    { diameter: 8, radius: 2500 },
    { diameter: 10, radius: 3000 },
    { diameter: 12, radius: 3500 },
    { diameter: 16, radius: 5000 },
    { diameter: 20, radius: 7000 },
    { diameter: 25, radius: 17000 },
    { diameter: 32, radius: 43000 },
  ],
};

const ANNEX_A: Citation = {
  document: "SANS 282",
  edition: "2011",
  clause: "annex A",
  provenance: "memory",
};

/** Two bends of a link side by side: its letters are recalled, so that no more than perhaps is told. */
const SIDE_BY_SIDE: Citation = { ...ANNEX_A, clause: "annex A, letters of the link; two bends side by side" };

export const SHAPE_SOURCES: ShapeSources = { formula: ANNEX_A, course: ANNEX_A, limits: SIDE_BY_SIDE };

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
    limits: ["A, B >= 2(r + d)"],
  },
  {
    code: "72",
    words: "open link with hooked ends",
    dims: ["A", "B"],
    free: null,
    formula: "2A + B + 25d",
    path: null,
    use: "link",
    limits: ["B >= 2(r + d)"],
  },
  {
    code: "73",
    words: "open link with one end bent",
    dims: ["A", "B", "C"],
    free: null,
    formula: "2A + B + C + 10d",
    path: null,
    use: "link",
    limits: ["B >= 2(r + d)"],
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
    limits: ["A, B >= 2(r + d)"],
  },
];

const STEEL: Citation = { document: "SANS 920", edition: "2011", provenance: "memory" };

export const GRADES: readonly Grade[] = [
  { name: "high yield", prefixes: ["Y"], yield: 450, cite: STEEL },
  { name: "mild steel", prefixes: ["R"], yield: 250, plain: true, cite: STEEL },
];

export const LENGTH_ROUNDING: LengthRounding = {
  step: 25,
  direction: "up",
  cite: {
    document: "SANS 282",
    edition: "2011",
    clause: "up to the next 25 mm, as BS 4466 has it, whose codes it shares; its own text was not read",
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
