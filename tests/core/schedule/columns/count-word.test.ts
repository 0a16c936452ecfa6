import { describe, expect, it } from "vitest";
import { countWord } from "../../../../core/schedule/columns/count-word";
import { readSchedule } from "../../../../core/schedule/read-schedule";
import { type Cell, sheetFromRows } from "../../../../core/schedule/sheet";
import { resolveStandard, type Standard } from "../../../../core/standards";

const sample = (...texts: string[]) => ({ numbers: [], texts });

describe("countWord", () => {
  it("should be the word behind the numbers of nearly all rows, whatever language it is of", () => {
    expect(countWord(sample("12 zib.", "24 zib.", "6 zib"))).toBe("zib");
    expect(countWord(sample("12 zib", "24 zib", "6 zib", "8 zib", "x 9"))).toBe("zib");
  });

  it("should be none where few rows have it, where rows differ, and where it makes the number another", () => {
    expect(countWord(sample("12 zib", "24 zib"))).toBeNull();
    expect(countWord(sample("12 zib", "24 zab", "6 zub"))).toBeNull();
    expect(countWord(sample("12 sets", "24 sets", "6 sets"))).toBeNull();
    expect(countWord(sample("12 cm", "24 cm", "6 cm"))).toBeNull();
    expect(countWord(undefined)).toBeNull();
  });

  it("should make the counts of the column readable", () => {
    const rows: Cell[][] = [
      ["Mark", "Size", "Number", "Length mm"],
      ["1", "16", "12 zib.", 4600],
      ["2", "16", "24 zib.", 1750],
      ["3", "12", "6 zib.", 1300],
    ];
    const { bars } = readSchedule(sheetFromRows("List", rows), resolveStandard("BS8666:2005") as Standard);
    expect(bars.map(({ total }) => total)).toEqual([12, 24, 6]);
  });
});
