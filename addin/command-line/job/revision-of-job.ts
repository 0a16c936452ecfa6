import { countedBars, type Revision, readSchedules, type SevereBars } from "../../../core/jobs";
import type { Standard } from "../../../core/standards";
import type { GivenOptions } from "../read-options";
import type { Streams } from "../streams";
import { BookNotes } from "./book-notes";
import { booksNamed } from "./books-named";
import { leftOutNotes } from "./cut-job";
import { filterOf, type JobAsked } from "./job-asked";
import { openBooks, tried } from "./open-books";
import { readJob } from "./read-job";
import { SevereOfJob } from "./severe-of-job";

/** One side of a comparison: all schedules of a job that count, each under its own number. */
export interface JobRevision extends Revision {
  readonly standard: Standard | null;
  readonly books: readonly string[];
  /** bars of it that are not to be made, or to be asked about first */
  readonly severe: SevereBars;
  /** something in it may hurt, or cannot be made, for certain */
  readonly isBroken: boolean;
  /** what is to be said of its books, a sentence each */
  readonly notes: readonly string[];
  readonly unreadable: readonly { readonly book: string; readonly why: string }[];
}

export async function revisionOfJob(
  name: string,
  given: GivenOptions,
  streams: Streams,
): Promise<JobRevision> {
  const named = booksNamed([name]);
  const [standard, own] = [given.text("standard"), given.text("own")];
  const task = { sheet: null, standard, own, explain: false, columns: [] };
  const asked: JobAsked = { named, task, filter: filterOf(given) };
  const job = await readJob(named.paths, task, given, streams, null);
  try {
    const keys = new Map(job.judged.schedules.map(({ book, sheet, key }) => [`${book}\n${sheet}`, key]));
    const schedules: Revision["schedules"][number][] = [];
    const unreadable: { book: string; why: string }[] = [];
    let standard: Standard | null = null;
    for (const { path, opened, error } of openBooks(asked, job)) {
      const read = opened === null ? new Error(error ?? "") : tried(() => readSchedules(opened));
      if (read instanceof Error || opened === null) {
        unreadable.push({ book: path, why: read instanceof Error ? read.message : "" });
        continue;
      }
      standard ??= opened.standard;
      for (const { sheet, reading } of countedBars(path, read.schedules, job.judged))
        schedules.push({
          sheet,
          reading: { ...reading, sheet: `${path} ${sheet.name}` },
          standard: opened.standard,
          key: keys.get(`${path}\n${sheet.name}`) ?? path,
        });
    }
    const severe = new SevereOfJob(job.judged, asked.filter);
    const notes = new BookNotes();
    let isBroken = false;
    for (const answer of job.answers) {
      if (answer.error !== null) continue;
      const digest = job.digest(answer);
      severe.add(digest);
      notes.add(digest);
      if (digest.isBroken) isBroken = true;
    }
    for (const note of notes.words()) streams.note(note);
    for (const { book, why } of unreadable) streams.note(`not read: ${book}: ${why}`);
    for (const note of leftOutNotes(job.judged.schedules)) streams.note(note);
    return { schedules, standard, books: named.paths, severe, notes: notes.words(), isBroken, unreadable };
  } finally {
    job.close();
  }
}
