import { mkdtempSync, readFileSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { openWorkbook } from "../../../addin/xlsx/read/open-workbook";
import { writeNewWorkbook } from "../../../addin/xlsx/write/new-workbook";
import type { Cell } from "../../../core/schedule";
import { barwright } from "../../_support/command-line";
import { comparePackages } from "../../_support/compare-packages";

const folder = mkdtempSync(join(tmpdir(), "barwright-cutplan-"));

function file(name: string, ...lines: string[]): string {
  const path = join(folder, name);
  writeFileSync(path, `${lines.join("\n")}\n`);
  return path;
}

describe("barwright cutplan", () => {
  it("plans a plain list size by size with its bound", async () => {
    const path = file(
      "list.csv",
      "mark,size,length,count",
      "01,H16,4000,30",
      "02,H16,3500,20",
      "03,H20,2500,7",
    );
    const run = await barwright(["cutplan", path, "--json", "--stock", "12000"]);
    const { groups } = JSON.parse(run.out) as { groups: Record<string, unknown>[] };
    // 190 m of H16 need 16 bars at least; three of either length fit a bar, so 10 + 7; 17.5 m of H20, four a bar
    expect(
      groups.map(({ size, bars, lowerBound, stockLength }) => [size, bars, lowerBound, stockLength]),
    ).toEqual([
      ["H16", 17, 17, 204_000],
      ["H20", 2, 2, 24_000],
    ]);
    expect(groups[0]?.["wasteRatio"]).toBeCloseTo((204 - 190) / 204, 10);
    for (const group of groups as {
      patterns: { stock: number; cuts: { length: number; count: number }[] }[];
    }[]) {
      for (const { stock, cuts } of group.patterns) {
        expect(cuts.reduce((sum, { length, count }) => sum + length * count, 0)).toBeLessThanOrEqual(stock);
      }
    }
  });

  it("plans the rest where bars are longer than the stock, names them, and exits 1", async () => {
    const path = file(
      "long.csv",
      "mark,size,length,count",
      "01,H16,4000,30",
      "02,H16,13000,2",
      "03,H20,12500,1",
    );
    const text = await barwright(["cutplan", path, "--stock", "12000,9000"]);
    expect(text.exit).toBe(1);
    expect(text.out).toContain("10 bars for 30 pieces, 0.0 % left over; 120000 mm to buy, proven least");
    expect(text.out).toContain("in no plan: 2 rows are refused");
    expect(text.out).toContain(
      "H16, mark 02, 2 bars, C3: a piece of 13000 mm is longer than the 12000 mm that the longest stock gives: order longer stock, or ask the designer for a lap",
    );
    const json = JSON.parse((await barwright(["cutplan", path, "--stock", "12000,9000", "--json"])).out) as {
      groups: { size: string; bars: number; pieces: number }[];
      refused: Record<string, unknown>[];
    };
    expect(json.groups).toMatchObject([{ size: "H16", bars: 10, pieces: 30 }]);
    expect(json.refused).toEqual([
      expect.objectContaining({
        size: "H16",
        mark: "02",
        sheet: "long",
        cell: "C3",
        length: 13000,
        count: 2,
        longestStock: 12000,
        code: "piece-longer-than-stock",
      }),
      expect.objectContaining({ size: "H20", mark: "03", cell: "C4", length: 12500, longestStock: 12000 }),
    ]);
  });

  it("says that nothing can be planned where every bar is longer than the stock", async () => {
    const run = await barwright(["cutplan", file("only.csv", "length,count", "13000,2"), "--stock", "12000"]);
    expect([run.exit, run.out.split("\n")[0]]).toEqual([1, "nothing can be planned: 1 row is refused"]);
  });

  it("names a row whose length or count is none, plans the others, and exits 1", async () => {
    const path = file("odd.csv", "length,count", "1300,2.5", "0,2", "-700,1", "4000,3", ",7", "4000,0");
    const run = await barwright(["cutplan", path, "--stock", "12000"]);
    expect([run.exit, run.out.split("\n")[0]], run.err).toEqual([
      1,
      "all pieces: 1 bar for 3 pieces, 0.0 % left over; 1 to buy, proven least",
    ]);
    for (const cell of ["B2", "A3", "A4", "A6"]) expect(run.out).toContain(`${cell}: `);
    expect(run.out).toContain("in no plan: 4 rows are refused");
  });

  it("exits 2 with one line where no row can be read", async () => {
    const part = file("part.csv", "length,count", "1300,2.5");
    const zero = file("zero.csv", "length,count", "0,2");
    for (const [path, words] of [
      [part, "B2"],
      [zero, "A2"],
    ] as const) {
      const run = await barwright(["cutplan", path, "--stock", "12000"]);
      expect([run.exit, run.err.trim().split("\n").length, run.out], run.err).toEqual([2, 1, ""]);
      expect(run.err).toContain(words);
    }
  });

  it("names the bad rows of a schedule by their cells, and plans grades apart", async () => {
    const path = file(
      "grades.csv",
      "Member,Bar mark,Size,No. of mbrs,No. in each,Total no.,Length (mm),Shape code,A,B,C,Grade",
      "B1,01,H16,1,3,3,4000,00,4000,,,B500B",
      "B1,02,H16,1,3,3,4000,00,4000,,,B500C",
      "B1,03,H16,1,2.5,2.5,3000,00,3000,,,B500B",
      "B1,04,H16,1,2,2,1200-1800,21,1000,400,500,B500B",
      "B1,05,H17,1,2,2,3000,00,3000,,,B500B",
    );
    const run = await barwright(["cutplan", path, "--json"]);
    const { groups, refused } = JSON.parse(run.out) as {
      groups: { size: string; grade: string; bars: number }[];
      refused: { mark: string; cell: string; message: string }[];
    };
    expect(groups.map(({ size, grade, bars }) => [size, grade, bars])).toEqual([
      ["H16", "B500B", 1],
      ["H16", "B500C", 1],
    ]);
    expect(refused.map(({ mark, cell }) => [mark, cell])).toEqual([
      ["03", "E4"],
      ["04", "G5"],
      ["05", "C6"],
    ]);
    expect(run.exit).toBe(1);
  });
});

describe("barwright cutplan --out COPY.xlsx", () => {
  const SCHEDULE: Cell[][] = [
    ["Member", "Bar mark", "Size", "Total no.", "Length (mm)", "Shape code", "A"],
    ["Slab", "01", "H16", 4, 5000, "00", 5000],
    ["Slab", "02", "H16", 1, 3800, "00", 3800],
  ];
  const SHOP: Cell[][] = [
    ["size", "stock length mm", "bars held", "kind"],
    [null, 12000, null, "stock"],
    ["H16", 3900, 2, "remnant"],
    [],
    [],
    [],
    ["limit", "value"],
    ["least remnant mm", 1500],
  ];
  const book = (name: string, sheets: { name: string; rows: Cell[][] }[]): string => {
    const path = join(folder, name);
    writeFileSync(path, writeNewWorkbook({ sheets }));
    return path;
  };

  it("puts the rests on the Shop sheet, takes off what is cut up, and keeps every other byte", async () => {
    const path = book("yard.xlsx", [
      { name: "Bars", rows: SCHEDULE },
      { name: "Shop", rows: SHOP },
    ]);
    const copy = join(folder, "yard-booked.xlsx");
    const run = await barwright(["cutplan", path, "--out", copy]);
    expect(run.exit, run.err).toBe(0);
    // 5000 twice from each of two bars leaves 2000; 3800 comes from a remnant of 3900, the 100 left is scrap
    const shop = openWorkbook(readFileSync(copy)).read("Shop");
    const rows = Array.from({ length: shop.rowCount }, (_, row) =>
      Array.from({ length: 4 }, (_, column) => shop.cell(row, column)),
    );
    expect(rows.slice(1, 5)).toEqual([
      [null, 12000, null, "stock"],
      ["H16", 3900, 1, "remnant"],
      ["H16", 2000, 2, "remnant"],
      [null, null, null, null],
    ]);
    const { changed, added, removed } = await comparePackages(readFileSync(path), readFileSync(copy));
    expect([[...changed].sort(), added, removed]).toEqual([
      ["xl/workbook.xml", "xl/worksheets/sheet2.xml"],
      [],
      [],
    ]);
    const again = await barwright(["cutplan", copy, "--out", join(folder, "yard-twice.xlsx")]);
    expect([again.exit, again.out]).toEqual([2, ""]);
    expect(again.err).toMatch(
      /5 pieces \(sheet Bars\) were written on .*twice; nothing was written, --again/,
    );
    const next = await barwright(["cutplan", copy]);
    expect(next.out).toContain("1 x 3900 remnant: 1 x 3800");
  });

  it("refuses a book without a Shop sheet, and writes nothing", async () => {
    const path = book("bare.xlsx", [{ name: "Bars", rows: SCHEDULE }]);
    const copy = join(folder, "bare-copy.xlsx");
    const run = await barwright(["cutplan", path, "--out", copy]);
    expect([run.exit, run.err.trim().split("\n").length]).toEqual([2, 1]);
    expect(run.err).toContain("no Shop sheet");
    expect(() => readFileSync(copy)).toThrow();
  });
});
