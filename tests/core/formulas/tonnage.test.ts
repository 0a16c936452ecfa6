import { describe, expect, it } from "vitest";
import type { Block } from "../../../core/formulas";
import { TONNAGE } from "../../../core/formulas/tonnage";
import type { Cell } from "../../../core/schedule/sheet";

const column = (...cells: Cell[]): Block => cells.map((cell) => [cell]);
const environment = { defaultStandard: "BS8666:2005" };
const tonnage = (...args: (Block | undefined)[]) => TONNAGE.call(args, environment);

describe("BAR.TONNAGE", () => {
  it("should give a header, a row a pour, a column a size and totals in tonnes", () => {
    const block = tonnage(column("P1", "P2", "P1"), column("H16", "H16", 12), column(120.3, 80.2, 0.1));
    expect(block).toEqual([
      // from thin to thick
      ["pour", "12", "H16", "total"],
      ["P1", 0.0001, 0.1203, 0.1204],
      ["P2", 0, 0.0802, 0.0802],
      ["total", 0.0001, 0.2005, 0.2006],
    ]);
  });

  it("should take whole columns with their heading, and end at the last row", () => {
    const block = tonnage(
      column("Pour", "P1", null, null),
      column("Size", "H16", null, null),
      column("Mass kg", 1000, null, null),
    );
    expect(block).toEqual([
      ["pour", "H16", "total"],
      ["P1", 1, 1],
      ["total", 1, 1],
    ]);
  });

  it("should take labels that differ only in case or spaces as one, as a spreadsheet's own sums do", () => {
    const block = tonnage(column("P1", "p1 "), column("H16", "h16"), column(1000, 500));
    expect(block).toEqual([
      ["pour", "H16", "total"],
      ["P1", 1.5, 1.5],
      ["total", 1.5, 1.5],
    ]);
  });

  it("should give kilograms, pounds or short tons where asked", () => {
    const args = [column("P1"), column("H16"), column(907.18474)] as const;
    expect(tonnage(...args, [["kg"]])[1]).toEqual(["P1", 907.18474, 907.18474]);
    // 1 lb = 0.45359237 kg exactly (international avoirdupois pound)
    expect(tonnage(...args, [["lb"]])[1]).toEqual(["P1", 2000, 2000]);
    expect(tonnage(...args, [["ton"]])[1]).toEqual(["P1", 1, 1]);
  });

  it("should keep an error or an unread mass in the sums it belongs to", () => {
    const block = tonnage(
      column("P1", "P1", "P2"),
      column("H16", "H12", "H12"),
      column({ error: "#REF!" }, 500, "1 t?"),
    );
    expect(block[1]?.slice(0, 3)).toEqual(["P1", 0.5, { error: "#REF!" }]);
    expect(block[2]?.[2]).toBe(0);
    expect(block[2]?.[1]).toEqual({
      error: "#VALUE!",
      message: expect.stringContaining('row 3: mass "1 t?" is no number of kg'),
    });
    expect(block[3]?.[3]).toMatchObject({ error: "#REF!" });
  });

  it("should refuse columns of unequal length, wide ones and unknown units", () => {
    const message = (block: Block) => (block[0]![0] as { message: string }).message;
    expect(message(tonnage(column("P1"), column("H16", "H12"), column(1, 2, 3)))).toBe(
      "sizes has 2 rows and masses has 3: give columns of as many rows, or one cell for all",
    );
    expect(message(tonnage([["P1", "P2"]], column("H16"), column(1)))).toContain("give one column");
    expect(message(tonnage(column("P1"), column("H16"), column(1), [["stone"]]))).toContain("stone");
  });

  it("should take one cell for every row", () => {
    const rows = tonnage(column("P1"), column("Size", "H16", "H12"), column("kg", 1000, 500));
    expect(rows).toEqual([
      ["pour", "H12", "H16", "total"],
      ["P1", 0.5, 1, 1.5],
      ["total", 0.5, 1, 1.5],
    ]);
  });

  it("should take a blank unit as tonnes, and hand an error in its place on", () => {
    expect(tonnage(column("P1"), column("H16"), column(1000), column(""))[1]).toEqual(["P1", 1, 1]);
    expect(tonnage(column("P1"), column("H16"), column(1000), column({ error: "#N/A" }))).toEqual([
      [{ error: "#N/A" }],
    ]);
  });

  it("should give blank for blank columns, and name what stands under no pour or size", () => {
    expect(tonnage(column(null), column(null), column(null))).toEqual([[null]]);
    expect(tonnage(column(null), column(""), column(1000))[1]).toEqual(["no pour", 1, 1]);
  });
});
