import { expect, test } from "vitest";
import { createLocalEngine } from "../../../../addin/pane/engine/local-engine";
import { type Book, checkBooks } from "../../../../core/jobs";
import { type Cell, type Sheet, sheetFromRows } from "../../../../core/schedule";
import { isRefusal } from "../../../../core/units/refusal";

// kg/m of the UK three-decimal table: 8 is 0.395, 12 is 0.888, 16 is 1.579; of one beam 20 x 1.579 + 40 x 0.395 = 47.38 kg
const LIST: Cell[][] = [
  ["Mark", "Size", "Pcs", "Length (m)", "Shape"],
  ["Beam B1 (6 nos)"],
  ["1", 16, 4, 5, null],
  ["2", 8, 40, 1, null],
  ["Beam B2 (1 no)"],
  ["3", 12, 6, 3, null],
];
const SUMS = sheetFromRows("Sums", [["Beam B1", 6, 47.4, 284.3]]);
const STANDARD = "BS8666:2005";

const bookOf = (sheets: readonly Sheet[]): Book => ({
  name: "book",
  sheets: sheets.map(({ name }) => ({ name, visibility: "visible" })),
  read: (name) => sheets.find((sheet) => sheet.name === name) as Sheet,
  setting: () => null,
});

test("should count bars by the sums of another sheet, as the command line does, after an edit too", async () => {
  const list = sheetFromRows("List", LIST);
  const engine = createLocalEngine();
  const otherSheets = { before: [], behind: [SUMS] };
  await engine.check({ sheet: list, shop: null, otherSheets, standard: STANDARD, settings: null });
  const [checked] = checkBooks([bookOf([list, SUMS])], { sheet: null, standard: STANDARD });
  if (checked === undefined || isRefusal(checked)) throw new Error("the book is not read");
  // 6 x 47.38 and 18 x 0.888 are 300.264 kg
  expect(checked.tonnage.tonnage.total).toBeCloseTo(0.300264, 9);
  expect((await engine.totals("List")).total).toBe("0.300");
  const edited = sheetFromRows("List", [...LIST.slice(0, 5), ["3", 12, 60, 3, null]]);
  await engine.recheck({ sheet: edited, firstRow: 5, lastRow: 5 });
  // 180 x 0.888 in place of 18 x 0.888: 444.12 kg
  expect((await engine.totals("List")).total).toBe("0.444");
});

test("should go on with the list of the sheet before, as the command line does", async () => {
  const first = sheetFromRows("p1", [
    ["Mark", "Size", "No. in each", "Length (mm)", "Shape"],
    ["Wall - 4 off"],
    ["W1", "H16", 22, 3250, "00"],
    ["W2", "H16", 16, 2900, "00"],
  ]);
  const second = sheetFromRows("p2", [
    ["W3", "H12", 14, 2850, "00"],
    ["Cap - 6 off"],
    ["C1", "H16", 8, 2600, "00"],
  ]);
  const engine = createLocalEngine();
  const otherSheets = { before: [first], behind: [] };
  await engine.check({ sheet: second, shop: null, otherSheets, standard: STANDARD, settings: null });
  // 4 x 14 x 2.85 x 0.888 + 6 x 8 x 2.6 x 1.579 = 141.7248 + 197.0592 kg
  expect((await engine.totals("p2")).total).toBe("0.339");
});
