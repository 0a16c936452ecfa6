import type { ScheduleReading } from "../schedule/bar-row";
import type { Sheet } from "../schedule/sheet";
import { type DocumentNamed, documentsNamed } from "../standards/index";

/** A document that a sheet names, with the cell that does. */
export interface NamedInCell extends DocumentNamed {
  readonly row: number;
  readonly column: number;
}

/** rows of words that are looked through */
const MOST_ROWS = 200;

/** The documents that titles, headings and notes of a sheet name. */
export function* namedInCells(sheet: Sheet, reading: ScheduleReading): Generator<NamedInCell> {
  let looked = 0;
  for (const [row, rowClass] of reading.rowClasses.entries()) {
    if (rowClass !== "note" && rowClass !== "heading") continue;
    looked += 1;
    if (looked > MOST_ROWS) break;
    for (let column = 0; column < sheet.columnCount; column += 1) {
      const cell = sheet.cell(row, column);
      if (typeof cell !== "string") continue;
      for (const named of documentsNamed(cell)) yield { ...named, row, column };
    }
  }
}
