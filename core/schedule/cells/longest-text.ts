import { shorten } from "../../units/shorten";

/**
 * Characters of a cell that are looked into for a size, a count, a length or a mass: a longer text is none.
 * It bounds the work that one cell can ask for.
 */
export const LONGEST_VALUE = 200;

/** Characters of a cell that are looked into for a shape: a path of forty turns is shorter. */
export const LONGEST_SHAPE = 1000;

/** Characters of a cell whose words decide what its row is: no known word stands behind them. */
export const LONGEST_WORDS = 300;

const QUOTED = 40;

/** A typed text short enough for a message. */
export function shortened(text: string): string {
  return shorten(text, QUOTED);
}
