import { EUROPEAN_HABITS } from "./european-habits";
import { OVERSEAS_HABITS } from "./overseas-habits";

/** The habits of seventeen countries, each with a choice of lengths, rounding, counts, sums and masses. */
export const HABITS = [...EUROPEAN_HABITS, ...OVERSEAS_HABITS];
