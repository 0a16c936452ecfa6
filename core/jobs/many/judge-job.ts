import { findingsOfPapers, listedBy } from "./findings-of-papers";
import { barKey, type JobBar } from "./job-bar";
import type { JobFinding } from "./job-finding";
import type { JobPapers } from "./job-papers";
import { findingsOfMarks } from "./marks-of-job";
import { findingsOfNames, OTHER_JOB } from "./names-of-job";
import { newestSchedules, type Standing } from "./newest-schedules";
import type { ScheduleEntry } from "./schedule-entry";
import { findingsOfTitles } from "./titles-of-job";

/** A job once all its schedules are known: which of them count, and what only all of them together show. */
export interface JudgedJob {
  readonly schedules: readonly (ScheduleEntry & { readonly standing: Standing })[];
  readonly findings: readonly JobFinding[];
  /** why a bar does not count in the job, whatever its own book says of it; null where it counts */
  leftOut(book: string, bar: Pick<JobBar, "sheet" | "member" | "mark">): string | null;
  /** Whether a schedule says that it is of another job: it counts, and every total says so beside it. */
  isOfAnother(book: string, sheet: string): boolean;
}

/** Holds the schedules of a job against each other, and against its registers and lists of stock. */
export function judgeJob(
  entries: readonly ScheduleEntry[],
  papers: JobPapers = { registers: [], held: [] },
): JudgedJob {
  const { standing, findings } = newestSchedules(entries);
  const isCounted = (entry: ScheduleEntry): boolean => {
    const { because, replaced } = standing.get(entry)!;
    return because === null || replaced !== null;
  };
  const counted = entries.filter(isCounted);
  const byPlace = new Map(entries.map((entry) => [`${entry.book}\n${entry.sheet}`, standing.get(entry)!]));
  const names = findingsOfNames(entries, counted, listedBy(papers, entries));
  const others = new Set(
    names
      .filter(({ code }) => code === OTHER_JOB)
      .flatMap(({ places }) => places.map(({ book, sheet }) => `${book}\n${sheet}`)),
  );
  const isOfThis = ({ book, sheet }: ScheduleEntry): boolean => !others.has(`${book}\n${sheet}`);
  return {
    schedules: entries.map((entry) => ({ ...entry, standing: standing.get(entry)! })),
    findings: [
      ...findings,
      ...findingsOfMarks(counted),
      ...names,
      ...findingsOfTitles(counted),
      ...findingsOfPapers(counted.filter(isOfThis), papers),
    ],
    isOfAnother: (book, sheet) => others.has(`${book}\n${sheet}`),
    leftOut: (book, bar) => {
      const own = byPlace.get(`${book}\n${bar.sheet}`);
      if (own === undefined || own.because === null) return null;
      if (own.replaced === null) return own.because;
      const key = barKey(bar);
      return key !== null && own.replaced.has(key) ? own.because : null;
    },
  };
}
