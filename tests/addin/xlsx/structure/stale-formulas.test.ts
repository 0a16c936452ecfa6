import { describe, expect, test } from "vitest";
import { openWorkbook } from "../../../../addin/xlsx/read/open-workbook";
import { staleFormulas } from "../../../../addin/xlsx/structure/stale-formulas";
import { writeNewWorkbook } from "../../../../addin/xlsx/write/new-workbook";

const formula = (text: string) => ({ value: 1, formula: text });

const book = openWorkbook(
  writeNewWorkbook({
    sheets: [
      {
        name: "A",
        // B1 leans on A1, C1 on B1, D1 on the column, E1 on nothing of it, F1 on whatever a text names
        rows: [
          [
            1,
            formula("A1*2"),
            formula("B1+1"),
            formula("SUM(A:A)"),
            formula("1+1"),
            formula('INDIRECT("Z9")'),
          ],
          [2, formula("A2*2"), formula("Rate*2")],
        ],
      },
      { name: "Other one", rows: [[formula("A!C1")], [formula("'Other one'!A1")]] },
    ],
    names: new Map([["Rate", "A!$A$1"]]),
  }),
);

const stale = (row: number, column: number) =>
  [...staleFormulas(book, new Map([["A", [{ row, column }]]]))]
    .flatMap(([sheet, cells]) => cells.map((cell) => `${sheet} ${cell.row} ${cell.column}`))
    .sort();

describe("staleFormulas", () => {
  test("should find what leans on a cell, by way of others, ranges, names and sheets", () => {
    expect(stale(0, 0)).toEqual([
      "A 0 1",
      "A 0 2",
      "A 0 3",
      "A 0 5",
      "A 1 2",
      "Other one 0 0",
      "Other one 1 0",
    ]);
  });

  test("should leave alone what does not", () => {
    expect(stale(1, 0)).toEqual(["A 0 3", "A 0 5", "A 1 1"]);
  });

  test("should find nothing where nothing was changed", () => {
    expect([...staleFormulas(book, new Map())]).toEqual([]);
  });
});
