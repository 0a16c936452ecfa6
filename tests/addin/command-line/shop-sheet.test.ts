import { mkdtempSync, readFileSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { openWorkbook } from "../../../addin/xlsx/read/open-workbook";
import { writeNewWorkbook } from "../../../addin/xlsx/write/new-workbook";
import type { Cell } from "../../../core/schedule";
import { barwright } from "../../_support/command-line";

const folder = mkdtempSync(join(tmpdir(), "barwright-shop-"));
const BARS: Cell[][] = [
  ["Member", "Bar mark", "Type and size", "Total no.", "Length (mm)", "Shape code", "A", "B"],
  ["B1", "01", "H16", 4, 1375, "11", 1000, 400],
  ["B1", "02", "H16", 4, 3000, "00", 3000, null],
];
/** A yard of our own: the trial log alone has the words of a schedule's header (size, grade, form, date). */
const SHOP: Cell[][] = [
  ["machine", "largest angle", "formers in the rack mm"],
  ["Bender A", 91, "64"],
  [],
  ["limit", "value"],
  ["hoist or crane kg", 500],
  [],
  ["date", "machine", "size", "former", "grade", "form", "heat", "bent to", "released"],
  ["2026-01-05", "Bender A", "H16", 64, 500, "bar", "h1", 90, 82],
  ["2026-01-05", "Bender A", "H16", 64, 500, "bar", "h1", 90, 82],
];

function book(name: string, sheets: { name: string; rows: Cell[][] }[]): string {
  const path = join(folder, name);
  writeFileSync(path, writeNewWorkbook({ sheets }));
  return path;
}

const bars = { name: "Bars", rows: BARS };
const shop = { name: "Shop", rows: SHOP };
const withShop = book("with-shop.xlsx", [bars, shop]);
const without = book("without.xlsx", [bars]);

describe("a Shop sheet beside a schedule", () => {
  it("adds no bar to tonnage, cutting plan or comparison", async () => {
    const tonnage = await barwright(["tonnage", withShop, "--json"]);
    // code 11: 1000 + 400 - 32 / 2 - 16 = 1368, up to 1375; 4 x (1.375 + 3) m x 1.579 kg/m (BS 8666:2005)
    expect(JSON.parse(tonnage.out)).toMatchObject({ rows: 2 });
    expect((JSON.parse(tonnage.out) as { total: number }).total).toBeCloseTo(0.0276325, 9);
    const said = tonnage.err.trim().split("\n");
    expect(said).toContain("the schedule names no pours: grouped by member");
    // what is to be asked about stands beside the tonnes of its bars
    expect(said).toContainEqual(
      expect.stringMatching(
        /^to be asked about before they are made: row 2, 01 H16: perhaps unbendable: on Bender A/,
      ),
    );
    const plan = await barwright(["cutplan", withShop, "--json"]);
    const { groups } = JSON.parse(plan.out) as { groups: { size: string; pieces: number }[] };
    expect(groups.map(({ size, pieces }) => [size, pieces])).toEqual([["H16", 8]]);
    const same = await barwright(["compare", without, withShop, "--json"]);
    expect(JSON.parse(same.out)).toMatchObject({ changes: [], unchanged: 2 });
  });

  it("tells the machines whichever sheet is checked", async () => {
    const run = await barwright(["check", withShop, "--sheet", "Bars", "--json"]);
    const { findings, sheets } = JSON.parse(run.out) as {
      findings: { code: string; cell: string | null }[];
      sheets: { sheet: string }[];
    };
    // the trial came back by 8 degrees, and the bender turns 91 at most
    expect(findings.map(({ code, cell }) => `${code} ${cell}`)).toContain("MACHINE105 F2");
    expect(sheets.map(({ sheet }) => sheet)).toEqual(["Bars"]);
  });

  it("tells formulas which benders there are and how far they turn", async () => {
    const asked = (machine: string) => `BAR.COMPENSATED(90,"H16",,64,500,Shop!A7:I9,"plain","${machine}")`;
    const formulas = ["Bender A", "Bender Z"].map((name) => ({ value: 0, formula: asked(name) }));
    const rows = formulas.map((formula) => [formula]);
    const path = join(folder, "formulas.xlsx");
    const copy = join(folder, "formulas-copy.xlsx");
    const run = async (sheets: { name: string; rows: unknown[][] }[]) => {
      writeFileSync(path, writeNewWorkbook({ sheets } as Parameters<typeof writeNewWorkbook>[0]));
      expect((await barwright(["recalc", path, "--out", copy])).exit).toBe(0);
      const sheet = openWorkbook(readFileSync(copy)).read("Calc");
      return [sheet.valueAt(0, 0), sheet.valueAt(1, 0)];
    };
    // the trials came back by 8 degrees: 98, which a bender that turns 91 cannot; nobody owns a Bender Z
    const turnsLess = await run([{ name: "Calc", rows }, shop]);
    expect(turnsLess).toMatchObject([{ error: "#N/A" }, { error: "#VALUE!" }]);
    const further = SHOP.map((row) => row.map((cell) => (cell === 91 ? 190 : cell)));
    const turnsMore = await run([
      { name: "Calc", rows },
      { name: "Shop", rows: further },
    ]);
    expect(turnsMore).toMatchObject([98, { error: "#VALUE!" }]);
  });

  it("is no schedule when asked for by name", async () => {
    for (const command of ["check", "tonnage", "cutplan"]) {
      const run = await barwright([command, withShop, "--sheet", "Shop"]);
      expect([run.exit, run.err.trim().split("\n").at(-1)]).toEqual([
        2,
        expect.stringContaining('sheet "Shop" says what the yard owns and is no schedule'),
      ]);
    }
  });
});
