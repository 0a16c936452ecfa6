import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { priceBars } from "../../../core/estimating/price-bars";
import { type Rates, rateOf } from "../../../core/estimating/rates";
import { readRates } from "../../../core/estimating/read-rates";
import type { Cell } from "../../../core/schedule/sheet";
import { resolveStandard } from "../../../core/standards";
import { isRefusal } from "../../../core/units/refusal";

function standard(id = "BS8666:2005") {
  const found = resolveStandard(id);
  if (isRefusal(found)) throw new Error("no such standard");
  return found;
}

// a yard of our own; the figures are made for easy sums
const TABLE: Cell[][] = [
  [
    "Size",
    "Supply per tonne",
    "Cut per tonne",
    "Bend per tonne",
    "Fix per tonne",
    "Hours per tonne",
    "Hours per 100 bends",
    "Waste %",
  ],
  ["up to 12", 700, 20, 60, null, 10, 2, 5],
  ["16 to 20", 650, 15, 40, 100, 6, null, "4 %"],
  ["over 20", 600, null, null, null, null, null, null],
];

function rates(block: Cell[][] = TABLE, id?: string): Rates {
  const read = readRates(block, standard(id));
  if (read === null) throw new Error("no header");
  return read;
}

describe("a table of rates", () => {
  it("should give each size the first row that fits it, both ends within", () => {
    const read = rates();
    expect(read.problems).toEqual([]);
    const supply = (diameter: number) => rateOf(read, diameter)?.supply ?? null;
    expect([10, 12, 16, 20, 25, 40].map(supply)).toEqual([700, 700, 650, 650, 600, 600]);
    expect(supply(14)).toBeNull();
  });

  it("should read bands by the sizes of the standard in force", () => {
    const read = rates(
      [
        ["size", "supply per tonne"],
        ["#3 to #5", 1],
        ["over #5", 2],
        [null, 3],
      ],
      "ACI318:2019",
    );
    expect(read.problems).toEqual([]);
    // a number of ACI 318 counts eighths of an inch: #5 is 15.875 mm, #6 is 19.05 mm
    expect(rateOf(read, 15.875)?.supply).toBe(1);
    expect(rateOf(read, 19.05)?.supply).toBe(2);
  });

  it("should tell what it cannot read, and take a blank for not written down", () => {
    const read = rates([
      ["size", "supply per tonne", "waste %"],
      ["big ones", 1, null],
      ["H16", "dear", -1],
      ["H20", null, null],
    ]);
    expect(read.problems.map(({ row, column, typed }) => [row, column, typed])).toEqual([
      [1, 0, "big ones"],
      [2, 1, "dear"],
      [2, 2, "-1"],
    ]);
    expect(rateOf(read, 20)).toMatchObject({ supply: null, waste: null });
  });

  it("should be none without sizes, or with waste alone", () => {
    expect(readRates([["supply per tonne", "waste %"]], standard())).toBeNull();
    expect(readRates([["size", "waste %"]], standard())).toBeNull();
  });
});

describe("pricing", () => {
  it("should pay supply on net and waste, work on the net tonnes: by hand", () => {
    const { pours, total } = priceBars(
      [
        { pour: "P1", diameter: 12, mass: 2000, bends: 300 },
        { pour: "P2", diameter: 16, mass: 500, bends: 40 },
        { pour: "P1", diameter: 32, mass: 1000, bends: 0 },
      ],
      rates(),
    );
    // P1: 2 t x 1.05 x 700 + 2 t x (20 + 60) + 1 t x 600 = 1470 + 160 + 600; 2 t x 10 h + 300 / 100 x 2 h
    expect(pours[0]).toEqual({
      pour: "P1",
      net: 3,
      waste: 0.1,
      hours: 26,
      cost: 2230,
      unpriced: 0,
      lacksBends: false,
    });
    // P2: 0.5 t x 1.04 x 650 + 0.5 t x (15 + 40 + 100) = 338 + 77.5; 0.5 t x 6 h
    expect(pours[1]).toEqual({
      pour: "P2",
      net: 0.5,
      waste: 0.02,
      hours: 3,
      cost: 415.5,
      unpriced: 0,
      lacksBends: false,
    });
    expect(total).toMatchObject({ net: 3.5, waste: 0.12, hours: 29, cost: 2645.5 });
  });

  it("should keep what has no rate in the net tonnes only, and say so", () => {
    const { total } = priceBars(
      [
        { pour: "", diameter: 14, mass: 100, bends: 1 },
        { pour: "", diameter: null, mass: 50, bends: 1 },
        { pour: "", diameter: 12, mass: 1000, bends: null },
      ],
      rates(),
    );
    expect(total).toMatchObject({ net: 1.15, unpriced: 150, lacksBends: true, hours: 10, cost: 815 });
  });

  it("should come to the same whatever the order, and double with twice the bars", () => {
    const bars = fc.array(
      fc.record({
        pour: fc.constantFrom("A", "B"),
        diameter: fc.constantFrom(10, 12, 16, 25),
        mass: fc.integer({ min: 0, max: 999_999 }).map((grams) => grams / 1000),
        bends: fc.integer({ min: 0, max: 500 }),
      }),
      { maxLength: 20 },
    );
    fc.assert(
      fc.property(bars, (list) => {
        const once = priceBars(list, rates()).total;
        expect(priceBars([...list].reverse(), rates()).total).toEqual(once);
        const twice = priceBars([...list, ...list], rates()).total;
        expect(twice.cost ?? 0).toBeCloseTo(2 * (once.cost ?? 0), 9);
        expect(twice.net).toBeCloseTo(2 * once.net, 12);
      }),
      { numRuns: 100, seed: 3 },
    );
  });
});
