import type { SolverProblem, SolverUse } from "./cutting-stock";

/**
 * The same bars with fewer pattern changes: equal patterns are gathered, and two patterns of one
 * stock length are replaced by one where their pieces divide evenly over all their bars.
 */
export function fewerPatterns(problem: SolverProblem, uses: readonly SolverUse[]): SolverUse[] {
  let gathered = gatherEqual(uses);
  // the first rows, of which no two and none with another give one, but perhaps with what was merged last
  let tried = 0;
  let latest = -1;
  for (;;) {
    const pair = firstPair(problem, gathered, tried, latest);
    if (pair === null) return gathered;
    const { a, b, one } = pair;
    tried = a < tried ? tried - 1 - (b < tried ? 1 : 0) : a;
    const merged = [...gathered.filter((_, k) => k !== a && k !== b), one];
    gathered = gatherEqual(merged);
    const isEqualToAnother = gathered.length < merged.length;
    latest = isEqualToAnother ? gathered.findIndex((use) => isSamePattern(use, one)) : gathered.length - 1;
  }
}

/** The first two patterns that one replaces; of the first `tried` only pairs with the `latest` are new. */
function firstPair(
  problem: SolverProblem,
  gathered: readonly SolverUse[],
  tried: number,
  latest: number,
): { readonly a: number; readonly b: number; readonly one: SolverUse } | null {
  const pieces = gathered.map(piecesOf);
  for (let a = 0; a < gathered.length; a += 1) {
    const isTried = a < tried && a !== latest;
    const from = isTried ? Math.max(a + 1, latest) : a + 1;
    const to = isTried ? (latest > a ? latest + 1 : 0) : gathered.length;
    for (let b = from; b < to; b += 1) {
      // what no whole number of pieces makes of all bars, none of its items does
      const times = gathered[a]!.times + gathered[b]!.times;
      if ((pieces[a]! + pieces[b]!) % times !== 0) continue;
      const one = evenPattern(problem, gathered[a]!, gathered[b]!);
      if (one !== null) return { a, b, one };
    }
  }
  return null;
}

function isSamePattern({ pattern: one }: SolverUse, { pattern: other }: SolverUse): boolean {
  return one.stock === other.stock && one.counts.every((count, item) => count === other.counts[item]);
}

/** Of all bars of the pattern. */
function piecesOf({ pattern, times }: SolverUse): number {
  let pieces = 0;
  for (const count of pattern.counts) pieces += count;
  return pieces * times;
}

function gatherEqual(uses: readonly SolverUse[]): SolverUse[] {
  const byText = new Map<string, SolverUse>();
  for (const use of uses) {
    const text = `${use.pattern.stock}:${use.pattern.counts.join(",")}`;
    const known = byText.get(text);
    byText.set(text, { pattern: use.pattern, times: use.times + (known?.times ?? 0) });
  }
  return [...byText.values()];
}

function evenPattern(problem: SolverProblem, a: SolverUse, b: SolverUse): SolverUse | null {
  if (a.pattern.stock !== b.pattern.stock) return null;
  const times = a.times + b.times;
  let used = 0;
  const counts: number[] = [];
  for (let item = 0; item < problem.lengths.length; item += 1) {
    const count = (a.pattern.counts[item]! * a.times + b.pattern.counts[item]! * b.times) / times;
    if (!Number.isInteger(count)) return null;
    used += count * problem.lengths[item]!;
    counts.push(count);
  }
  const capacity = problem.stock.find((bar) => bar.index === a.pattern.stock)!.capacity;
  return used <= capacity ? { pattern: { stock: a.pattern.stock, counts }, times } : null;
}
