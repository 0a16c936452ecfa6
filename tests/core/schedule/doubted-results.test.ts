import { expect, it } from "vitest";
import { doubtedResults } from "../../../core/schedule/doubted-results";
import { readSchedule } from "../../../core/schedule/read-schedule";
import { type Cell, sheetFromRows } from "../../../core/schedule/sheet";
import { resolveStandard, type Standard } from "../../../core/standards";

const standard = resolveStandard("BS8666:2005") as Standard;
const waiting: Cell = { error: "#N/A", uncalculated: true };

it("doubts stored results, and no formula that has none", () => {
  const rows: Cell[][] = [
    ["Bar mark", "Size", "Total no.", "Length mm", "Shape code", "A"],
    ["01", "H16", waiting, 2000, "00", 2000],
    ["02", "H16", 4, 2000, "00", 2000],
  ];
  const sheet = {
    ...sheetFromRows("Bars", rows),
    isDoubted: (row: number, column: number) => row > 0 && column === 2,
  };
  const reading = readSchedule(sheet, standard);
  expect(doubtedResults(sheet, reading)).toEqual({ cells: 1, rows: 1, first: { row: 2, column: 2 } });
});
