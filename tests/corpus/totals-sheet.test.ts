import { describe, expect, it } from "vitest";
import { recalculateBook } from "../../addin/command-line/recalculate-book";
import { demoWorkbook } from "../../addin/demo/demo-workbook";
import { createLocalEngine } from "../../addin/pane/engine/local-engine";
import { textConstant } from "../../addin/workbook/defined-name";
import { functionEnvironment } from "../../addin/workbook/function-environment";
import type { SheetContent } from "../../addin/workbook/workbook-port";
import { openWorkbook } from "../../addin/xlsx/read/open-workbook";
import { type NewCell, writeNewWorkbook } from "../../addin/xlsx/write/new-workbook";
import { type Book, checkBooks, tonnageOf } from "../../core/jobs";
import type { Cell, Sheet } from "../../core/schedule";
import { namedGroups } from "../../core/totals";
import { isRefusal } from "../../core/units/refusal";
import { CORPUS } from "./corpus";
import { sheetOf } from "./corpus-schedule";

const NO_OTHERS = { before: [], behind: [] };
/** row of the table's header on a Totals sheet, from 0 */
const TABLE = 6;

interface Given {
  readonly name: string;
  readonly sheet: Sheet;
  /** a formula of the sheet, by its row and column from 0 */
  readonly formulaAt?: (row: number, column: number) => string | undefined;
  readonly standard: string;
}

const DEMO = openWorkbook(demoWorkbook()).read("Schedule", { formulas: true });

const GIVEN: readonly Given[] = [
  ...CORPUS.map((schedule) => ({
    name: schedule.name,
    sheet: sheetOf(schedule),
    standard: schedule.standard,
  })),
  {
    name: "demonstration",
    sheet: DEMO,
    formulaAt: (row, column) => DEMO.formulaAt(row, column)?.text,
    standard: "BS8666:2005",
  },
];

/** A workbook of a schedule and what the pane wrote beside it, its formulas evaluated as `recalc` does. */
function evaluated({ sheet, standard, formulaAt }: Given, content: SheetContent): Cell[][] {
  const cellAt = (row: number, column: number): Cell | NewCell => {
    const formula = formulaAt?.(row, column);
    if (formula !== undefined) return { value: null, formula };
    return row < sheet.top || column < sheet.left ? null : sheet.cell(row - sheet.top, column - sheet.left);
  };
  const rows = Array.from({ length: sheet.top + sheet.rowCount }, (_, row) =>
    Array.from({ length: sheet.left + sheet.columnCount }, (_unused, column) => cellAt(row, column)),
  );
  const totals = content.rows.map((row) =>
    row.map(({ value, formula }) => (formula === undefined ? value : { value: null, formula })),
  );
  const book = openWorkbook(
    writeNewWorkbook({
      sheets: [
        { name: sheet.name, rows },
        { name: "Totals", rows: totals },
      ],
      names: new Map([["Barwright.Standard", textConstant(standard)]]),
    }),
  );
  const { writes } = recalculateBook(book, functionEnvironment(book, standard));
  const cells: Cell[][] = [];
  for (const { row, column, value } of writes.get("Totals") ?? []) {
    cells[row] ??= [];
    cells[row][column] = value;
  }
  return cells;
}

function reckonedOf({ sheet, standard }: Given) {
  const book: Book = {
    name: "book",
    sheets: [{ name: sheet.name, visibility: "visible" }],
    read: () => sheet,
    setting: (name) => (name === "Barwright.Standard" ? standard : null),
  };
  const [checked] = checkBooks([book], { sheet: null, standard: null });
  if (checked === undefined || isRefusal(checked)) throw new Error("not checked");
  return tonnageOf([checked]).reckoned;
}

describe("the Totals sheet", () => {
  it.each(GIVEN.map((given) => [given.name, given] as const))(
    "%s: its formulas give the pours, sizes and tonnes of the command line",
    async (_, given) => {
      const reckoned = reckonedOf(given);
      if (reckoned.tonnage.rows === 0) return;
      const engine = createLocalEngine();
      const { sheet, standard } = given;
      await engine.check({
        sheet,
        shop: null,
        otherSheets: NO_OTHERS,
        standard,
        settings: null,
      });
      const cells = evaluated(given, (await engine.totals(sheet.name)).content);
      const { pours, bySize, total } = namedGroups(reckoned);
      const sizes = [...bySize.keys()];
      expect(cells[TABLE]?.slice(0, sizes.length + 2)).toEqual(["pour", ...sizes, "total"]);
      const table = [...pours, { pour: "total", bySize, total }];
      expect(cells.slice(TABLE + 1, TABLE + 1 + table.length).map(([name]) => name)).toEqual(
        table.map(({ pour }) => pour),
      );
      for (const [index, line] of table.entries()) {
        const wanted = [...sizes.map((size) => line.bySize.get(size) ?? 0), line.total];
        const given = cells[TABLE + 1 + index]!.slice(1) as number[];
        for (const [at, tonnes] of wanted.entries())
          expect(given[at], `${line.pour} ${sizes[at] ?? "total"}`).toBeCloseTo(tonnes, 9);
      }
    },
  );

  it("follows the schedule by formulas in most rows, and counts those that stand as figures", async () => {
    let bars = 0;
    let figures = 0;
    for (const { sheet, standard } of GIVEN) {
      const engine = createLocalEngine();
      const { rows } = await engine.check({
        sheet,
        shop: null,
        otherSheets: NO_OTHERS,
        standard,
        settings: null,
      });
      const { content } = await engine.totals(sheet.name);
      const masses = content.rows.slice(2).flatMap((row) => row[27] ?? []);
      const fixed = masses.filter(({ formula }) => formula === undefined).length;
      expect(content.rows[5]?.[1]?.value ?? 0).toBe(fixed);
      bars += rows.bars;
      figures += fixed;
    }
    expect(figures / bars).toBeLessThan(0.2);
  });

  it("weighs a slip of the demonstration as the reader took it, from the typed length", async () => {
    const { sheet, standard } = GIVEN.at(-1)!;
    const engine = createLocalEngine();
    await engine.check({ sheet, shop: null, otherSheets: NO_OTHERS, standard, settings: null });
    const formulas = (await engine.totals(sheet.name)).content.rows.flatMap((row) => row[27]?.formula ?? []);
    // row 18: A is 1.45 for 1450 mm, so BAR.ROWMASS over it would weigh a bar of 1.45 mm
    expect(formulas).toContain(`IFERROR(BAR.MASS('Schedule'!C18)*'Schedule'!G18/1000*'Schedule'!F18,"")`);
  });
});
