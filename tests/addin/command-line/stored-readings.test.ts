import { mkdtempSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { textConstant } from "../../../addin/workbook/defined-name";
import { writeNewWorkbook } from "../../../addin/xlsx/write/new-workbook";
import { barwright } from "../../_support/command-line";

const folder = mkdtempSync(join(tmpdir(), "barwright-readings-"));
/** "Heap" is no word for a number of bars; its user says in the workbook that it is one */
const HEADER = ["Member", "Bar mark", "Type and size", "Heap", "Length (mm)", "Shape code", "A (mm)"];
const CORRECTED = '{"readings":[{"sheet":"S","columns":[{"column":"Heap","kind":"total"}]}]}';
const SAID = 'sheet "S" is read as corrected by hand: column "Heap" taken as total number';

function book(name: string, count: number, stored: string | null): string {
  const path = join(folder, name);
  const rows = [HEADER, ["B1", "01", "H20", count, 3000, "00", 3000]];
  const names = new Map(stored === null ? [] : [["Barwright.Audit", textConstant(stored)]]);
  writeFileSync(path, writeNewWorkbook({ sheets: [{ name: "S", rows }], names }));
  return path;
}

describe("columns that the workbook's user corrected", () => {
  it("count in tonnage, and it is said", async () => {
    const without = await barwright(["tonnage", book("plain.xlsx", 4, null), "--json"]);
    expect(JSON.parse(without.out)).toMatchObject({ total: 0, rows: 0 });
    expect(without.err).not.toContain("corrected");
    const run = await barwright(["tonnage", book("corrected.xlsx", 4, CORRECTED), "--json"]);
    // 2.466 kg/m of BS 4449:2005 table 7: 4 x 3 m x 2.466 = 29.592 kg
    expect(JSON.parse(run.out)).toMatchObject({ total: 0.029592, rows: 1 });
    expect(run.err).toContain(SAID);
  });

  it("count in cutplan", async () => {
    const without = await barwright(["cutplan", book("plan-plain.xlsx", 5, null)]);
    expect(without.exit).toBe(2);
    const run = await barwright(["cutplan", book("plan.xlsx", 5, CORRECTED), "--stock", "12000", "--json"]);
    // four of 3 m from one bar of 12 m, so five take two
    expect(JSON.parse(run.out).groups).toMatchObject([{ size: "H20", bars: 2, pieces: 5 }]);
    expect(run.err).toContain(SAID);
  });

  it("make a plain list of lengths and counts a schedule in cutplan", async () => {
    const path = join(folder, "list.xlsx");
    const stored = '{"readings":[{"sheet":"S","columns":[{"column":"length","kind":"length","unit":"m"}]}]}';
    const rows = [
      ["mark", "size", "length", "count"],
      ["01", "H20", 3, 5],
    ];
    const names = new Map([["Barwright.Audit", textConstant(stored)]]);
    writeFileSync(path, writeNewWorkbook({ sheets: [{ name: "S", rows }], names }));
    const run = await barwright(["cutplan", path, "--stock", "12000", "--json"]);
    expect(JSON.parse(run.out).groups).toMatchObject([{ size: "H20", bars: 2, pieces: 5 }]);
  });

  it("are each book's own in compare", async () => {
    const old = book("old.xlsx", 4, CORRECTED);
    const run = await barwright(["compare", old, book("new.xlsx", 6, CORRECTED), "--json"]);
    expect(JSON.parse(run.out).changes).toMatchObject([{ mark: "01", count: { before: 4, after: 6 } }]);
    expect(run.err.split(SAID)).toHaveLength(3);
    const half = await barwright(["compare", old, book("new-plain.xlsx", 6, null), "--json"]);
    expect(JSON.parse(half.out).changes).toMatchObject([{ mark: "01", count: { before: 4, after: null } }]);
  });

  it("count on tickets, and check says them too", async () => {
    const path = book("tickets.xlsx", 4, CORRECTED);
    const run = await barwright(["tickets", path, "--json"]);
    expect(JSON.parse(run.out).tickets).toMatchObject([{ mark: "01", count: 4 }]);
    expect(run.err).toContain(SAID);
    expect((await barwright(["check", path])).err).toContain(SAID);
  });

  it("are told of where they cannot be read", async () => {
    const run = await barwright(["tonnage", book("broken.xlsx", 4, '{"readings":3}'), "--json"]);
    expect(run.err).toMatch(
      /settings kept in the workbook could not be read: readings.*no column is corrected/,
    );
    expect(JSON.parse(run.out)).toMatchObject({ rows: 0 });
  });
});
