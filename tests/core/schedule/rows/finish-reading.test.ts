import { expect, it } from "vitest";
import { readSchedule } from "../../../../core/schedule/read-schedule";
import { type Cell, type Sheet, sheetFromRows } from "../../../../core/schedule/sheet";
import { resolveStandard, type Standard } from "../../../../core/standards";

const standard = resolveStandard("BS8666:2005") as Standard;
const ROWS: Cell[][] = [
  ["Bar mark", "Size", "Total no.", "Length mm", "Shape code", "A"],
  ...["01", "02", "03", "04"].map((mark): Cell[] => [mark, "H16", 4, 2000, "00", 2000]),
];

const reasons = (sheet: Sheet) => (readSchedule(sheet, standard).guesses ?? []).map(({ reason }) => reason);

it("names the rows that are hidden, struck through or coloured", () => {
  const sheet = sheetFromRows("Bars", ROWS);
  expect(reasons({ ...sheet, isHiddenRow: (row) => row === 2 })).toContain(
    "1 bar row is hidden (row 3): read all the same, and marked hidden",
  );
  expect(reasons({ ...sheet, isStruckThrough: (row) => row === 2 || row === 4 })).toContain(
    "2 bar rows are struck through (rows 3, 5): taken as deleted, not to be cut",
  );
  expect(reasons({ ...sheet, fill: (row) => (row === 1 ? "FFFF00" : undefined) })).toContain(
    "1 bar row is coloured, FFFF00 (row 2), and the sheet does not say why",
  );
});
