import { mkdtempSync, readFileSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { writeNewWorkbook } from "../../../addin/xlsx/write/new-workbook";
import type { Cell } from "../../../core/schedule";
import { barwright } from "../../_support/command-line";

const folder = mkdtempSync(join(tmpdir(), "barwright-heats-"));

const HEADER: Cell[] = [
  "Pour",
  "Member",
  "Bar mark",
  "Type and size",
  "Total no.",
  "Length",
  "Shape code",
  "A",
];
/** 12 bars of 6 m and 4 of 4 m out of 12 m stock: two pieces of 6 m a bar, three of 4 m */
const BARS: Cell[][] = [
  ["P2", "Slab", "01", "H16", 12, 6000, "00", 6000],
  ["P1", "Wall", "02", "H16", 3, 4000, "00", 4000],
];
/** Four bars of one heat, then as many as needed of another. */
const SHOP: Cell[][] = [
  ["size", "stock length mm", "bars held", "kind", "heat"],
  [16, 12000, 4, "stock", "K1"],
  [16, 12000, null, "stock", 4712],
  [],
  ["limit", "value"],
  ["hoist or crane kg", 60],
  ["lorry load kg", 100],
  ["lorry length mm", 13000],
  [],
  ["pour", "date"],
  ["P1", "2030-05-01"],
  ["P2", "31.05.2030"],
];

function book(name: string, shop: readonly (readonly Cell[])[] = SHOP): string {
  const path = join(folder, name);
  const sheets = [
    { name: "Bars", rows: [HEADER, ...BARS] },
    { name: "Shop", rows: shop },
  ];
  writeFileSync(path, writeNewWorkbook({ sheets }));
  return path;
}

interface Traced {
  readonly heats: readonly {
    readonly heat: string | null;
    readonly bars: readonly { readonly length: number; readonly bars: number }[];
    readonly rows: readonly { readonly mark: string; readonly pour: string; readonly pieces: number }[];
  }[];
}

describe("a heat", () => {
  it("is followed from the stock to every mark and back, piece by piece", async () => {
    const path = book("heats.xlsx");
    const traced = JSON.parse((await barwright(["heats", path, "--json"])).out) as Traced;
    const pieces = (mark: string): number =>
      traced.heats
        .flatMap(({ rows }) => rows)
        .filter((row) => row.mark === mark)
        .reduce((sum, row) => sum + row.pieces, 0);
    // every piece has a heat: none lost, none twice
    expect([pieces("01"), pieces("02")]).toEqual([12, 3]);
    const bars = traced.heats.map(({ heat, bars }) => [heat, bars[0]?.bars]);
    // 12 x 6 m are six bars, 3 x 4 m one; the four of K1 go first
    expect(bars).toEqual([
      ["K1", 4],
      ["4712", 3],
    ]);
    const back = await barwright(["heats", path, "--heat", "4712"]);
    const known = traced.heats.find(({ heat }) => heat === "4712")!;
    for (const { mark, pour, pieces: count } of known.rows)
      expect(back.out).toContain(`${count} of mark ${mark} for pour ${pour}`);
    expect(back.out).not.toContain("K1");
  });

  it("stands on cut list, ticket, label and load", async () => {
    const path = book("papers.xlsx");
    const page = async (args: string[], name: string): Promise<string> => {
      const run = await barwright([args[0]!, path, ...args.slice(1), join(folder, name)]);
      expect(run.exit, run.err).toBe(0);
      return readFileSync(join(folder, name), "utf8");
    };
    const cuts = await page(["cutplan", "--out"], "cuts.html");
    // bars cut alike stand on one line: six of 2 x 6 m take the four of K1 first, the one of 3 x 4 m the next
    const taken = [...cuts.matchAll(/<div>(heats? [^<]*)<\/div>/g)].map(([, words]) => words);
    expect(taken).toEqual(["heats K1 (4), then 4712 (2)", "heat 4712 (1)"]);
    expect(await page(["tickets", "--out"], "tickets.html")).toContain("heats K1 (8), then 4712 (4)");
    expect(await page(["tickets", "--labels"], "labels.html")).toContain("K1, 4712");
    expect(await page(["loads", "--out"], "loads.html")).toContain("K1, 4712");
  });

  it("that is not written down is asked for, one that is not in stock named", async () => {
    const without = book("without.xlsx", SHOP.slice(4));
    const run = await barwright(["heats", without]);
    expect([run.exit, run.err]).toEqual([
      2,
      expect.stringContaining("give the stock of the Shop sheet a column heat"),
    ]);
    const other = await barwright(["heats", book("other.xlsx"), "--heat", "K9"]);
    expect(other.err).toContain("heat K9 is not among the stock");
  });

  it("goes with the rest of a bar to the rack", async () => {
    const path = book("rests.xlsx", [...SHOP.slice(0, 6), ["least remnant mm", 500]]);
    const bars = BARS.map((row) => [...row.slice(0, 4), 3, 5000, "00", 5000]);
    const sheets = [
      { name: "Bars", rows: [HEADER, ...bars] },
      { name: "Shop", rows: [...SHOP.slice(0, 6), ["least remnant mm", 500]] },
    ];
    writeFileSync(path, writeNewWorkbook({ sheets }));
    const copy = join(folder, "rests-booked.xlsx");
    expect((await barwright(["cutplan", path, "--out", copy])).exit).toBe(0);
    // 6 x 5 m: three bars of K1 with 2 m left each
    const again = await barwright(["cutplan", copy, "--stock", "12000", "--json"]);
    expect(again.exit).toBe(0);
    const { openWorkbook } = await import("../../../addin/xlsx/read/open-workbook");
    const shop = openWorkbook(readFileSync(copy)).read("Shop");
    const found = Array.from({ length: shop.rowCount }, (_, row) =>
      Array.from({ length: shop.columnCount }, (_, column) => shop.cell(row, column)),
    ).find((row) => row[3] === "remnant");
    expect(found?.slice(0, 5)).toEqual(["H16", 2000, 3, "remnant", "K1"]);
  });
});

describe("barwright loads", () => {
  it("makes up lorries by day, none above its limit, the last to be fixed first", async () => {
    const run = await barwright(["loads", book("loads.xlsx"), "--json"]);
    const { loads, left } = JSON.parse(run.out) as {
      loads: { day: string; mass: number; loading: { mark: string; bundle: number; mass: number }[] }[];
      left: unknown[];
    };
    // 12 x 6 m x 1.579 kg/m = 113.7 kg (the UK three-decimal table), in bundles of at most 60 kg; 3 x 4 m = 18.9 kg
    expect(loads.map(({ day }) => day)).toEqual(["2030-05-01", "2030-05-31", "2030-05-31"]);
    expect(loads.every(({ mass }) => mass <= 100)).toBe(true);
    const total = loads.reduce((sum, { mass }) => sum + mass, 0);
    expect(total).toBeCloseTo((12 * 6 + 3 * 4) * 1.579, 6);
    expect(loads[0]?.loading.map(({ mark }) => mark)).toEqual(["02"]);
    expect(left).toEqual([]);
  });

  it("names what goes on no lorry, and ends with 1", async () => {
    const run = await barwright(["loads", book("long.xlsx"), "--lorry-length", "5000"]);
    expect(run.exit).toBe(1);
    expect(run.out).toContain("on no lorry, too long: 01 bundle 1 of 2");
    const below = await barwright(["loads", book("below.xlsx"), "--lorry-load", "-5"]);
    expect(below).toMatchObject({
      exit: 2,
      err: expect.stringContaining("--lorry-load -5 is no mass: give kilograms, over 0"),
    });
    const bad = await barwright(["loads", book("bad.xlsx"), "--lorry-load", "heavy"]);
    expect([bad.exit, bad.err]).toEqual([2, expect.stringContaining("give kilograms, over 0")]);
  });

  it("asks for a limit that nobody wrote, and for a day that may be two", async () => {
    const none = await barwright(["loads", book("none.xlsx", [...SHOP.slice(0, 6)])]);
    expect([none.exit, none.err]).toEqual([2, expect.stringContaining("write Lorry load kg")]);
    const twoWays = [...SHOP.slice(0, 10), ["P1", "04/05/2030"]];
    const run = await barwright(["loads", book("days.xlsx", twoWays)]);
    expect(run.err).toContain('"04/05/2030" is not known here: write the day as 2030-05-31');
    expect(run.out).toContain("no day written");
  });
});
