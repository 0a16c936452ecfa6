import type { ColumnKind, ColumnUnit, RowClass, ScheduleReading, UnitReason } from "./bar-row";
import { columnLetters } from "./cell-address";
import { shareOfColumn } from "./columns/table-proof";
import { type ColumnUnread, columnsUnread } from "./columns-unread";
import type { RowReason } from "./rows/row-reason";
import type { Sheet } from "./sheet";

/** Why a column was taken for what it was. */
export interface ColumnExplained {
  /** the letters of the sheet's column; the number of its row where bars stand in columns */
  readonly column: string;
  readonly header: string;
  readonly kind: ColumnKind;
  readonly unit: ColumnUnit | null;
  readonly by: "words" | "arithmetic" | "user";
  readonly unitBy: UnitReason["code"] | null;
  /** rows that agree with it, of those that its surest product could be tested on; null where none could */
  readonly kept: number | null;
  readonly tested: number | null;
}

/** Why a row was taken for what it was; `row` is the sheet's own number. */
export interface RowExplained {
  readonly row: number;
  readonly class: RowClass;
  readonly because: RowReason;
}

/** What a sheet's columns were taken for, what decided it, and whether its totals wait for the user. */
export interface ReadingExplained {
  readonly sheet: string;
  readonly columns: readonly ColumnExplained[];
  readonly held: string | null;
  /** filled columns that nobody read */
  readonly unread: readonly ColumnUnread[];
}

/** The reading of a sheet, column by column, in the sheet's own letters. */
export function explainReading(
  sheet: Pick<Sheet, "left" | "isTurned" | "cell">,
  reading: ScheduleReading,
): ReadingExplained {
  const { sheet: name, tables, proofs, held } = reading;
  const columns = tables.flatMap((table, index) =>
    [...table.columns.values()].map(({ column, header, kind, unit, by, unitBy }) => {
      const share = shareOfColumn(proofs[index], column);
      return {
        column:
          sheet.isTurned === true ? String(sheet.left + column + 1) : columnLetters(sheet.left + column),
        header,
        kind,
        unit,
        by,
        unitBy: unitBy?.code ?? null,
        kept: share?.kept ?? null,
        tested: share?.tested ?? null,
      };
    }),
  );
  return { sheet: name, columns, held: held?.reason ?? null, unread: columnsUnread(sheet, reading) };
}

/** Each row with its class and what made it so; rows in which nothing stands are left out. */
export function explainRows(
  { top }: Pick<Sheet, "top">,
  { rowClasses, rowReasons }: ScheduleReading,
): readonly RowExplained[] {
  const rows: RowExplained[] = [];
  rowClasses.forEach((rowClass, row) => {
    const because = rowReasons[row];
    if (rowClass === "blank" || because === undefined) return;
    rows.push({ row: top + row + 1, class: rowClass, because });
  });
  return rows;
}
