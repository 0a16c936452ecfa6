import { mkdtempSync, readFileSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { openWorkbook } from "../../../addin/xlsx/read/open-workbook";
import { writeNewWorkbook } from "../../../addin/xlsx/write/new-workbook";
import { barwright } from "../../_support/command-line";
import { partText } from "../../_support/compare-packages";

const folder = mkdtempSync(join(tmpdir(), "barwright-recalc-"));

describe("barwright recalc", () => {
  it("stores the values of BAR formulas, those that lean on others and those that spill", async () => {
    const rows = [
      ["shape", "size", "A", "B", "C", "cut", "mass", "cuts"],
      [
        "21",
        "H16",
        1000,
        400,
        500,
        { value: null, formula: "BAR.CUTLENGTH(A2,B2,C2:E2)" },
        { value: 0, formula: "F2/1000*BAR.MASS(B2)" },
        { value: 0, formula: "BAR.CUTLENGTH(A2:A3,B2:B3,C2:E3)" },
      ],
      ["00", "H20", 3000, null, null, null, null, null],
      [
        { value: 7, formula: "SUM(F2:F3)" },
        { value: 5, formula: "SUM(BAR.MASS(B2),1)" },
      ],
    ];
    const path = join(folder, "book.xlsx");
    const out = join(folder, "copy.xlsx");
    writeFileSync(path, writeNewWorkbook({ sheets: [{ name: "S", rows }] }));
    const run = await barwright(["recalc", path, "--out", out, "--json"]);
    expect(run.exit, run.err).toBe(0);
    expect(JSON.parse(run.out)).toEqual({
      standard: "BS8666:2005",
      formulas: 4,
      errors: 0,
      left: [{ sheet: "S", cell: "B4", reason: expect.stringContaining("SUM") }],
    });
    const bytes = readFileSync(out);
    const sheet = openWorkbook(bytes).read("S", { formulas: true });
    // 1000 + 400 + 500 - r - 2d = 1836, up to 1850; 1.85 m x 1.579 kg/m = 2.92115 kg
    expect([sheet.valueAt(1, 5), sheet.valueAt(1, 7), sheet.valueAt(2, 7)]).toEqual([1850, 1850, 3000]);
    expect(sheet.valueAt(1, 6)).toBeCloseTo(2.92115, 10);
    // SUM(F2:F3) leans on a length that changed: its old result is no result
    expect(sheet.valueAt(3, 0)).toMatchObject({ error: "#N/A", uncalculated: true });
    expect(sheet.valueAt(3, 1)).toBe(5);
    expect(run.err).toContain("S!A4");
    expect(sheet.formulaAt(1, 7)).toMatchObject({ kind: "array", range: "H2:H3" });
    const xml = await partText(bytes, "xl/worksheets/sheet1.xml");
    expect(xml).toContain('<f t="array" ref="F2">_xldudf_BAR_CUTLENGTH(A2,B2,C2:E2)</f><v>1850</v>');
    expect(await partText(bytes, "xl/workbook.xml")).toContain("fullCalcOnLoad");
  });

  it("leaves results alone in the place of formulas where values are asked for, and every other formula", async () => {
    const bars = (range: string) => ({
      value: 1,
      formula: `BAR.MASS(${range})`,
      fills: { rows: 3, columns: 1 },
    });
    const rows = [
      [
        "H16",
        2,
        { value: 0, formula: "B1*BAR.MASS(A1)" },
        { value: 0, formula: "SUM(C1:C3)" },
        bars("A1:A3"),
      ],
      ["H20", 2, { value: 0, formula: "B2*BAR.MASS(A2)" }, { value: 6, formula: "SUM(BAR.MASS(A2),1)" }],
      ["H25", 1, { value: 0, formula: "B3*BAR.MASS(A3)" }, { value: 0, formula: "C3*2" }],
      [null, null, { value: 0, formula: 'BAR.MASS("H17")' }],
    ];
    const path = join(folder, "formulas.xlsx");
    const out = join(folder, "values.xlsx");
    writeFileSync(path, writeNewWorkbook({ sheets: [{ name: "S", rows }] }));
    const first = await barwright(["recalc", path, "--out", join(folder, "filled.xlsx")]);
    expect(first.exit, first.err).toBe(0);
    // once from formulas without results, once from those whose results fill a range
    for (const book of [path, join(folder, "filled.xlsx")]) {
      const run = await barwright(["recalc", book, "--out", out, "--values"]);
      expect(run.exit, run.err).toBe(0);
      expect(run.err).toContain("plain values in the copy");
      expect(run.out).toContain("S!D2 is left as it was: it calls SUM");
      const bytes = readFileSync(out);
      const sheet = openWorkbook(bytes).read("S", { formulas: true });
      // 16, 20 and 25 mm have 1.579, 2.466 and 3.854 kg/m, BS 8666:2005 Table 1
      expect([0, 1, 2].map((row) => sheet.valueAt(row, 2))).toEqual([3.158, 4.932, 3.854]);
      expect([0, 1, 2].map((row) => sheet.valueAt(row, 4))).toEqual([1.579, 2.466, 3.854]);
      expect(sheet.valueAt(3, 2)).toMatchObject({ error: "#N/A" });
      expect(sheet.valueAt(2, 3)).toBe(7.708);
      const kept = [...sheet.rowNumbers].flatMap((row) =>
        [0, 1, 2, 3, 4].flatMap((column) => sheet.formulaAt(row, column)?.text ?? []),
      );
      expect(kept).toEqual(["SUM(C1:C3)", "SUM(_xldudf_BAR_MASS(A2),1)", "C3*2"]);
    }
    expect(
      Buffer.compare(readFileSync(path), Buffer.from(writeNewWorkbook({ sheets: [{ name: "S", rows }] }))),
    ).toBe(0);
  });

  it("computes what stands between BAR formulas, and believes no old result of it", async () => {
    const rows = [
      ["size", "H25"],
      // stored when B1 was H16
      [
        { value: "H16", formula: "$B$1" },
        { value: 1.579, formula: "BAR.MASS(A2)" },
        { value: 3.158, formula: "B2*2" },
        { value: 4, formula: "2+2" },
      ],
    ];
    const path = join(folder, "old.xlsx");
    const out = join(folder, "old-copy.xlsx");
    writeFileSync(path, writeNewWorkbook({ sheets: [{ name: "S", rows }] }));
    const run = await barwright(["recalc", path, "--out", out]);
    expect(run.exit, run.err).toBe(0);
    const bytes = readFileSync(out);
    const sheet = openWorkbook(bytes).read("S", { formulas: true });
    // a 25 mm bar has 3.854 kg/m, BS 4449:2005 Table 6
    expect([0, 1, 2, 3].map((column) => sheet.valueAt(1, column))).toEqual(["H25", 3.854, 7.708, 4]);
    expect(sheet.formulaAt(1, 0)?.text).toBe("$B$1");
    expect(await partText(bytes, "xl/workbook.xml")).not.toContain("fullCalcOnLoad");
  });

  it("reads ranges as far as formulas and their results reach, though no result is stored yet", async () => {
    const mass = (row: number) => ({ value: "", formula: `BAR.MASS(A${row})*${row}` });
    const blank = (count: number) => Array.from({ length: count }, () => null);
    const table = (masses: string) => ({
      value: "",
      formula: `BAR.TONNAGE(Rows!A1:A6,Rows!A1:A6,${masses})`,
    });
    const path = join(folder, "unstored.xlsx");
    const out = join(folder, "unstored copy.xlsx");
    const sheets = [
      {
        name: "Rows",
        rows: [
          ["H16", mass(1), table("B1:B6")],
          ...[2, 3, 4, 5].map((row) => ["H16", mass(row)]),
          [{ value: "", formula: "A5" }, mass(6)],
        ],
      },
      {
        name: "Spill",
        rows: [[table("Z1:Z6"), ...blank(24), { value: "", formula: "BAR.MASS(Rows!A1:A6)" }]],
      },
    ];
    writeFileSync(path, writeNewWorkbook({ sheets }));
    const run = await barwright(["recalc", path, "--out", out]);
    expect(run.exit, run.err).toBe(0);
    const book = openWorkbook(readFileSync(out));
    // 1.579 kg/m of a 16 mm bar, by the UK three-decimal table: times 1 + 2 + 3 + 4 + 5 + 6
    expect(book.read("Rows").valueAt(2, 4)).toBeCloseTo((1.579 * 21) / 1000, 9);
    expect(book.read("Spill").valueAt(2, 2)).toBeCloseTo((1.579 * 6) / 1000, 9);
  });

  it("says #SPILL! where a value stands in the way, and touches no value of the user's", async () => {
    const rows = [[{ value: 0, formula: 'BAR.MASS({"H16";"H20"})' }], ["mine"]];
    const path = join(folder, "spill.xlsx");
    const out = join(folder, "spill-copy.xlsx");
    writeFileSync(path, writeNewWorkbook({ sheets: [{ name: "S", rows }] }));
    await barwright(["recalc", path, "--out", out]);
    const sheet = openWorkbook(readFileSync(out)).read("S");
    expect([sheet.valueAt(0, 0), sheet.valueAt(1, 0)]).toEqual([{ error: "#SPILL!" }, "mine"]);
  });
});
