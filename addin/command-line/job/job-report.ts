import {
  costReport,
  type JobFinding,
  type JobTonnage,
  type TonnageReport,
  tonnageReport,
} from "../../../core/jobs";
import type { JobRead } from "./read-job";

/** What a job comes to, as scripts get it. */
export interface JobReport extends Omit<TonnageReport, "notInTotal" | "held"> {
  readonly books: number;
  readonly unreadable: readonly { readonly book: string; readonly why: string }[];
  readonly schedules: readonly {
    readonly book: string;
    readonly sheet: string;
    readonly schedule: string;
    readonly revision: string | null;
    readonly date: string | null;
    readonly counted: boolean | "in part";
    readonly because: string | null;
  }[];
  readonly findings: readonly JobFinding[];
  /** null, or what of the job is held back; `total` is then null and the sums are of the rest */
  readonly held: readonly { readonly book: string; readonly sheet: string; readonly why: string }[] | null;
  readonly superseded: number;
  /** what of the total may be another job's steel; not there where no schedule says another job */
  readonly ofAnotherJob?: NonNullable<JobTonnage["ofAnotherJob"]>;
  /** by the rates of the first Shop sheet that holds any; not there without */
  readonly costs?: ReturnType<typeof costReport>;
  readonly notInTotal: JobTonnage["notInTotal"];
}

export function jobReport({ answers, judged }: JobRead, totals: JobTonnage): JobReport {
  const { tonnage, groupedBy, held, notInTotal, superseded, priced, ofAnotherJob } = totals;
  const sums = tonnageReport({ tonnage, groupedBy, notInTotal: [], held: null });
  return {
    ...sums,
    total: held.length === 0 ? sums.total : null,
    books: answers.length,
    unreadable: unreadable(answers),
    schedules: judged.schedules.map(({ book, sheet, number, revision, date, standing }) => ({
      book,
      sheet,
      schedule: number,
      revision,
      date,
      counted: standing.because === null ? true : standing.replaced === null ? false : "in part",
      because: standing.because,
    })),
    findings: judged.findings,
    held: held.length === 0 ? null : held,
    superseded,
    notInTotal,
    ...(ofAnotherJob !== null && { ofAnotherJob }),
    ...(priced !== null && { costs: costReport(priced) }),
  };
}

export function unreadable(answers: JobRead["answers"]): { book: string; why: string }[] {
  return answers.flatMap(({ path, error }) => (error === null ? [] : [{ book: path, why: error }]));
}
