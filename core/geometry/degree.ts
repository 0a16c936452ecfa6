/** Radians of one degree. */
export const DEGREE = Math.PI / 180;
