import { describe, expect, it } from "vitest";
import { readSchedule } from "../../../core/schedule/read-schedule";
import { type Cell, sheetFromRows } from "../../../core/schedule/sheet";
import { resolveStandard, type Standard } from "../../../core/standards";

const standard = resolveStandard("BS8666:2005") as Standard;
const read = (rows: readonly (readonly Cell[])[]) => readSchedule(sheetFromRows("Quay", rows), standard);

describe("rows under a header that are no bars", () => {
  it("should be part of it where words alone say more of columns of numbers", () => {
    const { rowClasses, bars } = read([
      ["B/M", "Bar", "Spacing mm", "Run m", "Nos", "Length m"],
      [null, null, "c/c", null, "run/spacing +1", null],
      ["a", "T16", 150, 9, 61, 3.25],
      ["b", "T12", 200, 2.8, 15, 9.4],
    ]);
    expect(rowClasses).toEqual(["heading", "heading", "bar", "bar"]);
    expect(bars.map(({ mark, total }) => [mark, total])).toEqual([
      ["a", 61],
      ["b", 15],
    ]);
  });

  it("should be a line of masses per metre under the sizes, with units among its numbers", () => {
    const { rowClasses } = read([
      ["Member", "Bar", "No. of elem.", "No. in each", "Length each", "Total length (m)", null, null, "Kg"],
      [null, null, null, null, null, "8 mm", "10 mm", "12 mm"],
      ["mass kg/m", null, null, null, "m", 0.395, 0.617, 0.888, "kg"],
      ["F1", "12 mm", 6, 9, 1.65, null, null, 89.1, 79.12],
      ["F2", "8 mm", 4, 10, 1.9, 76, null, null, 30.02],
    ]);
    expect(rowClasses).toEqual(["heading", "heading", "total", "bar", "bar"]);
  });
});

describe("a count beside the size where the column of totals is blank", () => {
  it("should count the bars of each, and the total stay open", () => {
    const { bars } = read([
      ["Element", "Bars", "Total no.", "Length"],
      ["footing", "8-H12", 48, 1400],
      ["column", "6-H16", null, 4200],
      ["beam", "4-H16", 4, 8700],
    ]);
    expect(bars.map(({ each, total }) => [each, total])).toEqual([
      [null, 48],
      [6, null],
      [null, 4],
    ]);
    expect(bars[1]?.problems?.[0]).toMatchObject({ field: "total", asks: true });
  });
});
