import { joinOwn, OWN_SHEET, ownNotes, ownOfSheets, ownSheetOf, readOwn } from "../../core/own";
import type { Sheet } from "../../core/schedule";
import { NOTHING_OWN, type OwnStandard, resolveStandard, type Standard } from "../../core/standards";
import { isRefusal, refusalText } from "../../core/units/refusal";
import { SETTING_NAMES } from "../workbook/setting-names";
import { InputRefused } from "./input-refused";
import { type BookFile, openBook } from "./open-book";
import type { GivenOptions, OptionDefinition } from "./read-options";
import type { Streams } from "./streams";

/** Options of every command that goes by a standard. */
export const STANDARD_OPTIONS: Readonly<Record<"standard" | "own", OptionDefinition>> = {
  standard: { type: "string" },
  own: { type: "string" },
};

/** Options of every command that reads schedules. */
export const READ_OPTIONS: Readonly<Record<"read", OptionDefinition>> = {
  read: { type: "string", multiple: true },
};

/**
 * The standard in force: the option, else the workbook's own, else the default; with what the book's sheet
 * Standard says, and the file given with --own behind it.
 */
export function standardInForce(given: GivenOptions, book: BookFile | null, streams: Streams): Standard {
  const named = given.text("standard");
  const ofWorkbook = book?.setting(SETTING_NAMES.standard) ?? null;
  const own = ownInForce(given, book, streams);
  const standard = resolveStandard(named ?? ofWorkbook ?? "", own);
  if (!isRefusal(standard)) return standard;
  const whose = named === null && ofWorkbook !== null ? "the workbook's name Barwright.Standard: " : "";
  throw new InputRefused(whose + refusalText(standard));
}

function ownInForce(given: GivenOptions, book: BookFile | null, streams: Streams): OwnStandard {
  const ofBook = book === null ? null : ownOfSheets(sheetsOf(book));
  return joinOwn(ofBook ?? NOTHING_OWN, ownOfFile(given, streams));
}

/** What the file given with --own holds: its sheet Standard, or the only sheet of a .csv. */
export function ownOfFile(given: GivenOptions, streams: Streams): OwnStandard {
  const path = given.text("own");
  if (path === null) return NOTHING_OWN;
  const { own, notes } = ownOfPath(path);
  for (const note of notes) streams.note(`${path}: ${note}`);
  return own;
}

/** What a file of own figures holds, and what is to be said of it. */
export function ownOfPath(path: string): { readonly own: OwnStandard; readonly notes: readonly string[] } {
  const file = openBook(path);
  const sheets = sheetsOf(file);
  const sheet = ownSheetOf(file.workbook === null ? sheets.map(named) : sheets);
  if (sheet === null) throw new InputRefused(`${path} has no sheet Standard with figures, shapes or laps`);
  return { own: readOwn(sheet).own, notes: ownNotes(sheet) };
}

function sheetsOf(book: BookFile): Sheet[] {
  return book.sheets.map(({ name }) => book.read(name));
}

function named(sheet: Sheet): Sheet {
  return Object.assign(Object.create(sheet) as Sheet, { name: OWN_SHEET });
}
