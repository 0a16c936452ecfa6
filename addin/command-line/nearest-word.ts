import { closest, distance } from "fastest-levenshtein";

/** letters that a slip may change */
const MOST_SLIPS = 2;

/** The word that was probably meant, in words to add to a refusal; "" where none is near. */
export function didYouMean(typed: string, words: readonly string[]): string {
  if (words.length === 0) return "";
  const near = closest(typed, [...words]);
  const isNear = distance(typed, near) <= Math.min(MOST_SLIPS, Math.ceil(typed.length / 3));
  return isNear || near.startsWith(typed) ? `: did you mean ${near}?` : "";
}
