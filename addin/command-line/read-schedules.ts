import { type AuditSettings, correctionWords, readAsCorrected } from "../../core/audit";
import type { ScheduleReading, Sheet } from "../../core/schedule";
import { isShopSheet } from "../../core/shop";
import type { Standard } from "../../core/standards";
import { auditSettingsOf } from "./audit-settings-of";
import { InputRefused } from "./input-refused";
import type { Book } from "./open-book";
import type { Streams } from "./streams";

/** The sheet asked for, or every sheet of the book but the Shop sheet, whose trials and stock are no bars. */
export function readSheets(book: Book, only: string | null): Sheet[] {
  const asked = only === null ? book.sheetNames : book.sheetNames.filter((name) => name === only);
  if (asked.length === 0) {
    throw new InputRefused(`there is no sheet "${only}": the book has ${book.sheetNames.join(", ")}`);
  }
  const names = asked.filter((name) => !isShopSheet(name));
  if (names.length === 0) {
    throw new InputRefused(`sheet "${asked[0]}" says what the yard owns and is no schedule`);
  }
  return names.map((name) => book.read(name));
}

/**
 * Every sheet of the book in its order: the Shop sheet tells what the yard owns, and another sheet whether
 * one that is asked for is superseded.
 */
export function withOtherSheets(book: Book, sheets: readonly Sheet[]): readonly Sheet[] {
  return book.sheetNames.map((name) => sheets.find((sheet) => sheet.name === name) ?? book.read(name));
}

/** A sheet beside what was read of it. */
export interface ReadSheet {
  readonly sheet: Sheet;
  readonly reading: ScheduleReading;
}

/** Reads sheets of a book as its user corrected them there, and tells in notes which corrections were used. */
export function readSchedules(
  book: Book,
  sheets: readonly Sheet[],
  standard: Standard,
  streams: Streams,
): ReadSheet[] {
  const settings = auditSettingsOf(book);
  saySettingsUsed(sheets, settings, streams);
  return sheets.map((sheet) => ({ sheet, reading: readAsCorrected(sheet, standard, settings) }));
}

/** Tells in notes which columns are read as the workbook's user corrected them, and what of it could not be read. */
export function saySettingsUsed(sheets: readonly Sheet[], settings: AuditSettings, streams: Streams): void {
  if (settings.problem !== undefined) {
    streams.note(`settings kept in the workbook could not be read: ${settings.problem}`);
  }
  for (const { name } of sheets) {
    const words = correctionWords(settings, name);
    if (words !== null) streams.note(words);
  }
}

/**
 * Names each sheet that is no schedule in a note; where none is one, that is refused with the words that
 * were looked for and the nearest row.
 */
export function sayPassedOver(read: readonly ReadSheet[], streams: Streams): void {
  const without = read.filter(({ reading }) => reading.tables.length === 0);
  if (without.length === read.length) throw new InputRefused(without.map(noHeaderReason).join("; "));
  for (const one of without) streams.note(`passed over: ${noHeaderReason(one)}`);
}

function noHeaderReason({ sheet, reading }: ReadSheet): string {
  if (sheet.rowCount === 0) return `sheet "${sheet.name}" is empty`;
  const looked = reading.noHeader?.lookedFor.join(", ") ?? "";
  const nearest = reading.noHeader?.nearestRow ?? null;
  const where = nearest === null ? "no row comes near" : `the nearest is row ${sheet.top + nearest + 1}`;
  return `sheet "${sheet.name}" has no header row: looked for ${looked}; ${where}`;
}
