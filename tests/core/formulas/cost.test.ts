import { describe, expect, it } from "vitest";
import { COST } from "../../../core/formulas/cost";
import type { Block } from "../../../core/formulas/worksheet-function";
import { isCellError } from "../../../core/schedule/sheet";

const RATES: Block = [
  ["size", "supply per tonne", "bend per tonne", "hours per tonne", "waste %"],
  ["up to 16", 100, 20, 8, 5],
  ["over 16", 90, 10, 5, 4],
];
const column = (...cells: (string | number | null)[]): Block => cells.map((cell) => [cell]);
const cost = (args: (Block | undefined)[], rates?: Block): Block =>
  COST.call(args, {
    defaultStandard: "BS8666:2005",
    ...(rates === undefined ? {} : { rates }),
  });
const words = (block: Block, row: number, column: number): string => {
  const cell = block[row]![column]!;
  if (!isCellError(cell)) throw new Error(`no error: ${String(cell)}`);
  return cell.message ?? "";
};

describe("BAR.COST", () => {
  // by hand: P1 1 t x 1.05 x 100 + 1 t x 20 + 0.5 t x 1.04 x 90 + 0.5 t x 10; P2 0.25 t x (105 + 20)
  const expected = [
    ["pour", "net t", "waste t", "hours", "cost"],
    ["P1", 1.5, 0.07, 10.5, 176.8],
    ["P2", 0.25, 0.0125, 2, 31.25],
    ["total", 1.75, 0.0825, 12.5, 208.05],
  ];
  const bars = [column("H16", "H20", "H16"), column(1000, 500, 250), column("P1", "P1", "P2")];

  it("should price pours by the rates given", () => {
    expect(cost([...bars, RATES])).toEqual(expected);
  });

  it("should take the Shop sheet's rates where none are given", () => {
    expect(cost(bars, RATES)).toEqual(expected);
  });

  it("should refuse without rates, and say how to write them", () => {
    expect(words(cost(bars), 0, 0)).toContain("write a table of rates on the Shop sheet");
    expect(words(cost([...bars, column("rates", 5)]), 0, 0)).toContain("no header that can be read");
    const bad: Block = [RATES[0]!, ["big", 1, 1, 1, 1]];
    expect(words(cost([...bars, bad]), 0, 0)).toContain('rates, row 2, column 1: "big"');
  });

  it("should let a mass or size that cannot be priced spoil its own pour and the total only", () => {
    const block = cost([
      column("H16", "X9", "H16"),
      column(1000, 500, "heavy"),
      column("P1", "P2", "P3"),
      RATES,
    ]);
    expect(block[1]).toEqual(["P1", 1, 0.05, 8, 125]);
    expect(block[2]!.slice(0, 2)).toEqual(["P2", 0.5]);
    expect(words(block, 2, 4)).toContain("500 kg in it has no rate for its size");
    expect(words(block, 3, 1)).toContain('row 3: mass "heavy"');
    expect(words(block, 4, 4)).toContain("heavy");
  });
});
