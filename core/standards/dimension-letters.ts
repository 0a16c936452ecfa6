/** Letters of the dimension columns in the order of a row's `dims`; R stands apart. */
export const DIMENSION_LETTERS = ["A", "B", "C", "D", "E", "F", "G", "H", "J", "K"] as const;
