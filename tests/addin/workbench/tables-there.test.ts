import { expect, test } from "vitest";
import { tablesThere } from "../../../addin/workbench/book/tables-there";
import type { WorkbookTable } from "../../../addin/xlsx/read/read-tables";
import { LineMap } from "../../../addin/xlsx/structure/line-map";

const RATES: WorkbookTable = {
  name: "Rates",
  sheet: "Rates",
  range: { top: 0, left: 0, bottom: 2, right: 1 },
  heads: 1,
  totals: 0,
  columns: ["Size", "Rate"],
};
test("should know no table whose sheet was renamed or whose lines came or went", () => {
  const xml = `<table displayName="Rates" ref="A1:B3"><tableColumns><tableColumn name="Size"/><tableColumn name="Rate"/></tableColumns></table>`;
  const workbook = {
    sheets: [{ name: "Rates", part: "sheet" }],
    parts: {
      relationships: () => [{ type: "table", target: "table" }],
      nameOf: (target: string) => target,
      text: () => xml,
    },
  };
  const there = (name: string, rows: LineMap) =>
    tablesThere({
      file: { workbook, readings: [{ name: "Rates" }], sheetIds: ["one"] },
      moves: { rows: () => rows, columns: () => LineMap.unchanged },
      names: () => name,
    } as never);
  expect(there("Rates", LineMap.unchanged)).toEqual([RATES]);
  expect(there("Prices", LineMap.unchanged)).toEqual([]);
  expect(there("Rates", LineMap.unchanged.remove(1, 1).map)).toEqual([]);
});
