import { COUNT_PATTERNS } from "./count-patterns";
import { LAYOUT_PATTERNS } from "./layout-patterns";
import { NUMBER_PATTERNS } from "./number-patterns";
import type { Pattern } from "./pattern";
import { SHAPE_PATTERNS } from "./shape-patterns";
import { SIZE_PATTERNS } from "./size-patterns";

/** Every pattern of untidiness by its number; the docs page and the tests read this one list. */
export const PATTERNS: readonly Pattern[] = [
  ...LAYOUT_PATTERNS,
  ...NUMBER_PATTERNS,
  ...SIZE_PATTERNS,
  ...COUNT_PATTERNS,
  ...SHAPE_PATTERNS,
].sort((one, other) => one.number - other.number);
