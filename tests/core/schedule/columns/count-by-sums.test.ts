import { expect, it } from "vitest";
import { readSchedule } from "../../../../core/schedule/read-schedule";
import { type Cell, sheetFromRows } from "../../../../core/schedule/sheet";
import { resolveStandard, type Standard } from "../../../../core/standards";

const HEADS = ["Mark", "Size mm", "No. of members", "Pcs", "Length m", "Mass kg"];
const countsOf = (bars: readonly (readonly Cell[])[]) =>
  readSchedule(sheetFromRows("List", [HEADS, ...bars]), resolveStandard("BS8666:2005") as Standard).bars.map(
    ({ members, each, total }) => ({ members, each: each ?? null, total }),
  );

// kg by hand with 1.579 and 0.888 kg/m (EN 10080): 2 x 10 x 4 m, 2 x 5 x 3 m, 8 x 2 m
it("should tell by the masses that a bare number counts one member's bars", () => {
  const bars = [
    ["1", 16, 2, 10, 4, 126.32],
    ["2", 12, 2, 5, 3, 26.64],
    ["3", 12, 1, 8, 2, 14.21],
  ];
  expect(countsOf(bars)).toEqual([
    { members: 2, each: 10, total: null },
    { members: 2, each: 5, total: null },
    { members: 1, each: 8, total: null },
  ]);
});

it("should leave it to count all bars where the masses are of those", () => {
  const bars = [
    ["1", 16, 2, 10, 4, 63.16],
    ["2", 12, 2, 5, 3, 13.32],
    ["3", 12, 1, 8, 2, 14.21],
  ];
  expect(countsOf(bars).map(({ total }) => total)).toEqual([10, 5, 8]);
});
