import {
  type CheckedBook,
  checkBooks,
  countedBars,
  isUnmakeable,
  shopNotes,
  type TicketsJob,
  ticketsOf,
} from "../../../core/jobs";
import type { HeatsOfRow, Ticket } from "../../../core/tickets";
import { isRefusal, refusalText } from "../../../core/units/refusal";
import { headOfSchedules } from "../../print/head-of-schedules";
import type { PageHead } from "../../print/print-page";
import type { Streams } from "../streams";
import { leftOutNotes } from "./cut-job";
import type { JobAsked } from "./job-asked";
import { openBooks, questionOf } from "./open-books";
import type { JobRead } from "./read-job";

/** The head of pages over many schedules: the job where all say the same, and each schedule. */
export function jobHead(all: readonly Ticket[], standard: string, leftOut: readonly string[]): PageHead {
  const heads = all.map(({ head }) => head);
  return { ...headOfSchedules(heads, standard), leftOut };
}

/** The tickets of one book of a job. */
export interface TicketsOfBook {
  readonly book: string;
  readonly standard: string;
  readonly tickets: readonly Ticket[];
}

/** A ticket for every bar of a job that counts, book by book, each by its own book's Shop sheet. */
export function ticketsOfJob(
  asked: JobAsked,
  job: Pick<JobRead, "judged" | "answers">,
  streams: Streams,
  heatsOf: (book: string) => HeatsOfRow,
) {
  const books: TicketsOfBook[] = [];
  const unread: { book: string; error: string }[] = [];
  const seen = new Set<string>();
  const notes: string[] = [];
  const tell = (note: string): void => {
    notes.push(note);
    streams.note(note);
  };
  const question = questionOf(asked.task);
  for (const { path, opened, error } of openBooks(asked, job)) {
    const [checked] = opened === null ? [] : checkBooks([opened.book], question);
    if (checked === undefined || isRefusal(checked)) {
      unread.push({ book: path, error: checked === undefined ? (error ?? "") : refusalText(checked) });
      continue;
    }
    const { workshop, standard } = checked;
    const made = countedTickets(path, checked, asked, job, heatsOf(path));
    for (const note of [...shopNotes(workshop), ...made.notes]) {
      if (!seen.has(note)) tell(`${path}: ${note}`);
      seen.add(note);
    }
    books.push({ book: path, standard: standard.id, tickets: made.tickets });
  }
  for (const { book, error } of unread) tell(`not read: ${book}: ${error}`);
  for (const note of leftOutNotes(job.judged.schedules)) tell(note);
  const all = books.flatMap(({ tickets }) => tickets);
  return { books, unread, all, notes, isUnmakeable: all.some(isUnmakeable) };
}

/** The tickets of a checked book for the bars that count in its job and are asked for. */
export function countedTickets(
  path: string,
  { report, all: sheets, workshop, schedules }: CheckedBook,
  { filter }: Pick<JobAsked, "filter">,
  { judged }: Pick<JobRead, "judged">,
  heats?: HeatsOfRow,
): TicketsJob {
  const counted = countedBars(path, schedules, judged, filter);
  const bySheet = new Map(counted.map(({ sheet, reading }) => [sheet.name, reading]));
  const own = report.sheets.flatMap((each) => {
    const reading = bySheet.get(each.sheet);
    return reading === undefined ? [] : [{ ...each, reading }];
  });
  return ticketsOf([{ report: { ...report, sheets: own }, sheets, workshop, ...(heats && { heats }) }]);
}
