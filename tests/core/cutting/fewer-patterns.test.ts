import fc from "fast-check";
import { expect, test } from "vitest";
import type { SolverProblem, SolverUse } from "../../../core/cutting/cutting-stock";
import { fewerPatterns } from "../../../core/cutting/fewer-patterns";

const lengths = [1, 2, 3];
const problem = {
  lengths,
  demands: [],
  stock: [{ index: 0, capacity: 12 }],
} as unknown as SolverProblem;
const use = fc
  .record({
    counts: fc.tuple(fc.nat({ max: 4 }), fc.nat({ max: 2 }), fc.nat({ max: 1 })),
    times: fc.integer({ min: 1, max: 6 }),
  })
  .filter(({ counts }) => counts.some((count) => count > 0));
const uses = fc
  .array(use, { maxLength: 9 })
  .map((all) => all.map(({ counts, times }): SolverUse => ({ pattern: { stock: 0, counts }, times })));

/** Sought from the first pair anew after each merge, with nothing remembered. */
function soughtAnew(given: readonly SolverUse[]): SolverUse[] {
  const text = ({ pattern }: SolverUse): string => pattern.counts.join();
  const gather = (all: readonly SolverUse[]): SolverUse[] =>
    [...new Set(all.map(text))].map((one) => {
      const alike = all.filter((other) => text(other) === one);
      return { pattern: alike[0]!.pattern, times: alike.reduce((sum, { times }) => sum + times, 0) };
    });
  let all = gather(given);
  for (;;) {
    const pairs = all.flatMap((one, a) => all.slice(a + 1).map((other) => [one, other] as const));
    const found = pairs.find(([one, other]) =>
      lengths.every((_, item) => (share(one, item) + share(other, item)) % (one.times + other.times) === 0),
    );
    if (found === undefined) return all;
    const [one, other] = found;
    const times = one.times + other.times;
    const counts = lengths.map((_, item) => (share(one, item) + share(other, item)) / times);
    all = gather([
      ...all.filter((each) => each !== one && each !== other),
      { pattern: { stock: 0, counts }, times },
    ]);
  }
}

const share = ({ pattern, times }: SolverUse, item: number): number => pattern.counts[item]! * times;

test("should merge what a search from the first pair after each merge merges, in its order", () => {
  fc.assert(
    fc.property(uses, (given) => {
      expect(fewerPatterns(problem, given)).toEqual(soughtAnew(given));
    }),
    { numRuns: 2_000 },
  );
});
