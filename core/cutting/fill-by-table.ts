import type { Filling } from "./fill-bar";

const MOST_CELLS = 200_000;

/** The greatest common measure of all lengths, in ticks. */
export function commonMeasure(lengths: readonly number[]): number {
  let measure = 0;
  for (const length of lengths) {
    let a = measure;
    let b = length;
    while (b > 0) [a, b] = [b, a % b];
    measure = a;
  }
  return measure;
}

/**
 * The most valuable filling of a bar by dynamic programming over its length, each item at most
 * `limits` times: exact where the lengths share a measure that gives few enough cells. Where they
 * do not, lengths are rounded down to a coarser grid: then only `upperBound` is told (counts null).
 */
export function fillByTable(
  values: readonly number[],
  lengths: readonly number[],
  limits: readonly number[],
  capacity: number,
  measure: number,
): Filling & { exact: boolean } {
  const exact = capacity / measure <= MOST_CELLS;
  const grid = exact ? measure : Math.ceil(capacity / MOST_CELLS);
  const cells = Math.floor(capacity / grid);
  const parts: { item: number; copies: number; cells: number }[] = [];
  values.forEach((value, item) => {
    if (value <= 0 || lengths[item]! > capacity) return;
    let left = Math.min(limits[item]!, Math.floor(capacity / lengths[item]!));
    for (let copies = 1; left > 0; copies *= 2) {
      const taken = Math.min(copies, left);
      left -= taken;
      parts.push({ item, copies: taken, cells: Math.floor((lengths[item]! * taken) / grid) });
    }
  });
  const worth = new Float64Array(cells + 1);
  const chosen = parts.map(() => new Uint8Array(cells + 1));
  parts.forEach((part, index) => {
    const gain = values[part.item]! * part.copies;
    const marks = chosen[index]!;
    for (let cell = cells; cell >= part.cells; cell -= 1) {
      const with_ = worth[cell - part.cells]! + gain;
      if (with_ > worth[cell]!) {
        worth[cell] = with_;
        marks[cell] = 1;
      }
    }
  });
  const counts = new Array<number>(values.length).fill(0);
  let cell = cells;
  for (let index = parts.length - 1; index >= 0; index -= 1) {
    if (chosen[index]![cell] === 0) continue;
    const part = parts[index]!;
    counts[part.item] = counts[part.item]! + part.copies;
    cell -= part.cells;
  }
  return { value: worth[cells]!, counts, upperBound: worth[cells]!, exact };
}
