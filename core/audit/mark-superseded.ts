import { AnswersOfBars } from "../bar/answers-of-bars";
import { BarFacts } from "../bar/bar-facts";
import { type BookFacts, SheetFacts } from "../bar/sheet-facts";
import type { BarRow, ScheduleReading } from "../schedule/bar-row";
import { plainBar } from "../schedule/rows/stored-bar";
import type { Sheet } from "../schedule/sheet";
import type { Standard } from "../standards/port";
import { BookRevisions } from "./book-revisions";

/**
 * The reading of a sheet with the bars that a later revision on another sheet of its workbook replaces
 * marked as superseded, so that they count nowhere. Lists that are alike by their bars alone are not marked.
 */
export function withSuperseded(facts: SheetFacts, book: BookFacts): ScheduleReading {
  const { reading } = facts;
  if (book.sheets.length < 2) return reading;
  const revisions = BookRevisions.of(book);
  if (revisions.laterSheets(facts) === null && !revisions.knowsRowsOf(facts)) return reading;
  let isAny = false;
  const bars = facts.bars.map((bar): BarRow => {
    const found = bar.row.superseded === true ? null : revisions.replacementOf(bar);
    if (found === null || !found.isNamed) return bar.row;
    isAny = true;
    const sheet = found.sheet === facts ? null : found.sheet.name;
    return { ...plainBar(bar.row), superseded: true, supersededBy: { revision: found.later, sheet } };
  });
  return isAny ? { ...reading, bars } : reading;
}

/** The schedules of one workbook, each so marked. */
export function markSuperseded<Read extends { readonly sheet: Sheet; readonly reading: ScheduleReading }>(
  schedules: readonly Read[],
  standard: Standard,
): readonly Read[] {
  const withBars = schedules.filter(({ reading }) => reading.bars.length > 0);
  if (withBars.length < 2) return schedules;
  const facts = new Map(withBars.map((read) => [read, factsOf(read, standard)]));
  const book = { sheets: [...facts.values()] };
  for (const sheet of book.sheets) sheet.book = book;
  return schedules.map((read) => {
    const own = facts.get(read);
    return own === undefined ? read : { ...read, reading: withSuperseded(own, book) };
  });
}

function factsOf(
  { sheet, reading }: { sheet: Sheet; reading: ScheduleReading },
  standard: Standard,
): SheetFacts {
  const facts = new SheetFacts(sheet, reading);
  facts.answers = new AnswersOfBars(
    reading.bars.map((row, place) => new BarFacts(row, facts, standard, place)),
  );
  return facts;
}
