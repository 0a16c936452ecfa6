import { describe, expect, it } from "vitest";
import { bookedCutsFrom, bookedCutsText, bookedTwice, type CutRow, cutOf } from "../../../core/cutting";
import { planBySize } from "../../../core/cutting/plan-by-size";

const supply = {
  linesOf: () => [{ length: 12000, count: null, remnant: false }],
  endCrop: 0,
  kerf: 0,
  leastRemnant: 1000,
  unit: "mm" as const,
  notes: [],
};

function cut(sheet: string, ...pieces: [length: number, count: number][]) {
  const rows = pieces.map(
    ([length, count]): CutRow => ({ size: "H16", grade: null, mark: null, length, count, sheet, cell: "A1" }),
  );
  return cutOf(sheet, planBySize(rows, supply).groups, "2031-03-04");
}

describe("booked cuts", () => {
  const first = cut("Bars", [4000, 3], [2500, 2]);

  it("should know the same pieces again, in any order and from any sheet", () => {
    const same = cut("Copy of bars", [2500, 1], [4000, 3], [2500, 1]);
    expect(same.mark).toBe(first.mark);
    expect(bookedTwice([first], same)).toMatch(/5 pieces \(sheet Bars\) were written on 2031-03-04/);
  });

  it("should say that an earlier state of the sheet was written, and be silent on another sheet", () => {
    expect(bookedTwice([first], cut("bars", [4000, 4]))).toMatch(/earlier state of Bars .*all 4 pieces/);
    expect(bookedTwice([first], cut("Walls", [4000, 4]))).toBeNull();
    expect(bookedTwice([], first)).toBeNull();
  });

  it("should be kept as a text and read again", () => {
    const text = bookedCutsText([], first);
    expect(bookedCutsFrom(text)).toEqual([first]);
    expect(bookedCutsFrom(null)).toEqual([]);
    expect(bookedCutsFrom("{")).toBeNull();
    expect(bookedCutsFrom('[{"sheet":1}]')).toBeNull();
  });

  it("should stay within what a workbook's name holds", () => {
    let text = bookedCutsText([], first);
    for (let at = 0; at < 100; at += 1)
      text = bookedCutsText(bookedCutsFrom(text)!, { ...first, sheet: `${"x".repeat(28)}${at}` });
    // Excel's longest formula has 8,192 characters, and each quotation mark is doubled in it
    expect(text.length + (text.match(/"/g)?.length ?? 0)).toBeLessThan(8_000);
    expect(bookedCutsFrom(text)?.at(-1)?.sheet).toContain("99");
  });
});
