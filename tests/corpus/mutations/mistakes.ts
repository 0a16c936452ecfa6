import { BENDING_MISTAKES } from "./bending-mistakes";
import { COUNT_MISTAKES } from "./count-mistakes";
import { LENGTH_MISTAKES } from "./length-mistakes";
import type { Mistake } from "./mistake";
import { STEEL_MISTAKES } from "./steel-mistakes";

/** Every mistake that a sheet can show, by its number. */
export const MISTAKES: readonly Mistake[] = [
  ...BENDING_MISTAKES,
  ...STEEL_MISTAKES,
  ...LENGTH_MISTAKES,
  ...COUNT_MISTAKES,
].sort((a, b) => a.number - b.number);
