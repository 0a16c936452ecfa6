import { closest, distance } from "fastest-levenshtein";

/** letters that a slip may change */
const MOST_SLIPS = 2;
const FEWEST_LETTERS = 3;

/**
 * The known word that was probably meant: a slip or two away, or one that begins so; null where none is near.
 *
 * @example nearWord("lorry lenght", ["lorry load", "lorry length"]) // "lorry length"
 */
export function nearWord(typed: string, words: readonly string[]): string | null {
  if (typed.length < FEWEST_LETTERS || words.length === 0) return null;
  const begun = words.find((word) => word.startsWith(typed));
  if (begun !== undefined) return begun;
  const near = closest(typed, [...words]);
  return distance(typed, near) <= Math.min(MOST_SLIPS, Math.ceil(typed.length / 4)) ? near : null;
}
