import type { ColumnKind } from "../bar-row";
import { type Cell, cellErrorReason, isCellError, type Sheet } from "../sheet";
import { guessed, type RowContext, type Told, unread } from "./cell-answer";
import { cleanText } from "./clean-text";
import { dateTyped, mayBeDate } from "./date-typed";
import { isDitto, plainWords } from "./row-words";

/** What a text says: itself, nothing, or that it is the one above. */
export interface TextReading {
  readonly text: string | null;
  readonly ditto: boolean;
  /** why it could not be read, where it could not */
  readonly failed?: string;
}

export type TextAnswer = string | null | Told<string>;

export function readText(typed: string): TextReading {
  const clean = cleanText(typed);
  const plain = plainWords(clean);
  const isNothing = clean === "" || /^-+$/.test(plain);
  return { text: isNothing ? null : clean, ditto: isDitto(plain) };
}

/** A text without outer blanks; a ditto is the text above; null where the cell says nothing. */
export function readTextCell(
  field: ColumnKind,
  column: number,
  cell: Cell | undefined,
  above: string | null,
  readTyped: (typed: string) => TextReading,
): TextAnswer {
  if (cell === null || cell === undefined) return null;
  if (typeof cell === "string") {
    if (isPlainMark(cell)) return cell;
    const { text, ditto, failed } = readTyped(cell);
    if (failed !== undefined) return unread({ field, column, typed: cell }, failed);
    return ditto ? above : text;
  }
  if (!isCellError(cell)) return String(cell);
  return unread({ field, column, typed: cell }, cellErrorReason(cell));
}

/** The mark that a number stands for; what a spreadsheet turned into a date or a power is brought back. */
export function readNumberMark(
  number: number,
  column: number,
  context: RowContext,
  sheet: Sheet,
): TextAnswer {
  const place = { field: "mark", column, typed: number } as const;
  if (mayBeDate(number) && sheet.isDate?.(context.row, column) === true) {
    const { month, day } = dateTyped(number, sheet.datesFrom1904 === true);
    const reading = `${month}-${day}`;
    const reason = `a date stands where the mark belongs: ${reading} was typed and turned into a date`;
    return guessed(place, reading, { guess: "date-was-mark", asks: false, reason }, context);
  }
  const seen = sheet.shown?.(context.row, column);
  if (seen === undefined || seen.length > LONGEST_NUMBER) return String(number);
  const power = /^(\d+)(?:\.0*)?E\+?0*(\d+)$/i.exec(seen);
  if (power === null) return AS_SHOWN.test(seen) ? seen : String(number);
  const reading = `${power[1]}E${power[2]}`;
  const reason = `${seen} stands where the mark belongs: ${reading} was typed and turned into a number`;
  return guessed(place, reading, { guess: "number-was-mark", asks: false, reason }, context);
}

/** "007", and "1.101" of a file whose points part thousands */
const AS_SHOWN = /^(?:0\d*|[1-9]\d{0,2}(?:\.\d{3})+)$/;

const LONGEST_NUMBER = 40;

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
