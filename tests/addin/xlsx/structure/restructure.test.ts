import JSZip from "jszip";
import { describe, expect, test } from "vitest";
import { openWorkbook } from "../../../../addin/xlsx/read/open-workbook";
import { LineMap } from "../../../../addin/xlsx/structure/line-map";
import { restructured, type SheetPlan } from "../../../../addin/xlsx/structure/restructure";
import { buildPackage } from "../../../_support/build-package";

const MAIN = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
const OFFICE = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";

const BARS =
  `<worksheet xmlns="${MAIN}" xmlns:r="${OFFICE}"><dimension ref="A1:D9"/><sheetViews><sheetView workbookViewId="0">` +
  '<selection activeCell="B7" sqref="B7"/></sheetView></sheetViews><cols><col min="2" max="3" width="11"/></cols>' +
  '<sheetData><row r="1" spans="1:4"><c r="A1"><v>1</v></c><c r="B1"><v>2</v></c></row>' +
  '<row r="2"><c r="C2"><f t="shared" ref="C2:C4" si="0">A2*$B$9</f><v>0</v></c></row>' +
  '<row r="3"><c r="C3"><f t="shared" si="0"/><v>0</v></c></row>' +
  '<row r="4" ht="30" customHeight="1"><c r="C4"><f t="shared" si="0"/><v>0</v></c></row>' +
  '<row r="5"><c r="D5"><f>SUM(C2:C4)+SUM(A:A)&amp;"A1"</f><v>0</v></c></row></sheetData>' +
  '<autoFilter ref="A1:D4"/><mergeCells count="2"><mergeCell ref="A7:B7"/><mergeCell ref="A3:A4"/></mergeCells>' +
  '<conditionalFormatting sqref="A2:A4 D9"><cfRule type="expression" priority="1"><formula>A2&gt;$B$9</formula></cfRule></conditionalFormatting>' +
  '<conditionalFormatting sqref="A3"><cfRule type="expression" priority="2"><formula>TRUE</formula></cfRule></conditionalFormatting>' +
  '<dataValidations count="1"><dataValidation type="list" sqref="B2:B4"><formula1>$D$8:$D$9</formula1></dataValidation></dataValidations>' +
  '<hyperlinks><hyperlink ref="A9" location="\'Sum s\'!A1"/></hyperlinks><rowBreaks count="1" manualBreakCount="1"><brk id="4" max="16383" man="1"/></rowBreaks>' +
  '<legacyDrawing r:id="rId2"/></worksheet>';

const NOTE =
  '<xml xmlns:v="v" xmlns:x="x"><v:shape id="s1"><x:ClientData ObjectType="Note"><x:Anchor>1, 15, 3, 10, 3, 31, 6, 9</x:Anchor>' +
  "<x:Row>3</x:Row><x:Column>0</x:Column></x:ClientData></v:shape></xml>";

async function book() {
  return buildPackage(
    [
      { name: "Bars", xml: BARS },
      { name: "Sum s", xml: '<row r="1"><c r="A1"><f>Bars!D5*2+Gone!A1</f><v>1</v></c></row>' },
      { name: "Gone", xml: '<row r="1"><c r="A1"><v>5</v></c></row>' },
    ],
    new Map([
      [
        "xl/worksheets/_rels/sheet1.xml.rels",
        `<Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships"><Relationship Id="rId1" Type="${OFFICE}/comments" Target="../comments1.xml"/><Relationship Id="rId2" Type="${OFFICE}/vmlDrawing" Target="../drawings/note.vml"/></Relationships>`,
      ],
      [
        "xl/comments1.xml",
        `<comments xmlns="${MAIN}"><authors><author/></authors><commentList><comment ref="A4" authorId="0"><text><t>n</t></text></comment></commentList></comments>`,
      ],
      ["xl/drawings/note.vml", NOTE],
      [
        "xl/charts/chart1.xml",
        "<c:chartSpace xmlns:c=\"c\"><c:f>Bars!$C$2:$C$4</c:f><c:f>'Sum s'!$A$1</c:f></c:chartSpace>",
      ],
    ]),
  );
}

const same = { rows: LineMap.unchanged, columns: LineMap.unchanged, visible: true };
const kept = (name: string): SheetPlan => ({ was: name, name, ...same });
const blank = (count: number) => [{ from: null, count }];

async function parts(plan: readonly SheetPlan[]) {
  const zip = await JSZip.loadAsync(restructured(openWorkbook(await book()), plan));
  return async (name: string) => (await zip.file(name)?.async("string")) ?? "";
}

describe("restructured", () => {
  test("should move every place of a sheet that stands below inserted rows", async () => {
    const part = await parts([
      { ...kept("Bars"), rows: LineMap.unchanged.insert(2, blank(2)) },
      kept("Sum s"),
      kept("Gone"),
    ]);
    const xml = await part("xl/worksheets/sheet1.xml");
    for (const said of [
      '<dimension ref="A1:D11"/>',
      '<selection activeCell="B9" sqref="B9"/>',
      '<c r="C2"><f>A2*$B$11</f>',
      '<c r="C5"><f>A5*$B$11</f>',
      '<row r="6" ht="30" customHeight="1"><c r="C6"><f>A6*$B$11</f>',
      '<c r="D7"><f>SUM(C2:C6)+SUM(A:A)&amp;&quot;A1&quot;</f>',
      '<autoFilter ref="A1:D6"/>',
      '<mergeCell ref="A9:B9"/><mergeCell ref="A5:A6"/>',
      '<conditionalFormatting sqref="A2:A6 D11">',
      "<formula>A2&gt;$B$11</formula>",
      'sqref="B2:B6"><formula1>$D$10:$D$11</formula1>',
      '<hyperlink ref="A11" location="\'Sum s\'!A1"/>',
      '<brk id="6"',
    ])
      expect(xml).toContain(said);
    expect(await part("xl/worksheets/sheet2.xml")).toContain("<f>Bars!D7*2+Gone!A1</f>");
    expect(await part("xl/comments1.xml")).toContain('ref="A6"');
    const note = await part("xl/drawings/note.vml");
    expect(note).toContain("<x:Row>5</x:Row><x:Column>0</x:Column>");
    expect(note).toContain("<x:Anchor>1, 15, 5, 10, 3, 31, 8, 9</x:Anchor>");
    expect(await part("xl/charts/chart1.xml")).toContain("<c:f>Bars!$C$2:$C$6</c:f>");
  });

  test("should take out what stood on removed rows, and shrink what spans them", async () => {
    const { map } = LineMap.unchanged.remove(2, 2);
    const part = await parts([{ ...kept("Bars"), rows: map }, kept("Sum s"), kept("Gone")]);
    const xml = await part("xl/worksheets/sheet1.xml");
    expect(xml).toContain('<c r="D3"><f>SUM(C2)+SUM(A:A)&amp;&quot;A1&quot;</f>');
    expect(xml).toContain('<mergeCells><mergeCell ref="A5:B5"/></mergeCells>');
    expect(xml).not.toContain('sqref="A3"');
    expect(await part("xl/comments1.xml")).not.toContain("<comment ");
    expect(await part("xl/drawings/note.vml")).not.toContain("<v:shape");
  });

  test("should follow a new name, and say what leant on a deleted sheet", async () => {
    const part = await parts([kept("Sum s"), { ...kept("Bars"), name: "Bars of May" }]);
    expect(await part("xl/worksheets/sheet2.xml")).toContain("<f>'Bars of May'!D5*2+#REF!</f>");
    expect(await part("xl/charts/chart1.xml")).toContain("'Bars of May'!$C$2:$C$4");
    const sheets = [...(await part("xl/workbook.xml")).matchAll(/<sheet name="([^"]*)"/g)].map(([, n]) => n);
    expect(sheets).toEqual(["Sum s", "Bars of May"]);
    expect(await part("xl/worksheets/sheet3.xml")).toBe("");
  });

  test("should move columns with their widths", async () => {
    const part = await parts([
      { ...kept("Bars"), columns: LineMap.unchanged.insert(1, blank(1)) },
      kept("Sum s"),
      kept("Gone"),
    ]);
    const xml = await part("xl/worksheets/sheet1.xml");
    expect(xml).toContain('<col min="3" max="4" width="11"/>');
    expect(xml).toContain('<c r="D3"><f>A3*$C$9</f>');
  });
});
