import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { XMLParser } from "fast-xml-parser";
import { describe, expect, it } from "vitest";
import type { SheetChanges } from "../../../../addin/workbook/sheet-changes";
import { patchWorkbook } from "../../../../addin/xlsx/patch/patch-workbook";
import { openWorkbook } from "../../../../addin/xlsx/read/open-workbook";
import { buildPackage } from "../../../_support/build-package";
import { comparePackages, partText } from "../../../_support/compare-packages";

const FIXTURES = ["quay-excel-shaped.xlsx", "quay-libreoffice.xlsx"];

function fixture(name: string): Uint8Array {
  return readFileSync(fileURLToPath(new URL(`../../../_support/workbooks/${name}`, import.meta.url)));
}

function patched(bytes: Uint8Array, changes: SheetChanges, sheet = "Schedule"): Uint8Array {
  return patchWorkbook(openWorkbook(bytes), { sheets: new Map([[sheet, changes]]) });
}

interface Xml {
  readonly [name: string]: never;
}

/** A part as fast-xml-parser reads it: attributes by name, repeated elements as lists. */
async function parsed(bytes: Uint8Array, part: string): Promise<Record<string, never>> {
  const lists = new Set(["row", "c", "xf", "fill", "comment", "author", "sheet", "definedName"]);
  const parser = new XMLParser({
    ignoreAttributes: false,
    attributeNamePrefix: "",
    isArray: (name) => lists.has(name),
    parseAttributeValue: false,
    parseTagValue: false,
    trimValues: false,
  });
  return parser.parse(await partText(bytes, part));
}

type Cells = Map<string, { s: number; text: string }>;

/** Address to style index and everything else about the cell as text. */
async function cellsOf(bytes: Uint8Array, part: string): Promise<Cells> {
  const sheet = (await parsed(bytes, part)) as Record<string, Xml>;
  const rows = (sheet["worksheet"] as Record<string, Record<string, Xml[]>>)["sheetData"]!["row"] ?? [];
  const cells: Cells = new Map();
  for (const row of rows as unknown as { c?: ({ r: string; s?: string } & Record<string, unknown>)[] }[]) {
    for (const { r, s, ...rest } of row.c ?? [])
      cells.set(r, { s: Number(s ?? 0), text: JSON.stringify(rest) });
  }
  return cells;
}

interface Xf {
  readonly fillId?: string;
  readonly applyFill?: string;
}

async function xfsOf(bytes: Uint8Array) {
  const styles = (await parsed(bytes, "xl/styles.xml"))["styleSheet"] as unknown as {
    cellXfs: { xf: Xf[] };
    fills: { fill: unknown[] };
  };
  return { xfs: styles.cellXfs.xf, fills: styles.fills.fill };
}

describe.each(FIXTURES)("patchWorkbook on %s", (name) => {
  const before = fixture(name);
  const flags = [
    { row: 8, firstColumn: 0, lastColumn: 13, colour: "off-standard" as const },
    { row: 10, firstColumn: 0, lastColumn: 13, colour: "unsafe" as const },
  ];
  const notes = [
    { row: 8, column: 5, text: "this cell has a note already" },
    { row: 10, column: 8, text: "leg & <bend>\nsecond line" },
  ];

  it("changes nothing where nothing is asked", async () => {
    expect(await comparePackages(before, patchWorkbook(openWorkbook(before), {}))).toEqual({
      changed: [],
      added: [],
      removed: [],
    });
  });

  it("colours rows and adds one note in the parts that hold them, and in no other", async () => {
    const after = patched(before, { flags, notes });
    expect(await comparePackages(before, after)).toEqual({
      changed: [
        "xl/comments1.xml",
        "xl/drawings/vmlDrawing1.vml",
        "xl/styles.xml",
        "xl/worksheets/sheet1.xml",
      ],
      added: [],
      removed: [],
    });
  });

  it("changes of the flagged cells only the fill, of the others nothing", async () => {
    const after = patched(before, { flags, notes });
    const part = "xl/worksheets/sheet1.xml";
    const [old, young] = [await cellsOf(before, part), await cellsOf(after, part)];
    const { xfs } = await xfsOf(after);
    const isFlagged = (address: string): boolean => /^[A-N](9|11)$/.test(address);
    for (const [address, cell] of young) {
      const was = old.get(address);
      expect(cell.text, address).toBe(was?.text);
      if (!isFlagged(address)) expect(cell.s, address).toBe(was?.s);
      else if (!address.startsWith("N") || name.includes("libre")) {
        expect(cell.s, address).not.toBe(was?.s);
        const { fillId: _, applyFill: __, ...looks } = xfs[cell.s]!;
        const { fillId: ___, applyFill: ____, ...looked } = xfs[was?.s ?? 0]!;
        expect(looks, address).toEqual(looked);
      }
    }
    expect(young.size).toBe(old.size);
  });

  it("adds the words of one note and keeps the one that was there", async () => {
    const after = patched(before, { flags, notes });
    const comments = (await parsed(after, "xl/comments1.xml"))["comments"] as unknown as {
      authors: { author: string[] };
      commentList: { comment: { ref: string; authorId: string }[] };
    };
    expect(comments.commentList.comment.map(({ ref }) => ref)).toEqual(["F9", "I11"]);
    const ours = comments.commentList.comment[1]!;
    expect(comments.authors.author[Number(ours.authorId)]).toBe("Barwright");
    expect(JSON.stringify(ours)).toContain(
      "leg &amp; &lt;bend>".replaceAll("&amp;", "&").replaceAll("&lt;", "<"),
    );
    const drawing = await partText(after, "xl/drawings/vmlDrawing1.vml");
    const ids = [...drawing.matchAll(/<v:shape\s[^>]*id="([^"]+)"/g)].map((match) => match[1]);
    expect(new Set(ids).size).toBe(2);
    expect(drawing).toContain("<x:Row>10</x:Row><x:Column>8</x:Column>");
  });

  it("takes flags and notes off again after the file was saved and opened", async () => {
    const after = patched(patched(before, { flags, notes }), { clear: true });
    const part = "xl/worksheets/sheet1.xml";
    expect(await cellsOf(after, part)).toEqual(await cellsOf(before, part));
    const words = await partText(after, "xl/comments1.xml");
    expect([...words.matchAll(/<comment /g)]).toHaveLength(1);
    expect(openWorkbook(after).hasFlags(openWorkbook(after).sheets[0]!)).toBe(
      openWorkbook(after).formats.some(({ flag }) => flag !== null),
    );
  });

  it("shows the user's own fill under a flag, and the flag apart from it", async () => {
    const flagged = openWorkbook(patched(before, { flags }));
    const sheet = flagged.read("Schedule");
    const format = flagged.formats[sheet.styleAt(10, 0)]!;
    expect([format.fill, format.flag]).toEqual(["#fff2a8", "unsafe"]);
    const plain = flagged.formats[sheet.styleAt(8, 0)]!;
    expect([plain.fill, plain.flag]).toEqual([null, "off-standard"]);
  });

  it("flags a flagged row anew without losing what lay under the first flag", async () => {
    const twice = patched(patched(before, { flags }), {
      flags: flags.map((flag) => ({ ...flag, colour: "note" as const })),
    });
    const workbook = openWorkbook(patched(twice, { clear: true }));
    expect(workbook.formats[workbook.read("Schedule").styleAt(10, 0)]?.fill).toBe("#fff2a8");
  });

  it("makes the notes' parts where a sheet has none", async () => {
    const after = patched(before, { notes: [{ row: 1, column: 1, text: "x" }] }, "Locked");
    const { changed, added, removed } = await comparePackages(before, after);
    expect(removed).toEqual([]);
    expect(changed).toEqual(["[Content_Types].xml", "xl/worksheets/sheet3.xml"]);
    expect(added).toEqual([
      "xl/comments2.xml",
      "xl/drawings/vmlDrawing2.vml",
      "xl/worksheets/_rels/sheet3.xml.rels",
    ]);
  });

  it("adds a sheet behind the others and registers it", async () => {
    const rows = [[{ value: "Severity", bold: true }, { value: 3 }]];
    const added = [{ name: "Totals", widths: [10], frozenRows: 1, rows }];
    const after = patchWorkbook(openWorkbook(before), { added });
    expect(await comparePackages(before, after)).toMatchObject({
      added: ["xl/worksheets/sheet4.xml"],
      changed: ["[Content_Types].xml", "xl/_rels/workbook.xml.rels", "xl/styles.xml", "xl/workbook.xml"],
    });
    const workbook = openWorkbook(after);
    expect(workbook.sheets.map((sheet) => sheet.name)).toEqual([
      "Schedule",
      "Totals",
      "Locked",
      "Totals (2)",
    ]);
    expect([0, 1].map((column) => workbook.read("Totals (2)").cell(0, column))).toEqual(["Severity", 3]);
  });

  it("writes values as they are given, texts never taken for numbers", async () => {
    const writes = [
      { row: 8, column: 5, value: 20 },
      { row: 8, column: 1, value: "007" },
      { row: 8, column: 12, value: "=1+1" },
      { row: 40, column: 2, value: "beyond" },
      { row: 12, column: 0, value: null },
    ];
    const after = patched(before, { writes });
    const sheet = openWorkbook(after).read("Schedule", { formulas: true });
    expect(writes.map(({ row, column }) => sheet.valueAt(row, column))).toEqual([
      20,
      "007",
      "=1+1",
      "beyond",
      null,
    ]);
    expect(sheet.formulaAt(8, 12)).toBeUndefined();
    expect(sheet.valueAt(9, 5)).toBe(48);
    expect(await partText(after, "xl/workbook.xml")).toContain('fullCalcOnLoad="1"');
  });

  it("sets, reads and takes out a defined name", async () => {
    const names = new Map([["barwright.standard", '"EC2:2004"']]);
    const workbook = openWorkbook(patchWorkbook(openWorkbook(before), { names }));
    const own = workbook.names.filter(({ name }) => name.toLowerCase() === "barwright.standard");
    expect(own.map(({ refersTo }) => refersTo)).toEqual(['"EC2:2004"']);
    expect(workbook.names.length).toBe(openWorkbook(before).names.length);
    const without = patchWorkbook(workbook, { names: new Map([["Barwright.Standard", null]]) });
    expect(openWorkbook(without).names.some(({ name }) => /^barwright/i.test(name))).toBe(false);
  });
});

describe("patchWorkbook", () => {
  it("leaves a hatched cell as it is: a flag would lose its pattern", async () => {
    const before = fixture("quay-excel-shaped.xlsx");
    const flags = [{ row: 8, firstColumn: 0, lastColumn: 13, colour: "off-standard" as const }];
    const part = "xl/worksheets/sheet1.xml";
    const [old, young] = [await cellsOf(before, part), await cellsOf(patched(before, { flags }), part)];
    expect(young.get("N9")?.s).toBe(old.get("N9")?.s);
    expect(young.get("M9")?.s).not.toBe(old.get("M9")?.s);
  });

  it("writes out the formulas that leant on an overwritten shared one", async () => {
    const rows =
      '<row r="1"><c r="A1"><v>1</v></c><c r="B1"><f t="shared" ref="B1:B3" si="0">A1*2+$A$1</f><v>3</v></c></row>' +
      '<row r="2"><c r="A2"><v>2</v></c><c r="B2"><f t="shared" si="0"/><v>5</v></c></row>' +
      '<row r="3"><c r="A3"><v>3</v></c><c r="B3"><f t="shared" si="0"/><v>7</v></c></row>';
    const before = await buildPackage([{ name: "S", xml: rows }]);
    const after = patched(before, { writes: [{ row: 0, column: 1, value: 9 }] }, "S");
    const sheet = openWorkbook(after).read("S", { formulas: true });
    expect([sheet.formulaAt(0, 1), sheet.formulaAt(1, 1)?.text, sheet.formulaAt(2, 1)?.text]).toEqual([
      undefined,
      "A2*2+$A$1",
      "A3*2+$A$1",
    ]);
  });

  it("drops the calculation chain when a formula in it goes", async () => {
    const office = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
    const parts = new Map([["xl/calcChain.xml", '<calcChain><c r="A1" i="1"/></calcChain>']]);
    const made = await buildPackage(
      [{ name: "S", xml: '<row r="1"><c r="A1"><f>1+1</f><v>2</v></c></row>' }],
      parts,
    );
    const rels = await partText(made, "xl/_rels/workbook.xml.rels");
    const chain = `<Relationship Id="rId77" Type="${office}/calcChain" Target="calcChain.xml"/>`;
    const before = await buildPackage(
      [{ name: "S", xml: '<row r="1"><c r="A1"><f>1+1</f><v>2</v></c></row>' }],
      new Map([
        ...parts,
        ["xl/_rels/workbook.xml.rels", rels.replace("</Relationships>", `${chain}</Relationships>`)],
      ]),
    );
    const after = patched(before, { writes: [{ row: 0, column: 0, value: 4 }] }, "S");
    expect((await comparePackages(before, after)).removed).toEqual(["xl/calcChain.xml"]);
    expect(await partText(after, "xl/_rels/workbook.xml.rels")).not.toContain("calcChain");
  });

  it("stores a BAR formula as Excel stores an add-in's", async () => {
    const before = await buildPackage([
      { name: "S", xml: '<row r="1"><c r="A1" t="str"><v>H16</v></c></row>' },
    ]);
    const after = patched(
      before,
      { writes: [{ row: 0, column: 1, value: 1.579, formula: 'BAR.MASS(A1)&"BAR.MASS(1)"' }] },
      "S",
    );
    expect(await partText(after, "xl/worksheets/sheet1.xml")).toContain(
      '<c r="B1" cm="1"><f t="array" ref="B1">_xldudf_BAR_MASS(A1)&amp;&quot;BAR.MASS(1)&quot;</f><v>1.579</v></c>',
    );
    expect(await partText(after, "xl/metadata.xml")).toContain('fDynamic="1"');
  });

  it("patches a sheet whose elements carry a prefix and whose cells lack addresses", async () => {
    const main = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
    const xml = `<x:worksheet xmlns:x="${main}"><x:sheetData><x:row><x:c><x:v>1</x:v></x:c><x:c><x:v>2</x:v></x:c></x:row></x:sheetData></x:worksheet>`;
    const before = await buildPackage([{ name: "S", xml }]);
    const flags = [{ row: 0, firstColumn: 1, lastColumn: 3, colour: "doubtful" as const }];
    const after = patched(before, { flags, notes: [{ row: 0, column: 0, text: "n" }] }, "S");
    const text = await partText(after, "xl/worksheets/sheet1.xml");
    expect(text).toMatch(
      /<x:c r="A1"><x:v>1<\/x:v><\/x:c><x:c r="B1" s="1"><x:v>2<\/x:v><\/x:c><x:c r="C1" s="1"\/>/,
    );
    expect(text).toMatch(/<x:legacyDrawing [^>]*r:id="rId2"\/><\/x:worksheet>$/);
    expect([0, 1].map((column) => openWorkbook(after).read("S").cell(0, column))).toEqual([1, 2]);
  });

  it("sets a flagged cell's style in its tag, however that is written", async () => {
    const tags = [
      '<c r="A1"',
      '<c r="B1" t="str"',
      '<c r="C1" s="0" t="str"',
      '<c s="0" r="D1"',
      "<c r='E1' s='0'",
      '<c  r="F1" cm="1"',
      '<c r="G1" vm=" s=" s = "0"',
      '<c r="H1" s="0" ph="1"',
    ];
    const xml = `<row r="1">${tags.map((tag) => `${tag}><v>1</v></c>`).join("")}<c r="I1" s="0"/></row>`;
    const before = await buildPackage([{ name: "S", xml }]);
    const flags = [{ row: 0, firstColumn: 0, lastColumn: 8, colour: "unsafe" as const }];
    const text = await partText(patched(before, { flags }, "S"), "xl/worksheets/sheet1.xml");
    const cells = [...text.matchAll(/<c[^>]*>/g)].map(([tag]) => tag);
    expect(cells).toEqual([
      '<c r="A1" s="1">',
      '<c r="B1" t="str" s="1">',
      '<c r="C1" s="1" t="str">',
      '<c s="1" r="D1">',
      `<c r='E1' s="1">`,
      '<c  r="F1" cm="1" s="1">',
      '<c r="G1" vm=" s=" s="1">',
      '<c r="H1" s="1" ph="1">',
      '<c r="I1" s="1"/>',
    ]);
  });

  it("says a row's and a cell's place once where the file says none", async () => {
    const xml = `<row r="" ht="20"><c r="" t="str"><v>1</v></c><c t="str" r=''><v>2</v></c></row><row r=""><c r="A2"><v>3</v></c></row>`;
    const before = await buildPackage([{ name: "S", xml }]);
    const flags = [0, 1].map((row) => ({ row, firstColumn: 0, lastColumn: 1, colour: "unsafe" as const }));
    const text = await partText(patched(before, { flags }, "S"), "xl/worksheets/sheet1.xml");
    expect([...text.matchAll(/<(?:row|c)\b[^>]*>/g)].map(([tag]) => tag)).toEqual([
      '<row r="1" ht="20">',
      '<c r="A1" t="str" s="1">',
      '<c r="B1" t="str" s="1">',
      '<row r="2">',
      '<c r="A2" s="1">',
      '<c r="B2" s="1"/>',
    ]);
  });
});
