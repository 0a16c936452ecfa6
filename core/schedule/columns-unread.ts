import type { ScheduleReading } from "./bar-row";
import { columnLetters } from "./cell-address";
import { lapColumn } from "./columns/lap-column";
import type { Sheet } from "./sheet";

/** A column with a heading that no known word fits, and of which nothing was read. */
export interface ColumnUnread {
  /** the letters of the sheet's column; the number of its row where bars stand in columns */
  readonly column: string;
  readonly header: string;
  /** bars beside which it is filled */
  readonly filled: number;
}

/** The filled columns of a sheet that nobody read, in the sheet's own letters. */
export function columnsUnread(
  sheet: Pick<Sheet, "left" | "isTurned" | "cell">,
  { tables, bars }: ScheduleReading,
): readonly ColumnUnread[] {
  return tables.flatMap((table) => {
    const lap = lapColumn(table);
    return (table.unknownHeaders ?? []).flatMap(({ column, header }) => {
      if (column === lap || !/\p{L}/u.test(header)) return [];
      let filled = 0;
      for (const bar of bars) if (bar.table === table && isFilled(sheet.cell(bar.row, column))) filled += 1;
      const at = sheet.left + column;
      const named = sheet.isTurned === true ? String(at + 1) : columnLetters(at);
      return filled === 0 ? [] : [{ column: named, header, filled }];
    });
  });
}

function isFilled(cell: unknown): boolean {
  return typeof cell === "string" ? cell.trim() !== "" : cell !== null && cell !== undefined;
}
