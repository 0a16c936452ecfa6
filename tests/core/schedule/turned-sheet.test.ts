import { describe, expect, it } from "vitest";
import { createLocalEngine } from "../../../addin/pane/engine/local-engine";
import { checkBooks } from "../../../core/jobs";
import { sheetFromRows } from "../../../core/schedule/sheet";
import { uprightSheet } from "../../../core/schedule/turned-sheet";
import { resolveStandard } from "../../../core/standards";
import { isRefusal } from "../../../core/units/refusal";
import { booksOf } from "../../corpus/unseen/unseen-books";

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

  describe("in the pane", () => {
    const question = {
      shop: null,
      otherSheets: { before: [], behind: [] },
      standard: "BS8666:2005",
      settings: null,
    };

    it("should be found, coloured and shown at their own cells", async () => {
      const engine = createLocalEngine();
      const view = await engine.check({ ...question, sheet: sheetFromRows("Beams", ROWS) });
      expect(view.rows.bars).toBe(5);
      expect(view.noHeader).toBeNull();
      expect(view.findings.find(({ code }) => code === "SUM101")).toMatchObject({ cell: "F8", row: 6 });
      // its column from Pos. in row 4 on, or a heading above it, to Length in row 9: no other column's cells
      const ofBar = view.flags.filter(({ firstColumn }) => firstColumn === 5);
      expect(ofBar.map(({ row, lastColumn }) => [row, lastColumn])).toContainEqual([7, 5]);
      expect(ofBar.filter(({ note }) => note !== "")).toHaveLength(1);
      expect(view.flags.every(({ firstColumn, lastColumn }) => firstColumn === lastColumn)).toBe(true);
      expect(await engine.bar("Beams", 5)).toMatchObject({ place: "column F" });
      expect(await engine.bar("Beams", 0)).toBeNull();
      expect((await engine.marks("Beams")).map(({ cell }) => cell)).toEqual(["B1", "C1", "D1", "E1", "F1"]);
      // 108 m at 1.579 and 118 m at 0.888, as above
      expect((await engine.totals("Beams")).total).toBe("0.275");
    });

    it("should be judged anew after an edit of any row, and quoted from their own cells", async () => {
      const engine = createLocalEngine();
      const view = await engine.check({ ...question, sheet: sheetFromRows("Beams", ROWS) });
      const wrong = view.findings.find(({ code }) => code === "SUM101");
      expect(wrong?.fix?.edits.map(({ cell }) => cell)).toEqual(["F8"]);
      expect(wrong?.before).toEqual([16]);
      // six pieces in each of three members are 18
      const mended = ROWS.map((row, at) => (at === 7 ? [...row.slice(0, 5), 18] : row));
      const again = await engine.recheck({
        sheet: sheetFromRows("Beams", mended),
        firstRow: 7,
        lastRow: 7,
      });
      expect(again.findings.filter(({ code }) => code === "SUM101")).toEqual([]);
    });
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

  it("should leave it so too where words of two signs head them, whatever stands above", () => {
    if (isRefusal(standard)) throw new Error("no standard");
    const list = booksOf("t").find(({ name }) => name === "ts06")?.sheets[0];
    const rows = [["Revision list"], ["A", "first issue"], [], ...(list?.rows ?? [])];
    const upright = sheetFromRows("List", rows);
    expect(rows).toHaveLength(29);
    expect(uprightSheet(upright, standard)).toBe(upright);
  });
});
