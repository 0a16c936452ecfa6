import { describe, expect, it } from "vitest";
import { readSchedule } from "../../../../core/schedule/read-schedule";
import { type Cell, sheetFromRows } from "../../../../core/schedule/sheet";
import { resolveStandard, type Standard } from "../../../../core/standards";

const HEADS = ["Mark", "Size mm", "No. of members", "Bars in each", "Total no.", "Length m", "Mass kg"];
// kg by hand with 0.888, 1.579 and 0.617 kg/m (EN 10080): 12 x 3.4, 30 x 5.25, 8 x 6.1, 45 x 1.48, 14 x 2.75 m
const BARS: readonly (readonly Cell[])[] = [
  ["01", 12, 2, 6, 12, 3.4, 36.23],
  ["02", 16, 3, 10, 30, 5.25, 248.69],
  ["03", 12, 1, 8, 8, 6.1, 43.33],
  ["04", 10, 5, 9, 45, 1.48, 41.09],
  ["05", 16, 2, 7, 14, 2.75, 60.79],
];
const read = (heads: readonly string[], bars = BARS) =>
  readSchedule(sheetFromRows("List", [heads, ...bars]), resolveStandard("BS8666:2005") as Standard);
const without = (head: string) => HEADS.map((one) => (one === head ? "" : one));

describe("a column over which nothing stands", () => {
  it.each(["Size mm", "Total no.", "Length m"])(
    "should be what its rows make it where %s is left out",
    (head) => {
      const { bars, held } = read(without(head));
      expect(held).toBeNull();
      expect(bars.map(({ size, total, length }) => [size?.diameter, total, length])).toEqual(
        BARS.map(([, size, , , total, length]) => [size, total, Number(length) * 1000]),
      );
    },
  );

  it("should hold the sizes where nothing but their looks tells", () => {
    const bars = [...BARS, ...BARS].map((cells) => cells.slice(0, 6));
    const sizes = read(without("Size mm").slice(0, 6), bars).bars.map(({ size }) => size?.diameter);
    expect(sizes).toEqual(bars.map(([, size]) => size));
  });

  it("should be nothing where few rows fill it", () => {
    const heads = [...HEADS.slice(0, 1), "", ...HEADS.slice(1)];
    const bars = BARS.map(([mark = null, ...rest], at) => [mark, at === 1 ? 16 : null, ...rest]);
    expect(read(heads, bars).bars.map(({ size }) => size?.diameter)).toEqual([12, 16, 12, 10, 16]);
  });
});
