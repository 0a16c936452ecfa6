import { notToldLines } from "../../core/audit/not-told-words";
import {
  type CheckedBook,
  costsOf,
  filteredBy,
  heldRows,
  type ReadBook,
  severeBars,
  severeWords,
  tonnageOf,
} from "../../core/jobs";
import type { Cell } from "../../core/schedule";
import { totalsContent } from "../pane/engine/totals-content";
import { TOTALS_MARK } from "../pane/engine/totals-mark";
import { functionEnvironment } from "../workbook/function-environment";
import type { SheetCell } from "../workbook/workbook-port";
import { patchWorkbook } from "../xlsx/patch/patch-workbook";
import { openWorkbook, type Workbook } from "../xlsx/read/open-workbook";
import { InputRefused } from "./input-refused";
import { nativeDeflater } from "./native-deflater";
import { nativeZip } from "./native-zip";
import { type PlacedWrite, recalculateBook } from "./recalculate-book";

const TOTALS = "Totals";

/** The one schedule of a book whose Totals sheet can follow it with live formulas; null where it has several. */
export function onlySchedule({
  schedules,
}: Pick<ReadBook, "schedules">): ReadBook["schedules"][number] | null {
  const withBars = schedules.filter(({ reading }) => reading.bars.length > 0);
  const [only, more] = withBars;
  return only === undefined || more !== undefined || only.sheet.isTurned === true ? null : only;
}

/**
 * The book with a Totals sheet behind its own, the one that the pane writes: live formulas over the schedule,
 * with their results stored. No other sheet changes. A Totals sheet of an earlier run is written anew.
 */
export function copyWithTotals(
  workbook: Workbook,
  { sheet, reading }: ReadBook["schedules"][number],
  { standard, workshop, report }: Pick<CheckedBook, "standard" | "workshop" | "report">,
): Uint8Array {
  const { reckoned } = tonnageOf([{ schedules: [{ sheet, reading }], standard }]);
  if (reckoned.held !== null) throw new InputRefused(`no Totals sheet is written: ${reckoned.held}`);
  const severe = [
    ...severeWords(
      severeBars(heldRows(report, [{ sheet, reading }], workshop), filteredBy([{ sheet, reading }])),
      false,
    ),
    ...notToldLines(report.waivers),
  ];
  const costs = costsOf({ schedules: [{ sheet, reading }], standard, workshop }, reckoned);
  const { rows, widths = [] } = totalsContent(sheet, reading, reckoned, { standard, costs, severe });
  const added = { name: TOTALS, widths, frozenRows: 0, rows: rows.map((row) => row.map(stored)) };
  const replaces = ownTotals(workbook);
  const first = patchWorkbook(
    workbook,
    { added: [{ ...added, ...(replaces !== null && { replaces }) }] },
    { newDeflater: nativeDeflater },
  );
  const copy = openWorkbook(first, undefined, nativeZip);
  const { writes } = recalculateBook(copy, functionEnvironment(copy, standard.id, standard.own));
  const results = writes.get(TOTALS) ?? [];
  // a result that is not what the command tells is left for the program that opens the copy
  if (!isSameTotal(results, reckoned.tonnage.total)) return first;
  return patchWorkbook(
    copy,
    { sheets: new Map([[TOTALS, { writes: results }]]), keepsResults: true },
    { newDeflater: nativeDeflater },
  );
}

/** parts of a total that are noise of the float */
const NOISE = 1e-9;

/** True where the table's last cell, the total of all, is the one that was reckoned. */
function isSameTotal(results: readonly PlacedWrite[], total: number): boolean {
  const table = results.find(({ formula }) => formula?.includes("BAR.TONNAGE(") === true);
  if (table?.fills === undefined) return false;
  const { row, column, fills } = table;
  const [bottom, right] = [row + fills.rows - 1, column + fills.columns - 1];
  const last = results.find((write) => write.row === bottom && write.column === right)?.value;
  return typeof last === "number" && Math.abs(last - total) <= NOISE * total;
}

/** A blank result shows as an empty text. */
function stored({
  value,
  formula,
  ...look
}: SheetCell): SheetCell & { readonly value: Exclude<Cell, null> | null } {
  return formula === undefined ? { value, ...look } : { value: value ?? "", formula, ...look };
}

/** The name of a Totals sheet of ours; null where there is none. One that is not ours is refused. */
function ownTotals(workbook: Workbook): string | null {
  const there = workbook.sheets.find(({ name }) => name.toLowerCase() === TOTALS.toLowerCase());
  if (there === undefined) return null;
  if (workbook.read(there.name).cell(0, 0) === TOTALS_MARK) return there.name;
  throw new InputRefused(`the book has a sheet ${there.name} of its own: rename it to have one written`);
}
