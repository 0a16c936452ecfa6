/** Answers and size texts that a standard keeps before its memory is emptied. */
export const ANSWERS_REMEMBERED = 4096;

/** mm within which two diameters are one: less than any table prints. */
export const SAME_DIAMETER = 0.005;
