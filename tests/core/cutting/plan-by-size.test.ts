import { describe, expect, it } from "vitest";
import { type CutRow, cuttingSupply, refusedText, type SizePlans, type Stock } from "../../../core/cutting";
import { planBySize } from "../../../core/cutting/plan-by-size";
import { stockToBuy } from "../../../core/cutting/stock-to-buy";
import { sheetFromRows } from "../../../core/schedule";
import { readShop } from "../../../core/shop";
import { resolveStandard, type Standard } from "../../../core/standards";

const standard = resolveStandard("BS8666:2005") as Standard;
let number = 0;

function row(size: string, length: number, count: number, grade: string | null = null): CutRow {
  number += 1;
  return { size, grade, mark: `M${number}`, length, count, sheet: "Bars", cell: `F${number}` };
}

const bought = (length: number, count: number | null = null): Stock => ({ length, count, remnant: false });
const remnants = (length: number, count: number): Stock => ({ length, count, remnant: true });

function planned(rows: readonly CutRow[], stock: readonly Stock[], endCrop = 0): SizePlans {
  return planBySize(rows, {
    linesOf: () => stock,
    endCrop,
    kerf: 0,
    leastRemnant: 1000,
    unit: "mm",
    notes: [],
  });
}

const cutPieces = ({ groups }: SizePlans): number => groups.reduce((sum, { plan }) => sum + plan.pieces, 0);

describe("planBySize", () => {
  it("should leave out a bar longer than the stock by name and plan the others", () => {
    const rows = [row("H16", 4000, 30), row("H16", 13500, 2), row("H20", 6000, 2)];
    const plans = planned(rows, [bought(12000), bought(9000)]);
    // 30 x 4 m: ten 12 m bars; 2 x 6 m: one
    expect(plans.groups.map(({ size, plan }) => [size, plan.stockLength])).toEqual([
      ["H16", 120_000],
      ["H20", 12_000],
    ]);
    expect(plans.refused).toMatchObject([{ mark: rows[1]?.mark, cell: rows[1]?.cell, longestStock: 12000 }]);
    expect(refusedText(plans.refused[0]!)).toMatch(
      /^H16, mark M\d+, 2 bars, Bars!F\d+: a piece of 13500 mm is longer than the 12000 mm that the longest stock gives: order longer stock, or ask the designer for a lap$/,
    );
  });

  it("should take the end crop off the longest stock and say so", () => {
    const plans = planned([row("H16", 11995, 1)], [bought(12000)], 10);
    expect(plans.groups).toEqual([]);
    expect(refusedText(plans.refused[0]!)).toContain(
      "longer than the 11990 mm that the longest stock gives, 12000 mm less the end crop",
    );
  });

  it("should name lengths in feet and inches where the standard works in them", () => {
    const foot = 304.8;
    const plans = planBySize([row("#5", 65 * foot, 1)], {
      ...{ linesOf: () => [bought(60 * foot)], endCrop: 0, kerf: 0, leastRemnant: 1000, notes: [] },
      unit: "in",
    });
    expect(refusedText(plans.refused[0]!)).toContain(
      `a piece of 65'-0" is longer than the 60'-0" that the longest stock gives`,
    );
  });

  it.each([
    [0, 1, "a length of 0 mm cannot be cut"],
    [-1200, 1, "a length of -1200 mm cannot be cut"],
    [Number.NaN, 1, "a length of NaN mm cannot be cut"],
    [1200, -3, "a count of -3 is no number of bars"],
    [1200, 2.5, "a count of 2.5 is no number of bars"],
  ])("should name a row of %d mm, %d times, and plan the next", (length, count, words) => {
    const plans = planned([row("H16", length, count), row("H16", 4000, 3)], [bought(12000)]);
    expect(refusedText(plans.refused[0]!)).toContain(words);
    expect([plans.refused.length, cutPieces(plans)]).toEqual([1, 3]);
  });

  it("should plan each grade of a size by itself, and give no remnant of unknown grade to either", () => {
    const rows = [row("H16", 4000, 3, "B500B"), row("h16", 4000, 3, "B500C"), row("H16", 4000, 3, "b500b ")];
    const plans = planned(rows, [bought(12000), remnants(4100, 9)]);
    expect(plans.groups.map(({ size, grade, plan }) => [size, grade, plan.bars])).toEqual([
      ["H16", "B500B", 2],
      ["h16", "B500C", 1],
    ]);
    expect(plans.notes.join()).toContain("remnants on hand say no grade");
  });

  it("should share bars of a limited line between sizes and never promise one twice", () => {
    const rows = [row("H16", 6000, 3), row("H20", 6000, 3)];
    const stock = [bought(6000, 4), bought(12000, 1)];
    const plans = planned(rows, stock);
    // 4 bars of 6 m and one of 12 m give six pieces in all
    expect([cutPieces(plans), plans.refused]).toEqual([6, []]);
    const used = (length: number): number =>
      plans.groups
        .flatMap(({ plan }) => plan.patterns)
        .filter((pattern) => pattern.stock === length)
        .reduce((sum, { times }) => sum + times, 0);
    expect([used(6000), used(12000)]).toEqual([4, 1]);
  });

  it("should plan what the bars held give, and say what wants stock by mark and cell", () => {
    // 4 bars of 6 m, shared by both sizes: 4 pieces of 6 m, none of 5 m
    const rows = [row("H16", 6000, 5), row("H20", 5000, 1)];
    const plans = planned(rows, [bought(6000, 4)]);
    expect(plans.groups.map(({ size, plan }) => [size, plan.pieces])).toEqual([["H16", 4]]);
    expect(plans.refused.map((refused) => refusedText(refused))).toEqual([
      `H16, mark ${rows[0]?.mark}, 1 bar, Bars!${rows[0]?.cell}: 1 of 5 bars want stock: 4 bars of 6000 mm are held, 1 more bar of 6000 mm is needed: order them, or write more bars on the Shop sheet`,
      expect.stringContaining("1 of 1 bars want stock: 0 bars of 6000 mm are held"),
    ]);
  });

  it("should leave no piece out that a rest of the bars held gives", () => {
    // two bars of 12 m, less 10 mm each: 2 x 5 m and 1 x 1.9 m of each; 5 x 5 m want half a bar more
    const rows = [row("H16", 5000, 5), row("H16", 1900, 2)];
    const plans = planned(rows, [bought(12000, 2)], 10);
    expect(plans.refused).toMatchObject([{ mark: rows[0]?.mark, count: 1, longestStock: 12000 }]);
    expect(cutPieces(plans)).toBe(6);
  });

  it("should leave out only the long pieces where long bars run out", () => {
    const rows = [row("H16", 13000, 3), row("H16", 4000, 3)];
    const plans = planned(rows, [bought(12000), bought(14000, 2)]);
    // 2 of the 3 long ones come of the 2 long bars
    expect(plans.refused).toMatchObject([{ mark: rows[0]?.mark, count: 1, longestStock: 14000 }]);
    expect(cutPieces(plans)).toBe(5);
  });

  it("should name a size for which no stock is named", () => {
    const plans = planBySize([row("H16", 4000, 3)], {
      linesOf: () => null,
      endCrop: 0,
      kerf: 0,
      leastRemnant: 1000,
      unit: "mm",
      notes: [],
    });
    expect(refusedText(plans.refused[0]!)).toMatch(/^H16, 3 bars: no stock length is named/);
  });
});

describe("stockToBuy", () => {
  it("should sum the bars bought by size and length with their mass, and no remnant", () => {
    const rows = [row("H16", 6000, 4), row("H16", 8500, 1), row("odd", 12000, 1), row("H16", 3900, 2)];
    const plans = planned(rows, [bought(12000), bought(9000), remnants(4000, 2)]);
    // kg/m of the UK three-decimal table for 16 mm: 1.579; 24 m and 9 m
    expect(
      stockToBuy(plans.groups, standard).map(({ size, length, bars, kilograms }) => [
        size,
        length,
        bars,
        kilograms,
      ]),
    ).toEqual([
      ["H16", 12000, 2, 37.896],
      ["H16", 9000, 1, 14.211],
      ["odd", 12000, 1, null],
    ]);
  });
});

describe("cuttingSupply", () => {
  const shop = readShop(
    sheetFromRows("Shop", [
      ["size", "stock length", "bars held", "kind"],
      [null, 14000, 3, "stock"],
      ["H20", 9000, null, "stock"],
      [null, 4000, 2, "remnant"],
      ["16", 3000, 1, "remnant"],
    ]),
    standard,
  );

  it("should give the Shop sheet's lines of the size, and no remnant of unknown size", () => {
    const supply = cuttingSupply(shop, standard);
    expect(supply.linesOf("H16")?.map(({ length }) => length)).toEqual([14000, 3000]);
    expect(supply.linesOf("H20")?.map(({ length }) => length)).toEqual([14000, 9000]);
    expect(supply.notes.join("; ")).toMatch(/remnants without a size .*4000 mm.*; .*shared by all sizes/);
  });

  it("should take what is given before the Shop sheet, and the usual length where neither says any", () => {
    expect(cuttingSupply(shop, standard, [bought(8000)]).linesOf("H16")).toEqual([bought(8000)]);
    // 12 m: the usual stock length of the trade
    expect(cuttingSupply(null, standard).linesOf("H16")).toEqual([bought(12000)]);
  });
});
