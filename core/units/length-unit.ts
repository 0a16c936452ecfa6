/** The unit a standard's users write lengths in. Inside core every length is an unrounded millimetre. */
export type LengthUnit = "mm" | "in";
