import { type Cell, type Sheet, sheetFromRows } from "../../../core/schedule/sheet";
import type { CorpusBar } from "../corpus-bar";
import { type CorpusSchedule, rowOf, sheetOf } from "../corpus-schedule";
import type { ColumnKey, Planted, PlantingPlace } from "./mistake";

export interface InRow {
  readonly bar: CorpusBar;
  /** columns in which a finding is a hit */
  readonly keys: readonly ColumnKey[];
  /** rows of the yard's sheet, where the mistake is one only there */
  readonly shop?: readonly (readonly Cell[])[];
  readonly limits?: Planted["limits"];
}

/** The schedule with one bar changed; null where it has not the columns that would show it. */
export function plantInRow(
  { schedule, at }: PlantingPlace,
  { bar, keys, shop, limits }: InRow,
): Planted | null {
  const cells = cellsOfKeys(schedule, at, keys);
  if (cells.length === 0) return null;
  const bars = schedule.bars.map((one, place) => (place === at ? bar : one));
  const sheets: Sheet[] = [sheetOf({ ...schedule, bars })];
  if (shop !== undefined) sheets.push(sheetFromRows("Shop", shop));
  const row = rowOf(schedule, at);
  return {
    sheets,
    hit: { sheet: "Schedule", row, cells },
    // a mark that is gone or another's leaves its gap before the next row
    touched: bar.mark === schedule.bars[at]?.mark ? [row] : [row, row + 1],
    ...(limits === undefined ? {} : { limits }),
  };
}

/** Addresses of a bar's cells by column, those that the schedule has. */
export function cellsOfKeys(schedule: CorpusSchedule, at: number, keys: readonly ColumnKey[]): string[] {
  return keys.flatMap((key) => {
    const column = schedule.columns.findIndex((one) => one.key === key);
    return column < 0 ? [] : [`${columnName(column)}${rowOf(schedule, at)}`];
  });
}

function columnName(column: number): string {
  return column < 26
    ? String.fromCharCode(65 + column)
    : `${columnName(Math.floor(column / 26) - 1)}${columnName(column % 26)}`;
}
