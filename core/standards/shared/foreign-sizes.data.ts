/** mm of one step of a bar number in other countries, to name the nearest bar for a size not held. */
export const FOREIGN_SIZE_STEP = { eighthInch: 3.175, metric: 1 };

/** A number above this is no bar diameter in any table, mm. */
export const LARGEST_DIAMETER = 130;

/** The same in inches. */
export const LARGEST_DIAMETER_INCHES = 3;
