import { mkdtempSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import JSZip from "jszip";
import { describe, expect, it } from "vitest";
import { type NewCell, writeNewWorkbook } from "../../../addin/xlsx/write/new-workbook";
import { barwright } from "../../_support/command-line";
import { FOREIGN_HEADER, FOREIGN_ROWS } from "../../_support/foreign-schedule";

const folder = mkdtempSync(join(tmpdir(), "barwright-doubted-"));

/**
 * A workbook whose calcPr says what it says. The attributes and what they mean: ECMA-376-1:2016, 18.2.2,
 * from memory; writers that calculate nothing store 0 and ask for a calculation (common practice).
 */
async function book(
  name: string,
  calculation: string,
  rows: readonly (readonly (NewCell | string | number | null)[])[],
) {
  const zip = await JSZip.loadAsync(writeNewWorkbook({ sheets: [{ name: "Bars", rows }] }));
  const xml = await zip.file("xl/workbook.xml")!.async("string");
  zip.file("xl/workbook.xml", xml.replace("</workbook>", `<calcPr ${calculation}/></workbook>`));
  const path = join(folder, `${name}.xlsx`);
  writeFileSync(path, await zip.generateAsync({ type: "uint8array" }));
  return path;
}

const LENGTH = FOREIGN_HEADER.findIndex((word) => /length/i.test(String(word)));
const withFormula = [
  FOREIGN_HEADER,
  ...FOREIGN_ROWS.map((row) =>
    row.map((value, column) => (column === LENGTH ? { value: 0, formula: "1000+500" } : value)),
  ),
];
const beside = [FOREIGN_HEADER, ...FOREIGN_ROWS.map((row) => [...row, { value: 7, formula: "3+4" }])];

describe("results that a file does not vouch for", () => {
  it.each([
    ["asks", 'calcId="1" fullCalcOnLoad="1"'],
    ["stopped", 'calcCompleted="0"'],
    ["by-hand", 'calcMode="manual" calcOnSave="0"'],
  ])("are told by tonnage and check: %s", async (name, calculation) => {
    const path = await book(name, calculation, withFormula);
    const words = new RegExp(
      `sheet "Bars": ${FOREIGN_ROWS.length} cells in ${FOREIGN_ROWS.length} bar rows, \\w+2 first, with formulas whose stored results may be out of date`,
    );
    expect((await barwright(["tonnage", path])).err).toMatch(words);
    const { notes } = JSON.parse((await barwright(["tonnage", path, "--json"])).out);
    expect(notes).toContainEqual(expect.stringMatching(words));
    const { books } = JSON.parse((await barwright(["tonnage", path, "--by", "pour", "--json"])).out);
    expect(books[0].notes).toContainEqual(expect.stringMatching(words));
    const checked = await barwright(["check", path, "--json"]);
    expect(checked.err).toMatch(words);
    const found = (JSON.parse(checked.out).findings as { code: string; outcome: string }[]).filter(
      ({ code }) => code === "READ106",
    );
    expect(found.map(({ outcome }) => outcome)).toEqual(["unsure"]);
  });

  it.each([
    ["vouched", 'calcId="1"', withFormula],
    ["manual-but-saved", 'calcMode="manual"', withFormula],
    ["in-no-read-column", 'fullCalcOnLoad="1"', beside],
  ])("are no matter where they are not read: %s", async (name, calculation, rows) => {
    const path = await book(name, calculation, rows);
    expect((await barwright(["tonnage", path])).err).not.toContain("out of date");
    expect((await barwright(["check", path, "--json"])).out).not.toContain("READ106");
  });

  it("are told by recalc where a formula of ours leans on them", async () => {
    const cells = [
      [
        { value: 16, formula: "SUM(8,8)" },
        { value: 0, formula: "BAR.MASS(A1)" },
      ],
    ];
    const doubted = await book("recalc", 'fullCalcOnLoad="1"', cells);
    const run = await barwright(["recalc", doubted, "--out", join(folder, "copy.xlsx")]);
    expect(run.err).toContain("BAR formulas lean on Bars!A1, whose stored results may be out of date");
    const held = await book("recalc-held", 'calcId="1"', cells);
    const other = await barwright(["recalc", held, "--out", join(folder, "copy2.xlsx")]);
    expect(other.err).not.toContain("out of date");
  });
});
