import type { RowFlag } from "../../workbook/workbook-port";
import type { Workbook } from "../../xlsx/read/open-workbook";
import type { SheetReading } from "../../xlsx/read/read-sheet";

/** Rows that a file carries as flagged by an earlier check; empty where it carries none. */
export function fileFlags(workbook: Workbook, reading: SheetReading): readonly RowFlag[] {
  const colours = workbook.formats.map(({ flag }) => flag);
  if (colours.every((colour) => colour === null)) return [];
  const flags: RowFlag[] = [];
  for (const row of reading.rowNumbers) {
    const flagged = [...reading.cellsOfRow(row)].filter(({ style }) => colours[style]);
    const colour = colours[flagged[0]?.style ?? -1];
    if (!colour) continue;
    const columns = flagged.map(({ column }) => column);
    flags.push({
      row,
      firstColumn: Math.min(...columns),
      lastColumn: Math.max(...columns),
      colour,
      note: "",
    });
  }
  return flags;
}
