/** Amounts of rows as they stand, and times their members. */
export interface Sums {
  one: number;
  all: number;
}

/** What a list adds up to, in all and by size. */
export interface Figures {
  /** amounts of the rows as they stand, and times their members */
  readonly sums: Sums;
  readonly bySize: ReadonlyMap<string, Sums>;
}

/** a figure is that of a sum */
export const WITHIN = 0.01;
/** sums of one member and of all that differ by less tell nothing */
export const APART = 0.03;
/** as far as rounding moves it */
export const NEAR = 0.004;

/** What the figures below and beside the list show of its sums: those of its sizes first, then those of all. */
export function byFigures({ bySize, sums }: Figures, found: readonly number[]): "each" | "total" | null {
  const ofSizes = bySizes([...bySize.values()], found);
  if (ofSizes !== null) return ofSizes;
  const off = (expected: number): number => Math.min(1, ...found.map((value) => offOf(value, expected)));
  const [ofAll, ofOne] = [off(sums.all), off(sums.one)];
  if (Math.min(ofAll, ofOne) > WITHIN) return null;
  // figures that are near by chance lie no nearer than others
  if (Math.max(ofAll, ofOne) <= WITHIN && Math.max(ofAll, ofOne) <= SURER * Math.min(ofAll, ofOne))
    return null;
  return ofAll < ofOne ? "each" : "total";
}

/** how much nearer one of two sums has to be where both are near */
const SURER = 4;

/** What sums by size show, each by itself: a row that is entered twice spoils one of them and not the others. */
export function bySizes(sizes: readonly Readonly<Sums>[], found: readonly number[]): "each" | "total" | null {
  const isThere = (expected: number): boolean => found.some((value) => offOf(value, expected) <= NEAR);
  const apart = sizes.filter(({ one, all }) => one > 0 && all / one >= 1 + APART);
  const [all, one] = [apart.filter((sum) => isThere(sum.all)), apart.filter((sum) => isThere(sum.one))];
  // a sum may be that of another size by chance
  const isClear = (many: number, few: number): boolean =>
    many >= LEAST_SIZES && (few === 0 || many >= CLEARLY * few);
  if (isClear(all.length, one.length)) return "each";
  return isClear(one.length, all.length) ? "total" : null;
}

const LEAST_SIZES = 2;
const CLEARLY = 4;

/** rounded masses and lengths of single rows */
const OF_ROW = 0.02;
const LEAST_ROWS = 2;
const OF_ROWS = 0.8;

/** True where most rows under several members are so many times what their bars make, and few are just that. */
export function areTimesMembers(rows: readonly { readonly of: number; readonly members: number }[]): boolean {
  // ten times an amount may be the same in another unit
  const several = rows.filter(({ members }) => members > 1 && offOf(1, members) > OF_ROW);
  const all = several.filter(({ of, members }) => offOf(of, members) <= OF_ROW);
  const one = several.filter(({ of }) => offOf(of, 1) <= OF_ROW);
  return all.length >= LEAST_ROWS && all.length >= OF_ROWS * (all.length + one.length);
}

/** How far a figure is from a sum, as it stands or in another unit: kg and t, cm and m. */
export function offOf(value: number, expected: number): number {
  return Math.min(...[1, 10, 100, 1000].map((factor) => Math.abs((value * factor) / expected - 1)));
}
