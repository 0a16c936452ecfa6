import { REST } from "./evidence.data";
import { logOdds } from "./log-odds";
import type { Triple } from "./triples";
import type { ValueColumn } from "./value-column";

/** A column of runs and one of spacings that make up a count. */
export interface RunFit {
  readonly run: ValueColumn;
  readonly spacing: ValueColumn;
  readonly count: ValueColumn;
  readonly kept: number;
  readonly broken: number;
  readonly brokenRows: readonly number[];
  readonly worth: number;
}

/** The run and the spacing behind one of the counts: the count is run / spacing, rounded either way, and one. */
export function runAndSpacing(
  counts: readonly ValueColumn[],
  columns: readonly ValueColumn[],
  triples: readonly Triple[],
): RunFit | null {
  let best: RunFit | null = null;
  for (const count of counts) {
    for (const run of columns) {
      for (const spacing of columns) {
        if (run === spacing || run === count || spacing === count) continue;
        if (triples.some(({ total, factors }) => isAll([total, ...factors], [count, run, spacing]))) continue;
        const fit = fitted(run, spacing, count);
        if (fit !== null && (best === null || fit.worth > best.worth)) best = fit;
      }
    }
  }
  return best;
}

function isAll(columns: readonly ValueColumn[], sought: readonly ValueColumn[]): boolean {
  return sought.every((column) => columns.includes(column));
}

function fitted(run: ValueColumn, spacing: ValueColumn, count: ValueColumn): RunFit | null {
  const r = REST.value;
  if (spacing.distinct < 2 || spacing.distinct > run.rowCount) return null;
  let kept = 0;
  const brokenRows: number[] = [];
  for (let row = 0; row < run.rowCount; row += 1) {
    const gaps = (run.values[row] as number) / (spacing.values[row] as number);
    const bars = count.values[row] as number;
    if (!(gaps >= r.runRatio) || !(bars > 0)) continue;
    const isKept = bars >= Math.floor(gaps + r.runExact) && bars <= Math.ceil(gaps - r.runExact) + 1;
    if (isKept) kept += 1;
    else brokenRows.push(row);
  }
  const tested = kept + brokenRows.length;
  const isFew = spacing.distinct <= Math.max(r.spacingDistinct, r.spacingDistinctOf * tested);
  const worth = logOdds(kept, brokenRows.length, r.runChance);
  if (kept < r.runKept || kept < r.runShare * tested || !isFew || worth <= r.runWorth) return null;
  return { run, spacing, count, kept, broken: brokenRows.length, brokenRows, worth };
}
