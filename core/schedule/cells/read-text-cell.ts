import type { ColumnKind } from "../bar-row";
import type { RowInHand } from "../rows/row-in-hand";
import { type Cell, cellErrorReason, isCellError, type Sheet } from "../sheet";
import { cleanText } from "./clean-text";
import { dateTyped, mayBeDate } from "./date-typed";
import { isWord, plainWords } from "./row-words";

const MOST_REMEMBERED = 50_000;

/** Reads the cells of a row that hold words: members, marks, remarks. */
export function textCellReader(hand: RowInHand, sheet: Sheet) {
  const remembered = new Map<string, { readonly text: string | null; readonly ditto: boolean }>();
  return { text, mark };

  /** The text without outer blanks; a ditto is the text above; null where the cell says nothing. */
  function text(
    field: ColumnKind,
    column: number,
    cells: readonly Cell[],
    above: string | null,
  ): string | null {
    if (column < 0) return null;
    const cell = cells[column];
    if (cell === null || cell === undefined) return null;
    if (typeof cell === "string") {
      if (isPlainMark(cell)) return cell;
      const known = remembered.get(cell) ?? remember(cell);
      return known.ditto ? above : known.text;
    }
    if (!isCellError(cell)) return String(cell);
    hand.unread(field, column, cell, cellErrorReason(cell));
    return null;
  }

  function remember(typed: string): { readonly text: string | null; readonly ditto: boolean } {
    const clean = cleanText(typed);
    const plain = plainWords(clean);
    const isNothing = clean === "" || /^-+$/.test(plain);
    const known = { text: isNothing ? null : clean, ditto: isWord("ditto", plain) };
    if (remembered.size > MOST_REMEMBERED) remembered.clear();
    remembered.set(typed, known);
    return known;
  }

  /** A mark keeps its typed form; what a spreadsheet turned into a date or a power is brought back. */
  function mark(column: number, cells: readonly Cell[], above: string | null): string | null {
    const cell = column < 0 ? null : cells[column];
    if (typeof cell !== "number") return text("mark", column, cells, above);
    if (mayBeDate(cell) && sheet.isDate?.(hand.row, column) === true) {
      const { month, day } = dateTyped(cell, sheet.datesFrom1904 === true);
      const reading = `${month}-${day}`;
      const reason = `a date stands where the mark belongs: ${reading} was typed and turned into a date`;
      hand.mayUse("mark", column, cell, { guess: "date-was-mark", asks: false, reason });
      return reading;
    }
    const seen = sheet.shown?.(hand.row, column);
    if (seen === undefined) return String(cell);
    const power = /^(\d+)(?:\.0*)?E\+?0*(\d+)$/i.exec(seen);
    if (power === null) return /^0\d*$/.test(seen) ? seen : String(cell);
    const reading = `${power[1]}E${power[2]}`;
    const reason = `${seen} stands where the mark belongs: ${reading} was typed and turned into a number`;
    hand.mayUse("mark", column, cell, { guess: "number-was-mark", asks: false, reason });
    return reading;
  }
}

/** Plain ASCII that ends in a digit and begins with a letter or digit: no word, so nothing to clean. */
function isPlainMark(text: string): boolean {
  const last = text.charCodeAt(text.length - 1);
  if (!(last >= 48 && last <= 57)) return false;
  const first = text.charCodeAt(0);
  if (!((first >= 48 && first <= 57) || (first >= 65 && first <= 90) || (first >= 97 && first <= 122)))
    return false;
  for (let index = 1; index < text.length; index += 1) {
    const code = text.charCodeAt(index);
    if (code > 126 || code < 32) return false;
  }
  return true;
}
