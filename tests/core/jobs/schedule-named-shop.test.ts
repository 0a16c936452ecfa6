import { describe, expect, it } from "vitest";
import { type Book, checkBooks } from "../../../core/jobs";
import { type Cell, sheetFromRows } from "../../../core/schedule/sheet";
import { isRefusal } from "../../../core/units/refusal";

const LIST: readonly (readonly Cell[])[] = [
  ["Bar mark", "Size", "Total no", "Length", "Shape code", "A"],
  ["01", "H12", 10, 4000, "00", 4000],
  ["02", "H16", 20, 3000, "00", 3000],
];

function bookOf(sheets: Readonly<Record<string, readonly (readonly Cell[])[]>>): Book {
  return {
    name: "Quay",
    sheets: Object.keys(sheets).map((name) => ({ name, visibility: "visible" })),
    read: (name) => sheetFromRows(name, sheets[name] as readonly (readonly Cell[])[]),
    setting: () => null,
  };
}

describe("a schedule on a sheet named Shop", () => {
  it("should be read where it holds none of the tables of what the yard owns", () => {
    const [checked] = checkBooks([bookOf({ SHOP: LIST })], { sheet: null, standard: "BS8666:2005" });
    if (checked === undefined || isRefusal(checked)) throw new Error("refused");
    // UK three-decimal table: 0.888 and 1.579 kg/m; 10 x 4 m and 20 x 3 m
    expect(checked.tonnage.tonnage.total).toBeCloseTo((40 * 0.888 + 60 * 1.579) / 1000, 6);
  });

  it("should stay out of the job where it says what the yard owns", () => {
    const book = bookOf({
      List: LIST,
      Shop: [
        ["Limit", "Value"],
        ["Hoist or crane kg", 900],
      ],
    });
    const [checked] = checkBooks([book], { sheet: null, standard: "BS8666:2005" });
    if (checked === undefined || isRefusal(checked)) throw new Error("refused");
    expect(checked.schedules.map(({ sheet }) => sheet.name)).toEqual(["List"]);
    expect(isRefusal(checkBooks([book], { sheet: "Shop", standard: "BS8666:2005" })[0])).toBe(true);
  });
});
