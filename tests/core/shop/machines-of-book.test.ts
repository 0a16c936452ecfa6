import { describe, expect, it } from "vitest";
import { sheetFromRows } from "../../../core/schedule/sheet";
import { isShopSheet, machinesOfBook } from "../../../core/shop";
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

describe("isShopSheet", () => {
  it("should know the name in any case, and no other", () => {
    expect(["Shop", "SHOP", " shop"].every(isShopSheet)).toBe(true);
    expect(["Workshop", "Shop 2", ""].some(isShopSheet)).toBe(false);
  });
});
