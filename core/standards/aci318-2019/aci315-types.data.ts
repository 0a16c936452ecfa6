import type { Citation } from "../citation";
import type { ShapeRow, ShapeSources } from "../shared/shape-row";

const BAR_BENDS: Citation = {
  document: "ACI 315",
  edition: "1999",
  clause: "Fig. 10, typical bar bends",
  provenance: "memory",
};

/**
 * No length is printed beside a type. What A and G of a hook of 135 and of 180 degrees mean was read: the bar that
 * the hook adds, while all other dimensions are out to out (3.7.4.2 and notes 1 and 2, muhaz.org).
 */
export const TYPE_SOURCES: ShapeSources = {
  formula: BAR_BENDS,
  course: BAR_BENDS,
  limits: {
    ...BAR_BENDS,
    clause: "Fig. 10, letters of ties; opposite sides of a closed rectangle are alike",
  },
};

const DIRECTION_OF_ENDS =
  "types S1 to S6 are read to differ in the hook, of 90 or 135 degrees, and in whether it turns in or out (3.7.3.1); which of them has which is recalled only";

/** Types of the figure whose letters and course are recalled, in its order. */
export const BAR_TYPES: readonly ShapeRow[] = [
  {
    code: "1",
    words: "straight with a half circle hook at one end or at both",
    dims: ["A", "B", "G", "J"],
    optionalDims: ["A", "G", "J"],
    endsMayLack: true,
    free: null,
    formula: null,
    path: "hA +180 B +180 hG",
    otherReading: { words: "a right angle at its ends", path: "A +90 B +90 G" },
    limits: [],
    courseConflict:
      "recalled with half circle hooks, and used with a right angle at one end: A of a right angle is its leg, and longer",
  },
  {
    code: "2",
    words: "straight with a right angle at one end or at both",
    dims: ["A", "B", "G"],
    optionalDims: ["A", "G"],
    endsMayLack: true,
    free: null,
    formula: null,
    path: "A +90 B +90 G",
    limits: [],
  },
  {
    code: "17",
    words: "an L of two legs, or a U of three",
    dims: ["A", "B", "C", "D"],
    optionalDims: ["A", "C", "D"],
    endsMayLack: true,
    free: null,
    formula: null,
    path: "A +90 B +90 C +90 D",
    limits: [],
    courseConflict:
      "recalled as an L of B and C, and used as a U of A, B and C or of B, C and D: the legs that are filled in decide",
  },
  {
    code: "S1",
    words: "open stirrup with hooks of 135 degrees turned in",
    dims: ["A", "B", "C", "D", "G", "H"],
    optionalDims: ["H"],
    free: null,
    formula: null,
    path: "hA +135 B +90 C +90 D +135 hG",
    otherReading: { words: "hooks of 90 degrees", path: "A +90 B +90 C +90 D +90 G" },
    use: "link",
    limits: [],
    courseConflict: DIRECTION_OF_ENDS,
  },
  {
    code: "S2",
    words: "open stirrup with hooks of 90 degrees turned in",
    dims: ["A", "B", "C", "D", "G", "H"],
    optionalDims: ["H"],
    free: null,
    formula: null,
    path: "A +90 B +90 C +90 D +90 G",
    otherReading: { words: "hooks of 135 degrees", path: "hA +135 B +90 C +90 D +135 hG" },
    use: "link",
    limits: [],
    courseConflict: DIRECTION_OF_ENDS,
  },
  {
    code: "T1",
    words: "closed tie with hooks of 135 degrees",
    dims: ["A", "B", "C", "D", "E", "G", "H"],
    optionalDims: ["H"],
    free: null,
    formula: null,
    path: "hA +135 B +90 C +90 D +90 E +135 hG",
    use: "link",
    closed: true,
    limits: ["B = D", "C = E"],
  },
  {
    code: "T2",
    words: "closed tie with hooks of 90 degrees",
    dims: ["A", "B", "C", "D", "E", "G"],
    free: null,
    formula: null,
    path: "A +90 B +90 C +90 D +90 E +90 G",
    otherReading: {
      words: "hooks of 135 degrees",
      path: "hA +135 B +90 C +90 D +90 E +135 hG",
    },
    use: "link",
    closed: true,
    limits: ["B = D", "C = E"],
    courseConflict:
      "taken to have hooks of 90 degrees, since the page that shows its letters has no H, the height of a hook of 135 degrees",
  },
  {
    code: "T5",
    words: "cross tie with half circle hooks",
    dims: ["A", "B", "G", "J"],
    optionalDims: ["J"],
    free: null,
    formula: null,
    path: "hA +180 B +180 hG",
    use: "link",
    limits: [],
    courseConflict: "the hooks may turn to one side or to either side: the length is the same",
  },
  {
    code: "T9",
    words: "cross tie with a hook of 135 degrees and one of 90",
    dims: ["A", "B", "G", "H"],
    optionalDims: ["H"],
    free: null,
    formula: null,
    path: "hA +135 B +90 G",
    use: "link",
    limits: [],
    courseConflict: "which end has the hook of 90 degrees is recalled only",
  },
];
