/** Answers and size texts that a standard keeps before its memory is emptied. */
export const ANSWERS_REMEMBERED = 4096;

/** Uses with a coating and a grade that a table's answers are kept for: few enough to be looked through. */
export const KINDS_REMEMBERED = 64;

/** mm within which two diameters are one: less than any table prints. */
export const SAME_DIAMETER = 0.005;
