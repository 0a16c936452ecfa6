import { checkBooks, ticketsOf } from "../../../core/jobs";
import type { LengthUnit } from "../../../core/units/length-unit";
import { isRefusal, refusalText } from "../../../core/units/refusal";
import type { ExitCode } from "../command";
import { InputRefused } from "../input-refused";
import { type Inspected, inspectBook, printInspection } from "../inspect-book";
import { openBook } from "../open-book";
import type { GivenOptions } from "../read-options";
import type { Streams } from "../streams";
import { copyPlaces, writeInPlace } from "./copy-places";
import { leftOutNotes } from "./cut-job";
import type { JobAsked } from "./job-asked";
import { papersAmong, questionOf, tried } from "./open-books";
import { readJob } from "./read-job";
import { countedTickets } from "./ticket-job";

/** `inspect` over many books: a sample of each schedule that counts, or what was measured of it. */
export async function inspectJob(
  asked: JobAsked,
  every: number,
  given: GivenOptions,
  streams: Streams,
): Promise<ExitCode> {
  const { named, task } = asked;
  const out = given.text("out");
  const places = out === null ? null : copyPlaces(named, out);
  const job = await readJob(named.paths, task, given, streams);
  try {
    const books: object[] = [];
    const unreadable: { book: string; why: string }[] = [];
    const sums = { drawn: 0, measured: 0, waiting: 0, outside: 0 };
    const papers = papersAmong(job.answers);
    for (const path of named.paths) {
      if (papers.has(path)) continue;
      const target = places?.get(path) ?? null;
      const done = tried(() => inspectOne(path, target));
      if (done instanceof Error) {
        streams.note(`not inspected: ${path}: ${done.message}`);
        unreadable.push({ book: path, why: done.message });
        books.push({ book: path, error: done.message });
        continue;
      }
      if (done === null) continue;
      const { inspected, unit } = done;
      const { judged, sample } = inspected;
      sums.drawn += sample?.marks ?? 0;
      sums.measured += judged?.measured ?? 0;
      sums.waiting += judged?.waiting ?? 0;
      sums.outside += judged?.findings.length ?? 0;
      books.push({ book: path, ...(judged ?? sample) });
      if (given.flag("json")) continue;
      streams.result(`== ${path}`);
      printInspection(inspected, unit, streams, given.flag("summary"));
    }
    for (const note of leftOutNotes(job.judged.schedules)) streams.note(note);
    if (given.flag("json")) streams.result(JSON.stringify({ books, job: { ...sums, unreadable } }));
    else
      streams.result(
        `${sums.drawn} marks drawn; ${sums.measured} lengths measured, ${sums.waiting} waiting, ${sums.outside} to be looked at`,
      );
    return unreadable.length > 0 ? 2 : job.exit === 1 ? 1 : 0;

    /** Null where nothing of the book counts in the job. */
    function inspectOne(
      path: string,
      target: string | null,
    ): { inspected: Inspected; unit: LengthUnit } | null {
      const book = openBook(path);
      const [checked] = checkBooks([book], questionOf(task));
      if (checked === undefined || isRefusal(checked))
        throw new InputRefused(checked === undefined ? "it holds no schedule" : refusalText(checked));
      const { report, sheets, workshop } = checked;
      const { tickets } = ticketsOf([{ report, sheets, workshop }]);
      const { tickets: drawn, notes } = countedTickets(path, checked, asked, job);
      if (drawn.length === 0) return null;
      for (const note of notes) streams.note(`${path}: ${note}`);
      const { standard } = checked;
      const inspected = inspectBook({ book, tickets, drawn, standard, every, target });
      if (target !== null && inspected.copy !== null) {
        writeInPlace(target, inspected.copy);
        streams.note(`written: ${target}`);
      }
      return { inspected, unit: standard.unit };
    }
  } finally {
    job.close();
  }
}
