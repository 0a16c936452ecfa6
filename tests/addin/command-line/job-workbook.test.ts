import { mkdirSync, mkdtempSync, readFileSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { openWorkbook } from "../../../addin/xlsx/read/open-workbook";
import { writeNewWorkbook } from "../../../addin/xlsx/write/new-workbook";
import type { Cell } from "../../../core/schedule";
import { barwright } from "../../_support/command-line";
import { SCHEDULE_HEADER } from "../../_support/schedule-header";

const root = mkdtempSync(join(tmpdir(), "barwright-paper-"));
process.env.XDG_CACHE_HOME = mkdtempSync(join(tmpdir(), "barwright-paper-cache-"));

const bars = (size: string, pour: string | null): Cell[][] => [
  [pour, "Wall", "01", size, 4, 6000, "00", 6000],
  [pour, "Wall", "02", size, 7, 1850, "21", 1000, 400, 500],
];

function schedule(
  path: string,
  number: string,
  revision: string,
  rows: readonly (readonly Cell[])[],
): string {
  const title: Cell[][] = [
    ["Job:", "Sallow Locks"],
    ["Schedule ref:", number],
    ["Revision:", revision],
  ];
  const file = join(root, path);
  mkdirSync(join(file, ".."), { recursive: true });
  const sheets = [{ name: "Bars", rows: [...title, ["Date:", "2030-02-03"], [], SCHEDULE_HEADER, ...rows] }];
  writeFileSync(file, writeNewWorkbook({ sheets }));
  return file;
}

/** All cells of a sheet, row by row. */
function cellsOf(path: string, name: string): Cell[][] {
  const sheet = openWorkbook(readFileSync(path)).read(name);
  return Array.from({ length: sheet.rowCount }, (_, row) =>
    Array.from({ length: sheet.columnCount }, (_, column) => sheet.cell(row, column)),
  );
}

describe("the workbook of a job", () => {
  it("holds the command's own totals by pour, member, schedule and date, and each bar's source", async () => {
    schedule("job/a.xlsx", "SL-1", "B", bars("H16", "P1"));
    schedule("job/old/a.xlsx", "SL-1", "A", bars("H20", "P1"));
    schedule("job/b.xlsx", "SL-2", "A", [
      ...bars("H12", "P2"),
      ["P2", "Wall", "03", "H17", 4, 6000, "00", 6000],
    ]);
    const out = join(root, "job.xlsx");
    const run = await barwright(["tonnage", join(root, "job"), "--out", out, "--json"]);
    expect(run.exit, run.err).toBe(0);
    const { job } = JSON.parse(run.out);
    const names = openWorkbook(readFileSync(out)).sheets.map(({ name }) => name);
    expect(names).toEqual([
      "Job",
      "By pour",
      "By member",
      "By schedule",
      "By date",
      "Bars",
      "Not counted",
      "Findings",
    ]);
    for (const name of names.filter((each) => each.startsWith("By "))) {
      const last = cellsOf(out, name).at(-1)!;
      expect([name, last[0], last.at(-1)]).toEqual([name, "total", job.total]);
    }
    expect(
      cellsOf(out, "By pour")
        .slice(1, -1)
        .map((row) => [row[0], row.at(-1)]),
    ).toEqual(job.pours.map(({ pour, total }: { pour: string; total: number }) => [pour, total]));
    expect(cellsOf(out, "By date").map((row) => row[0])).toEqual(["Date", "2030-02-03", "total"]);
    const listed = cellsOf(out, "Bars").slice(1);
    // code 21: A + B + C - r - 2d is 1836 for H16 and 1852 for H12, up to the next 25 mm;
    // 1.579 and 0.888 kg/m (UK three-decimal table)
    const mass = (24 + 7 * 1.85) * 1.579 + (24 + 7 * 1.875) * 0.888;
    expect(listed.reduce((sum, row) => sum + Number(row[11]), 0)).toBeCloseTo(mass, 6);
    expect(job.total * 1000).toBeCloseTo(mass, 3);
    const sources = listed.map(([book, sheet, row, of, revision]) => [
      String(book).slice(root.length + 5),
      sheet,
      row,
      of,
      revision,
    ]);
    expect(sources).toEqual([
      ["a.xlsx", "Bars", 7, "SL-1", "B"],
      ["a.xlsx", "Bars", 8, "SL-1", "B"],
      ["b.xlsx", "Bars", 7, "SL-2", "A"],
      ["b.xlsx", "Bars", 8, "SL-2", "A"],
    ]);
    const left = cellsOf(out, "Not counted")
      .slice(1)
      .map((row) => row.slice(1));
    expect(left).toEqual([
      ["Bars", "all", expect.stringContaining("is newer and counts")],
      ["Bars", "D9", expect.stringContaining('"H17" is no bar')],
    ]);
    expect(cellsOf(out, "Findings").map((row) => row[3])).toContain("JOB101");
    const sheet = openWorkbook(readFileSync(out)).read("Job", { formulas: true });
    expect(sheet.formulaAt(6, 1)?.text).toBe("(SUM('Bars'!L:L))/1000");
  });

  it("is no book of the job that it lies in, and takes no book's place", async () => {
    const file = schedule("mine/a.xlsx", "SL-1", "B", bars("H16", "P1"));
    schedule("mine/b.xlsx", "SL-2", "B", bars("H16", "P1"));
    const out = join(root, "mine", "totals.xlsx");
    for (const _ of [1, 2]) {
      const run = await barwright(["tonnage", join(root, "mine"), "--out", out, "--json"]);
      expect(JSON.parse(run.out).books).toHaveLength(2);
    }
    const over = await barwright(["tonnage", file, join(root, "mine", "b.xlsx"), "--out", file]);
    expect([over.exit, over.err]).toEqual([2, expect.stringContaining("--out names the book itself")]);
    const other = await barwright(["tonnage", join(root, "mine"), "--out", join(root, "totals.csv")]);
    expect([other.exit, other.err]).toEqual([2, expect.stringContaining("name it .xlsx")]);
  });

  it("of one book with several schedules answers in the book's own shape", async () => {
    const file = join(root, "two.xlsx");
    const sheets = ["One", "Two"].map((name) => ({ name, rows: [SCHEDULE_HEADER, ...bars("H16", name)] }));
    writeFileSync(file, writeNewWorkbook({ sheets }));
    const out = join(root, "two-totals.xlsx");
    const run = await barwright(["tonnage", file, "--out", out, "--json"]);
    const { total, books } = JSON.parse(run.out);
    expect(books).toBe(undefined);
    expect(cellsOf(out, "By pour").at(-1)!.at(-1)).toBe(total);
  });
});

describe("the totals of one schedule", () => {
  it.each([
    ["pours in a column", bars("H16", "P1")],
    [
      "no pours, and a size without a mass",
      [...bars("H16", null), [null, "Wall", "03", "H17", 4, 6000, "00", 6000]],
    ],
  ])("are a Totals sheet in a copy, live and with the command's results: %s", async (name, rows) => {
    const file = schedule(`one/${name}.xlsx`, "SL-9", "A", rows as Cell[][]);
    const out = join(root, `${name} copy.xlsx`);
    const run = await barwright(["tonnage", file, "--out", out, "--json"]);
    expect(run.exit, run.err).toBe(0);
    const { total } = JSON.parse(run.out);
    const sheet = openWorkbook(readFileSync(out)).read("Totals", { formulas: true });
    const table = cellsOf(out, "Totals");
    const last = table.filter((row) => String(row[0]).toLowerCase() === "total").at(-1)!;
    const known = last.slice(0, 4).filter((cell) => cell !== null);
    expect(known.at(-1)).toBeCloseTo(total, 9);
    expect(sheet.formulaAt(6, 0)?.text).toContain("BAR_TONNAGE");
    // a second run writes its own sheet anew, and changes nothing else
    const again = join(root, `${name} again.xlsx`);
    expect((await barwright(["tonnage", out, "--out", again])).exit).toBe(0);
    expect(openWorkbook(readFileSync(again)).sheets.map(({ name: of }) => of)).toEqual(["Bars", "Totals"]);
  });

  it("store every pour and size of a schedule that is longer than its table", async () => {
    const rows = ["P1", "P2", "P3"].flatMap((pour) =>
      ["H10", "H16", "H25"].flatMap((size) => bars(size, pour)),
    );
    const file = schedule("one/long.xlsx", "SL-9", "A", rows);
    const out = join(root, "long copy.xlsx");
    const { total, pours } = JSON.parse((await barwright(["tonnage", file, "--out", out, "--json"])).out);
    const table = cellsOf(out, "Totals").slice(6, 11);
    const stored = table.map((row) => row.slice(0, 5));
    expect(stored).toEqual([
      ["pour", "H10", "H16", "H25", "total"],
      ...pours.map((line: { pour: string; bySize: Record<string, number>; total: number }) => [
        line.pour,
        ...["H10", "H16", "H25"].map((size) => expect.closeTo(line.bySize[size]!, 9)),
        expect.closeTo(line.total, 9),
      ]),
      ["total", ...[1, 2, 3].map(() => expect.any(Number)), expect.closeTo(total, 9)],
    ]);
    // 4 x 6.000 m + 7 x 1.850 m = 36.95 m of H16 a pour at 1.579 kg/m, by the UK three-decimal table
    expect(stored.at(-1)![2]).toBeCloseTo((36.95 * 1.579 * 3) / 1000, 9);
  });

  it("are not written over a sheet Totals of the user's own", async () => {
    const file = join(root, "own.xlsx");
    const sheets = [
      { name: "Bars", rows: [SCHEDULE_HEADER, ...bars("H16", "P1")] },
      { name: "Totals", rows: [["mine", 1]] },
    ];
    writeFileSync(file, writeNewWorkbook({ sheets }));
    const run = await barwright(["tonnage", file, "--out", join(root, "own copy.xlsx")]);
    expect([run.exit, run.err]).toEqual([2, expect.stringContaining("has a sheet Totals of its own")]);
  });
});
