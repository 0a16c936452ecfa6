import { type BarFilter, type BookDigest, isAsked, JOB_GROUPS, JobTotals } from "../../../core/jobs";
import type { JobReport } from "./job-report";
import { type BarOfJob, jobWorkbook } from "./job-workbook";
import type { JobRead } from "./read-job";

/** Gathers what the workbook of a job needs, book by book; the bars are read again when they are written. */
export class JobPaper {
  readonly #totals;
  #count = 0;

  constructor(
    private readonly job: JobRead,
    private readonly filter: BarFilter,
  ) {
    this.#totals = new Map(JOB_GROUPS.map((by) => [by, new JobTotals(job.judged, by, filter)]));
  }

  addBook(digest: BookDigest): void {
    let placed: ReturnType<JobTotals["addBook"]> = [];
    for (const totals of this.#totals.values()) placed = totals.addBook(digest);
    this.#count += placed.filter(({ bar, leftOut }) => leftOut === null && isAsked(this.filter, bar)).length;
  }

  /** `notes`: what is to be said of single books. */
  workbook(report: JobReport, notes: readonly string[]): Uint8Array {
    const groups = new Map([...this.#totals].map(([by, totals]) => [by, totals.result()]));
    return jobWorkbook({ report, notes, groups, bars: this.#bars(), count: this.#count });
  }

  *#bars(): Generator<BarOfJob> {
    const totals = new JobTotals(this.job.judged, null, this.filter);
    for (const answer of this.job.answers) {
      if (answer.error !== null) continue;
      const digest = this.job.digest(answer);
      for (const placed of totals.addBook(digest))
        if (placed.leftOut === null && isAsked(this.filter, placed.bar))
          yield { ...placed, book: digest.book };
    }
  }
}
