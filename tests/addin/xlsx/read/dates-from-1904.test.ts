import { mkdtempSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { packSheet, unpackSheet } from "../../../../addin/pane/engine/packed-sheet";
import { openWorkbook } from "../../../../addin/xlsx/read/open-workbook";
import { readSchedule } from "../../../../core/schedule/read-schedule";
import { buildPackage } from "../../../_support/build-package";
import { barwright } from "../../../_support/command-line";
import { heldStandard } from "../../../_support/held-standard";

const MAIN = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
const OFFICE = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
/** Format 16 is d-mmm, the one that a spreadsheet gives to "3-4". */
const STYLES = `<styleSheet xmlns="${MAIN}"><cellXfs count="2"><xf numFmtId="0"/><xf numFmtId="16"/></cellXfs></styleSheet>`;
const HEADER = ["Member", "Bar mark", "Size", "Total no.", "Length (in)", "Shape code", "A (in)"];

/** Days since the first of the calendar: ECMA-376-1, 18.17.4.1; 1900 is counted as a leap year. */
function serial(month: number, day: number, from1904: boolean): number {
  const first = from1904 ? Date.UTC(1904, 0, 1) : Date.UTC(1899, 11, 30);
  return (Date.UTC(2026, month - 1, day) - first) / 86_400_000;
}

function bytesOf(from1904: boolean): Promise<Uint8Array> {
  const text = (cells: readonly string[]): string =>
    cells.map((cell) => `<c t="inlineStr"><is><t>${cell}</t></is></c>`).join("");
  const date = (month: number, day: number): string => `<c s="1"><v>${serial(month, day, from1904)}</v></c>`;
  const number = (value: number): string => `<c><v>${value}</v></c>`;
  // mark 3-4 and dimension 1/2, which a spreadsheet takes for 4 March and 2 January
  const bar = text(["B1"]) + date(3, 4) + text(["#5"]) + number(4) + number(60) + text(["00"]) + date(1, 2);
  const rows = `<row>${text(HEADER)}</row><row>${bar}</row><row><c t="d"><v>2026-03-04</v></c></row>`;
  const workbook =
    `<workbook xmlns="${MAIN}" xmlns:r="${OFFICE}"><workbookPr${from1904 ? ' date1904="1"' : ""}/>` +
    '<sheets><sheet name="S" sheetId="1" r:id="rId1"/></sheets></workbook>';
  const parts = new Map([
    ["xl/workbook.xml", workbook],
    ["xl/styles.xml", STYLES],
  ]);
  return buildPackage([{ name: "S", xml: rows }], parts);
}

describe.each([
  ["1900", false],
  ["1904", true],
])("a workbook that counts its dates from %s", (_, from1904) => {
  it("gives back what was typed before it became a date", async () => {
    const sheet = openWorkbook(await bytesOf(from1904)).read("S");
    expect(sheet.datesFrom1904).toBe(from1904);
    for (const read of [sheet, unpackSheet(structuredClone(packSheet(sheet)))]) {
      const [bar] = readSchedule(read, heldStandard("ACI318:2019")).bars;
      expect(bar?.mark).toBe("3-4");
      expect(bar?.problems).toContainEqual(
        expect.objectContaining({
          guess: "date-was-fraction",
          reason: expect.stringContaining("1-2 was typed"),
        }),
      );
    }
  });

  it("takes a date in words for the number that its own system has", async () => {
    const sheet = openWorkbook(await bytesOf(from1904)).read("S");
    expect(sheet.cell(2, 0)).toBe(serial(3, 4, from1904));
  });

  it("is read so by the command line", async () => {
    const path = join(mkdtempSync(join(tmpdir(), "barwright-1904-")), "dates.xlsx");
    writeFileSync(path, await bytesOf(from1904));
    const { out } = await barwright(["check", path, "--standard", "ACI318:2019"]);
    expect(out).toMatch(/3-4 was typed and turned into a date/);
    expect(out).not.toMatch(/3-5|1-3/);
  });
});
