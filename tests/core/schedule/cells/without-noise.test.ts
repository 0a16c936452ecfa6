import { describe, expect, it } from "vitest";
import { withoutNoise } from "../../../../core/schedule/cells/without-noise";
import { readSchedule } from "../../../../core/schedule/read-schedule";
import { sheetFromRows } from "../../../../core/schedule/sheet";
import { weighRows } from "../../../../core/totals/row-mass";
import { standardNamed } from "../../shapes/resolved";

describe("a number that formulas leave in a cell", () => {
  it.each([
    [2000.0000000000005, 2000],
    [0.1 + 0.2, 0.3],
    [5.800000000000001, 5.8],
    [1249.9999999999998, 1250],
    [100 / 3, 100 / 3],
    [0.888, 0.888],
    [2000.000001, 2000.000001],
    ["2000.0000000000005", "2000.0000000000005"],
    [null, null],
  ])("%s is %s", (cell, meant) => {
    expect(withoutNoise(cell)).toBe(meant);
  });

  it("is not rounded up to the next step of the standard", () => {
    const standard = standardNamed("BS8666:2020");
    const sheet = sheetFromRows("S", [
      ["Bar mark", "Type and size", "Total no.", "Length", "Shape code", "A"],
      ["01", "H12", 10, 2000.0000000000005, "00", 2000.0000000000005],
    ]);
    // by hand: 10 x 2.000 m x 0.888 kg/m (BS 4449)
    expect(weighRows(sheet, readSchedule(sheet, standard), standard)).toMatchObject([{ mass: 17.76 }]);
  });
});
