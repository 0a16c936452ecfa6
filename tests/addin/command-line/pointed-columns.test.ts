import { mkdtempSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { writeNewWorkbook } from "../../../addin/xlsx/write/new-workbook";
import { barwright } from "../../_support/command-line";

const folder = mkdtempSync(join(tmpdir(), "barwright-pointed-"));
/** Without a heading, and in cm: numbers of bars and lengths look alike, and no product tells them apart. */
const BARS = [
  ["a", 12, 240, 410],
  ["b", 16, 310, 260],
  ["c", 12, 180, 520],
  ["d", 10, 420, 350],
  ["e", 16, 260, 480],
];
const READ = "B=size, C=total, D=length in cm";
// kg/m of the UK three-decimal table: 0.888, 1.579 and 0.616; number x metres of each row, summed by hand
const TONNES =
  (0.888 * (240 * 4.1 + 180 * 5.2) + 1.579 * (310 * 2.6 + 260 * 4.8) + 0.616 * (420 * 3.5)) / 1000;

function book(name: string, rows: (string | number)[][] = BARS): string {
  const path = join(folder, name);
  writeFileSync(path, writeNewWorkbook({ sheets: [{ name: "List", rows }] }));
  return path;
}

describe("columns pointed at by hand", () => {
  it("should make a table of a list without a heading, and be said", async () => {
    const path = book("list.xlsx");
    const without = await barwright(["tonnage", path, "--json"]);
    expect(JSON.parse(without.out || "{}").total ?? null).not.toBeCloseTo(TONNES, 4);
    const run = await barwright(["tonnage", path, "--read", READ, "--json"]);
    expect(JSON.parse(run.out).total).toBeCloseTo(TONNES, 6);
    expect(run.err).toContain(
      'sheet "List" is read as corrected by hand: column "B" taken as bar size; column "C" taken as total number; column "D" taken as cut length in cm',
    );
  });

  it("should stay in the marked copy, which every surface reads alike", async () => {
    const out = join(folder, "copy.xlsx");
    const checked = await barwright(["check", book("kept.xlsx"), "--read", READ, "--out", out, "--json"]);
    const [reading] = JSON.parse(checked.out).reading;
    expect(
      reading.columns.map(({ column, kind, by }: { [name: string]: string }) => [column, kind, by]),
    ).toEqual([
      ["B", "size", "user"],
      ["C", "total", "user"],
      ["D", "length", "user"],
    ]);
    const run = await barwright(["tonnage", out, "--sheet", "List", "--json"]);
    expect(JSON.parse(run.out).total).toBeCloseTo(TONNES, 6);
  });

  it("should stand before the words of a heading", async () => {
    const path = book("heading.xlsx", [
      ["Mark", "Size", "No.", "Length", "Heap"],
      ...BARS.map((row) => [...row, 2]),
    ]);
    const run = await barwright([
      "tonnage",
      path,
      "--read",
      "List!Heap=total",
      "--read",
      "C=left out, D=cm",
      "--json",
    ]);
    // two bars a row in place of the numbers of column C
    const tonnes = (2 * (0.888 * (4.1 + 5.2) + 1.579 * (2.6 + 4.8) + 0.616 * 3.5)) / 1000;
    expect(JSON.parse(run.out).total).toBeCloseTo(tonnes, 6);
  });

  it("should be the column of a letter, though the heading of another reads the same", async () => {
    const path = book("letters.xlsx", [
      ["Bar mark", "Size", "Qty", "Length mm", "Shape", "A", "B", "C"],
      ["1", "H16", 40, 1850, "21", 400, 1150, 400],
      ["2", "H12", 60, 1200, "11", 900, 325, ""],
    ]);
    const tonnes = async (...read: string[]) =>
      JSON.parse((await barwright(["tonnage", path, ...read, "--json"])).out).total;
    const total = await tonnes();
    // BS 8666:2005 shape 21: 400 + 1150 + 400 - r - 2d = 1950 - 32 - 32, up to 1900; shape 11: 900 + 325 - r/2 - d
    // = 1225 - 12 - 12, up to 1225
    expect(total).toBeCloseTo((40 * 1.9 * 1.579 + 60 * 1.225 * 0.888) / 1000, 9);
    expect(await tonnes("--read", "C=total")).toBe(total);
    expect(await tonnes("--read", "H=C")).toBe(total);
    expect(await tonnes("--read", "Qty=total")).toBe(total);
  });

  it.each([
    ["D", '"D" says nothing of a column'],
    ["D=heap", '"heap" is nothing that a column can hold'],
    ["Other!D=total", 'there is no sheet "Other"'],
  ])("should be refused where %s says nothing: %s", async (read, why) => {
    const run = await barwright(["check", book("refused.xlsx"), "--read", read]);
    expect(run.exit).toBe(2);
    expect(run.err).toContain(why);
  });
});
