import fc from "fast-check";
import { describe, expect, it, vi } from "vitest";
import type { CuttingPlan, CuttingQuestion } from "../../../core/cutting";
import { planCutting } from "../../../core/cutting/plan-cutting";
import { isRefusal, refusalText } from "../../../core/units/refusal";
import { exactByPatterns } from "./exact-by-patterns";
import { HARD_INSTANCES } from "./hard-instances";
import { INSTANCES, WITH_REMNANTS } from "./instances";

const stock12 = [{ length: 12000, count: null, remnant: false }];
const plain = { stock: stock12, endCrop: 0, kerf: 0, timeLimit: 1000 };

function planned(question: CuttingQuestion): CuttingPlan {
  const plan = planCutting(question);
  if (isRefusal(plan)) throw new Error(refusalText(plan));
  return plan;
}

function refused(question: CuttingQuestion): string {
  const plan = planCutting(question);
  if (!isRefusal(plan)) throw new Error("planned");
  return refusalText(plan);
}

/** Nothing cut twice, nothing forgotten, nothing longer than its bar: by plain addition of mm. */
function expectSound(question: CuttingQuestion, plan: CuttingPlan): void {
  const asked = new Map<number, number>();
  for (const { length, count } of question.pieces)
    if (count > 0) asked.set(length, (asked.get(length) ?? 0) + count);
  const cut = new Map<number, number>();
  const used = new Map<number, number>();
  for (const pattern of plan.patterns) {
    const length = pattern.cuts.reduce((sum, c) => sum + c.count * c.length, 0);
    const cuts = pattern.cuts.reduce((sum, c) => sum + c.count, 0);
    const most = pattern.stock - question.endCrop;
    expect(length + (cuts - 1) * question.kerf).toBeLessThanOrEqual(most + 1e-6);
    used.set(pattern.stock, (used.get(pattern.stock) ?? 0) + pattern.times);
    for (const c of pattern.cuts) cut.set(c.length, (cut.get(c.length) ?? 0) + c.count * pattern.times);
  }
  expect(cut).toEqual(asked);
  for (const bar of question.stock) {
    if (bar.count !== null) expect(used.get(bar.length) ?? 0).toBeLessThanOrEqual(bar.count);
  }
}

/** The clock as it reads on a machine that is never late. */
function withoutClock<T>(ask: () => T): T {
  return withClock(0, ask);
}

/** A clock that goes on by `step` ms each time it is looked at. */
function withClock<T>(step: number, ask: () => T): T {
  let now = 0;
  const clock = vi.spyOn(Date, "now").mockImplementation(() => {
    now += step;
    return now;
  });
  try {
    return ask();
  } finally {
    clock.mockRestore();
  }
}

describe("planCutting", () => {
  // Each optimum: HiGHS over every pattern there is.
  it.each(INSTANCES)("should buy the least stock: $name", async ({ question }) => {
    const plan = planned(question);
    const { least, relaxed } = await exactByPatterns(question);
    expectSound(question, plan);
    expect(plan.stockLength).toBe(Math.round(least));
    const bound = plan.boundIn === "bars" ? plan.lowerBound * question.stock[0]!.length : plan.lowerBound;
    expect(bound).toBeLessThanOrEqual(least + 1e-6);
    expect(bound).toBeGreaterThanOrEqual(relaxed - 1e-3);
    expect(plan.stockLength).toBeLessThanOrEqual(plan.firstFit.stockLength);
  });

  // Optimum and relaxation: HiGHS over every pattern there is, remnants at no cost.
  it.each(WITH_REMNANTS)("should bound what is bought beside remnants: $name", async ({ question }) => {
    const { least, relaxed } = await exactByPatterns(question);
    const sum = (list: readonly { length: number; count: number | null }[]): number =>
      list.reduce((total, { length, count }) => total + length * count!, 0);
    // what no remnant can hold, by plain addition
    const beyond = sum(question.pieces) - sum(question.stock.filter(({ remnant }) => remnant));
    for (const timeLimit of [2000, 0]) {
      const plan = planned({ ...question, timeLimit });
      expectSound(question, plan);
      const bound = plan.lowerBound * 12000;
      expect(bound).toBeLessThanOrEqual(least + 1e-6);
      expect(bound).toBeGreaterThanOrEqual(beyond - 1e-3);
      expect(plan.stockLength).toBeGreaterThanOrEqual(least - 1e-6);
      if (timeLimit > 0) {
        expect(plan.stockLength).toBe(Math.round(least));
        expect(bound).toBeGreaterThanOrEqual(relaxed - 1);
      }
      expect(plan.barsBought * 12000).toBe(plan.stockLength);
    }
  });

  // Optimum: each instance is cut out of that many whole bars, and the pieces fill them within one bar.
  it.each(HARD_INSTANCES)("should find the known least: $name", ({ question, least }) => {
    const plan = withoutClock(() => planned(question));
    expectSound(question, plan);
    expect(plan).toMatchObject({ bars: least, lowerBound: least, provenLeast: true });
  });

  it("should give the same plan on a slower machine, and say so where the clock ended the search", () => {
    const { question } = HARD_INSTANCES.find(({ name }) => name.startsWith("83 bars of 1000 in exactly"))!;
    const first = withoutClock(() => planned(question));
    const again = withoutClock(() => planned(question));
    expect(again).toEqual(first);
    expect(first.isCutShort).toBe(false);
    const late = withClock(3000, () => planned(question));
    expectSound(question, late);
    expect(late.isCutShort).toBe(true);
  });

  it("should cut three 4 m pieces from each 12 m bar and prove it least", () => {
    const plan = planned({ ...plain, pieces: [{ length: 4000, count: 30 }] });
    expect(plan).toMatchObject({
      bars: 10,
      lowerBound: 10,
      provenLeast: true,
      wasteRatio: 0,
      boundIn: "bars",
    });
  });

  it("should need a whole bar more where a kerf takes the last 3 mm", () => {
    const plan = planned({ ...plain, kerf: 3, pieces: [{ length: 4000, count: 3 }] });
    expect(plan.bars).toBe(2);
  });

  it("should use remnants on hand before buying", () => {
    const stock = [...stock12, { length: 5000, count: 2, remnant: true }];
    const plan = planned({ ...plain, stock, pieces: [{ length: 4800, count: 2 }] });
    expect(plan).toMatchObject({ bars: 2, stockLength: 0, usedLength: 10000 });
  });

  it("should list bars that are cut alike once, though two lines of stock give them", () => {
    const stock = [
      { length: 12000, count: 5, remnant: false, heat: "A1" },
      { length: 12000, count: null, remnant: false, heat: "B2" },
    ];
    const pieces = [
      { length: 4000, count: 60 },
      { length: 3000, count: 8 },
    ];
    const plan = planned({ ...plain, stock, pieces });
    const looks = plan.patterns.map((pattern) => JSON.stringify([pattern.stock, pattern.cuts]));
    // 20 bars of three 4 m pieces, 2 of four 3 m pieces: 264 m fill 22 bars
    expect(plan.bars).toBe(22);
    expect(new Set(looks).size).toBe(looks.length);
  });

  it("should sum lengths in inches without a rest: 16 pieces of 45 in from 60 ft", () => {
    const plan = planned({
      ...plain,
      stock: [{ length: 720 * 25.4, count: null, remnant: false }],
      pieces: [{ length: 45 * 25.4, count: 16 }],
    });
    expect(plan).toMatchObject({ bars: 1, wasteRatio: 0 });
  });

  it("should answer two million pieces at once", () => {
    const pieces = [
      { length: 3100, count: 1_200_000 },
      { length: 2750, count: 800_000 },
    ];
    const plan = planned({ ...plain, pieces });
    expectSound({ ...plain, pieces }, plan);
    expect(plan.pieces).toBe(2_000_000);
  });

  it("should plan soundly, never worse than first-fit and never below its bound", () => {
    const piece = fc.record({
      length: fc.integer({ min: 1, max: 12000 }),
      count: fc.integer({ min: 0, max: 40 }),
    });
    const loss = fc.record({ endCrop: fc.constantFrom(0, 30), kerf: fc.constantFrom(0, 3) });
    fc.assert(
      fc.property(fc.array(piece, { maxLength: 12 }), loss, (pieces, { endCrop, kerf }) => {
        const held = pieces.filter(({ length }) => length <= 12000 - endCrop);
        const question = { ...plain, endCrop, kerf, pieces: held, timeLimit: 200 };
        const plan = planned(question);
        expectSound(question, plan);
        expect(plan.bars).toBeLessThanOrEqual(plan.firstFit.bars);
        expect(plan.bars).toBeGreaterThanOrEqual(plan.lowerBound);
      }),
      { numRuns: 150, seed: 7 },
    );
  });

  it("should refuse what is no length or count, and stock that gives nothing", () => {
    const one = (length: number, count: number): CuttingQuestion => ({
      ...plain,
      pieces: [{ length, count }],
    });
    expect(refused(one(0, 1))).toBe("a length of 0 mm cannot be cut: give a length above 0");
    expect(refused(one(-5, 1))).toContain("-5 mm");
    expect(refused(one(500, 1.5))).toBe(
      "a count of 1.5 is no number of bars: give a whole number, 0 or more",
    );
    expect(refused(one(500, -1))).toContain("-1");
    expect(refused({ ...one(500, 1), stock: [] })).toContain("no stock length");
    expect(
      refused({ ...one(500, 1), stock: [{ length: 30, count: null, remnant: false }], endCrop: 30 }),
    ).toContain("leaves nothing after an end crop of 30 mm");
    expect(refused({ ...one(500, 1), kerf: -1 })).toContain("-1");
  });

  it("should refuse a piece longer than the stock, and never split it", () => {
    expect(refused({ ...plain, pieces: [{ length: 14350, count: 1 }] })).toBe(
      "a piece of 14350 mm is longer than the 12000 mm that the longest stock gives: order longer stock, or ask the designer for a lap",
    );
  });

  it("should refuse demand beyond limited stock", () => {
    const stock = [{ length: 12000, count: 2, remnant: false }];
    expect(refused({ ...plain, stock, pieces: [{ length: 7000, count: 3 }] })).toContain(
      "does not suffice for 3 pieces",
    );
  });
});
