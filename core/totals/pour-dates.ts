import type { BarRow, ScheduleReading, TableReading } from "../schedule/bar-row";
import { isCellError, type Sheet } from "../schedule/sheet";

/** Heads of a column that says when a pour is cast or its steel is wanted; "date" alone may be a drawing's. */
const POUR_DATE =
  /\b(?:pour|pouring|cast|casting|concrete|concreting|deliver|delivery|required|needed|wanted|fix|fixing|site)\w*\b.*\bdate\b|\bdate\b.*\b(?:pour|cast|concret|deliver|requir|need|want|fix|site)\w*/i;

/** Dates that a schedule writes beside the bars of each pour, as its user sees them; empty where it writes none. */
export function pourDates(
  sheet: Sheet,
  { bars }: ScheduleReading,
  nameOf: (bar: BarRow) => string,
): ReadonlyMap<string, readonly string[]> {
  const dates = new Map<string, string[]>();
  const columns = new Map<TableReading, number | null>();
  for (const bar of bars) {
    let column = columns.get(bar.table);
    if (column === undefined) {
      column = dateColumn(bar.table);
      columns.set(bar.table, column);
    }
    const said = column === null ? "" : textOf(sheet, bar.row, column);
    if (said === "") continue;
    const name = nameOf(bar);
    const known = dates.get(name);
    if (known === undefined) dates.set(name, [said]);
    else if (!known.includes(said)) known.push(said);
  }
  return dates;
}

function dateColumn({ unknownHeaders = [], columns }: TableReading): number | null {
  const known = [...columns.values()].filter(({ kind }) => kind === "remark" || kind === "pour");
  const named = [...unknownHeaders, ...known].find(({ header }) => POUR_DATE.test(header));
  return named?.column ?? null;
}

/** A number without the form of a date is none. */
function textOf(sheet: Sheet, row: number, column: number): string {
  const cell = sheet.cell(row, column);
  if (cell === null || isCellError(cell)) return "";
  if (typeof cell === "string") return cell.trim();
  if (sheet.isDate?.(row, column) !== true) return "";
  return sheet.shown?.(row, column)?.trim() ?? "";
}
