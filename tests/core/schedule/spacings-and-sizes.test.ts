import { expect, it } from "vitest";
import { readSchedule } from "../../../core/schedule/read-schedule";
import { type Cell, sheetFromRows } from "../../../core/schedule/sheet";
import { resolveStandard, type Standard } from "../../../core/standards";

const standard = resolveStandard("BS8666:2005") as Standard;
const read = (rows: readonly (readonly Cell[])[]) => readSchedule(sheetFromRows("List", rows), standard);

// bars lie no 20 mm apart: where no head says the unit, 20 of a list in centimetres is 200 mm
it("reads a spacing that no bars could keep in millimetres in centimetres", () => {
  const list = (...spacings: readonly number[]): Cell[][] => [
    ["Pos.", "\u00d8 mm", "N. tot.", "Lung. cm", "Passo", "a", "b", "c"],
    ...spacings.map((spacing, at): Cell[] => [String(at + 1), 14, 56, 204, spacing, 17, 170, 17]),
  ];
  expect(read(list(20, 15, 25)).bars.map(({ spacing }) => spacing)).toEqual([200, 150, 250]);
  expect(read(list(200, 150, 250)).bars.map(({ spacing }) => spacing)).toEqual([200, 150, 250]);
});

// kg by hand, number x length x kg/m of BS 4449: 64 x 2.24 x 1.579 = 226.4, 32 x 4.4 x 2.466 = 347.2, 152 x 1.08 x 0.616 = 101.1
it("knows the size of a bar that is called off in one text beside masses by size", () => {
  const { bars, held } = read([
    ["Member", "No. of member", "Bar", "Nos. each", "Total nos.", "Length", "Weight (kg)", null, null],
    [null, null, null, null, null, "(m)", "T10", "T16", "T20"],
    ["Pilecap", 8, "T16-01-150", 8, 64, 2.24, null, 226.4, null],
    [null, null, "T16-02-150", 14, 112, 1.34, null, 237, null],
    [null, null, "T20-04", 4, 32, 4.4, null, null, 347.2],
    [null, null, "T10-05-200", 19, 152, 1.08, 101.1, null, null],
    ["Beam", 6, "T20-06", 2, 12, 6.4, null, null, 189.4],
    [null, null, "T16-07", 2, 12, 6.32, null, 119.8, null],
  ]);
  expect(held).toBeNull();
  expect(bars.map(({ size }) => size?.diameter)).toEqual([16, 16, 20, 10, 20, 16]);
});

// No. 8 of ASTM A615 is 25.4 mm, which CNS 560 calls D25
it("reads a size that is written in two systems", () => {
  const { bars } = read([
    ["Mark", "Size", "Total no.", "Length mm"],
    ["1", "#8 (D25)", 10, 4600],
    ["2", "#6 (D19)", 10, 2000],
  ]);
  expect(bars.map(({ size, sizeTyped }) => [sizeTyped, Math.round(size?.diameter ?? 0)])).toEqual([
    ["#8 (D25)", 25],
    ["#6 (D19)", 19],
  ]);
});
