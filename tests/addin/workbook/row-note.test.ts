import { expect, test } from "vitest";
import { createLocalEngine } from "../../../addin/pane/engine/local-engine";
import { NO_OTHER_SHEETS } from "../../../addin/pane/engine/other-sheets";
import { sheetFromRows } from "../../../core/schedule";

test("should say in a cell of the workbench every finding of its row, with how sure each is", async () => {
  const rows = [
    ["Bar mark", "Size", "Total no.", "Length mm", "Shape code", "A mm", "B mm", "Former mm"],
    // former 50 below 64 of BS 8666:2005 Table 2; 903 is no multiple of 5
    ["01", "H16", 10, 1275, "11", 903, 400, 50],
  ];
  const engine = createLocalEngine();
  const sheet = sheetFromRows("Bars", rows);
  const standard = "BS8666:2005";
  const view = await engine.check({
    sheet,
    shop: null,
    otherSheets: NO_OTHER_SHEETS,
    standard,
    settings: null,
  });
  const note = view.flags[0]?.note ?? "";
  expect(note).toMatch(/^unsafe \(BEND101\): former 50 mm is below the least 64 mm for H16/);
  expect(note).toMatch(/\nperhaps off-standard \(DIM101\): .*\(perhaps: /);
});
