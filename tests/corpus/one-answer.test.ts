import { describe, expect, it } from "vitest";
import { createLocalEngine } from "../../addin/pane/engine/local-engine";
import { BarFacts } from "../../core/bar/bar-facts";
import { SheetFacts } from "../../core/bar/sheet-facts";
import { ROWMASS } from "../../core/formulas/rowmass";
import { type Book, checkBooks, tonnageOf } from "../../core/jobs";
import type { Sheet } from "../../core/schedule/sheet";
import { isRefusal } from "../../core/units/refusal";
import { CORPUS } from "./corpus";
import { sheetOf } from "./corpus-schedule";

const GRAM = 0.0005;
const NO_OTHERS = { before: [], behind: [] };

/** The book of one schedule, as the command line sees it. */
function bookOf(sheet: Sheet, standard: string): Book {
  return {
    name: "book",
    sheets: [{ name: sheet.name, visibility: "visible" }],
    read: () => sheet,
    setting: (name) => (name === "Barwright.Standard" ? standard : null),
  };
}

describe("one answer on every surface", () => {
  it.each(CORPUS.map((schedule) => [schedule.name, schedule] as const))(
    "%s: the same findings, rows and masses from the command line's jobs and the pane's engine",
    async (_, schedule) => {
      const sheet = sheetOf(schedule);
      const question = { sheet: null, standard: null };
      const [checked] = checkBooks([bookOf(sheet, schedule.standard)], question);
      if (checked === undefined || isRefusal(checked)) throw new Error("not checked");
      const engine = createLocalEngine();
      const { standard } = schedule;
      const view = await engine.check({
        sheet,
        shop: null,
        otherSheets: NO_OTHERS,
        standard,
        settings: null,
      });
      const told = (findings: readonly { code: string; cell: string | null; message: string }[]) =>
        findings.map(({ code, cell, message }) => `${code} ${cell}: ${message}`);
      expect(told(view.findings)).toEqual(told(checked.report.findings));
      expect(view.rows).toEqual(checked.report.rows);
      expect(view.notInTotal).toEqual(checked.tonnage.notInTotal);

      const { reckoned } = tonnageOf([checked]);
      const masses = [...(reckoned.masses[0] ?? [])].map((row) => row?.mass ?? 0);
      const kilograms = masses.reduce((sum, mass) => sum + mass, 0);
      expect(Math.abs(kilograms - reckoned.tonnage.total * 1000)).toBeLessThan(GRAM);
      expect(Math.abs(kilograms - view.mass)).toBeLessThan(GRAM);
      if (reckoned.held !== null || reckoned.tonnage.rows === 0) return;
      const totals = await engine.totals(sheet.name);
      const pane = totals.table.at(-1)?.at(-1);
      expect(Math.abs(Number(pane) * 1000 - kilograms)).toBeLessThan(GRAM);
      const findings = await engine.findings(sheet.name);
      const cells = findings.rows.flatMap((row) => row.map(({ value }) => value));
      expect(cells).toContain(reckoned.tonnage.total);
    },
  );

  it("the bar card and BAR.ROWMASS weigh a row as the totals do", async () => {
    let cards = 0;
    let functions = 0;
    for (const schedule of CORPUS) {
      const sheet = sheetOf(schedule);
      const engine = createLocalEngine();
      const { standard } = schedule;
      await engine.check({ sheet, shop: null, otherSheets: NO_OTHERS, standard, settings: null });
      const [checked] = checkBooks([bookOf(sheet, standard)], { sheet: null, standard: null });
      if (checked === undefined || isRefusal(checked)) throw new Error("not checked");
      const { reading } = checked.schedules[0]!;
      const masses = checked.tonnage.masses[0];
      for (const [index, bar] of reading.bars.entries()) {
        const row = masses?.at(index) ?? null;
        if (row === null || row.from === "typed mass") continue;
        const card = await engine.bar(sheet.name, sheet.top + bar.row);
        const mass = card?.facts.find(({ name }) => name.startsWith("Mass of the row"));
        expect(mass?.value, `${schedule.name} row ${bar.row}`).toBe(`${row.mass.toFixed(1)} kg`);
        cards += 1;
        const isPlain =
          bar.former === null && bar.radius === null && bar.coating === null && bar.grade === null;
        if (row.from !== "cut length" || !isPlain || bar.size === null || row.count === null) continue;
        const { use, former } = new BarFacts(bar, new SheetFacts(sheet, reading), checked.standard);
        const [[cell] = []] = ROWMASS.call(
          [
            [[bar.shape]],
            [[bar.size.typed]],
            [bar.dims],
            [[row.count]],
            [[standard]],
            undefined,
            [[former]],
            [[use]],
          ],
          { defaultStandard: standard },
        );
        if (typeof cell !== "number" || reading.bars.length === 0) continue;
        functions += 1;
        expect(Math.abs(cell - row.mass), `${schedule.name} row ${bar.row}`).toBeLessThan(GRAM);
      }
    }
    expect(cards).toBeGreaterThan(1200);
    expect(functions).toBeGreaterThan(300);
  });
});
