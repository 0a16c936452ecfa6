import { spawnSync } from "node:child_process";
import { mkdtempSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { openWorkbook } from "../../../../addin/xlsx/read/open-workbook";
import { sheetPieces } from "../../../../addin/xlsx/read/sheet-pieces";
import { buildPackage } from "../../../_support/build-package";
import { barwrightBundle } from "../../../_support/command-line";

const MAIN = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
const CELL = '<row r="1"><c r="A1" t="inlineStr"><is><t>mark</t></is></c></row>';
const folder = mkdtempSync(join(tmpdir(), "barwright-hostile-"));

function sheet(rows: string): string {
  return `<worksheet xmlns="${MAIN}"><sheetData>${rows}</sheetData></worksheet>`;
}

/** A check in a process of its own, with time enough for a slow machine. */
async function check(name: string, xml: string) {
  const path = join(folder, `${name}.xlsx`);
  writeFileSync(path, await buildPackage([{ name: "S", xml }]));
  const run = spawnSync(process.execPath, [barwrightBundle(), "check", path], {
    encoding: "utf8",
    timeout: 20_000,
  });
  return { exit: run.status, said: (run.stdout + run.stderr).trim().split("\n") };
}

/** A sheet of one row, in pieces. */
function* oneRow(pieces: number): Generator<Uint8Array> {
  const encoder = new TextEncoder();
  const piece = encoder.encode('<c r="A1" s="12345"/>'.repeat(3_000));
  yield encoder.encode(`<worksheet xmlns="${MAIN}"><sheetData><row r="1">`);
  for (let count = 0; count < pieces; count += 1) yield piece;
  yield encoder.encode("</row></sheetData></worksheet>");
}

describe("a hostile part is refused in one line, soon", () => {
  it.each([
    ["comments that never close", sheet("<!--".repeat(200_000)), "cut short"],
    ["CDATA that never closes", sheet("<![CDATA[".repeat(100_000)), "cut short"],
    ["rows past the last", sheet('<row r="1048577"><c r="A1048577"><v>1</v></c></row>'), "more than 1048576"],
    ["rows without end", sheet("<row></row>".repeat(1_100_000)), "more than 1048576"],
    ["attributes without quotes", sheet(`<row r="1">${"<c a>".repeat(400_000)}</row>`), "no end"],
  ])("%s", async (name, xml, words) => {
    const { exit, said } = await check(name.replaceAll(" ", "-"), xml);
    expect([exit, said]).toEqual([2, [expect.stringContaining(words)]]);
  });

  it("a row without end, each of its pieces looked at once", () => {
    const begun = performance.now();
    expect([...sheetPieces(oneRow(700))].map(({ kind }) => kind)).toEqual(["head", "rows", "tail"]);
    expect(() => [...sheetPieces(oneRow(2_000))]).toThrow("too long");
    expect(performance.now() - begun).toBeLessThan(4_000);
  });

  it.each(["styles.xml", "sharedStrings.xml"])("%s whose comments never close", async (part) => {
    const parts = new Map([[`xl/${part}`, `<x>${"<!--".repeat(200_000)}`]]);
    const bytes = await buildPackage([{ name: "S", xml: sheet(CELL) }], parts);
    const begun = performance.now();
    expect(openWorkbook(bytes).read("S").cell(0, 0)).toBe("mark");
    expect(performance.now() - begun).toBeLessThan(2_000);
  });
});
