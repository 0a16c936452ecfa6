import type { Standard } from "../../standards/port";
import { dayAt } from "../cells/date-typed";
import { rowWithoutNoise } from "../cells/without-noise";
import type { Cell, Sheet } from "../sheet";
import type { ColumnSource } from "./decide-columns";

/** What deciding columns asks of a sheet, as it stands and as it is after an edit. */
export function columnSources(
  rowCount: number,
  standard: Standard,
  isConfirmed: ColumnSource["isConfirmed"],
  countBefore: ColumnSource["countBefore"],
) {
  const of = (sheet: Sheet, cells: (row: number) => readonly Cell[]): ColumnSource => ({
    rowCount,
    standard,
    cells,
    ...(sheet.beside === undefined ? {} : { beside: sheet.beside }),
    ...(sheet.elsewhere === undefined ? {} : { elsewhere: sheet.elsewhere }),
    isHiddenColumn: (column) => sheet.isHiddenColumn?.(column) ?? false,
    isDateAt: (row, column, number) => dayAt(sheet, row, column, number) !== null,
    isConfirmed,
    countBefore,
  });
  const ofChanged = (sheet: Sheet): ColumnSource =>
    of(sheet, (row) => rowWithoutNoise(sheet.rowCells?.(row) ?? []));
  return { of, ofChanged };
}
