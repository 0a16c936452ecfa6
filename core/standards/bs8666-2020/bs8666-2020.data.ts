import type { Citation } from "../citation";
import type { Bs8666Sources } from "../shared/bs8666";
import type { ShapeRow } from "../shared/shape-row";

/** Its text was not read: contents pages name its tables, and the figures are those of 2005. */
export const SOURCES: Bs8666Sources = {
  radii: {
    document: "BS 8666",
    edition: "2020",
    clause: "Table 2",
    provenance: "memory",
    conflict: "the 2020 text was not read: the value of the 2005 edition is held",
  },
  radiiRule: {
    document: "BS 8666",
    edition: "2020",
    clause: "Table 2, the multiples that it follows",
    provenance: "derived",
  },
  endLegRule: {
    document: "BS 8666",
    edition: "2020",
    clause: "Table 2, the rule that its larger sizes follow",
    provenance: "derived",
  },
  hooks: {
    document: "BS 8666",
    edition: "2020",
    clause: "Table 2, end projection less r and d",
    provenance: "derived",
  },
  typeLetters: {
    document: "BS 8666",
    edition: "2020",
    clause: "Table 1",
    provenance: "memory",
    conflict: "the 2020 text was not read: the value of the 2005 edition is held",
  },
  shapes: {
    formula: {
      document: "BS 8666",
      edition: "2020",
      clause: "Table 5",
      provenance: "memory",
    },
    course: {
      document: "BS 8666",
      edition: "2020",
      clause: "Table 5, drawings",
      provenance: "memory",
    },
    limits: {
      document: "BS 8666",
      edition: "2020",
      clause: "Table 5",
      provenance: "memory",
    },
    limitElsewhere: {
      "12 R >= r": {
        document: "BS 8666",
        edition: "2020",
        clause: "Table 2",
        provenance: "memory",
      },
    },
  },
  totalLength: {
    document: "BS 8666",
    edition: "2020",
    clause: "Table 5, total length",
    provenance: "memory",
    conflict: "the 2020 text was not read: the value of the 2005 edition is held",
  },
  dimensionStep: {
    document: "BS 8666",
    edition: "2020",
    clause: "dimensions A to E",
    provenance: "memory",
    conflict: "the 2020 text was not read: the value of the 2005 edition is held",
  },
  straightBetweenBends: {
    document: "BS 8666",
    edition: "2020",
    clause: "8.4 and Table 4, minimum allowances between two bends",
    provenance: "memory",
    conflict: "the 2020 text was not read: the value of the 2005 edition is held",
  },
  manyBends: {
    document: "BS 8666",
    edition: "2020",
    clause: "Table 5, note 2",
    provenance: "memory",
    conflict: "the 2020 text was not read: the value of the 2005 edition is held",
  },
  tolerances: {
    document: "BS 8666",
    edition: "2020",
    clause: "Table 7",
    provenance: "memory",
    conflict: "the 2020 text was not read: the value of the 2005 edition is held",
  },
  supplyRadius: {
    document: "BS 8666",
    edition: "2020",
    clause: "Table 8",
    provenance: "memory",
    conflict: "the 2020 text was not read: the value of the 2005 edition is held",
  },
  transportWidth: {
    document: "BS 8666",
    edition: "2020",
    clause: "bars for transport",
    provenance: "memory",
    conflict: "the 2020 text was not read: the value of the 2005 edition is held",
  },
  stockLength: {
    document: "BS 8666",
    edition: "2020",
    clause: "Table 5, note 4",
    provenance: "memory",
    conflict: "the 2020 text was not read: the value of the 2005 edition is held",
  },
  largestCurveFormer: {
    document: "BS 8666",
    edition: "2020",
    clause: "Table 5, note 3",
    provenance: "memory",
    conflict: "the 2020 text was not read: the value of the 2005 edition is held",
  },
};

/** Codes that only this edition has. */
export const NEW_SHAPE_SOURCE: Citation = {
  document: "BS 8666",
  edition: "2020",
  clause: "Table 5; Figure 7 names the codes 48 and 52",
  provenance: "derived",
};

const NEW_SHAPE =
  "the text of the edition was not seen: formula and the way C is measured are derived, C overall to the outside of the bend";

export const NEW_SHAPES: readonly ShapeRow[] = [
  {
    code: "48",
    words: "open link with ends turned through 135",
    dims: ["A", "B", "C", "D"],
    optionalDims: ["D"],
    free: "C",
    formula: "2A + B + 2(C) - r - 2d",
    path: "C +135 A +90 B +90 A +135 (D|C)",
    use: "link",
    limits: ["(C) = (D)", "(C) >= P(links)"],
    formulaNote:
      "a 135 end costs 0.356r - 0.822d, taken as nothing: within 6 mm up to 16 mm bars; from 20 mm up the bar needs about 18 to 30 mm more",
    formulaConflict: NEW_SHAPE,
    courseConflict: NEW_SHAPE,
  },
  {
    code: "52",
    words: "closed link with ends turned through 135",
    dims: ["A", "B", "C", "D"],
    optionalDims: ["D"],
    free: "C",
    formula: "2(A + B + (C)) - 1.5r - 3d",
    path: "C +135 A +90 B +90 A +90 B +135 (D|C)",
    use: "link",
    closed: true,
    limits: ["(C) = (D)", "(C) >= P(links)"],
    formulaNote:
      "a 135 end costs 0.356r - 0.822d, taken as nothing: within 6 mm up to 16 mm bars; from 20 mm up the bar needs about 18 to 30 mm more",
    formulaConflict: NEW_SHAPE,
    courseConflict: NEW_SHAPE,
  },
];

export const CAUTION =
  "the text of 2020 was not read: the numbers are those of 2005, and codes 48 and 52 are derived here; have them read in the standard, and confirm them on the sheet Standard";
