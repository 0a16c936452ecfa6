import { mkdtempSync, readFileSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { parseAddress } from "../../../addin/workbook/cell-address";
import { textConstant } from "../../../addin/workbook/defined-name";
import { settingPieces } from "../../../addin/workbook/setting-pieces";
import { patchWorkbook } from "../../../addin/xlsx/patch/patch-workbook";
import { openWorkbook } from "../../../addin/xlsx/read/open-workbook";
import { writeNewWorkbook } from "../../../addin/xlsx/write/new-workbook";
import { auditSettings } from "../../../core/audit/audit-settings";
import { settingsToText } from "../../../core/audit/settings-text";
import type { Cell } from "../../../core/schedule";
import { barwright } from "../../_support/command-line";

const folder = mkdtempSync(join(tmpdir(), "barwright-inspect-"));
const at = (name: string): string => join(folder, name);

const HEADER: Cell[] = ["Member", "Bar mark", "Type and size", "Total no.", "Length", "Shape code", "A", "B"];
/** Twelve L bars, shape 11 of BS 8666:2005, of one size; the fifth and later are drawn or not by the count. */
const bars = (legs: number): Cell[][] =>
  Array.from({ length: 12 }, (_, index) => [
    "B1",
    String(index + 1).padStart(2, "0"),
    "H16",
    4,
    1450,
    "11",
    legs,
    500,
  ]);

function book(name: string, legs = 1000): string {
  const sheets = [{ name: "Bars", rows: [HEADER, ...bars(legs)] }];
  writeFileSync(at(name), writeNewWorkbook({ sheets }));
  return at(name);
}

/** The sheet Inspection of a file: its rows as they stand, and where a text of a column stands. */
function inspection(path: string): Cell[][] {
  const sheet = openWorkbook(readFileSync(path)).read("Inspection");
  return Array.from({ length: sheet.rowCount }, (_, row) =>
    Array.from({ length: sheet.columnCount }, (_, column) => sheet.cell(row, column)),
  );
}

/** Writes what was measured beside the line of a mark and a dimension. */
function measure(from: string, to: string, measured: readonly (readonly [string, string, Cell])[]): string {
  const rows = inspection(from);
  const writes = measured.map(([mark, what, value]) => {
    const row = rows.findIndex((cells) => cells[2] === mark && cells[3] === what);
    return { ...parseAddress(`H${row + 1}`)!, value };
  });
  const workbook = openWorkbook(readFileSync(from));
  writeFileSync(at(to), patchWorkbook(workbook, { sheets: new Map([["Inspection", { writes }]]) }));
  return at(to);
}

interface Judged {
  readonly measured: number;
  readonly waiting: number;
  readonly findings: readonly { readonly code: string; readonly cell: string; readonly message: string }[];
}

describe("barwright inspect", () => {
  it("draws by a sampling that it states, and the same each time", async () => {
    const path = book("drawn.xlsx");
    const run = await barwright(["inspect", path, "--every", "5", "--out", at("sheet.xlsx")]);
    expect(run.exit, run.err).toBe(0);
    expect(run.out).toContain(
      "the first mark and every 5th after it, in the order of the schedule: 3 of 12 marks",
    );
    const marks = inspection(at("sheet.xlsx")).map((cells) => cells[2]);
    expect([...new Set(marks.filter((mark) => /^\d\d$/.test(String(mark))))]).toEqual(["01", "06", "11"]);
    expect((await barwright(["inspect", path, "--every", "5"])).out).toBe(run.out);
    expect((await barwright(["inspect", path, "--every", "3"])).out).toContain("every 3rd after it");
    const bad = await barwright(["inspect", path, "--every", "0"]);
    expect([bad.exit, bad.err]).toEqual([2, expect.stringContaining("give a whole number")]);
  });

  it("is no schedule to any other command, and none of its lines is a bar", async () => {
    const path = book("apart.xlsx");
    await barwright(["inspect", path, "--every", "1", "--out", at("apart-sheet.xlsx")]);
    for (const command of ["check", "tonnage"]) {
      const [before, after] = await Promise.all(
        [path, at("apart-sheet.xlsx")].map((file) => barwright([command, file, "--json"])),
      );
      const plain = ({ out }: { out: string }) => {
        const { rows, findings, total } = JSON.parse(out) as {
          rows: { bars: number; totals: number; unread: number } | number;
          findings: unknown;
          total: unknown;
        };
        // its rows are remarks of the book, which are counted with the notes
        const { notes: _, ...read } = typeof rows === "number" ? { rows, notes: 0 } : { notes: 0, ...rows };
        return { read, findings, total };
      };
      expect(plain(after!)).toEqual(plain(before!));
    }
  });

  it("tells what is out of tolerance and by how much, the rest is waiting", async () => {
    const path = book("measured.xlsx");
    await barwright(["inspect", path, "--every", "1", "--out", at("to-fill.xlsx")]);
    // BS 8666:2005 table 5: bends of up to 1000 mm, +5 -5; B is the free leg and not judged
    const filled = measure(at("to-fill.xlsx"), "filled.xlsx", [
      ["01", "A", 1005],
      ["02", "A", 1006],
      ["03", "A", 993],
      ["04", "A", "nearly"],
    ]);
    const run = await barwright(["inspect", filled, "--json"]);
    expect(run.exit, run.err).toBe(0);
    const judged = JSON.parse(run.out) as Judged;
    expect(judged.measured).toBe(4);
    expect(judged.findings.map(({ code, message }) => [code, message.slice(0, 5)])).toEqual([
      ["out-of-tolerance", "02, A"],
      ["out-of-tolerance", "03, A"],
      ["not-read", "04, A"],
    ]);
    expect(judged.findings[0]?.message).toContain("1 mm over");
    expect(judged.findings[1]?.message).toContain("2 mm short");
  });

  it("is told by check too, at its cell, and marked in the copy", async () => {
    await barwright(["inspect", book("for-check.xlsx"), "--every", "1", "--out", at("for-check-fill.xlsx")]);
    const filled = measure(at("for-check-fill.xlsx"), "for-check-filled.xlsx", [
      ["02", "A", 1006],
      ["04", "A", "nearly"],
    ]);
    const run = await barwright(["check", filled, "--json"]);
    const { findings, counts } = JSON.parse(run.out);
    const measured = findings.filter(({ sheet }: { sheet: string }) => sheet === "Inspection");
    const rows = inspection(filled);
    const rowOf = (mark: string): number =>
      rows.findIndex((cells) => cells[2] === mark && cells[3] === "A") + 1;
    expect(measured).toMatchObject([
      { code: "MEASURED101", name: "out-of-tolerance", severity: "off-standard", cell: `H${rowOf("02")}` },
      { code: "MEASURED103", name: "not-read", severity: "doubtful", cell: `H${rowOf("04")}` },
    ]);
    expect(measured[0].message).toContain("02, A: measured 1006 mm, allowed 995 mm to 1005 mm");
    expect(measured[0].cite.document).toContain("8666");
    expect(counts).not.toEqual(
      JSON.parse((await barwright(["check", book("bare.xlsx"), "--json"])).out).counts,
    );
    expect(run.err).toContain('sheet "Inspection": 2 lengths measured');
    const text = await barwright(["check", filled, "--out", at("for-check-marked.xlsx")]);
    expect(text.out).toContain("02, A: measured 1006 mm");
    // what was measured stands as it was
    expect(inspection(at("for-check-marked.xlsx"))).toEqual(rows);
    const one = await barwright(["check", filled, "--sheet", "Bars"]);
    expect(one.err).toContain('sheet "Inspection": not judged');

    // waived row by row, with reason, name and date
    const waiver = { code: "MEASURED101", sheet: "Inspection", key: `row ${rowOf("02")}` };
    const decided = { reason: "made to suit", by: "A. Foreman", date: "2031-04-02" };
    const settings = settingsToText(auditSettings.parse({ waivers: [{ ...waiver, ...decided }] }));
    const names = new Map(
      [...settingPieces("Barwright.Audit", settings ?? "")].map(([name, text]) => [
        name,
        text === null ? null : textConstant(text),
      ]),
    );
    writeFileSync(
      at("waived.xlsx"),
      patchWorkbook(openWorkbook(readFileSync(filled)), { sheets: new Map(), names }),
    );
    const waived = JSON.parse((await barwright(["check", at("waived.xlsx"), "--json"])).out);
    const left = waived.findings.filter(({ sheet }: { sheet: string }) => sheet === "Inspection");
    expect(left.map(({ code }: { code: string }) => code)).toEqual(["MEASURED103"]);
    expect(waived.waivers).toMatchObject([
      {
        rule: "MEASURED101",
        sheet: "Inspection",
        row: rowOf("02"),
        reason: "made to suit",
        by: "A. Foreman",
      },
    ]);
    const said = (await barwright(["check", at("waived.xlsx")])).out;
    expect(said).toContain(`WAIVED (1)\n  Inspection!H${rowOf("02")}  02, A: measured 1006 mm`);
  });

  it("judges by the schedule as it now stands, and keeps what was measured", async () => {
    const path = book("old.xlsx");
    await barwright(["inspect", path, "--every", "12", "--out", at("old-sheet.xlsx")]);
    const filled = measure(at("old-sheet.xlsx"), "old-filled.xlsx", [["01", "A", 1000]]);
    const changed = openWorkbook(readFileSync(filled));
    const writes = [{ ...parseAddress("G2")!, value: 1100 }];
    writeFileSync(at("new.xlsx"), patchWorkbook(changed, { sheets: new Map([["Bars", { writes }]]) }));
    const { findings } = JSON.parse((await barwright(["inspect", at("new.xlsx"), "--json"])).out) as Judged;
    expect(findings.map(({ code }) => code)).toEqual(["schedule-changed", "out-of-tolerance"]);
    const again = await barwright(["inspect", filled, "--out", at("again.xlsx")]);
    expect([again.exit, again.err]).toEqual([2, expect.stringContaining("what was measured there stays")]);
  });
});
