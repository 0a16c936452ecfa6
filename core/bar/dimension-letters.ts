import type { DimLetter } from "../standards/port";

/** Letters of the dimension columns in order; the first column is A. */
export const DIMENSION_LETTERS: readonly DimLetter[] = ["A", "B", "C", "D", "E", "F", "G", "H", "J", "K"];
