import { describe, expect, it } from "vitest";
import { type Cell, sheetFromRows } from "../../../core/schedule";
import { Workshop } from "../../../core/shop";
import { compensationLines, trialResiduals } from "../../../core/tickets";
import { BS8666, EMPTY_LOG, SHOP } from "./ticket-sheets";

const yard = (rows: readonly (readonly Cell[])[]) => {
  const sheet = sheetFromRows(
    "Shop",
    rows.map((row) => [...row]),
  );
  return new Workshop(sheet, BS8666);
};
const trial = (bentTo: number, released: number): Cell[] => [
  "2031-02-06",
  "Bench 2",
  "H16",
  64,
  "H",
  "bar",
  "B1",
  bentTo,
  released,
];

describe("trialResiduals", () => {
  it("should name a trial that does not fit by the sheet's own row, and keep it", () => {
    const shop = yard([...SHOP, trial(97, 91), trial(96.5, 75)]);
    const { points, problems } = trialResiduals(shop, shop.logRow);
    // the log's header is the tenth row, its fifth trial the fifteenth
    expect(points.map(({ row }) => row)).toEqual([11, 12, 13, 14, 15]);
    expect(points.filter(({ suspicious }) => suspicious).map(({ row }) => row)).toEqual([15]);
    const misfit = problems.find(({ row, text }) => row === 15 && text.includes("does not fit"));
    expect(misfit?.text).toContain("trial in row 15");
    // it came back by 21.5, the others by 6 to 6.5: some 15 too much
    expect(points[4]?.residual).toBeGreaterThan(12);
    expect(points[4]?.springback).toBeCloseTo(21.5, 6);
  });

  it("should be empty for an empty log", () => {
    expect(trialResiduals(yard(EMPTY_LOG), 1)).toEqual({ points: [], problems: [] });
  });
});

describe("compensationLines", () => {
  it("should give an angle where the trials bear it and the reason where they do not", () => {
    const lines = compensationLines(yard(SHOP), [90, 180]);
    expect(lines).toHaveLength(1);
    const [right, hook] = lines[0]!.points;
    expect(right?.angle).toBeGreaterThan(95);
    expect(right?.plain).toBeCloseTo(96, 6);
    // three trials about 90: a hook of 180 is known too loosely, or beyond the 190 that Bench 2 turns
    expect(hook?.angle === null).toBe(hook?.refusal !== null);
  });

  it("should order by size and former", () => {
    const other: Cell[] = ["2031-02-06", "Bench 2", "H12", 48, "H", "bar", "B1", 96, 89];
    const sizes = compensationLines(yard([...SHOP, other])).map(({ group }) => group.diameter);
    expect(sizes).toEqual([12, 16]);
  });
});
