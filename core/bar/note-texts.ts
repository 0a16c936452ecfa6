import type { ScheduleReading } from "../schedule/bar-row";
import type { Sheet } from "../schedule/sheet";

/** rows of words that are looked through */
const MOST_ROWS = 200;

/** A text of a title, a heading or a note. */
export interface NoteText {
  readonly text: string;
  readonly row: number;
  readonly column: number;
}

/** The texts of titles, headings and notes of a sheet. */
export function* noteTexts(
  sheet: Sheet,
  { rowClasses }: Pick<ScheduleReading, "rowClasses">,
): Generator<NoteText> {
  let looked = 0;
  for (const [row, rowClass] of rowClasses.entries()) {
    if (rowClass !== "note" && rowClass !== "heading") continue;
    looked += 1;
    if (looked > MOST_ROWS) break;
    for (let column = 0; column < sheet.columnCount; column += 1) {
      const text = sheet.cell(row, column);
      if (typeof text === "string") yield { text, row, column };
    }
  }
}
