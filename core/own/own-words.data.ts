/** The worksheet's name. */
export const OWN_SHEET = "Standard";

/** Heads of the three tables, the word that is written first; others are read as the same. */
export const OWN_COLUMNS = {
  standard: ["standard", "document"],
  figure: ["figure", "value", "what it decides"],
  held: ["held here"],
  unit: ["unit"],
  trust: ["trust"],
  source: ["clause"],
  copy: ["your copy says", "the copy says", "own copy"],
  by: ["who looked", "looked up by", "by"],
  on: ["when", "date", "on"],
  code: ["own code", "shape code", "code"],
  words: ["in words", "words"],
  course: ["course", "path"],
  formula: ["length formula", "printed formula", "formula"],
  limits: ["limits"],
  use: ["use"],
  size: ["size"],
  grade: ["grade"],
  case: ["case", "concrete or bond", "bond"],
  lap: ["lap", "lap mm", "lap in", "lap length"],
} as const;

export const FIGURES_TITLE =
  "Figures that nobody here has surely read. Look each up in your own copy: write what it says (or agrees), who looked, and when.";
export const SHAPES_TITLE =
  "Own shape codes: the course as legs and turns (A +90 B -45 (C)), angles after a semicolon (t: D = B sin t), the printed formula, limits parted by semicolons";
export const LAPS_TITLE =
  "Laps of this project, by its designer: a blank grade or case serves every one. Design lengths are the designer's.";

export const FIGURE_HEADS = [
  "standard",
  "figure",
  "held",
  "unit",
  "trust",
  "source",
  "copy",
  "by",
  "on",
] as const;
export const SHAPE_HEADS = [
  "code",
  "standard",
  "words",
  "course",
  "formula",
  "limits",
  "use",
  "by",
  "on",
] as const;
export const LAP_HEADS = ["size", "grade", "case", "lap", "by", "on"] as const;

/** Written for "equal" where the text is too long to write out. */
export const AGREES = ["agrees", "agree", "yes", "same", "equal", "ok"];

/** Times that an own figure may be of the one held: beyond, it is a slip of the unit. */
export const LIKELY_FACTOR = 5;
