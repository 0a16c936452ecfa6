import { readdirSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { strFromU8, strToU8, unzipSync, zipSync } from "fflate";
import { describe, expect, it } from "vitest";
import { openWorkbook } from "../../../addin/xlsx/read/open-workbook";
import { runAudit } from "../../../core/audit/run-audit";
import { resolveStandard, type Standard } from "../../../core/standards";
import { checked } from "../../_support/checked-book";
import { comparePackages } from "../../_support/compare-packages";
import { copyFaults } from "../../_support/copy-faults";

const folder = fileURLToPath(new URL("../../_support/workbooks/writers/", import.meta.url));
const BOOKS = readdirSync(folder).sort();
const standard = resolveStandard("BS8666:2005") as Standard;

/** What a check of the book's first sheet finds: rule and cell. */
function findings(bytes: Uint8Array): string[] {
  const workbook = openWorkbook(bytes);
  const sheet = workbook.read(workbook.sheets[0]!.name);
  return runAudit({ sheets: [sheet], standard }).findings.map(({ code, cell }) => `${code} ${cell}`);
}

describe("one schedule as seventeen programs write it", () => {
  it("is read alike from all", () => {
    expect(BOOKS.length).toBeGreaterThanOrEqual(16);
    const found = BOOKS.map((name) => [name, findings(readFileSync(folder + name))] as const);
    const [, plain] = found.find(([name]) => name === "no-styles.xlsx")!;
    expect(plain).toContain("BEND101 L6");
    for (const [name, each] of found) expect(each, name).toEqual(plain);
  });

  it.each(BOOKS)("%s: a copy is whole, and a second check says the same", async (name) => {
    const before = readFileSync(folder + name);
    const once = checked(before).bytes;
    expect(await copyFaults(before, once)).toEqual([]);
    const twice = checked(once).bytes;
    expect(await copyFaults(once, twice, new Set(["Findings"]))).toEqual([]);
    expect(findings(twice)).toEqual(findings(before));
    expect((await comparePackages(once, twice)).added).toEqual([]);
    const [first] = openWorkbook(once).sheets;
    expect(openWorkbook(twice).sheets.map((sheet) => sheet.name)).toEqual(
      openWorkbook(once).sheets.map((sheet) => sheet.name),
    );
    expect(openWorkbook(twice).hasFlags(first!)).toBe(true);
  });

  it.each(BOOKS)("%s: cells that no check marks look as they did", async (name) => {
    const before = openWorkbook(readFileSync(folder + name));
    const after = openWorkbook(checked(before.bytes).bytes);
    const sheet = before.sheets[0]!.name;
    const [old, young] = [before.read(sheet), after.read(sheet)];
    for (let column = 0; column < old.columnCount; column += 1) {
      const [a, b] = [before.formats[old.styleAt(0, column)], after.formats[young.styleAt(0, column)]];
      expect([b?.bold, b?.fill, b?.flag], `header ${column}`).toEqual([a?.bold, a?.fill, null]);
    }
  });
});

describe("a print header within a CDATA section", () => {
  const SHEET = "xl/worksheets/sheet1.xml";
  const withHeader = (text: string): Uint8Array => {
    const parts = unzipSync(readFileSync(`${folder}no-styles.xlsx`));
    const xml = strFromU8(parts[SHEET]!).replace(
      "</worksheet>",
      `<headerFooter><oddHeader>${text}</oddHeader><!-- of the yard --></headerFooter></worksheet>`,
    );
    return zipSync({ ...parts, [SHEET]: strToU8(xml) });
  };
  const before = withHeader("<![CDATA[&C&BBars & links <A>\n&B(page &P)]]>");

  it("is in the copy as the same text", async () => {
    const copy = checked(before).bytes;
    expect(strFromU8(unzipSync(copy)[SHEET]!)).toContain(
      "&amp;C&amp;BBars &amp; links &lt;A&gt;\n&amp;B(page &amp;P)",
    );
    expect(await copyFaults(before, copy)).toEqual([]);
  });

  it("is missed where the copy says another", async () => {
    const other = checked(withHeader("<![CDATA[&C&BBars & links <B>\n&B(page &P)]]>")).bytes;
    expect(await copyFaults(before, other)).toContain("Bars: headerFooter changed");
  });
});
