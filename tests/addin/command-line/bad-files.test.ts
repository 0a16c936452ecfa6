import { existsSync, mkdtempSync, readFileSync, truncateSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import JSZip from "jszip";
import { describe, expect, it } from "vitest";
import { openWorkbook } from "../../../addin/xlsx/read/open-workbook";
import { writeNewWorkbook } from "../../../addin/xlsx/write/new-workbook";
import { buildPackage } from "../../_support/build-package";
import { barwright } from "../../_support/command-line";

const folder = mkdtempSync(join(tmpdir(), "barwright-bad-"));
const ROWS = [
  ["Member", "Bar mark", "Type and size", "Total no.", "Length (mm)", "Shape code", "A"],
  ["B1", "01", "H16", 2, 1000, "00", 1000],
];

function file(name: string, bytes: Uint8Array | string): string {
  const path = join(folder, name);
  writeFileSync(path, bytes);
  return path;
}

describe("files that are odd or damaged", () => {
  it("are refused in one line, and nothing is written", async () => {
    const good = writeNewWorkbook({ sheets: [{ name: "S", rows: ROWS }] });
    const bad = [
      [file("short.xlsx", good.subarray(0, good.length / 2)), "cut short"],
      [file("text.xlsx", "hello"), "not a workbook"],
      [file("wide.csv", "a,".repeat(20_000)), "1 rows and 20001 columns"],
      [file("zeros.csv", new Uint8Array(100)), "not a text file"],
      // a folder is a job of many books, whose copies go into a folder
      [folder, /is a folder|go into a folder/],
      [join(folder, "none.xlsx"), "there is no file"],
    ] as const;
    for (const [path, words] of bad) {
      for (const command of ["check", "recalc", "tickets"]) {
        const out = join(folder, `out-of-${command}.${command === "tickets" ? "html" : "xlsx"}`);
        const run = await barwright([command, path, "--out", out]);
        const told = run.err.trim().split("\n");
        // a folder is a job: each of its files that cannot be read has its line
        const lines = path === folder && command === "tickets" ? told.length : 1;
        expect([run.exit, run.out, told.length, existsSync(out)], `${command} ${path}`).toEqual([
          2,
          "",
          lines,
          false,
        ]);
        if (lines === 1) expect(told[0]).toMatch(words);
        else expect(told.join("\n")).toContain("short.xlsx");
      }
    }
  });

  it("with the longest text a cell holds are told in lines that a terminal can show", async () => {
    const rows = ROWS.map((row, at) => [at === 0 ? "Pour" : "p".repeat(32_767), ...row]);
    const book = file("long.xlsx", writeNewWorkbook({ sheets: [{ name: "S", rows }] }));
    for (const command of ["check", "tonnage", "cutplan"]) {
      const { out, err } = await barwright([command, book]);
      const longest = Math.max(...`${out}\n${err}`.split("\n").map(({ length }) => length));
      expect(longest, command).toBeLessThan(400);
    }
  });

  it.each(["member", "mark", "size"])(
    "with a %s of a whole cell are named in lines of a terminal",
    async (what) => {
      // BS 8666:2005 Table 2: the least former of a 16 mm bar is 64 mm
      const bar = ["B1", "01", "H16", 2, 1850, "21", 700, 600, 700, 40];
      const place = ["member", "mark", "size"].indexOf(what);
      const barWith = (at: number, text: string) => bar.map((own, column) => (column === at ? text : own));
      const long = barWith(place, `${"7 ".repeat(16_000)}x`);
      const head = [
        "Member",
        "Bar mark",
        "Type and size",
        "Total no.",
        "Length",
        "Shape code",
        "A",
        "B",
        "C",
        "Former",
      ];
      const book = (name: string, rows: unknown[][]): string =>
        file(name, writeNewWorkbook({ sheets: [{ name: "S", rows: [head, ...rows] as never }] }));
      const older = book("before-long.xlsx", [bar, barWith(1, "02")]);
      const newer = book("with-long.xlsx", [bar, long, barWith(1, "03")]);
      for (const args of [["check"], ["tonnage"], ["cutplan"], ["inspect"], ["compare", older]]) {
        const { out, err } = await barwright([...args, newer]);
        expect(out, err).not.toBe("");
        const longest = Math.max(...`${out}\n${err}`.split("\n").map(({ length }) => length));
        expect(longest, args[0]).toBeLessThan(600);
      }
      const page = await barwright(["tickets", newer, "--out", join(folder, "long.html")]);
      expect([page.exit, page.err]).toEqual([1, expect.not.stringContaining("error of ours")]);
    },
  );

  it("with one stray cell in the last corner of the sheet are checked like any other", async () => {
    const rows = ROWS.map((row, at) => {
      const cells = row.map((cell, column) => {
        const address = `${"ABCDEFG"[column]}${at + 1}`;
        return typeof cell === "number"
          ? `<c r="${address}"><v>${cell}</v></c>`
          : `<c r="${address}" t="inlineStr"><is><t>${cell}</t></is></c>`;
      });
      return `<row r="${at + 1}">${cells.join("")}</row>`;
    });
    rows.push('<row r="1048576"><c r="XFD1048576"><v>1</v></c></row>');
    const path = file("far.xlsx", await buildPackage([{ name: "S", xml: rows.join("") }]));
    const run = await barwright(["check", path, "--json"]);
    const { rows: classes } = JSON.parse(run.out) as { rows: Record<string, number> };
    expect(classes).toMatchObject({ bars: 1, headings: 1 });
    expect(Object.values(classes).reduce((sum, count) => sum + count, 0)).toBe(1_048_576);
  });

  it("of other kinds are named as what they are", async () => {
    const zip = new JSZip();
    zip.file("mimetype", "application/vnd.oasis.opendocument.spreadsheet", { compression: "STORE" });
    zip.file("content.xml", "<office/>");
    const path = file("book.ods", await zip.generateAsync({ type: "uint8array" }));
    const run = await barwright(["check", path]);
    expect([run.exit, run.err]).toEqual([
      2,
      expect.stringContaining("an OpenDocument spreadsheet (.ods): save it as .xlsx"),
    ]);
  });

  it("too long for any sheet are refused before they are read", async () => {
    const long = join(folder, "long.csv");
    writeFileSync(long, "");
    truncateSync(long, 3_000_000_000);
    const wide = file("cells.csv", "1,2,3,4,5,6,7,8,9,10\n".repeat(2_000_001));
    for (const [path, words] of [
      [long, "at most 256 MiB are read"],
      [wide, "20,000,000 are read"],
    ] as const) {
      const run = await barwright(["check", path]);
      expect([run.exit, run.out, run.err.trim().split("\n")]).toEqual([
        2,
        "",
        [expect.stringContaining(words)],
      ]);
    }
  });

  it("whose text fills whole cells have findings that a sheet can hold", async () => {
    const rows = [ROWS[0]!, ["B1", "01", "H16", 2, "x".repeat(32_000), "00", 1000]];
    const path = file("whole-cells.xlsx", writeNewWorkbook({ sheets: [{ name: "S", rows }] }));
    const out = join(folder, "whole-cells-checked.xlsx");
    await barwright(["check", path, "--out", out]);
    const sheet = openWorkbook(readFileSync(out)).read("Findings");
    const longest = Array.from(
      { length: sheet.rowCount },
      (_, row) => String(sheet.cell(row, 3) ?? "").length,
    );
    expect(Math.max(...longest)).toBeLessThan(2_000);
  });

  it("keep their kind: a copy named otherwise is refused", async () => {
    const path = file("book.xlsx", writeNewWorkbook({ sheets: [{ name: "S", rows: ROWS }] }));
    for (const command of ["check", "recalc"]) {
      const run = await barwright([command, path, "--out", join(folder, "copy.xlsm")]);
      expect([run.exit, run.err]).toEqual([2, expect.stringContaining("so name it .xlsx")]);
    }
  });
});
