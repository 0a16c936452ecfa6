import { DIMENSION_LETTERS } from "../standards/dimension-letters";
import type { DimLetter } from "../standards/port";

/**
 * Names that a shape's formulas, limits and angle equations speak of, in the order of their places:
 * the dims, the radius r that the printed formulas use, the diameter d, the least end leg P of Table 2
 * and P of links, the named angles in degrees, and what a hook (h) and a bend (n) at an end add to a length.
 */
export const SHAPE_SYMBOLS = [
  ...DIMENSION_LETTERS,
  "R",
  "r",
  "d",
  "P",
  "P(links)",
  "t",
  "u",
  "h",
  "n",
] as const;

/** One number for each of `SHAPE_SYMBOLS`, mm or degrees; NaN where there is none. */
export type ShapeValues = readonly number[];

const PLACES: ReadonlyMap<string, number> = new Map(SHAPE_SYMBOLS.map((symbol, place) => [symbol, place]));

/** Where a symbol stands in `ShapeValues`; undefined for a word that is none. */
export function placeOf(symbol: string): number | undefined {
  return PLACES.get(symbol);
}

/** Values without any number, to be filled. */
export function noValues(): number[] {
  return [NaN, NaN, NaN, NaN, NaN, NaN, NaN, NaN, NaN, NaN, NaN, NaN, NaN, NaN, NaN, NaN, NaN, NaN, NaN];
}

/** The value of a dim, mm; null where it was not given. */
export function dimOf(values: ShapeValues, letter: DimLetter): number | null {
  const value = values[PLACES.get(letter) ?? -1];
  return value === undefined || Number.isNaN(value) ? null : value;
}

/** Dims (mm) by their letters, with r and d. */
export function shapeValuesOf(
  letters: readonly DimLetter[],
  dims: readonly (number | null)[],
  diameter: number,
  radius: number,
): ShapeValues {
  const values = noValues();
  const put = (symbol: string, value: number | null | undefined) => {
    const place = placeOf(symbol);
    if (place !== undefined && value !== null && value !== undefined) values[place] = value;
  };
  letters.forEach((letter, at) => {
    put(letter, dims[at]);
  });
  put("r", radius);
  put("d", diameter);
  return values;
}
