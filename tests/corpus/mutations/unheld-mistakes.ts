import type { UnheldMistake } from "./mistake";

/** Mistakes that a schedule cannot show by itself. */
export const UNHELD_MISTAKES: readonly UnheldMistake[] = [
  {
    number: 24,
    name: "link does not close round its bars",
    lacks: "a schedule does not say which bars a link holds, nor where they lie in it",
  },
  {
    number: 35,
    name: "bar on the drawing and not in the list, or the reverse",
    lacks: "the drawing itself: only its number may stand on the sheet",
  },
];
