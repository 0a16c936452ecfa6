import type { BookDigest } from "../../../core/jobs";
import {
  checkBooks,
  costNotes,
  isAsked,
  type JobGroup,
  type JobTonnage,
  JobTotals,
  notesInJob,
  severeWords,
} from "../../../core/jobs";
import { tonnageByPour } from "../../../core/totals";
import { counted } from "../../../core/units/counted";
import { answerOf } from "../answer-of";
import type { ExitCode } from "../command";
import { InputRefused } from "../input-refused";
import { markedCopy } from "../marked-copy";
import { openBook } from "../open-book";
import { printCosts } from "../print-costs";
import { printGroups, summaryWords, tonnesWords } from "../print-findings";
import type { GivenOptions } from "../read-options";
import type { Streams } from "../streams";
import { refuseKind, writeCopy } from "../write-copy";
import { BookNotes } from "./book-notes";
import { type CopyPlaces, writeInPlace } from "./copy-places";
import { askedFindings, isNarrow, type JobAsked } from "./job-asked";
import { bookLines, jobLines, unreadLine } from "./job-lines";
import { JobPaper } from "./job-paper";
import { jobReport } from "./job-report";
import { nameOfGroup } from "./job-workbook";
import { questionOf, tried } from "./open-books";
import { noteJob, printJob } from "./print-job";
import { type JobRead, readJob } from "./read-job";
import { SevereOfJob } from "./severe-of-job";

/** How the answers of a job are told: `check` tells findings, `tonnage` sums. */
export interface JobTelling {
  readonly tells: "findings" | "tonnes";
  readonly by: JobGroup | null;
  /** where a marked copy of each book is to be written; null for none */
  readonly copies?: CopyPlaces | null;
  /** where the workbook of the job is to be written; null for none */
  readonly workbook?: string | null;
}

/** `check` and `tonnage` over many books: one answer each book and one of the job, book by book. */
export async function tellJob(
  { named, task, filter }: JobAsked,
  telling: JobTelling,
  given: GivenOptions,
  streams: Streams,
): Promise<ExitCode> {
  const job = await readJob(named.paths, task, given, streams);
  try {
    const totals = new JobTotals(job.judged, telling.by, filter, job.rates);
    const isCheck = telling.tells === "findings";
    const target = telling.workbook ?? null;
    const paper = target === null ? null : new JobPaper(job, filter);
    const teller = tellerOf(given, telling, streams);
    const notes = new BookNotes();
    const severe = new SevereOfJob(job.judged, filter);
    let isCopyLost = false;
    teller.start();
    for (const answer of job.answers) {
      if (answer.error !== null) {
        teller.unread(answer.path, answer.error);
        continue;
      }
      const whole = job.digest(answer);
      const bars = totals.addBook(whole);
      const said = notesInJob(whole, bars, filter);
      // the sums of a job name every bar that is not to be made
      const digest = { ...whole, notes: isCheck ? [...said, ...whole.unplanned] : said };
      notes.add(digest);
      severe.add(digest);
      paper?.addBook(digest);
      teller.book(narrowed(digest, filter), bars, job, filter);
      const copy = telling.copies?.get(answer.path);
      if (copy !== undefined && !isMarked(answer.path, copy, task, streams)) isCopyLost = true;
    }
    const tonnage = totals.result();
    const report = jobReport(job, tonnage, severe);
    for (const note of notes.words()) streams.note(note);
    noteJob(report, streams);
    if (!isCheck) for (const note of severeWords(severe, true)) streams.note(note);
    if (paper !== null && target !== null) {
      writeCopy(target, paper.workbook(report, notes.words()));
      streams.note(`written: ${target}`);
    }
    teller.end(job, tonnage, report);
    return isCopyLost ? 2 : job.exit;
  } finally {
    job.close();
  }
}

/** Writes the copy of a book with its findings marked; false, and a note, where it cannot be written. */
function isMarked(path: string, copy: string, task: JobAsked["task"], streams: Streams): boolean {
  const done = tried(() => {
    const book = openBook(path);
    if (book.workbook === null) throw new InputRefused("a .csv holds no marks");
    refuseKind(book.workbook, copy);
    const checked = answerOf(checkBooks([book], questionOf(task))[0]!);
    const { pieces, kept } = markedCopy(book.workbook, checked, copy);
    writeInPlace(copy, pieces);
    return kept;
  });
  if (done instanceof Error) streams.note(`no copy: ${path}: ${done.message}`);
  else for (const note of [...done, `written: ${copy}`]) streams.note(note);
  return !(done instanceof Error);
}

/** What is not shown is still counted: the exit code is of the whole. */
function narrowed(digest: BookDigest, filter: JobAsked["filter"]): BookDigest {
  const findings = askedFindings(digest.report.findings, digest.bars, filter);
  return findings === digest.report.findings ? digest : { ...digest, report: { ...digest.report, findings } };
}

/** What the line that sums up a book counts: the bars asked for and their tonnes. */
function askedOf(
  digest: BookDigest,
  filter: JobAsked["filter"],
): Pick<BookDigest, "report"> & { readonly tonnage: Pick<BookDigest["tonnage"], "total" | "notInTotal"> } {
  const { report, tonnage } = digest;
  if (!isNarrow(filter)) return { report, tonnage };
  const bars = digest.bars.filter((bar) => isAsked(filter, bar));
  const rows = new Set(bars.map(({ sheet, row }) => `${row} ${sheet}`));
  const lines = bars.flatMap(({ kg, size, pour, notInTotal }) =>
    kg === null || notInTotal !== null ? [] : [{ pour: pour ?? "", size, mass: kg }],
  );
  return {
    report: { ...report, rows: { ...report.rows, bars: bars.length } },
    tonnage: {
      total: tonnage.total === null ? null : tonnageByPour(lines).total,
      notInTotal: tonnage.notInTotal.filter(({ sheet, row }) => rows.has(`${row} ${sheet}`)),
    },
  };
}

interface Teller {
  start(): void;
  unread(book: string, why: string): void;
  book(
    digest: BookDigest,
    bars: ReturnType<JobTotals["addBook"]>,
    job: JobRead,
    filter: JobAsked["filter"],
  ): void;
  end(job: JobRead, tonnage: JobTonnage, report: ReturnType<typeof jobReport>): void;
}

function tellerOf(given: GivenOptions, { tells }: JobTelling, streams: Streams): Teller {
  const findings = tells === "findings";
  const isSummary = given.flag("summary");
  if (given.flag("jsonl")) return lineTeller(findings, streams);
  if (given.flag("json")) return jsonTeller(findings, streams);
  return {
    start: () => undefined,
    unread: () => undefined,
    book: (digest, _bars, job, filter) => {
      const { book, report, notTold } = digest;
      if (!findings && !isSummary) return;
      const asked = askedOf(digest, filter);
      if (!findings) {
        streams.result(
          `${book}${standingWords(book, job)}: ${counted(asked.report.rows.bars, "bar row")}; ${tonnesWords(asked.tonnage)}`,
        );
        return;
      }
      const isWhole = !isSummary && report.findings.length > 0;
      if (isWhole) {
        streams.result(`== ${book}${standingWords(book, job)}`);
        printGroups(report.findings, streams);
      }
      streams.result(`${isWhole ? "" : `${book}: `}${summaryWords(asked.report, asked.tonnage, notTold)}`);
      if (isWhole) streams.result("");
    },
    end: (job, tonnage, report) => {
      const pours = tonnage.tonnage.pours.map((one) => ({
        ...one,
        pour: nameOfGroup(one.pour, tonnage.groupedBy),
      }));
      printJob(report, { ...tonnage.tonnage, pours }, streams, isSummary && !findings);
      if (findings || tonnage.priced === null) return;
      printCosts(tonnage.priced, tonnage.groupedBy, streams, isSummary);
      if (job.rates !== null) for (const note of costNotes(tonnage.priced, job.rates)) streams.note(note);
    },
  };
}

function standingWords(book: string, { judged }: JobRead): string {
  const out = judged.schedules.filter((entry) => entry.book === book && entry.standing.because !== null);
  return out.length === 0 ? "" : ` (not counted: ${out[0]!.standing.because})`;
}

function lineTeller(findings: boolean, streams: Streams): Teller {
  const line = (object: object): void => streams.result(JSON.stringify(object));
  return {
    start: () => undefined,
    unread: (book, why) => line(unreadLine(book, why)),
    book: (digest, bars, job, filter) => {
      for (const object of bookLines(digest, bars, job, { filter, findings })) line(object);
    },
    end: (job, tonnage) => {
      for (const object of jobLines(job, tonnage)) line(object);
    },
  };
}

/** One object, written piece by piece, so that a long job never stands whole in memory. */
function jsonTeller(findings: boolean, streams: Streams): Teller {
  let isFirst = true;
  const put = (book: object): void => {
    streams.piece(`${isFirst ? "" : ","}${JSON.stringify(book)}`);
    isFirst = false;
  };
  return {
    start: () => streams.piece('{"books":['),
    unread: (book, why) => put({ book, error: why }),
    book: ({ book, report, tonnage, notes }) => put({ book, ...(findings ? report : tonnage), notes }),
    end: (_job, _tonnage, report) => streams.result(`],"job":${JSON.stringify(report)}}`),
  };
}
