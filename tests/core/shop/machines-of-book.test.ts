import { describe, expect, it } from "vitest";
import { sheetFromRows } from "../../../core/schedule/sheet";
import { hasShopName, isShopSheet, machinesOfBook } from "../../../core/shop";
import { resolveStandard, type Standard } from "../../../core/standards";

const standard = resolveStandard("BS8666:2005") as Standard;

describe("machinesOfBook", () => {
  it("should give the benders of the sheet named Shop, and undefined without one", () => {
    const shop = sheetFromRows("shop", [
      ["Machine", "Largest angle"],
      ["Bench 2", 190],
    ]);
    const schedule = sheetFromRows("Beams", [["Machine", "Largest angle"]]);
    expect(
      machinesOfBook([schedule, shop], standard)?.map(({ name, largestAngle }) => [name, largestAngle]),
    ).toEqual([["Bench 2", 190]]);
    expect(machinesOfBook([schedule], standard)).toBeUndefined();
  });
});

describe("hasShopName", () => {
  it("should know the name in any case, and no other", () => {
    expect(["Shop", "SHOP", " shop"].every(hasShopName)).toBe(true);
    expect(["Workshop", "Shop 2", ""].some(hasShopName)).toBe(false);
  });
});

describe("isShopSheet", () => {
  it("should go by its tables and titles, and take a list of bars of that name for none", () => {
    const list = sheetFromRows("SHOP", [
      ["RIDGE YARD - SHOP CUT AND BEND"],
      ["Qty", "Size", "Bars", "Length", "Mark", "Shape", "A", "B"],
      [24, "#5", 1, "7-06", "F1", "STR", null, null],
    ]);
    expect(isShopSheet(list)).toBe(false);
    const tables = [
      [["Limit", "Value"]],
      [["Size", "Stock length mm"]],
      [["Stock lengths"], ["For", "Long"]],
      [["Machine", "Orbit radius mm", "ours"]],
      [],
    ];
    expect(tables.map((rows) => isShopSheet(sheetFromRows("Shop", rows)))).toEqual(tables.map(() => true));
    expect(isShopSheet(sheetFromRows("Yard", [["Limit", "Value"]]))).toBe(false);
  });
});
