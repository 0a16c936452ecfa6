/**
 * Makes the workbooks in `writers`: one invented schedule as different programs write it. Three are
 * written by the programs themselves (openpyxl with and without lxml, LibreOffice 7), one by XlsxWriter's
 * engine; the others are put together by hand in the shapes that such programs are seen to write.
 *
 * Run: npx tsx tests/_support/workbooks/make-writers.ts (needs soffice, and python3 with openpyxl and lxml)
 */
import { execFileSync } from "node:child_process";
import { copyFileSync, mkdirSync, mkdtempSync, readFileSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import JSZip from "jszip";
import { Table, TableColumn, Workbook } from "wasm-xlsxwriter/nodejs";
import { FOREIGN_HEADER, FOREIGN_ROWS } from "../foreign-schedule";

const folder = fileURLToPath(new URL("./writers/", import.meta.url));
const work = mkdtempSync(join(tmpdir(), "barwright-writers-"));
mkdirSync(folder, { recursive: true });

const MAIN = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
const OFFICE = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
const PACKAGE = "http://schemas.openxmlformats.org/package/2006";
const KIND = "application/vnd.openxmlformats-officedocument.spreadsheetml";
const STYLES =
  '<fonts count="1"><font><sz val="10"/><name val="Arial"/></font></fonts>' +
  '<fills count="2"><fill><patternFill patternType="none"/></fill><fill><patternFill patternType="gray125"/></fill></fills>' +
  '<borders count="1"><border/></borders><cellXfs count="1"><xf numFmtId="0" fontId="0" fillId="0" borderId="0"/></cellXfs>';

/** What one program does otherwise than the plainest workbook. */
interface Shape {
  readonly prefix?: string;
  /** declared on the root of the workbook part; else on each sheet */
  readonly declaresOnRoot?: boolean;
  readonly workbookExtra?: string;
  /** null leaves the part out */
  readonly styles?: string | null;
  readonly strings?: (texts: readonly string[]) => string;
  readonly emptySheet?: string;
  readonly tail?: string;
  readonly rels?: string;
  readonly parts?: Readonly<Record<string, { text: string; type: string }>>;
  readonly typesByPart?: boolean;
  readonly mainType?: string;
  readonly names?: readonly [string, string];
  readonly rewrite?: (text: string) => string;
}

async function shaped(shape: Shape): Promise<Uint8Array> {
  const p = shape.prefix ?? "";
  const space = p === "" ? `xmlns="${MAIN}"` : `xmlns:${p.slice(0, -1)}="${MAIN}"`;
  const head = '<?xml version="1.0" encoding="utf-8"?>';
  const texts: string[] = [];
  const cell = (value: string | number | null, address: string): string => {
    if (value === null) return "";
    if (typeof value === "number") return `<${p}c r="${address}"><${p}v>${value}</${p}v></${p}c>`;
    if (shape.strings !== undefined)
      return `<${p}c r="${address}" t="s"><${p}v>${texts.push(value) - 1}</${p}v></${p}c>`;
    return `<${p}c r="${address}" t="inlineStr"><${p}is><${p}t>${value}</${p}t></${p}is></${p}c>`;
  };
  const rows = [FOREIGN_HEADER, ...FOREIGN_ROWS].map(
    (cells, row) =>
      `<${p}row r="${row + 1}">${cells.map((value, column) => cell(value, `${String.fromCharCode(65 + column)}${row + 1}`)).join("")}</${p}row>`,
  );
  const onRoot = shape.declaresOnRoot === false ? "" : ` xmlns:r="${OFFICE}"`;
  const onSheet = shape.declaresOnRoot === false ? ` xmlns:r="${OFFICE}"` : "";
  const [first, second] = shape.names ?? ["Bars", "Empty"];
  const sheet = (name: string, id: number): string =>
    `<${p}sheet name="${name}" sheetId="${id}" r:id="rId${id}"${onSheet}/>`;
  const relationship = (id: string, type: string, target: string): string =>
    `<Relationship Id="${id}" Type="${OFFICE}/${type}" Target="${target}"/>`;
  const override = (part: string, type: string): string =>
    `<Override PartName="/${part}" ContentType="${type}"/>`;
  const parts: Record<string, string> = {
    "xl/workbook.xml": `${head}<${p}workbook ${space}${onRoot}>${shape.workbookExtra ?? ""}<${p}sheets>${sheet(first, 1)}${sheet(second, 2)}</${p}sheets></${p}workbook>`,
    "xl/worksheets/sheet1.xml": `${head}<${p}worksheet ${space} xmlns:r="${OFFICE}"><${p}sheetData>${rows.join("")}</${p}sheetData>${shape.tail ?? ""}</${p}worksheet>`,
    "xl/worksheets/sheet2.xml": `${head}<${p}worksheet ${space}>${shape.emptySheet ?? `<${p}sheetData/>`}</${p}worksheet>`,
  };
  const related = [
    relationship("rId1", "worksheet", "worksheets/sheet1.xml"),
    relationship("rId2", "worksheet", "worksheets/sheet2.xml"),
  ];
  const types = [
    override("xl/workbook.xml", shape.mainType ?? `${KIND}.sheet.main+xml`),
    override("xl/worksheets/sheet1.xml", `${KIND}.worksheet+xml`),
    override("xl/worksheets/sheet2.xml", `${KIND}.worksheet+xml`),
  ];
  const styles =
    shape.styles === undefined ? `<styleSheet xmlns="${MAIN}">${STYLES}</styleSheet>` : shape.styles;
  if (styles !== null) {
    parts["xl/styles.xml"] = head + styles;
    related.push(relationship("rId3", "styles", "styles.xml"));
    types.push(override("xl/styles.xml", `${KIND}.styles+xml`));
  }
  if (shape.strings !== undefined) {
    parts["xl/sharedStrings.xml"] = head + shape.strings(texts);
    related.push(relationship("rId4", "sharedStrings", "sharedStrings.xml"));
    types.push(override("xl/sharedStrings.xml", `${KIND}.sharedStrings+xml`));
  }
  if (shape.rels !== undefined)
    parts["xl/worksheets/_rels/sheet1.xml.rels"] =
      `<Relationships xmlns="${PACKAGE}/relationships">${shape.rels}</Relationships>`;
  for (const [name, { text, type }] of Object.entries(shape.parts ?? {})) {
    parts[name] = text;
    types.push(override(name, type));
  }
  parts["xl/_rels/workbook.xml.rels"] =
    `<Relationships xmlns="${PACKAGE}/relationships">${related.join("")}</Relationships>`;
  parts["_rels/.rels"] =
    `<Relationships xmlns="${PACKAGE}/relationships">${relationship("rId1", "officeDocument", "xl/workbook.xml")}</Relationships>`;
  const rels = "application/vnd.openxmlformats-package.relationships+xml";
  if (shape.typesByPart === true)
    types.push(
      ...Object.keys(parts)
        .filter((name) => name.endsWith(".rels"))
        .map((name) => override(name, rels)),
    );
  else
    types.unshift(
      `<Default Extension="rels" ContentType="${rels}"/>`,
      '<Default Extension="xml" ContentType="application/xml"/>',
    );
  parts["[Content_Types].xml"] = `${head}<Types xmlns="${PACKAGE}/content-types">${types.join("")}</Types>`;
  return zipped(parts, shape.rewrite);
}

async function zipped(parts: Record<string, string>, rewrite = (text: string) => text): Promise<Uint8Array> {
  const zip = new JSZip();
  for (const [name, text] of Object.entries(parts)) zip.file(name, rewrite(text), { date: new Date(0) });
  return zip.generateAsync({ type: "uint8array", compression: "DEFLATE" });
}

const sharedStrings =
  (si: (text: string) => string) =>
  (texts: readonly string[]): string =>
    `<sst xmlns="${MAIN}" count="${texts.length}" uniqueCount="${texts.length}">${texts.map(si).join("")}</sst>`;

const STRICT: readonly (readonly [string, string])[] = [
  [MAIN, "http://purl.oclc.org/ooxml/spreadsheetml/main"],
  [OFFICE, "http://purl.oclc.org/ooxml/officeDocument/relationships"],
];

const THREAD = "application/vnd.ms-excel.threadedcomments+xml";
const PERSON = "{6F0E3C52-0A6B-4C0C-9F4D-1F6A5C9B0001}";

const SHAPES: Readonly<Record<string, Shape>> = {
  "dotnet-prefix.xlsx": {
    prefix: "x:",
    declaresOnRoot: false,
    emptySheet: "<x:sheetData />",
    styles: `<x:styleSheet xmlns:x="${MAIN}"><x:fonts count="1"><x:font/></x:fonts><x:fills count="1"><x:fill/></x:fills><x:borders count="1"><x:border/></x:borders><x:cellXfs count="1"><x:xf numFmtId="0" fontId="0" fillId="0" borderId="0" /></x:cellXfs></x:styleSheet>`,
  },
  "dotnet-blank-before-slash.xlsx": {
    emptySheet: "<sheetData />",
    strings: sharedStrings((text) => `<si><t>${text}</t></si>`),
  },
  "office-suite-5.xlsx": {
    typesByPart: true,
    strings: sharedStrings((text) => `<si><t xml:space="preserve">${text}</t></si>`),
  },
  "web-grid.xlsx": {
    styles: `<styleSheet xmlns="${MAIN}"><cellXfs count="1"><xf/></cellXfs></styleSheet>`,
    strings: sharedStrings((text) => `<si\n><t>${text}</t></si>`),
  },
  "no-styles.xlsx": { styles: null },
  "no-fills.xlsx": {
    styles: `<styleSheet xmlns="${MAIN}"><fonts count="1"><font><sz val="10"/><name val="Arial"/></font></fonts><borders count="1"><border/></borders><cellXfs count="1"><xf numFmtId="0" fontId="0" fillId="0" borderId="0"/></cellXfs></styleSheet>`,
  },
  "one-fill.xlsx": {
    styles: `<styleSheet xmlns="${MAIN}">${STYLES.replace(/<fills.*<\/fills>/, '<fills count="1"><fill><patternFill patternType="none"/></fill></fills>')}</styleSheet>`,
  },
  "empty-style-sheet.xlsx": { styles: `<styleSheet xmlns="${MAIN}"/>` },
  "names-like-attributes.xlsx": {
    names: ["Bars", "b id='rId1' c"],
    strings: sharedStrings((text) => `<si><t>${text}</t></si>`),
  },
  "strict.xlsx": {
    workbookExtra: '<workbookPr dateCompatibility="0"/>',
    rewrite: (text) => STRICT.reduce((all, [usual, strict]) => all.replaceAll(usual, strict), text),
  },
  "from-1904.xlsx": { workbookExtra: '<workbookPr date1904="1"/>' },
  "macros.xlsm": {
    mainType: "application/vnd.ms-excel.sheet.macroEnabled.main+xml",
    parts: {
      "xl/vbaProject.bin": {
        text: "no macro, only bytes that must stay",
        type: "application/vnd.ms-office.vbaProject",
      },
    },
  },
  "threaded-comments.xlsx": {
    rels:
      `<Relationship Id="rId1" Type="http://schemas.microsoft.com/office/2017/10/relationships/threadedComment" Target="/xl/threadedComments/threadedComment1.xml"/>` +
      `<Relationship Id="rId2" Type="${OFFICE}/comments" Target="/xl/comments1.xml"/>` +
      `<Relationship Id="rId3" Type="${OFFICE}/vmlDrawing" Target="/xl/drawings/vmlDrawing1.vml"/>`,
    tail: '<legacyDrawing r:id="rId3"/>',
    parts: {
      "xl/threadedComments/threadedComment1.xml": {
        type: THREAD,
        text: `<ThreadedComments xmlns="http://schemas.microsoft.com/office/spreadsheetml/2018/threadedcomments"><threadedComment ref="L6" dT="2026-01-05T08:00:00.00" personId="${PERSON}" id="{6F0E3C52-0A6B-4C0C-9F4D-1F6A5C9B0002}"><text>is this former right?</text></threadedComment></ThreadedComments>`,
      },
      "xl/comments1.xml": {
        type: `${KIND}.comments+xml`,
        text: `<comments xmlns="${MAIN}"><authors><author>tc={6F0E3C52-0A6B-4C0C-9F4D-1F6A5C9B0002}</author></authors><commentList><comment ref="L6" authorId="0"><text><t>is this former right?</t></text></comment></commentList></comments>`,
      },
      "xl/drawings/vmlDrawing1.vml": {
        type: "application/vnd.openxmlformats-officedocument.vmlDrawing",
        text: '<xml xmlns:v="urn:schemas-microsoft-com:vml" xmlns:o="urn:schemas-microsoft-com:office:office" xmlns:x="urn:schemas-microsoft-com:office:excel"><o:shapelayout v:ext="edit"><o:idmap v:ext="edit" data="1"/></o:shapelayout><v:shape id="_x0000_s1025" type="#_x0000_t202" style="visibility:hidden"><x:ClientData ObjectType="Note"><x:Row>5</x:Row><x:Column>11</x:Column></x:ClientData></v:shape></xml>',
      },
    },
  },
};

for (const [name, shape] of Object.entries(SHAPES)) writeFileSync(join(folder, name), await shaped(shape));
writeFileSync(join(folder, "table-with-totals.xlsx"), tableBook());
byOpenpyxl("openpyxl-lxml.xlsx", "");
byOpenpyxl("openpyxl-plain.xlsx", "import sys\nsys.modules['lxml'] = None\n");
const profile = `-env:UserInstallation=file://${join(work, "profile")}`;
execFileSync("soffice", [
  "--headless",
  "--norestore",
  profile,
  "--convert-to",
  "xlsx:Calc MS Excel 2007 XML",
  "--outdir",
  work,
  join(folder, "openpyxl-plain.xlsx"),
]);
copyFileSync(join(work, "openpyxl-plain.xlsx"), join(folder, "office-suite-7.xlsx"));

/** By XlsxWriter's engine: the schedule as a table, its totals row under it. */
function tableBook(): Uint8Array {
  const book = new Workbook();
  const sheet = book.addWorksheet().setName("Bars");
  const table = new Table().setColumns(
    FOREIGN_HEADER.map((header) =>
      new TableColumn().setHeader(header).setTotalLabel(header === "Bar mark" ? "Total" : ""),
    ),
  );
  table.setTotalRow(true);
  sheet.addTable(0, 0, FOREIGN_ROWS.length + 1, FOREIGN_HEADER.length - 1, table);
  FOREIGN_ROWS.forEach((cells, row) => {
    cells.forEach((value, column) => {
      if (value !== null) sheet.write(row + 1, column, value);
    });
  });
  return book.saveToBufferSync();
}

function byOpenpyxl(name: string, before: string): void {
  const rows = JSON.stringify([FOREIGN_HEADER, ...FOREIGN_ROWS]);
  const program = `${before}import json, openpyxl
book = openpyxl.Workbook()
sheet = book.active
sheet.title = "Bars"
for row in json.loads(${JSON.stringify(rows)}):
    sheet.append(row)
sheet["A1"].font = openpyxl.styles.Font(bold=True)
sheet["B3"].comment = openpyxl.comments.Comment("ask the yard", "someone")
sheet.conditional_formatting.add("F2:F9", openpyxl.formatting.rule.CellIsRule(operator="greaterThan", formula=["12000"]))
sheet.freeze_panes = "A2"
book.create_sheet("Notes")
book.save(${JSON.stringify(join(folder, name))})
`;
  execFileSync("/usr/bin/python3", ["-c", program]);
  if (readFileSync(join(folder, name)).length === 0) throw new Error(`${name} is empty`);
}
