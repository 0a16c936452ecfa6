import { checkBooks, countedBars, isUnmakeable, shopNotes, ticketsOf } from "../../../core/jobs";
import type { Ticket } from "../../../core/tickets";
import { isRefusal, refusalText } from "../../../core/units/refusal";
import type { Streams } from "../streams";
import { leftOutNotes } from "./cut-job";
import type { JobAsked } from "./job-asked";
import { openBooks, questionOf } from "./open-books";
import type { JobRead } from "./read-job";

/** The tickets of one book of a job. */
export interface TicketsOfBook {
  readonly book: string;
  readonly standard: string;
  readonly tickets: readonly Ticket[];
}

/** A ticket for every bar of a job that counts, book by book, each by its own book's Shop sheet. */
export function ticketsOfJob(asked: JobAsked, job: JobRead, streams: Streams) {
  const books: TicketsOfBook[] = [];
  const unread: { book: string; error: string }[] = [];
  const seen = new Set<string>();
  const question = questionOf(asked.task);
  for (const { path, opened, error } of openBooks(asked)) {
    const [checked] = opened === null ? [] : checkBooks([opened.book], question);
    if (checked === undefined || isRefusal(checked)) {
      unread.push({ book: path, error: checked === undefined ? (error ?? "") : refusalText(checked) });
      continue;
    }
    const { report, all: sheets, workshop, standard } = checked;
    const counted = countedBars(path, checked.schedules, job.judged, asked.filter);
    const bySheet = new Map(counted.map(({ sheet, reading }) => [sheet.name, reading]));
    const own = report.sheets.flatMap((each) => {
      const reading = bySheet.get(each.sheet);
      return reading === undefined ? [] : [{ ...each, reading }];
    });
    const made = ticketsOf([{ report: { ...report, sheets: own }, sheets, workshop }]);
    for (const note of [...shopNotes(workshop), ...made.notes]) {
      if (!seen.has(note)) streams.note(`${path}: ${note}`);
      seen.add(note);
    }
    if (workshop.shop.stock.some(({ heat }) => heat !== null))
      streams.note(
        `${path}: its heats are not on the tickets of a job: ask for the tickets of this book alone`,
      );
    books.push({ book: path, standard: standard.id, tickets: made.tickets });
  }
  for (const { book, error } of unread) streams.note(`not read: ${book}: ${error}`);
  for (const note of leftOutNotes(job.judged.schedules)) streams.note(note);
  const all = books.flatMap(({ tickets }) => tickets);
  return { books, unread, all, isUnmakeable: all.some(isUnmakeable) };
}
