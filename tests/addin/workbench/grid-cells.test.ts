import { describe, expect, it } from "vitest";
import { gridCells } from "../../../addin/workbench/grid/grid-cells";
import { findingsSheet } from "../../../addin/workbook/findings-sheet";
import { findingsSheetState } from "../../../addin/workbook/own-findings-sheet";
import { CHART_WORDS } from "../../../addin/workbook/stacked-bars";
import { runAudit } from "../../../core/audit/run-audit";
import { type Cell, sheetFromRows } from "../../../core/schedule";
import { resolveStandard, type Standard } from "../../../core/standards";
import { TWO_POURS } from "../../_support/checked-book";

const sheets = [sheetFromRows("Bars", TWO_POURS)];
const content = findingsSheet(
  runAudit({ sheets, standard: resolveStandard("BS8666:2005") as Standard }),
  sheets,
);

describe("gridCells", () => {
  it("says in words where the file has a chart that the grid does not draw", () => {
    const { cells, rowCount } = gridCells(content);
    const { row, column } = content.chart!;
    expect(cells[row]?.[column]?.v).toBe(CHART_WORDS);
    expect(rowCount).toBeGreaterThan(row);
    expect(
      gridCells({ rows: [[{ value: "a" }]] })
        .cells.flat()
        .map(({ v }) => v),
    ).toEqual(["a"]);
  });

  it("leaves a findings sheet as untouched as it was written", () => {
    const rows = gridCells(content).cells.map((line) => line.map(({ v }): Cell => (v ?? null) as Cell));
    expect(findingsSheetState(sheetFromRows("Findings", rows))).toBe("untouched");
    rows[2]![0] = "mine";
    expect(findingsSheetState(sheetFromRows("Findings", rows))).toBe("edited");
  });

  it("keeps the looks of a cell", () => {
    const [[cell]] = gridCells({
      rows: [
        [{ value: 1.5, bold: true, wrap: true, right: true, ruled: true, flag: "unsafe", format: "0.000" }],
      ],
    }).cells as [[{ s: object }]];
    expect(cell.s).toMatchObject({ bl: 1, tb: 3, ht: 3, bg: { rgb: "#F6B2AB" }, n: { pattern: "0.000" } });
  });
});
