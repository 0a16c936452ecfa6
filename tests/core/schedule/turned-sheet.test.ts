import { describe, expect, it } from "vitest";
import { createLocalEngine } from "../../../addin/pane/engine/local-engine";
import { checkBooks } from "../../../core/jobs";
import { sheetFromRows } from "../../../core/schedule/sheet";
import { uprightSheet } from "../../../core/schedule/turned-sheet";
import { resolveStandard } from "../../../core/standards";
import { isRefusal } from "../../../core/units/refusal";

const ROWS = [
  ["REINFORCEMENT SCHEDULE"],
  [],
  ["Member", "B1", "B1", "B2", "B2", "B2"],
  ["Pos.", 1, 2, 3, 4, 5],
  ["Dia (mm)", 16, 12, 16, 12, 12],
  ["Pieces per member", 4, 10, 4, 12, 6],
  ["Members", 2, 2, 3, 3, 3],
  ["Pieces total", 8, 20, 12, 36, 16],
  ["Length (m)", 4.5, 1.6, 6, 1.5, 2],
];
const standard = resolveStandard("BS8666:2005");

describe("bars that stand in columns", () => {
  it("should be read one column a bar, and told at their own cells", () => {
    const sheet = sheetFromRows("Beams", ROWS);
    const book = {
      name: "turned",
      sheets: [{ name: "Beams", visibility: "visible" as const }],
      read: () => sheet,
      setting: () => null,
    };
    const [checked] = checkBooks([book], { sheet: null, standard: null });
    if (checked === undefined || isRefusal(checked)) throw new Error("not read");
    expect(checked.report.rows.bars).toBe(5);
    // 16: 8 x 4.5 + 12 x 6 = 108 m at 1.579; 12: 20 x 1.6 + 36 x 1.5 + 16 x 2 = 118 m at 0.888 (BS 4449 table 7)
    expect(checked.tonnage.tonnage.total).toBeCloseTo((108 * 1.579 + 118 * 0.888) / 1000, 6);
    // 3 x 6 is 18 and not 16, which stands in F8
    const wrong = checked.report.findings.find(({ code }) => code === "SUM101");
    expect(wrong).toMatchObject({ cell: "F8", row: 8 });
  });

  it("should be said in the pane, which marks rows and no columns", async () => {
    const view = await createLocalEngine().check({
      sheet: sheetFromRows("Beams", ROWS),
      shop: null,
      otherSheets: { before: [], behind: [] },
      standard: "BS8666:2005",
      settings: null,
    });
    expect(view.noHeader).toMatch(/bars of this sheet stand in columns.*turned, with one bar a row/);
  });

  it("should leave a sheet as it is whose bars stand in rows", () => {
    if (isRefusal(standard)) throw new Error("no standard");
    const upright = sheetFromRows("Beams", [
      ["Mark", "Dia", "No.", "Length"],
      ["1", 16, 4, 2000],
      ["2", 12, 6, 1500],
    ]);
    expect(uprightSheet(upright, standard)).toBe(upright);
  });
});
