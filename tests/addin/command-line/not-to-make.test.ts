import { mkdtempSync, readFileSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { writeNewWorkbook } from "../../../addin/xlsx/write/new-workbook";
import type { Cell } from "../../../core/schedule";
import { barwright } from "../../_support/command-line";

const folder = mkdtempSync(join(tmpdir(), "barwright-hold-"));
const at = (name: string): string => join(folder, name);
const HEADER = ["Bar mark", "Type and size", "Total no.", "Length (mm)", "Shape code", "A", "B", "Former mm"];
/** 40 mm is below the 64 mm of BS 8666:2005 Table 2 for 16 mm, 64 mm is not. */
const bar = (mark: string, former: number): Cell[] => [mark, "H16", 10, 875, "11", 500, 400, former];
/** a piece longer than any stock */
const LONG: Cell[] = ["09", "H16", 2, 19000, "00", 19000];
const SHOP: Cell[][] = [
  ["size", "stock length mm", "bars held", "kind", "heat"],
  [16, 12000, null, "stock", "K1"],
  [],
  ["limit", "value"],
  ["hoist or crane kg", 60],
  ["lorry load kg", 900],
];
const WHY = "former 40 mm is below the least 64 mm for H16";

function book(name: string, ...rows: Cell[][]): string {
  const sheets = [
    { name: "Bars", rows: [HEADER, ...rows] },
    { name: "Shop", rows: SHOP },
  ];
  writeFileSync(at(name), writeNewWorkbook({ sheets }));
  return at(name);
}

const unsafe = () => book("unsafe.xlsx", bar("01", 40), bar("02", 64));
const page = (path: string): string => readFileSync(path, "utf8");

describe("a bar that is not to be made until somebody clears it", () => {
  it("is named by the cut list, in words, on its page and in JSON", async () => {
    const run = await barwright(["cutplan", unsafe(), "--out", at("cut.html")]);
    expect(run.exit).toBe(1);
    expect(run.out).toContain(`planned, but 1 row is not to be made until cleared`);
    expect(run.out).toContain(`H16, mark 01, 10 bars, D2: ${WHY}`);
    expect(page(at("cut.html"))).toContain("01 (10) HOLD, 02 (10)");
    expect(page(at("cut.html"))).toContain(WHY);
    const { notToMake } = JSON.parse((await barwright(["cutplan", unsafe(), "--json"])).out);
    expect(notToMake).toEqual([{ size: "H16", mark: "01", count: 10, sheet: "Bars", cell: "D2", why: WHY }]);
  });

  it("is named by the cut list of a whole job with its book", async () => {
    const sound = book("sound.xlsx", bar("03", 64));
    const run = await barwright(["cutplan", unsafe(), sound]);
    expect(run.exit).toBe(1);
    expect(run.out).toContain(`unsafe.xlsx Bars!D2: ${WHY}`);
    expect((await barwright(["cutplan", sound])).exit).toBe(0);
  });

  it("is named by labels and loading lists", async () => {
    const labels = await barwright(["tickets", unsafe(), "--labels", at("labels.html")]);
    expect(labels.err).toContain(`not to be made or sent until cleared: 01 H16: ${WHY}`);
    expect(page(at("labels.html"))).toContain(`Not to be made or sent until cleared: ${WHY}`);
    const loads = await barwright(["loads", unsafe(), "--out", at("loads.html")]);
    expect(loads.exit).toBe(1);
    expect(loads.out).toContain("01 HOLD bundle 1 of 1");
    expect(loads.out).toContain("02 bundle 1 of 1");
    expect(loads.err).toContain(WHY);
    expect(page(at("loads.html"))).toContain(`01 H16: ${WHY}`);
  });
});

it("should name the rows that are of no heat because nothing can cut them", async () => {
  const run = await barwright(["heats", book("long.xlsx", bar("02", 64), LONG)]);
  expect(run.out).toContain("02");
  expect(run.err).toContain("of no heat, for it is in no plan: H16, mark 09, 2 bars, Bars!D3");
});
