import { type AuditSettings, readAsCorrected } from "../../../core/audit";
import { decisionWords } from "../../../core/audit/decision-words";
import { compareBooks } from "../../../core/jobs";
import type { Sheet } from "../../../core/schedule";
import { addressAt } from "../../../core/schedule/cell-address";
import { columnWords } from "../../../core/schedule/columns/column-words";
import { isShopSheet } from "../../../core/shop";
import { type BarChange, notComparedWords, type PourChange } from "../../../core/totals";
import { tonnesOf } from "../../../core/units/print-mass";
import type { ChangeView, ComparisonView } from "./comparison-view";
import { barsRead, type KeptCheck } from "./kept-check";
import { settingsNotes } from "./settings-notes";

/** One side of a comparison, with the settings of the workbook that holds it. */
export interface RevisionSide {
  /** how a message calls it */
  readonly name: string;
  readonly sheets: readonly Sheet[];
  readonly settings: AuditSettings;
}

/** What a checked sheet changes against the older ones. Throws where either side holds no schedule. */
export function comparisonView(kept: KeptCheck, older: RevisionSide): ComparisonView {
  const { sheet: newer, settings } = kept;
  const { standard } = kept.audit.report;
  barsRead(kept);
  // against its older revision it stands as it is, though a later one may replace it
  const after = [{ sheet: newer, reading: readAsCorrected(newer, standard, settings) }];
  const olderSheets = older.sheets.filter((sheet) => !isShopSheet(sheet));
  const before = olderSheets.map((sheet) => ({
    sheet,
    reading: readAsCorrected(sheet, standard, older.settings),
  }));
  if (before.every(({ reading }) => reading.bars.length === 0)) throw new Error(noBars(older.name));
  const { comparison } = compareBooks({ schedules: before }, { schedules: after }, standard);
  const { changes, pours, unchanged, notCompared } = comparison;
  const open = notComparedWords(notCompared);
  return {
    newer: newer.name,
    older: older.name,
    changes: changes.map((change) => changeView(change, newer)),
    pours: pours.map(pourView),
    unchanged,
    notes: [
      ...(open === null ? [] : [open]),
      ...decisionWords(settings).map((words) => `${newer.name}: ${words}`),
      ...decisionWords(older.settings).map((words) => `${older.name}: ${words}`),
      ...settingsNotes(settings, newer.name),
      ...olderSheets
        .flatMap(({ name }) => settingsNotes(older.settings, name))
        .map((note) => `${older.name}: ${note}`),
    ],
  };
}

function noBars(what: string): string {
  return `${what} holds no bars of a schedule: choose a revision that has a header row and bars under it`;
}

function changeView(change: BarChange, newer: Sheet): ChangeView {
  const { kind, severity, released, after, cells } = change;
  const name = [change.member, change.mark === null ? "no mark" : `mark ${change.mark}`]
    .filter((part) => part !== null)
    .join(", ");
  const column = cells.find((cell) => cell.column !== null)?.column ?? markColumn(change);
  return {
    kind,
    severity,
    released,
    name,
    cell: after === null ? null : addressAt(newer.top + after.row, newer.left + column),
    cells: cells.map(({ field, before, after: now }) => ({
      field: columnWords(field),
      before: words(before),
      after: words(now),
    })),
    amount: amount(change),
  };
}

function markColumn({ after }: BarChange): number {
  return after?.table.columns.get("mark")?.column ?? 0;
}

function amount({ countBefore, countAfter, massBefore, massAfter }: BarChange): string {
  const bars = fromTo(String(countBefore ?? "?"), String(countAfter ?? "?"));
  return `${bars} bars, ${fromTo(tonnes(massBefore), tonnes(massAfter))} t`;
}

function pourView({ pour, barsBefore, barsAfter, massBefore, massAfter }: PourChange) {
  const difference = massAfter - massBefore;
  const sign = difference > 0 ? "+" : difference < 0 ? "\u2212" : "";
  return {
    pour: pour ?? "no pour",
    bars: fromTo(String(barsBefore), String(barsAfter)),
    tonnes: fromTo(tonnes(massBefore), tonnes(massAfter)),
    difference: `${sign}${tonnes(Math.abs(difference))}`,
  };
}

const fromTo = (before: string, after: string): string =>
  before === after ? after : `${before} to ${after}`;
const words = (value: string | number | null): string => (value === null ? "blank" : String(value));

function tonnes(kilograms: number | null): string {
  return kilograms === null ? "?" : tonnesOf(kilograms);
}
