import type { CuttingPlan } from "./cutting-plan";
import type { Stock } from "./cutting-question";
import { dealPieces } from "./deal-pieces";

/** Bars of one heat; null where the stock's heat is not written down. */
export interface HeatBars {
  readonly heat: string | null;
  readonly bars: number;
}

/** Pieces of one row that come of one heat. */
export interface HeatPieces<T> {
  readonly row: T;
  readonly heat: string | null;
  readonly pieces: number;
}

/**
 * Bars of each pattern by heat, in the order in which they are taken: lines with a number of bars first, in
 * the order of the Shop sheet, then a line that serves as many as needed. What limited lines give is taken
 * off in `held`, so that no bar is promised twice.
 */
export function drawBars(lines: readonly Stock[], plan: CuttingPlan, held: Map<Stock, number>): HeatBars[][] {
  return plan.patterns.map(({ stock, remnant, times }) => {
    const fitting = lines.filter((line) => line.length === stock && line.remnant === remnant);
    const drawn: { heat: string | null; bars: number }[] = [];
    let left = times;
    const take = (heat: string | null, bars: number): void => {
      if (bars <= 0) return;
      const last = drawn.at(-1);
      if (last !== undefined && last.heat === heat) last.bars += bars;
      else drawn.push({ heat, bars });
      left -= bars;
    };
    for (const line of fitting) {
      if (line.count === null) continue;
      const onHand = held.get(line) ?? line.count;
      const from = Math.min(onHand, left);
      held.set(line, onHand - from);
      take(line.heat ?? null, from);
    }
    const open = fitting.find(({ count }) => count === null);
    take(open?.heat ?? null, left);
    return drawn;
  });
}

/** Pieces of each row by the heat of the bars that they are cut from, in the order of the plan. */
export function heatsOfRows<T extends { readonly length: number; readonly count: number }>(
  plan: CuttingPlan,
  rows: readonly T[],
  drawn: readonly (readonly HeatBars[])[],
): HeatPieces<T>[] {
  const found = new Map<T, Map<string | null, number>>();
  dealPieces(plan, rows).forEach((stops, pattern) => {
    stops.forEach((dealt, stop) => {
      const perBar = plan.patterns[pattern]!.cuts[stop]!.count;
      const bars = (drawn[pattern] ?? []).map(({ heat, bars }) => ({ heat, left: bars * perBar }));
      for (const { piece, count } of dealt) shareOut(piece, count, bars, found);
    });
  });
  return [...found].flatMap(([row, byHeat]) => [...byHeat].map(([heat, pieces]) => ({ row, heat, pieces })));
}

function shareOut<T>(
  row: T,
  count: number,
  bars: { heat: string | null; left: number }[],
  found: Map<T, Map<string | null, number>>,
): void {
  const byHeat = found.get(row) ?? new Map<string | null, number>();
  found.set(row, byHeat);
  for (let left = count; left > 0; ) {
    const first = bars[0];
    if (first === undefined) return;
    const taken = Math.min(left, first.left);
    byHeat.set(first.heat, (byHeat.get(first.heat) ?? 0) + taken);
    left -= taken;
    first.left -= taken;
    if (first.left === 0) bars.shift();
  }
}
