import { SCORE } from "./evidence.data";
import type { ValueColumn } from "./value-column";

/** Something known of every row whose logarithms add up: a count, a length, kg/m by size. */
export interface Factor {
  readonly logs: Float64Array;
  readonly ids: Int32Array;
}

/** Rows that keep an identity and rows that break it; a bar that came before counts a quarter. */
export interface Kept {
  readonly kept: number;
  readonly broken: number;
  readonly share: number;
  readonly testedRows: number;
  readonly brokenRows: readonly number[];
}

/** Natural logarithm of the odds that an identity holds, against luck that keeps `chance` of the rows. */
export function logOdds(kept: number, broken: number, chance: number): number {
  const { mistakes } = SCORE.value;
  return kept * Math.log((1 - mistakes) / chance) + broken * Math.log(mistakes / (1 - chance));
}

/** Half a unit of the answer's last place, as a share of it. */
function rounding(answer: ValueColumn, row: number): number {
  const { mostRounding, roundingSlack } = SCORE.value;
  return Math.min(mostRounding, (answer.half / (answer.values[row] as number)) * roundingSlack);
}

function sumAt(factors: readonly Factor[], row: number): number {
  let sum = 0;
  for (const { logs } of factors) sum += logs[row] as number;
  return sum;
}

/** How many of the rows keep `answer = product of the factors x constant` within its rounding and `within`. */
export function keptBy(
  rows: readonly number[],
  answer: ValueColumn,
  factors: readonly Factor[],
  constant: number,
  within: number,
): Kept {
  const { seenBefore, blurred } = SCORE.value;
  const seen = new Set<number>();
  const brokenRows: number[] = [];
  let kept = 0;
  let broken = 0;
  let testedRows = 0;
  for (const row of rows) {
    const off = Math.abs((answer.logs[row] as number) - sumAt(factors, row) - constant);
    if (Number.isNaN(off)) continue;
    testedRows += 1;
    let key = 0;
    for (const { ids } of factors) key = key * (answer.rowCount + 2) + (ids[row] as number) + 1;
    const worth = seen.has(key) ? seenBefore : 1;
    seen.add(key);
    const allowed = within + rounding(answer, row);
    if (off > allowed) {
      broken += worth;
      brokenRows.push(row);
    } else if (allowed < blurred) kept += worth;
  }
  return { kept, broken, share: kept + broken > 0 ? kept / (kept + broken) : 0, testedRows, brokenRows };
}

/** Share of rows that would agree if the answers were dealt to other rows. */
export function dealtShare(
  rows: readonly number[],
  answer: ValueColumn,
  factors: readonly Factor[],
  constant: number,
  within: number,
): number {
  let kept = 0;
  let tested = 0;
  for (const shift of SCORE.value.shifts) {
    const by = Math.floor(rows.length * shift) + 1;
    for (let index = 0; index < rows.length; index += 1) {
      const other = rows[(index + by) % rows.length] as number;
      const off = (answer.logs[other] as number) - sumAt(factors, rows[index] as number) - constant;
      if (Number.isNaN(off)) continue;
      tested += 1;
      if (Math.abs(off) <= within + rounding(answer, other)) kept += 1;
    }
  }
  return tested === 0 ? 1 : kept / tested;
}

/** What luck would keep: never less than `least`, for a few rows tell little of it. */
export function chanceOf(dealt: number, least: number): number {
  return Math.max(least, Math.min(SCORE.value.mostChance, dealt));
}

/** The densest stretch of some numbers: its middle one, and the share of the numbers in it. */
export interface Densest {
  readonly at: number;
  readonly share: number;
  readonly of: number;
}

const spare = new Float64Array(512);

/** Sorts the numbers of `numbers` up to `count` in place and gives their densest stretch of twice `within`. */
export function densest(numbers: Float64Array, count: number, within: number): Densest {
  let sorted = 0;
  for (let index = 0; index < count; index += 1) {
    const number = numbers[index] as number;
    if (Number.isNaN(number)) continue;
    let place = sorted;
    while (place > 0 && (spare[place - 1] as number) > number) {
      spare[place] = spare[place - 1] as number;
      place -= 1;
    }
    spare[place] = number;
    sorted += 1;
  }
  let best = 0;
  let at = Number.NaN;
  let from = 0;
  for (let to = 0; to < sorted; to += 1) {
    while ((spare[to] as number) - (spare[from] as number) > 2 * within) from += 1;
    if (to - from + 1 <= best) continue;
    best = to - from + 1;
    at = spare[(from + to) >> 1] as number;
  }
  return { at, share: sorted === 0 ? 0 : best / sorted, of: sorted };
}
