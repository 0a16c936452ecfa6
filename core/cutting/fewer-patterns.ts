import type { SolverProblem, SolverUse } from "./cutting-stock";

/**
 * The same bars with fewer pattern changes: equal patterns are gathered, and two patterns of one
 * stock length are replaced by one where their pieces divide evenly over all their bars.
 */
export function fewerPatterns(problem: SolverProblem, uses: readonly SolverUse[]): SolverUse[] {
  let gathered = gatherEqual(uses);
  for (let merged = true; merged; ) {
    merged = false;
    for (let a = 0; a < gathered.length && !merged; a += 1) {
      for (let b = a + 1; b < gathered.length && !merged; b += 1) {
        const one = evenPattern(problem, gathered[a]!, gathered[b]!);
        if (one === null) continue;
        gathered = gatherEqual([...gathered.filter((_, k) => k !== a && k !== b), one]);
        merged = true;
      }
    }
  }
  return gathered;
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
