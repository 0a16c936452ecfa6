import type { ScheduleReading } from "../schedule/bar-row";
import { cellAddress } from "../schedule/cell-address";
import { cleanText } from "../schedule/cells/clean-text";
import type { Sheet } from "../schedule/sheet";

/** rows of words that are looked through */
const MOST_ROWS = 200;

/** A text of a title, a heading or a note. */
export interface NoteText {
  readonly text: string;
  readonly row: number;
  readonly column: number;
}

/** A text of a note with the address of its cell. */
interface NoteAt {
  readonly text: string;
  readonly cell: string;
}

/** The texts of the rows of words on the other sheets of the book: a sheet of notes, or the last page's. */
export function* notesElsewhere({ elsewhere }: Pick<Sheet, "elsewhere">): Generator<NoteAt> {
  for (const { cells, at } of elsewhere?.() ?? []) {
    if (cells.some((cell) => typeof cell === "number")) continue;
    for (const [column, text] of cells.entries())
      if (typeof text === "string") yield { text, cell: at(column) };
  }
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

/**
 * What one title, heading or note of a sheet says of something, with its cell, or of its book's other sheets where
 * none of its own does; null where none says it, or several do.
 *
 * @param read what a text says of it, once for each of its parts that does
 */
export function saidOnce<Said extends object>(
  { sheet, reading }: SheetOfNotes,
  read: (text: string) => readonly Said[],
): (Said & { readonly cell: string }) | null {
  const own = [...noteTexts(sheet, reading)].map(({ text, row, column }) => ({
    text,
    cell: cellAddress(sheet, row, column),
  }));
  const saidIn = (notes: readonly NoteAt[]) =>
    notes.flatMap(({ text, cell }) => read(text).map((one) => ({ ...one, cell })));
  const found = saidIn(own);
  const [one, another] = found.length > 0 ? found : saidIn([...notesElsewhere(sheet)]);
  return one === undefined || another !== undefined ? null : one;
}

interface SheetOfNotes {
  readonly sheet: Sheet;
  readonly reading: Pick<ScheduleReading, "rowClasses">;
}

/** before the beginning of a word, in writing that parts words by blanks */
export const BEGINS = String.raw`(?<![\p{Script=Latin}\p{Script=Greek}\p{Script=Cyrillic}])`;
/** where a note goes on to something else */
export const NOTE_PARTS = /[;\u061b\uff1b\u3002\n]|\s{3,}|\.\s+(?=\p{Lu})/u;

/** Lower case, without accents, with the digits and signs that are read. */
export function plainNote(text: string): string {
  return cleanText(text)
    .normalize("NFD")
    .replace(/[\u0300-\u036f\u200b-\u200d]/g, "")
    .normalize("NFC")
    .toLowerCase();
}
