import { mkdtempSync, readFileSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { openWorkbook } from "../../../addin/xlsx/read/open-workbook";
import { writeNewWorkbook } from "../../../addin/xlsx/write/new-workbook";
import type { Cell } from "../../../core/schedule";
import { barwright } from "../../_support/command-line";
import { SCHEDULE_HEADER } from "../../_support/schedule-header";

const folder = mkdtempSync(join(tmpdir(), "barwright-costs-"));
process.env.XDG_CACHE_HOME = mkdtempSync(join(tmpdir(), "barwright-costs-cache-"));

const RATES: Cell[][] = [
  ["size", "supply per tonne", "bend per tonne", "hours per tonne", "hours per 100 bends", "waste %"],
  ["up to 16", 800, 100, 10, 2, 5],
];

function book(name: string, shop: readonly (readonly Cell[])[] | null, ...bars: readonly Cell[][]): string {
  const path = join(folder, name);
  const sheets = [
    { name: "Bars", rows: [SCHEDULE_HEADER, ...bars] },
    ...(shop === null ? [] : [{ name: "Shop", rows: shop }]),
  ];
  writeFileSync(path, writeNewWorkbook({ sheets }));
  return path;
}

const STRAIGHT: Cell[] = ["P1", "Wall", "01", "H16", 100, 6000, "00", 6000];
/** two bends a bar; BS 8666:2005, code 21: 1000 + 400 + 500 - 32 - 32 = 1836, up to 1850 */
const BENT: Cell[] = ["P2", "Wall", "02", "H16", 50, 1850, "21", 1000, 400, 500];
const THICK: Cell[] = ["P2", "Wall", "03", "H25", 10, 4000, "00", 4000];
/** t, at 1.579 kg/m (UK three-decimal table) */
const P1 = (100 * 6 * 1.579) / 1000;
const P2 = (50 * 1.85 * 1.579) / 1000;
const cost = (t: number): number => t * 1.05 * 800 + t * 100;

describe("hours and costs beside the tonnes", () => {
  it("stand on the Totals sheet as a live formula, beside the tonnes", async () => {
    const copy = join(folder, "with-costs.xlsx");
    const run = await barwright(["tonnage", book("to-copy.xlsx", RATES, STRAIGHT), "--out", copy]);
    expect(run.exit).toBe(0);
    const totals = openWorkbook(readFileSync(copy)).read("Totals");
    const cells = Array.from({ length: totals.rowCount }, (_, row) =>
      Array.from({ length: 25 }, (_, column) => totals.cell(row, column)),
    );
    const header = cells.find((row) => row.includes("cost"))!;
    const at = header.indexOf("cost");
    const line = cells.find((row) => row[at - 4] === "P1")!;
    expect(header.slice(at - 4, at + 1)).toEqual(["pour", "net t", "waste t", "hours", "cost"]);
    expect(line[at]).toBeCloseTo(cost(P1), 6);
    // a formula over masses counts no bends, and says so
    expect(cells.flat().join()).toContain("Hours for bends are counted by the pane");
  });

  it("are the yard's own by pour and in all, and move no net tonne", async () => {
    const path = book("priced.xlsx", RATES, STRAIGHT, BENT, THICK);
    const run = await barwright(["tonnage", path, "--json"]);
    const { costs, total } = JSON.parse(run.out);
    expect(total).toBeCloseTo(P1 + P2 + (10 * 4 * 3.853) / 1000, 3);
    const [one, two] = costs.pours;
    expect([one.pour, two.pour]).toEqual(["P1", "P2"]);
    expect([one.cost, two.cost, costs.total.cost]).toEqual([
      expect.closeTo(cost(P1), 6),
      expect.closeTo(cost(P2), 6),
      expect.closeTo(cost(P1) + cost(P2), 6),
    ]);
    // 2 hours for 100 bends, 50 bars with 2 bends each
    expect([one.hours, two.hours]).toEqual([expect.closeTo(P1 * 10, 6), expect.closeTo(P2 * 10 + 2, 6)]);
    expect(one.waste).toBeCloseTo(P1 * 0.05, 9);
    // no rate fits 25 mm: said, and priced at nothing
    expect(two.unpriced).toBeGreaterThan(0);
    expect(run.err).toContain("kg have no rate for their size: in no cost and no hours");
    const text = await barwright(["tonnage", path]);
    expect(text.out).toContain("by the rates of the Shop sheet, beside the net tonnes");
    expect(text.out).toContain((cost(P1) + cost(P2)).toFixed(2));
  });

  it("are not there without rates", async () => {
    const run = await barwright(["tonnage", book("plain.xlsx", null, STRAIGHT), "--json"]);
    expect(Object.keys(JSON.parse(run.out))).not.toContain("costs");
  });

  it("of a job are the sum of its books, by the first rates among them", async () => {
    const job = [book("a.xlsx", null, STRAIGHT), book("b.xlsx", RATES, BENT)];
    const run = await barwright(["tonnage", ...job, "--json"]);
    const { job: told } = JSON.parse(run.out);
    expect(told.costs.total.cost).toBeCloseTo(cost(P1) + cost(P2), 6);
    const again = JSON.parse((await barwright(["tonnage", ...job, "--json"])).out);
    expect(again.job.costs).toEqual(told.costs);
  });
});

describe("what is to be said of a book", () => {
  it("stands in its JSON as in the text, alone and in a job", async () => {
    const path = book("hidden.xlsx", null, STRAIGHT, ["P1", "Wall", "04", "H17", 1, 1000, "00", 1000]);
    const { notes } = JSON.parse((await barwright(["tonnage", path, "--json"])).out);
    expect(notes).toContainEqual(expect.stringContaining('"H17" is no bar'));
    const both = await barwright(["tonnage", path, book("other.xlsx", RATES, STRAIGHT), "--json"]);
    const { books } = JSON.parse(both.out);
    expect(books[1].notes).toContainEqual(expect.stringContaining("read for machines"));
    expect(both.err).toContain('other.xlsx: sheet "Shop": read for machines, stock and limits');
  });
});
