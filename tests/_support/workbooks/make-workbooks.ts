/**
 * Makes the two workbooks beside this file: one shaped as Excel writes it, by XlsxWriter's engine with
 * the parts it cannot write put in by hand, and the same saved again by LibreOffice. The job is invented.
 *
 * Run: npx tsx tests/_support/workbooks/make-workbooks.ts (needs soffice on the path)
 */
import { execFileSync } from "node:child_process";
import { copyFileSync, mkdtempSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import JSZip from "jszip";
import {
  Chart,
  ChartRange,
  ChartSeries,
  Color,
  Format,
  FormatBorder,
  FormatPattern,
  Formula,
  Note,
  Table,
  TableColumn,
  Workbook,
} from "wasm-xlsxwriter/nodejs";

const folder = fileURLToPath(new URL(".", import.meta.url));

const HEADER = ["Member", "Bar mark", "Type and size", "No. of mbrs", "No. of bars in each", "Total no."];
const HEADER_REST = ["Length (mm)", "Shape code", "A", "B", "C", "D", "E/R", "Remarks"];

/** Length and mark kept as a person types them; the third row's total and the last row's size are wrong. */
const BARS: readonly (readonly (string | number | null)[])[] = [
  ["Quay beam QB1", "01", "H16", 2, 6, 12, 1875, "21", 1000, 400, 500, null, null, null],
  [null, "02", "H20", 2, 4, 8, 3000, "00", 3000, null, null, null, null, null],
  [null, "03", "H12", 2, 10, 21, 1350, "11", 800, 575, null, null, null, "check with fixer"],
  [null, "04", "H10", 2, 24, 48, 1700, "51", 500, 250, null, null, null, "links at 200"],
  ["Slipway wall W3", "05", "H25", 1, 14, 14, 2375, "11", 2000, 40, null, null, null, null],
  [null, "06", "H32", 1, 8, 8, 14500, "00", 14500, null, null, null, null, null],
  [null, "07", "H16", 1, 30, 30, 2125, "13", 900, 400, 900, null, null, null],
  ["Pump pit P2", "08", "H17", 4, 6, 24, 1200, "00", 1200, null, null, null, null, null],
];

const workbook = new Workbook();
writeSchedule();
writeTotals();
writeLocked();
workbook.defineName("Waste", "=0.03");
workbook.defineName("Barwright.Standard", '="BS8666:2005"');
workbook.defineName("Bars", "=Schedule!$A$7:$N$14");

const excelShaped = join(folder, "quay-excel-shaped.xlsx");
writeFileSync(excelShaped, await withHandMadeParts(workbook.saveToBufferSync()));
const out = mkdtempSync(join(tmpdir(), "barwright-"));
const profile = `-env:UserInstallation=file://${join(out, "profile")}`;
execFileSync("soffice", [
  "--headless",
  "--norestore",
  profile,
  "--convert-to",
  "xlsx:Calc MS Excel 2007 XML",
  "--outdir",
  out,
  excelShaped,
]);
copyFileSync(join(out, "quay-excel-shaped.xlsx"), join(folder, "quay-libreoffice.xlsx"));

function writeSchedule(): void {
  const sheet = workbook.addWorksheet();
  sheet.setName("Schedule");
  const heading = new Format().setBold().setBackgroundColor(Color.rgb(0xd9e2ec)).setBorder(FormatBorder.Thin);
  const grid = new Format().setBorder(FormatBorder.Thin);
  const yellow = new Format().setBorder(FormatBorder.Thin).setBackgroundColor(Color.rgb(0xfff2a8));
  const hatched = new Format().setBorder(FormatBorder.Thin).setPattern(FormatPattern.LightUp);
  const title = new Format().setBold().setFontSize(14);
  sheet.mergeRange(0, 0, 0, 13, "Tern Haven slipway, bar schedule TH-204", title);
  sheet.writeString(1, 0, "Invented job: no such yard");
  sheet.writeString(2, 0, "Revision B");
  [...HEADER, ...HEADER_REST].forEach((word, column) => {
    sheet.writeStringWithFormat(5, column, word, heading);
  });
  BARS.forEach((bar, index) => {
    bar.forEach((value, column) => {
      const format = column === 13 ? hatched : index === 4 ? yellow : grid;
      const row = 6 + index;
      if (column === 5 && index !== 2) {
        const formula = new Formula(`=D${row + 1}*E${row + 1}`).setResult(String(value));
        sheet.writeFormulaWithFormat(row, column, formula, format);
      } else if (typeof value === "number") sheet.writeNumberWithFormat(row, column, value, format);
      else if (typeof value === "string") sheet.writeStringWithFormat(row, column, value, format);
      else sheet.writeBlank(row, column, format);
    });
  });
  sheet.insertNote(8, 5, new Note("Counted twice on site").setAuthor("Checker"));
  sheet.setColumnWidth(0, 18);
  sheet.setColumnWidth(13, 24);
  sheet.setFreezePanes(6, 0);
}

function writeTotals(): void {
  const sheet = workbook.addWorksheet();
  sheet.setName("Totals");
  const sizes: [string, number][] = [
    ["H10", 0.05],
    ["H16", 0.14],
    ["H20", 0.06],
    ["H25", 0.13],
  ];
  sheet.addTable(
    0,
    0,
    sizes.length,
    1,
    new Table()
      .setName("BySize")
      .setColumns([new TableColumn().setHeader("Size"), new TableColumn().setHeader("t")]),
  );
  sizes.forEach(([size, tonnes], index) => {
    sheet.writeString(index + 1, 0, size);
    sheet.writeNumber(index + 1, 1, tonnes);
  });
  const chart = Chart.newColumn();
  chart.pushSeries(
    new ChartSeries()
      .setCategories(ChartRange.newFromRange("Totals", 1, 0, sizes.length, 0))
      .setValues(ChartRange.newFromRange("Totals", 1, 1, sizes.length, 1)),
  );
  sheet.insertChart(7, 0, chart);
}

function writeLocked(): void {
  const sheet = workbook.addWorksheet();
  sheet.setName("Locked");
  ["Bar mark", "Size", "Total", "Length", "Shape", "A", "B"].forEach((word, column) => {
    sheet.writeString(0, column, word);
  });
  ["11", "H16", 4, 1375, "11", 900, 500].forEach((value, column) => {
    if (typeof value === "number") sheet.writeNumber(1, column, value);
    else sheet.writeString(1, column, value);
  });
  sheet.protect();
}

/** Conditional formats, validation and a dynamic array with its metadata, as Excel writes them. */
async function withHandMadeParts(bytes: Uint8Array): Promise<Uint8Array> {
  const zip = await JSZip.loadAsync(bytes);
  const edit = async (part: string, change: (xml: string) => string): Promise<void> => {
    zip.file(part, change(await zip.file(part)!.async("string")));
  };
  await edit("xl/worksheets/sheet1.xml", (xml) =>
    xml
      .replace(
        /(<mergeCells[\s\S]*?<\/mergeCells>)/,
        '$1<conditionalFormatting sqref="G7:G14"><cfRule type="cellIs" dxfId="0" priority="1" operator="greaterThan">' +
          "<formula>12000</formula></cfRule></conditionalFormatting>" +
          '<dataValidations count="1"><dataValidation type="list" allowBlank="1" showErrorMessage="1" sqref="H7:H14">' +
          '<formula1>"00,11,13,21,51"</formula1></dataValidation></dataValidations>',
      )
      .replace(
        "</sheetData>",
        '<row r="17"><c r="P17" cm="1"><f t="array" ref="P17">_xldudf_BAR_MASS(C7)</f><v>1.579</v></c></row></sheetData>',
      ),
  );
  await edit("xl/styles.xml", (xml) =>
    xml.replace(
      /<dxfs count="0"\/>/,
      '<dxfs count="1"><dxf><font><color rgb="FF9C0006"/></font></dxf></dxfs>',
    ),
  );
  zip.file(
    "xl/metadata.xml",
    '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n' +
      '<metadata xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main" ' +
      'xmlns:xda="http://schemas.microsoft.com/office/spreadsheetml/2017/dynamicarray"><metadataTypes count="1">' +
      '<metadataType name="XLDAPR" minSupportedVersion="120000" copy="1" pasteAll="1" pasteValues="1" merge="1" ' +
      'splitFirst="1" rowColShift="1" clearFormats="1" clearComments="1" assign="1" coerce="1" cellMeta="1"/>' +
      '</metadataTypes><futureMetadata name="XLDAPR" count="1"><bk><extLst><ext uri="{bdbb8cdc-fa1e-496e-a857-3c3f30c029c3}">' +
      '<xda:dynamicArrayProperties fDynamic="1" fCollapsed="0"/></ext></extLst></bk></futureMetadata>' +
      '<cellMetadata count="1"><bk><rc t="1" v="0"/></bk></cellMetadata></metadata>',
  );
  await edit("xl/_rels/workbook.xml.rels", (xml) =>
    xml.replace(
      "</Relationships>",
      '<Relationship Id="rId99" Type="http://schemas.openxmlformats.org/officeDocument/2006/relationships/sheetMetadata" ' +
        'Target="metadata.xml"/></Relationships>',
    ),
  );
  await edit("[Content_Types].xml", (xml) =>
    xml.replace(
      "</Types>",
      '<Override PartName="/xl/metadata.xml" ContentType="application/vnd.openxmlformats-officedocument.spreadsheetml.sheetMetadata+xml"/></Types>',
    ),
  );
  return zip.generateAsync({ type: "uint8array", compression: "DEFLATE" });
}
