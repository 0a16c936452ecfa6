import type { CorpusBar } from "../corpus-bar";
import { printedLength, printedRadius } from "../printed-length";

/** kg/m of UK tables. */
const MASSES: Readonly<Record<number, number>> = {
  8: 0.395,
  10: 0.616,
  12: 0.888,
  16: 1.579,
  20: 2.466,
  25: 3.854,
  32: 6.313,
  40: 9.864,
};

/**
 * The bar given another coded shape, size and dims, with the length, mass and former that belong to it:
 * only the mistake itself is wrong.
 */
export function codedBar(
  bar: CorpusBar,
  shape: string,
  diameter: number,
  dims: readonly (number | null)[],
): CorpusBar {
  const length = Math.ceil(printedLength({ shape, diameter, dims }) / 25 - 1e-9) * 25;
  const massPerMetre = MASSES[diameter] ?? 0;
  const prefix = /^[A-Z]+/.exec(String(bar.size))?.[0] ?? "";
  return {
    ...bar,
    kind: "other",
    shape,
    diameter,
    size: `${prefix}${diameter}`,
    massPerMetre,
    dims,
    length,
    mass: Math.round(((bar.total ?? 0) * length * massPerMetre) / 10) / 100,
    former: diameter <= 16 ? 4 * diameter : 7 * diameter,
    remark: null,
  };
}

/** The bar with another length, and its mass by it. */
export function withLength(bar: CorpusBar, length: number): CorpusBar {
  return { ...bar, length, mass: massOf(bar, length) };
}

function massOf({ total, massPerMetre }: CorpusBar, length: number): number {
  return Math.round(((total ?? 0) * length * massPerMetre) / 10) / 100;
}

/** mm: overall size of two bends side by side, each round the printed radius, outside to outside. */
export function bendsAlone(diameter: number): number {
  return 2 * (printedRadius(diameter) + diameter);
}

/** mm: least end projection P and P for links, BS 8666:2005 Table 2, rounded to the step of dims. */
export const LEAST_END: Readonly<Record<number, number>> = {
  8: 115,
  10: 120,
  12: 125,
  16: 130,
  20: 190,
  25: 240,
  32: 305,
};
export const LEAST_LINK_END: Readonly<Record<number, number>> = { 8: 115, 10: 130, 12: 160, 16: 210 };
