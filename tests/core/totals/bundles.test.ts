import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type BundleItem, makeBundles } from "../../../core/totals/bundles";

const item = (over: Partial<BundleItem>): BundleItem => ({
  pour: "P1",
  member: "B1",
  mark: "01",
  size: "16",
  shape: "00",
  count: 10,
  length: 6000,
  massEach: 9.48,
  ...over,
});

describe("makeBundles", () => {
  it("should share 100 bars of 9.48 kg under 500 kg: 52 fit, so two bundles of 50", () => {
    const { bundles } = makeBundles([item({ count: 100 })], 500);
    expect(bundles.map((b) => [b.count, b.number, b.of, b.overLimit])).toEqual([
      [50, 1, 2, false],
      [50, 2, 2, false],
    ]);
    expect(bundles[0]?.mass).toBeCloseTo(474, 9);
  });

  it("should let a bundle weigh exactly the limit: 10 x 0.1 kg under 1 kg", () => {
    expect(makeBundles([item({ massEach: 0.1 })], 1).bundles).toHaveLength(1);
  });

  it("should tie a bar above the limit alone and say so", () => {
    const { bundles } = makeBundles([item({ massEach: 118.4, count: 3 })], 100);
    expect(bundles.map((b) => [b.count, b.overLimit])).toEqual([
      [1, true],
      [1, true],
      [1, true],
    ]);
  });

  it("should keep pours and members together and load the last fixed first", () => {
    const list = [
      item({ pour: "P1", member: "B1", mark: "1" }),
      item({ pour: "P2", member: "C1", mark: "2" }),
      item({ pour: "P1", member: "B2", mark: "3" }),
      item({ pour: "P1", member: "B1", mark: "4" }),
    ];
    const { bundles, loading } = makeBundles(list, 1000);
    expect(bundles.map((b) => b.item.mark)).toEqual(["1", "4", "3", "2"]);
    expect(loading.map((b) => b.item.mark)).toEqual(["2", "3", "4", "1"]);
  });

  it("should neither lose nor invent a bar, and lift no bundle above the limit", () => {
    const any = fc.record({
      count: fc.integer({ min: 0, max: 500 }),
      massEach: fc.double({ min: 0.1, max: 150, noNaN: true }),
    });
    fc.assert(
      fc.property(fc.array(any, { maxLength: 20 }), fc.integer({ min: 20, max: 2000 }), (parts, limit) => {
        const items = parts.map((part, index) => item({ ...part, mark: String(index) }));
        const { bundles } = makeBundles(items, limit);
        const total = bundles.reduce((sum, b) => sum + b.count, 0);
        expect(total).toBe(parts.reduce((sum, part) => sum + part.count, 0));
        for (const b of bundles) if (!b.overLimit) expect(b.mass).toBeLessThanOrEqual(limit * (1 + 1e-6));
      }),
      { seed: 3 },
    );
  });
});
