import type { Citation, Cited, PrintedTable } from "../citation";
import type { Grade, LengthRounding, ToleranceRow } from "../port";
import type { ShapeSources } from "../shared/shape-row";
import type { AllowanceRow, EndLegRow, FormerRow, HookRow } from "../shared/standard-tables";

const PAGES =
  "scribd 467122400 (Table 1); rsj-steels.co.uk/cutandbentreinforcing.php; kbrebar.co.uk/bs-4466; clwyd-reinforcements.co.uk/bar.htm; expressreinforcements.co.uk/bs_4466_1989.html";

const TABLE_3: Citation = {
  document: "BS 4466",
  edition: "1989",
  clause: "Table 3, least radii, bend and hook allowances",
  provenance: "memory",
};

export const SHAPE_SOURCES: ShapeSources = {
  formula: {
    document: "BS 4466",
    edition: "1989",
    clause: "Tables 1 and 2",
    provenance: "published",
    seen: PAGES,
  },
  course: { document: "BS 4466", edition: "1989", clause: "Tables 1 and 2, drawings", provenance: "memory" },
  limits: {
    document: "BS 4466",
    edition: "1989",
    clause: "Table 1, code 61: the least of any grade",
    provenance: "published",
    seen: "scribd 467122400; kbrebar.co.uk/bs-4466",
  },
};

/** Twice the least radius: 2d for grade 250; 3d for grade 460 up to 20 mm and 4d above. */
export const FORMERS: PrintedTable<FormerRow> = {
  cite: TABLE_3,
  rows: [{ grades: ["plain 250"], perDiameter: 4 }, { upTo: 20, perDiameter: 6 }, { perDiameter: 8 }],
};

/** n and h, which the geometry of the radii with 4d of straight and never less than 100 mm gives too. */
export const ALLOWANCES: PrintedTable<AllowanceRow> = {
  cite: TABLE_3,
  rows: [
    { grades: ["plain 250"], diameter: 6, hookAllowance: 100, bendAllowance: 100 },
    { grades: ["plain 250"], diameter: 8, hookAllowance: 100, bendAllowance: 100 },
    { grades: ["plain 250"], diameter: 10, hookAllowance: 100, bendAllowance: 100 },
    { grades: ["plain 250"], diameter: 12, hookAllowance: 110, bendAllowance: 100 },
    { grades: ["plain 250"], diameter: 16, hookAllowance: 150, bendAllowance: 100 },
    { grades: ["plain 250"], diameter: 20, hookAllowance: 180, bendAllowance: 100 },
    { grades: ["plain 250"], diameter: 25, hookAllowance: 230, bendAllowance: 130 },
    { grades: ["plain 250"], diameter: 32, hookAllowance: 290, bendAllowance: 160 },
    { grades: ["plain 250"], diameter: 40, hookAllowance: 360, bendAllowance: 200 },
    { diameter: 6, hookAllowance: 100, bendAllowance: 100 },
    { diameter: 8, hookAllowance: 100, bendAllowance: 100 },
    { diameter: 10, hookAllowance: 110, bendAllowance: 100 },
    { diameter: 12, hookAllowance: 140, bendAllowance: 100 },
    { diameter: 16, hookAllowance: 180, bendAllowance: 100 },
    { diameter: 20, hookAllowance: 220, bendAllowance: 110 },
    { diameter: 25, hookAllowance: 350, bendAllowance: 180 },
    { diameter: 32, hookAllowance: 450, bendAllowance: 230 },
    { diameter: 40, hookAllowance: 560, bendAllowance: 280 },
  ],
};

/** The design code beside it: a link goes 8d on past a bend of 90 degrees or more, 4d past a half circle. */
const LINK_HOOKS_BS8110: Citation = {
  document: "BS 8110-1 (withdrawn), beside BS 4466",
  clause: "3.12.8.6, links",
  provenance: "memory",
  conflict:
    "it is recalled to speak of 90 and of 180 degrees: for 135 the longer straight of the two is taken",
};

const BETWEEN: Citation = {
  document: "BS 4466",
  edition: "1989",
  clause: "Table 3 has a bend of 90 and a hook of 180 degrees, both with 4d of straight",
  provenance: "derived",
};

export const END_LEGS: PrintedTable<EndLegRow> = { cite: TABLE_3, rows: [{ straightPerDiameter: 4 }] };

export const HOOKS: PrintedTable<HookRow> = {
  cite: TABLE_3,
  rows: [
    { turns: [90, 180], extensionPerDiameter: 4 },
    { uses: ["link"], turns: [135], extensionPerDiameter: 8, cite: LINK_HOOKS_BS8110 },
    { turns: [135], extensionPerDiameter: 4, cite: BETWEEN },
  ],
};

const LETTERS: Citation = {
  document: "BS 4466",
  edition: "1989",
  clause: "type letters",
  provenance: "memory",
};

export const GRADES: readonly Grade[] = [
  { name: "high yield 460", prefixes: ["T", "Y"], yield: 460, cite: LETTERS },
  { name: "plain 250", prefixes: ["R"], yield: 250, plain: true, cite: LETTERS },
  { name: "stainless 460", prefixes: ["S"], yield: 460, cite: LETTERS },
  { name: "as specified", prefixes: ["X"], yield: 0, cite: LETTERS },
];

export const LENGTH_ROUNDING: LengthRounding = {
  step: 25,
  direction: "up",
  cite: { document: "BS 4466", edition: "1989", clause: "total length", provenance: "memory" },
};

export const DIMENSION_STEP: Cited<number> = {
  value: 5,
  cite: { document: "BS 4466", edition: "1989", clause: "bending dimensions", provenance: "memory" },
};

export const TOLERANCES: Cited<readonly ToleranceRow[]> = {
  value: [
    { applies: "cut length", upTo: Infinity, plus: 25, minus: 25 },
    { applies: "bent dimension", upTo: 1000, plus: 5, minus: 5 },
    { applies: "bent dimension", upTo: 2000, plus: 5, minus: 10 },
    { applies: "bent dimension", upTo: Infinity, plus: 5, minus: 25 },
  ],
  cite: {
    document: "BS 4466",
    edition: "1989",
    clause: "cutting and bending tolerances",
    provenance: "memory",
  },
};

export const COLD_BENDING: Cited<number> = {
  value: 5,
  cite: { document: "BS 8110-1 (withdrawn), beside BS 4466", provenance: "memory" },
};

export const CURVE_FORMER: Cited<number> = {
  value: 400,
  cite: {
    document: "BS 4466",
    edition: "1989",
    clause: "Table 1 with note 2 to clause 10: radius above 200 mm",
    provenance: "published",
    seen: "scribd 467122400; kbrebar.co.uk/bs-4466",
  },
};

export const STOCK_LENGTH: Cited<number> = {
  value: 12000,
  cite: { document: "usual stock length", provenance: "common practice" },
};

export const CAUTION =
  "superseded in 2000, and its codes mean other shapes than those of the same number in BS 8666; its formulas are as printed, while drawings, radii, h and n are recalled: have them read in the standard, and confirm them on the sheet Standard";
