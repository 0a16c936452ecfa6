import { describe, expect, it } from "vitest";
import { openWorkbook } from "../../../../addin/xlsx/read/open-workbook";
import { buildPackage } from "../../../_support/build-package";

const MAIN = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";

async function readRows(rows: string, parts?: ReadonlyMap<string, string>) {
  const workbook = openWorkbook(await buildPackage([{ name: "S", xml: rows }], parts));
  return workbook.read("S", { formulas: true });
}

describe("readSheet", () => {
  it("reads every kind of stored value", async () => {
    const sheet = await readRows(
      '<row r="2"><c r="B2"><v>12.5</v></c><c r="C2" t="b"><v>1</v></c><c r="D2" t="str"><f>A1&amp;"x"</f><v>a&lt;b</v></c>' +
        '<c r="E2" t="e"><v>#REF!</v></c><c r="F2" t="inlineStr"><is><r><t>H</t></r><r><t xml:space="preserve">16 </t></r></is></c>' +
        '<c r="G2" t="d"><v>2024-03-01</v></c><c r="H2" s="0"/></row>',
    );
    expect([sheet.top, sheet.left, sheet.rowCount, sheet.columnCount]).toEqual([1, 1, 1, 6]);
    const row = Array.from({ length: 6 }, (_, column) => sheet.cell(0, column));
    // 1 March 2024 is day 45352 of the 1900 calendar (=DATE(2024,3,1) in any spreadsheet)
    expect(row).toEqual([12.5, true, "a<b", { error: "#REF!" }, "H16 ", 45352]);
    expect(sheet.isDate?.(0, 5)).toBe(true);
    expect(sheet.formulaAt(1, 3)?.text).toBe('A1&"x"');
  });

  it("gives a row's cells as far as it is filled, whatever stands in the sheet's last cell", async () => {
    const sheet = await readRows(
      '<row r="2"><c r="B2"><v>1</v></c><c r="D2"><v>2</v></c><c r="E2" s="0"/></row>' +
        '<row r="1048576"><c r="XFD1048576"><v>3</v></c></row>',
    );
    expect([sheet.rowCount, sheet.columnCount]).toEqual([1_048_575, 16_383]);
    expect(sheet.rowCells?.(0)).toEqual([1, null, 2]);
    expect(sheet.rowCells?.(500_000)).toEqual([]);
    expect(sheet.rowCells?.(1_048_574).length).toBe(16_383);
    expect(sheet.rowCells?.(1_048_574).at(-1)).toBe(3);
  });

  it("reads shared texts: rich, phonetic, escaped and struck through", async () => {
    const texts = new Map([
      [
        "xl/sharedStrings.xml",
        `<sst xmlns="${MAIN}"><si><t>plain</t></si><si><r><t>two </t></r><r><t>runs</t></r></si>` +
          "<si><t>line_x000D_end</t><rPh><t>not this</t></rPh></si>" +
          "<si><r><rPr><strike/></rPr><t>gone</t></r></si><si/><si><t><![CDATA[a<b]]></t></si></sst>",
      ],
    ]);
    const cells = [0, 1, 2, 3, 4, 5].map((index) => `<c t="s"><v>${index}</v></c>`).join("");
    const sheet = await readRows(`<row>${cells}</row>`, texts);
    expect([0, 1, 2, 3, 4, 5].map((column) => sheet.cell(0, column))).toEqual([
      "plain",
      "two runs",
      "line\rend",
      "gone",
      null,
      "a<b",
    ]);
    expect(sheet.isStruckThrough?.(0, 3)).toBe(true);
    expect(sheet.isStruckThrough?.(0, 1)).toBe(false);
  });

  it("takes a formula without a stored result for an error that says so", async () => {
    const sheet = await readRows('<row r="1"><c r="A1"><f>2*3</f></c></row>');
    expect(sheet.cell(0, 0)).toMatchObject({
      error: "#N/A",
      message: expect.stringContaining("no stored result"),
    });
  });

  it("reads prefixed elements, cells without addresses and rows out of a lying dimension", async () => {
    const xml =
      `<x:worksheet xmlns:x="${MAIN}"><x:dimension ref="A1"/><x:sheetData><x:row><x:c><x:v>1</x:v></x:c><x:c><x:v>2</x:v></x:c></x:row>` +
      '<x:row r="40"><x:c r="XFD40"><x:v>3</x:v></x:c></x:row></x:sheetData></x:worksheet>';
    const sheet = openWorkbook(await buildPackage([{ name: "S", xml }])).read("S");
    expect([sheet.rowCount, sheet.columnCount]).toEqual([40, 16_384]);
    expect([sheet.cell(0, 0), sheet.cell(0, 1), sheet.cell(39, 16_383)]).toEqual([1, 2, 3]);
  });

  it("knows what number formats show, dates, hidden rows and columns, and merges", async () => {
    const styles =
      `<styleSheet xmlns="${MAIN}"><numFmts count="2"><numFmt numFmtId="164" formatCode="&quot;(&quot;0&quot;)&quot;"/>` +
      '<numFmt numFmtId="165" formatCode="dd/mm/yyyy"/></numFmts><fonts count="2"><font/><font><strike/></font></fonts>' +
      '<cellXfs count="4"><xf numFmtId="0"/><xf numFmtId="164"/><xf numFmtId="165"/><xf numFmtId="0" fontId="1"/></cellXfs></styleSheet>';
    const xml =
      `<worksheet xmlns="${MAIN}"><cols><col min="2" max="2" width="9" hidden="1"/></cols><sheetData>` +
      '<row r="1"><c r="A1" s="1"><v>450</v></c><c r="B1" s="2"><v>45352</v></c><c r="C1" s="3"><v>7</v></c></row>' +
      '<row r="2" hidden="1"><c r="A2"><v>1</v></c></row></sheetData><mergeCells><mergeCell ref="A1:C1"/></mergeCells>' +
      '<sheetProtection sheet="1"/></worksheet>';
    const bytes = await buildPackage([{ name: "S", xml }], new Map([["xl/styles.xml", styles]]));
    const sheet = openWorkbook(bytes).read("S");
    expect(sheet.shown?.(0, 0)).toBe("(450)");
    expect([sheet.isDate?.(0, 0), sheet.isDate?.(0, 1)]).toEqual([false, true]);
    expect(sheet.isStruckThrough?.(0, 2)).toBe(true);
    expect([sheet.isHiddenRow?.(0), sheet.isHiddenRow?.(1)]).toEqual([false, true]);
    expect([sheet.isHiddenColumn?.(0), sheet.isHiddenColumn?.(1)]).toEqual([false, true]);
    expect(sheet.merges).toEqual([{ top: 0, left: 0, bottom: 0, right: 2 }]);
    expect(sheet.isProtected).toBe(true);
  });

  it("reads a sheet called __proto__ like any other", async () => {
    const bytes = await buildPackage([
      { name: "__proto__", xml: '<row r="1"><c r="A1"><v>5</v></c></row>' },
      { name: "constructor", xml: '<row r="1"><c r="A1"><v>6</v></c></row>' },
    ]);
    const workbook = openWorkbook(bytes);
    expect(workbook.sheets.map(({ name }) => name)).toEqual(["__proto__", "constructor"]);
    expect([workbook.read("__proto__").cell(0, 0), workbook.read("constructor").cell(0, 0)]).toEqual([5, 6]);
    expect(({} as Record<string, unknown>)["cell"]).toBeUndefined();
  });

  it("reads comments and CDATA amid the rows", async () => {
    const sheet = await readRows(
      '<row r="1"><!-- </row> --><c r="A1" t="str"><v><![CDATA[x</c>y]]></v></c><c r="B1"><v>2</v></c></row>',
    );
    expect([sheet.cell(0, 0), sheet.cell(0, 1)]).toEqual(["x</c>y", 2]);
  });

  it("gives no row and no column for an empty sheet", async () => {
    const sheet = await readRows("");
    expect([sheet.rowCount, sheet.columnCount]).toEqual([0, 0]);
  });
});
