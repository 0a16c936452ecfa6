import type { ICellData } from "@univerjs/core";
import { describe, expect, test } from "vitest";
import { changedCells, type GridSheetNow } from "../../../addin/workbench/book/book-changes";
import { openWorkbook } from "../../../addin/xlsx/read/open-workbook";
import { writeNewWorkbook } from "../../../addin/xlsx/write/new-workbook";
import type { Cell } from "../../../core/schedule/sheet";

const TEXT = 1;
const NUMBER = 2;

/** A1 "01", B1 12, C1 =B1*2 stored as 24, D1 =BAR.MASS(12) never calculated. */
const reading = openWorkbook(
  writeNewWorkbook({
    sheets: [
      {
        name: "Bars",
        rows: [["01", 12, { value: 24, formula: "B1*2" }, { value: null, formula: 'BAR.MASS("H12")' }]],
      },
    ],
  }),
).read("Bars", { formulas: true });

const opened: Record<number, Record<number, ICellData>> = {
  0: {
    0: { v: "01", t: TEXT },
    1: { v: 12, t: NUMBER },
    2: { v: 24, t: NUMBER, f: "=B1*2" },
    3: { f: '=BAR.MASS("H12")' },
  },
};

/** The sheet as the grid holds it: cells by column of row 1, and values that formulas gave. */
function now(cells: Record<number, ICellData>, values: Record<string, Cell> = {}): GridSheetNow {
  const line = new Map(Object.entries(cells).map(([column, cell]) => [Number(column), cell]));
  return {
    cells: new Map([[0, line]]),
    formulaAt: (row, column) => (row === 0 ? (line.get(column)?.f?.slice(1) ?? null) : null),
    valueAt: (row, column) => values[`${row} ${column}`] ?? (line.get(column)?.v as Cell) ?? null,
    spillAt: (row, column) =>
      values["1 4"] !== undefined && row === 0 && column === 4 ? { rows: 2, columns: 1 } : null,
  };
}

const unchanged: Record<number, ICellData> = opened[0]!;

const noDoubt = { cellData: opened, reading, isRegrouped: false, isDoubted: () => false };
const writesOf = (sheet: GridSheetNow) => changedCells(noDoubt, sheet).writes;

describe("changedCells", () => {
  test("should write the result of a BAR formula, and nothing else of an untouched sheet", () => {
    expect(writesOf(now(unchanged, { "0 3": 0.888 }))).toEqual([
      { row: 0, column: 3, value: 0.888, formula: 'BAR.MASS("H12")' },
    ]);
  });

  test("should write what the user's own formula comes to after an edit", () => {
    const cells = { ...unchanged, 1: { v: 13, t: NUMBER }, 2: { v: 26, t: NUMBER, f: "=B1*2" } };
    expect(writesOf(now(cells, { "0 3": 0.888 }))).toContainEqual({
      row: 0,
      column: 2,
      value: 26,
      formula: "B1*2",
    });
  });

  test("should not believe the grid where it came to another result before any edit", () => {
    const cells = { ...unchanged, 2: { v: "#NAME?", t: TEXT, f: "=B1*2" } };
    const isDoubted = (row: number, column: number) => row === 0 && column === 2;
    const { writes, doubted } = changedCells({ ...noDoubt, isDoubted }, now(cells, { "0 3": 0.888 }));
    expect(writes.map(({ column }) => column)).toEqual([3]);
    expect(doubted).toEqual([{ row: 0, column: 2 }]);
  });

  test("should know a formula of another group by its text", () => {
    const cells = { ...unchanged, 2: { v: 24, t: NUMBER, f: "=B1 * 2", si: "other" } };
    const { edited } = changedCells({ ...noDoubt, isRegrouped: true }, now(cells, { "0 3": 0.888 }));
    expect(edited).toEqual([]);
  });

  test("should tell a text from the number that it looks like", () => {
    const writes = writesOf(now({ ...unchanged, 0: { v: "1", t: TEXT }, 1: { v: "12", t: TEXT } }));
    expect(writes.slice(0, 2)).toEqual([
      { row: 0, column: 0, value: "1" },
      { row: 0, column: 1, value: "12" },
    ]);
  });

  test("should write a new formula with all the cells that its result fills", () => {
    const cells = { ...unchanged, 4: { f: "=BAR.EXPLAIN(1)", v: "a" } };
    const writes = writesOf(now(cells, { "0 4": "a", "1 4": "b" }));
    expect(writes).toContainEqual({
      row: 0,
      column: 4,
      value: "a",
      formula: "BAR.EXPLAIN(1)",
      fills: { rows: 2, columns: 1 },
    });
    expect(writes).toContainEqual({ row: 1, column: 4, value: "b" });
  });

  test("should empty a cell that was cleared", () => {
    const { 1: _gone, ...rest } = unchanged;
    expect(writesOf(now(rest))).toContainEqual({ row: 0, column: 1, value: null });
  });
});
