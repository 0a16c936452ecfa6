import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import JSZip from "jszip";
import { describe, expect, it } from "vitest";
import { annotatedCopy } from "../../../addin/command-line/annotated-copy";
import { patchWorkbook } from "../../../addin/xlsx/patch/patch-workbook";
import { openWorkbook } from "../../../addin/xlsx/read/open-workbook";
import { writeNewWorkbook } from "../../../addin/xlsx/write/new-workbook";
import type { AuditReport } from "../../../core/audit/audit-report";
import { checkBooks } from "../../../core/jobs";
import { isRefusal } from "../../../core/units/refusal";
import { buildPackage } from "../../_support/build-package";
import { bar, bookOf, checked, findingsCells, HEADER, TWO_POURS } from "../../_support/checked-book";
import { comparePackages, partText } from "../../_support/compare-packages";
import { copyFaults } from "../../_support/copy-faults";
import { elementsOf, valOf, xmlTree } from "../../_support/xml-tree";

describe("a schedule that is out of the common", () => {
  it("is grouped by member where it names no pours, and says so", async () => {
    const rows = [HEADER, bar("01", "H16", 2, 2000, null, "B1"), bar("02", "H16", 2, 2000, null, "B2")];
    const { bytes } = checked(bookOf(rows));
    const { all } = findingsCells(bytes);
    expect(all).toContain("Member");
    expect(all).toContain("The schedule names no pours: grouped by member.");
    expect(await partText(bytes, "xl/charts/chart1.xml")).toContain("Tonnes by member and size");
  });

  it("has a sentence and no chart where nothing has a mass", async () => {
    const before = bookOf([HEADER, bar("01", "H17", 2, 2000, "P1")]);
    const { bytes } = checked(before);
    const { added } = await comparePackages(before, bytes);
    expect(added.filter((name) => /chart|drawings\/drawing/.test(name))).toEqual([]);
    const { all } = findingsCells(bytes);
    expect(all).toContain("No tonnes: no bar row has a mass that could be worked out, so there is no chart.");
    expect(all).toContainEqual(
      expect.stringMatching(/^Not in the total: 1 row \(C2\): size "H17" is no bar of BS8666:2005/),
    );
  });

  it("holds of a pour's long name what a cell can hold", async () => {
    // a fraction of one sign is three, so the name is longer than it was typed
    const before = bookOf([HEADER, bar("01", "H16", 2, 2000, "\u00bd".repeat(32_767))]);
    const { bytes } = checked(before);
    expect(await copyFaults(before, bytes)).toEqual([]);
    expect(findingsCells(bytes).all).toContainEqual(expect.stringMatching(/^1\/2.{200,}\u2026$/));
  });

  it("leaves no name on a part that long names of pours leave no room for", async () => {
    const long = "Transfer slab, gridlines A to F, east half of the building";
    const named = async (pour: string) => {
      // 188 m at 1.579 and 34 m at 0.617 kg/m (the UK three-decimal table, 10 mm by EN 10080): H10 is 6.6 % of the bar
      const rows = [HEADER, bar("01", "H16", 94, 2000, pour), bar("02", "H10", 17, 2000, pour)];
      const chart = xmlTree(await partText(checked(bookOf(rows)).bytes, "xl/charts/chart1.xml"));
      return elementsOf(chart, "c:ser").map((node) => valOf(node, "c:showSerName"));
    };
    // sizes stand from thin to thick; "H10" takes some 28 px: the bar is about 550 px long beside "P1", 340 px beside the long name
    expect(await named("P1")).toEqual(["1", "1"]);
    expect(await named(long)).toEqual([undefined, "1"]);
  });

  it("leaves an older revision out, and says where lists that are alike may be counted twice", () => {
    const header = [...HEADER, "Revision"];
    const named = (...names: readonly string[]) => {
      const sheets = names.map((name, at) => ({
        name,
        rows: [
          header,
          ...["01", "02"].map((mark) => [...bar(mark, "H16", 2, 2000, "P1"), at === 0 ? "A" : "B"]),
        ],
      }));
      return findingsCells(checked(writeNewWorkbook({ sheets })).bytes).all;
    };
    const revised = named("Slab rev A", "Slab rev B");
    expect(revised).toContain("Tonnes (t) of 2 of 4 bar rows on the sheets Slab rev A, Slab rev B.");
    expect(revised).toContain(
      "Not in the total: 2 rows (B2, B3): superseded: revision B of it on sheet Slab rev B counts.",
    );
    // only their bars say that the two are one list
    const all = named("Old", "New");
    expect(all).toContain("Tonnes (t) of all 4 bar rows on the sheets Old, New.");
    expect(all).toContain(
      "2 rows of which later revisions stand in the workbook: in it too, so that steel may be counted twice.",
    );
  });

  it("calls no bar older for a remark that may take it out", () => {
    const header = [...HEADER, "Revision", "Remarks"];
    const rows = [
      header,
      [...bar("01", "H16", 2, 2000, "P1"), "A", null],
      [...bar("01", "H16", 2, 2500, "P1"), "B", "was superseded, look"],
    ];
    const { all } = findingsCells(checked(bookOf(rows)).bytes);
    expect(all).toContain("Not in the total: 1 row (B2): superseded: revision B of it counts.");
    expect(all.filter((words) => /later revision/.test(String(words)))).toEqual([]);
  });

  it("says how many rows are in no total", () => {
    const { all } = findingsCells(checked(bookOf([...TWO_POURS, bar("04", "H17", 2, 2000, "P1")])).bytes);
    expect(all).toContain("Tonnes (t) of 3 of 4 bar rows on sheet Bars.");
    expect(all).toContainEqual(
      expect.stringMatching(/^Not in the total: 1 row \(C5\): size "H17" is no bar of BS8666:2005/),
    );
  });

  it("draws as many bars as a page holds, says so, and has the rest in the table", async () => {
    const pours = Array.from({ length: 45 }, (_, index) => `Pour ${index + 1}`);
    const rows = [HEADER, ...pours.map((pour, index) => bar(`${index + 1}`, "H16", 2, 2000, pour))];
    const { bytes } = checked(bookOf(rows));
    const chart = xmlTree(await partText(bytes, "xl/charts/chart1.xml"));
    const drawn = elementsOf(elementsOf(chart, "c:cat")[0]!, "c:v").map(({ text }) => text);
    expect(drawn).toEqual(pours.slice(0, 32));
    const { all } = findingsCells(bytes);
    expect(all).toContain("The chart has room for the first 32 of 45; the table has them all.");
    expect(pours.every((pour) => all.includes(pour))).toBe(true);
  });

  it("keeps many sizes apart and leaves no room for a name that a bar has none for", async () => {
    const sizes = ["H6", "H8", "H10", "H12", "H16", "H20", "H25", "H32", "H40", "H50"];
    const rows = [
      HEADER,
      ...sizes.map((size, index) => bar(`${index + 1}`, size, index === 9 ? 400 : 1, 2000, "P1")),
    ];
    const chart = xmlTree(await partText(checked(bookOf(rows)).bytes, "xl/charts/chart1.xml"));
    const series = elementsOf(chart, "c:ser");
    const looks = series.map((node) =>
      JSON.stringify(
        elementsOf(node, "a:srgbClr")
          .slice(0, 2)
          .map((each) => each.attributes),
      ),
    );
    expect(new Set(looks).size).toBe(10);
    // 400 bars of H50 leave the ten others less than a hundredth of the length
    expect(series.map((node) => valOf(node, "c:showSerName"))).toEqual([...Array(9).fill(undefined), "1"]);
  });
});

describe("a workbook with drawings of its own", () => {
  it.each(["quay-excel-shaped.xlsx", "quay-libreoffice.xlsx"])(
    "keeps those of %s byte by byte",
    async (name) => {
      const before = readFileSync(
        fileURLToPath(new URL(`../../_support/workbooks/${name}`, import.meta.url)),
      );
      const { changed, added, removed } = await comparePackages(before, checked(before).bytes);
      const drawings = (names: readonly string[]) =>
        names.filter((each) => /drawings\/(_rels\/)?drawing|charts\//.test(each));
      expect([drawings(changed), drawings(removed)]).toEqual([[], []]);
      expect(drawings(added)).toEqual([
        "xl/charts/chart2.xml",
        "xl/drawings/_rels/drawing2.xml.rels",
        "xl/drawings/drawing2.xml",
      ]);
    },
  );

  it("is written in the strict dialect where the workbook is", async () => {
    const zip = await JSZip.loadAsync(bookOf(TWO_POURS));
    for (const part of [
      "xl/workbook.xml",
      "xl/_rels/workbook.xml.rels",
      "xl/styles.xml",
      "xl/worksheets/sheet1.xml",
      "xl/sharedStrings.xml",
      "_rels/.rels",
    ]) {
      const xml = await zip.file(part)!.async("string");
      zip.file(
        part,
        xml
          .replaceAll(
            "http://schemas.openxmlformats.org/spreadsheetml/2006/main",
            "http://purl.oclc.org/ooxml/spreadsheetml/main",
          )
          .replaceAll(
            "http://schemas.openxmlformats.org/officeDocument/2006/",
            "http://purl.oclc.org/ooxml/officeDocument/",
          ),
      );
    }
    const { bytes } = checked(await zip.generateAsync({ type: "uint8array" }));
    for (const part of [
      "xl/charts/chart1.xml",
      "xl/drawings/drawing1.xml",
      "xl/drawings/_rels/drawing1.xml.rels",
      "xl/worksheets/_rels/sheet2.xml.rels",
    ]) {
      const xml = await partText(bytes, part);
      // relationships of a package have one namespace in both dialects
      expect(xml.replaceAll("openxmlformats.org/package/2006", ""), part).not.toContain("openxmlformats.org");
      expect(xml, part).toContain("purl.oclc.org/ooxml/");
    }
  });
});

describe("a check of a checked workbook", () => {
  it("writes the findings sheet anew, its chart with it, and leaves no part over", async () => {
    const first = checked(bookOf(TWO_POURS)).bytes;
    const { bytes: second, kept } = checked(first);
    expect(kept).toEqual([]);
    const { added, removed } = await comparePackages(first, second);
    expect([added, removed]).toEqual([[], []]);
    expect(openWorkbook(second).sheets.map(({ name }) => name)).toEqual(["Bars", "Findings"]);
    expect(await partText(second, "xl/charts/chart1.xml")).toBe(
      await partText(first, "xl/charts/chart1.xml"),
    );
    expect(openWorkbook(second).names).toEqual(openWorkbook(first).names);
  });

  it("takes the chart away where there is nothing left to draw", async () => {
    const first = checked(bookOf(TWO_POURS)).bytes;
    const writes = [1, 2, 3].map((row) => ({ row, column: 2, value: "H17" }));
    const edited = patchWorkbook(openWorkbook(first), { sheets: new Map([["Bars", { writes }]]) });
    const { bytes } = checked(edited);
    const { removed } = await comparePackages(edited, bytes);
    expect(removed).toEqual([
      "xl/charts/chart1.xml",
      "xl/drawings/_rels/drawing1.xml.rels",
      "xl/drawings/drawing1.xml",
      "xl/worksheets/_rels/sheet2.xml.rels",
    ]);
    expect(await partText(bytes, "[Content_Types].xml")).not.toMatch(/chart1|drawing1\.xml/);
  });

  it("keeps a findings sheet that somebody has written on, and says so", async () => {
    const first = checked(bookOf(TWO_POURS)).bytes;
    const writes = [{ row: 2, column: 7, value: "done, JM" }];
    const edited = patchWorkbook(openWorkbook(first), { sheets: new Map([["Findings", { writes }]]) });
    const { bytes, kept } = checked(edited);
    expect(kept).toEqual(["Findings"]);
    expect(openWorkbook(bytes).sheets.map(({ name }) => name)).toEqual(["Bars", "Findings", "Findings (2)"]);
    expect(findingsCells(bytes).all).toContain("done, JM");
    expect(await partText(bytes, "xl/charts/chart2.xml")).toContain("'Findings (2)'!");
    // the second is ours alone and is written anew
    expect(openWorkbook(checked(bytes).bytes).sheets).toHaveLength(3);
  });

  it("never takes a sheet of the user's own for a findings sheet", async () => {
    const before = writeNewWorkbook({
      sheets: [
        { name: "Bars", rows: TWO_POURS },
        { name: "Findings", rows: [["Findings of the fixer"], ["mark 03 is short"]] },
      ],
    });
    const { bytes, kept } = checked(before);
    expect(kept).toEqual([]);
    expect(openWorkbook(bytes).sheets.map(({ name }) => name)).toEqual(["Bars", "Findings", "Findings (2)"]);
    expect(findingsCells(bytes).all).toContain("mark 03 is short");
  });

  it("takes the order of calculation away with the links that the pane wrote as formulas", async () => {
    const first = checked(bookOf(TWO_POURS)).bytes;
    const link = { row: 0, column: 5, formula: `HYPERLINK("#'Findings'!I8","x")` };
    const value = openWorkbook(first).read("Findings").cell(0, 5);
    const linked = patchWorkbook(openWorkbook(first), {
      sheets: new Map([["Findings", { writes: [{ ...link, value }] }]]),
    });
    const zip = await JSZip.loadAsync(linked);
    const put = async (part: string, change: (xml: string) => string) =>
      zip.file(part, change(await zip.file(part)!.async("string")));
    const office = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
    const main = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
    zip.file("xl/calcChain.xml", `<calcChain xmlns="${main}"><c r="F1" i="2"/></calcChain>`);
    await put("xl/_rels/workbook.xml.rels", (xml) =>
      xml.replace(
        "</Relationships>",
        `<Relationship Id="rId77" Type="${office}/calcChain" Target="calcChain.xml"/></Relationships>`,
      ),
    );
    const saved = await zip.generateAsync({ type: "uint8array" });
    const { bytes, kept } = checked(saved);
    expect(kept).toEqual([]);
    expect((await comparePackages(saved, bytes)).removed).toEqual(["xl/calcChain.xml"]);
    expect(await partText(bytes, "xl/_rels/workbook.xml.rels")).not.toContain("calcChain");
  });

  it("keeps a workbook whole that Excel's own parts hang on", async () => {
    const first = await JSZip.loadAsync(checked(bookOf(TWO_POURS)).bytes);
    // as Excel leaves a sheet after printing it: settings of the printer, and looks of the chart
    const rels = "xl/worksheets/_rels/sheet2.xml.rels";
    const office = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
    const line = `<Relationship Id="rId9" Type="${office}/printerSettings" Target="../printerSettings/printerSettings1.bin"/>`;
    first.file(
      rels,
      (await first.file(rels)!.async("string")).replace("</Relationships>", `${line}</Relationships>`),
    );
    first.file("xl/printerSettings/printerSettings1.bin", new Uint8Array([1, 2, 3]));
    first.file(
      "xl/charts/_rels/chart1.xml.rels",
      '<Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships"><Relationship Id="rId1" Type="http://schemas.microsoft.com/office/2011/relationships/chartStyle" Target="style1.xml"/></Relationships>',
    );
    first.file("xl/charts/style1.xml", "<cs:chartStyle xmlns:cs='x'/>");
    const saved = await first.generateAsync({ type: "uint8array" });
    const { removed, added } = await comparePackages(saved, checked(saved).bytes);
    expect(removed).toEqual([
      "xl/charts/_rels/chart1.xml.rels",
      "xl/charts/style1.xml",
      "xl/printerSettings/printerSettings1.bin",
    ]);
    expect(added).toEqual([]);
  });
});

it("opens beside parts that hang together in a circle", async () => {
  const rels = (target: string) =>
    `<Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships"><Relationship Id="rId1" Type="x/y" Target="${target}"/></Relationships>`;
  const rows = TWO_POURS.map(
    (cells, row) =>
      `<row r="${row + 1}">${cells
        .map((cell) =>
          typeof cell === "number"
            ? `<c><v>${cell}</v></c>`
            : `<c t="inlineStr"><is><t>${String(cell ?? "")
                .replace("&", "&amp;")
                .replace("<", "&lt;")}</t></is></c>`,
        )
        .join("")}</row>`,
  ).join("");
  const circle = new Map([
    ["xl/worksheets/_rels/sheet1.xml.rels", rels("../one.xml")],
    ["xl/one.xml", "<a/>"],
    ["xl/_rels/one.xml.rels", rels("worksheets/sheet1.xml")],
  ]);
  const first = checked(await buildPackage([{ name: "Bars", xml: rows }], circle)).bytes;
  const { removed } = await comparePackages(first, checked(first).bytes);
  expect(removed).toEqual([]);
});

describe("a copy that is checked again", () => {
  it("goes by the document of its original, with the same findings and tonnes", () => {
    // DIN 488-2, Table 2, from memory: 14 mm is rolled; BS 8666:2005, Table 2 does not hold it
    const rows = [
      ["Stahl nach DIN 488"],
      ["Bar mark", "Size", "Total no.", "Length mm", "Pour"],
      ["1", 14, 10, 2000, "P1"],
      ["2", 16, 10, 20_000, "P1"],
      ["3", 25, 10, 4000, "P2"],
    ];
    const first = judged(bookOf(rows));
    const workbook = openWorkbook(bookOf(rows));
    const sheets = workbook.sheets.map(({ name }) => workbook.read(name));
    const copy = annotatedCopy(workbook, first, sheets);
    const again = judged(new Uint8Array(Buffer.concat([...copy.pieces])));
    expect([first.standard.id, again.standard.id]).toEqual(["DIN-EC2:2013", "DIN-EC2:2013"]);
    const told = ({ findings }: AuditReport) => findings.map(({ code, cell }) => `${code} ${cell}`);
    expect(told(again)).toEqual(told(first));
  });
});

/** As somebody's check of it who chose no standard. */
function judged(bytes: Uint8Array): AuditReport {
  const workbook = openWorkbook(bytes);
  const { sheets } = workbook;
  const book = { name: "b.xlsx", sheets, read: (name: string) => workbook.read(name), setting: () => null };
  const [one] = checkBooks([book], { sheet: null, standard: null });
  if (one === undefined || isRefusal(one)) throw new Error("not checked");
  return one.report;
}
