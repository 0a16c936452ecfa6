/** from here on a number is no count of bars of one row */
export const MOST_BARS = 1e9;
