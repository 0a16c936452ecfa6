import { describe, expect, it } from "vitest";
import { runAudit } from "../../../core/audit/run-audit";
import { readSchedule } from "../../../core/schedule/read-schedule";
import { type Cell, sheetFromRows } from "../../../core/schedule/sheet";
import { heldStandard } from "../../_support/held-standard";

const standard = heldStandard("BS8666:2005");
const read = (rows: readonly (readonly Cell[])[]) => readSchedule(sheetFromRows("S", rows), standard);
const told = (rows: readonly (readonly Cell[])[], code: string) =>
  runAudit({ sheets: [sheetFromRows("S", rows)], standard }).findings.filter((one) => one.code === code);

// kg/m of BS 4449:2005 table 7: 12 is 0.888, 16 is 1.579, 20 is 2.466; worked out by hand to the places shown
const PIECES: readonly (readonly Cell[])[] = [
  ["Pos", "Type and size", "No.", "Length (mm)", "Mass kg"],
  ["1", 16, 84, 5900, 9.32],
  ["2", 16, 130, 3780, 5.97],
  ["3", 12, 84, 5900, 5.24],
  ["4", 12, 130, 3780, 3.36],
  ["5", 20, 48, 1900, 4.69],
  ["6", 20, 12, 6250, 15.41],
];

describe("amounts that no word names", () => {
  it("should take a mass that length and size make up for that of one bar", () => {
    const { tables, bars, held } = read(PIECES);
    expect([...(tables[0]?.columns.keys() ?? [])]).toContain("pieceMass");
    expect(bars.map(({ pieceMass, mass }) => [pieceMass, mass])[0]).toEqual([9.32, null]);
    expect(held).toBeNull();
  });

  it("should tell a mass of one bar that is another size's", () => {
    // 3.78 m of 14 at 1.208 kg/m
    const wrong = PIECES.map((row, at) => (at === 4 ? ["4", 12, 130, 3780, 4.57] : row));
    expect(told(wrong, "SUM109").map(({ row }) => row)).toEqual([5]);
    expect(told(PIECES, "SUM109")).toEqual([]);
  });

  it("should read bars, size, mark and spacing out of one cell of a count column", () => {
    const { bars } = read([
      ["Member", "No. of members", "Bars in each", "Total No.", "Length", "Shape code", "A"],
      ["Base", 2, "78Y16-01-200", 156, 9000, "00", 9000],
      ["Base", 2, "12Y10-02", null, 1350, "00", 1350],
    ]);
    expect(bars.map(({ each, size, mark, spacing }) => [each, size?.diameter, mark, spacing])).toEqual([
      [78, 16, "01", 200],
      [12, 10, "02", null],
    ]);
  });

  it("should take numbers that run on for those of the rows, where another column counts the bars", () => {
    const { bars } = read([
      ["Member", "No.", "Size", "Length (m)", "Total No."],
      ...[7, 4, 9, 6, 8].map((bars, at) => ["B1", at + 1, 16, 2 + at, bars]),
    ]);
    expect(bars.map(({ mark, total }) => [mark, total])).toEqual([
      ["1", 7],
      ["2", 4],
      ["3", 9],
      ["4", 6],
      ["5", 8],
    ]);
  });

  it("should take a bare number of bars for one member's, where only so the lengths by size come out", () => {
    // number x members x length of each row stands under its size
    const { bars, held } = read([
      ["Bar mark", "Size", "Pcs", "Lots", "Length m", "Ø8", "Ø10", "Ø12"],
      ["1", 10, 32, 1, 5, null, 160, null],
      ["2", 8, 26, 1, 5.4, 140.4, null, null],
      ["3", 12, 4, 2, 6.1, null, null, 48.8],
      ["4", 8, 36, 3, 1.5, 162, null, null],
      ["5", 12, 8, 6, 3.65, null, null, 175.2],
      ["6", 10, 30, 6, 1.4, null, 252, null],
    ]);
    expect(held).toBeNull();
    expect(bars.map(({ members, each }) => [members, each]).slice(2)).toEqual([
      [2, 4],
      [3, 36],
      [6, 8],
      [6, 30],
    ]);
  });
});
