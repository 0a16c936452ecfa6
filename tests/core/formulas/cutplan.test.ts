import { describe, expect, it } from "vitest";
import type { Block } from "../../../core/formulas";
import { CUTPLAN } from "../../../core/formulas/cutplan";
import type { Cell } from "../../../core/schedule/sheet";

const column = (...cells: Cell[]): Block => cells.map((cell) => [cell]);
const plan = (...args: (Block | undefined)[]) => CUTPLAN.call(args, { defaultStandard: "BS8666:2005" });
const message = (cell: Cell | undefined) => (cell as { message: string }).message;

describe("BAR.CUTPLAN", () => {
  it("should cut three 4 m pieces from each 12 m bar, the stock of common practice, and prove it least", () => {
    expect(plan(column(4000), column(30))).toEqual([
      ["size", "stock length", "bars", "cuts", "rest of each", "bound"],
      ["", 12000, 10, "3 x 4000", 0, null],
      ["", 120000, 10, "30 pieces, 0.0 % left over", null, "10 bars, proven least"],
    ]);
  });

  it("should plan each size by itself, with the heading of whole columns left out", () => {
    const block = plan(
      column("Length", 5000, 7000, null),
      column("Count", 2, 1, null),
      undefined,
      column("Size", "H16", "H12", null),
    );
    expect(block.slice(1)).toEqual([
      ["H16", 12000, 1, "2 x 5000", 2000, null],
      ["H16", 12000, 1, "2 pieces, 16.7 % left over", null, "1 bar, proven least"],
      ["H12", 12000, 1, "1 x 7000", 5000, null],
      ["H12", 12000, 1, "1 piece, 41.7 % left over", null, "1 bar, proven least"],
    ]);
  });

  it("should take a row of stock lengths, and say the bound in length", () => {
    const block = plan(column(5800), column(3), undefined, undefined, [[12000, 6000]]);
    expect(block.at(-1)?.[5]).toBe("18000 bought, proven least");
  });

  it("should take rows of length, count and remnant", () => {
    const stock: Block = [
      ["length", "count", "kind"],
      [12000, null, null],
      [5000, 1, "remnant"],
    ];
    const block = plan(column(4900), column(1), undefined, undefined, stock);
    expect(block[1]?.slice(1, 4)).toEqual([5000, 1, "1 x 4900"]);
  });

  it("should work in inches where the standard does: sixteen 45 in pieces from 60 ft", () => {
    const block = plan(column(45), column(16), [["ACI318:2019"]], undefined, [["60'"]]);
    expect(block[1]).toEqual(["", 720, 1, "16 x 45", 0, null]);
  });

  it("should tell a bad length or count by its row, and plan the other sizes", () => {
    const block = plan(column(0, 4000, 3000), column(1, 1.5, 4), undefined, column("H12", "H16", "H20"));
    expect(message(block[1]?.[1])).toContain('row 1: length "0"');
    expect(message(block[2]?.[1])).toContain('row 2: count "1.5"');
    expect(block[3]).toEqual(["H20", 12000, 1, "4 x 3000", 0, null]);
  });

  it("should name the rows of a size that cannot be cut, plan its others, and say so beside the bound", () => {
    const block = plan(column("Length", 4000, 14000, -5, 4000), column("Count", 30, 1, 2, 1.5));
    expect(block[0]).toEqual(["size", "stock length", "bars", "cuts", "rest of each", "bound"]);
    expect(message(block[1]?.[1])).toMatch(/^row 3: a piece of 14000 mm is longer than the 12000 mm .*lap$/);
    expect(message(block[2]?.[1])).toContain('row 4: length "-5"');
    expect(message(block[3]?.[1])).toContain('row 5: count "1.5"');
    expect(block.slice(4)).toEqual([
      ["", 12000, 10, "3 x 4000", 0, null],
      ["", 120000, 10, "30 pieces, 0.0 % left over", null, "10 bars, proven least; 3 rows are not in it"],
    ]);
  });

  // by hand: two of 5 m a bar of 12 m, so that 20 bars give 40 of 50, and 5 more bars the other 10
  it("should plan what the bars held give, and say what wants more", () => {
    const stock = [
      ["length", "count"],
      [12000, 20],
    ];
    const block = plan(column(5000, 2000), column(50, 20), undefined, undefined, stock);
    expect(message(block[1]?.[1])).toMatch(
      /^row 1: 10 of 50 bars want stock: 20 bars of 12000 mm are held, 5 more bars of 12000 mm are needed: .*give more stock$/,
    );
    expect(block.slice(2)).toEqual([
      ["", 12000, 20, "2 x 5000 + 1 x 2000", 0, null],
      ["", 240000, 20, "60 pieces, 0.0 % left over", null, "20 bars, proven least; 1 row wants more stock"],
    ]);
  });

  it("should refuse a piece longer than the stock and never split it", () => {
    expect(message(plan(column(14000), column(1))[1]?.[1])).toContain("longer than the 12000 mm");
  });

  it("should take one cell for every row, and blank rows for none", () => {
    const block = plan(column(5000, null, 7000), column(2), undefined, column("H16"));
    expect(block.at(-1)?.slice(0, 4)).toEqual(["H16", 24000, 2, "4 pieces, 0.0 % left over"]);
  });

  it("should hand an error in place of the standard on, and refuse a count beyond all measure", () => {
    expect(plan(column(5000), column(2), column({ error: "#N/A" }))).toEqual([[{ error: "#N/A" }]]);
    const ofStock = plan(column(5000), column(2), undefined, undefined, column(12000, { error: "#REF!" }));
    expect(ofStock).toEqual([[{ error: "#REF!" }]]);
    expect(message(plan(column(5000), column(1e308))[1]?.[1])).toContain("is no whole number of bars");
  });

  it("should name a piece in inches under a standard in inches", () => {
    const block = plan(column(500), column(1), column("ACI318:2019"), undefined, column(480));
    expect(message(block[1]?.[1])).toContain("a piece of 41'-8\" is longer than the 40'-0\" that");
  });

  it("should be blank for blank columns and pass error cells on", () => {
    expect(plan(column(null), column(null))).toEqual([[null]]);
    expect(plan(column({ error: "#REF!" }), column(1))[1]?.[1]).toEqual({ error: "#REF!" });
  });
});
