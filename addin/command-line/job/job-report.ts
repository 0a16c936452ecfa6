import {
  costReport,
  type JobFinding,
  type JobTonnage,
  type SevereBars,
  type TonnageReport,
  tonnageReport,
} from "../../../core/jobs";
import { counted } from "../../../core/units/counted";
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
  /** null, or what of the job is held back; `total` is then null and the sums are of the rest. `total` is null too where no file was read */
  readonly held: readonly { readonly book: string; readonly sheet: string; readonly why: string }[] | null;
  readonly superseded: number;
  /** what of the total may be another job's steel; not there where no schedule says another job */
  readonly ofAnotherJob?: NonNullable<JobTonnage["ofAnotherJob"]>;
  /** by the rates of the first Shop sheet that holds any; not there without */
  readonly costs?: ReturnType<typeof costReport>;
  readonly notInTotal: JobTonnage["notInTotal"];
  /** bars of the totals that somebody has to clear or be asked about first; each sheet stands behind its book */
  readonly notToMake: SevereBars["notToMake"];
  readonly toAsk: SevereBars["toAsk"];
  readonly ofSheets: SevereBars["ofSheets"];
}

export function jobReport(
  { answers, judged }: JobRead,
  totals: JobTonnage,
  { notToMake, toAsk, ofSheets }: SevereBars,
): JobReport {
  const { tonnage, groupedBy, held, notInTotal, superseded, priced, ofAnotherJob, asTyped } = totals;
  const sums = tonnageReport({
    tonnage,
    groupedBy,
    notInTotal: [],
    asTyped: held.length === 0 ? asTyped : [],
    held: null,
  });
  return {
    ...sums,
    total: held.length === 0 && nothingRead(answers) === null ? sums.total : null,
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
    ...{ notToMake, toAsk, ofSheets },
    ...(ofAnotherJob !== null && { ofAnotherJob }),
    ...(priced !== null && { costs: costReport(priced) }),
  };
}

/** Why there is no total where not one file could be read; null where one was: what was not read is no nought. */
export function nothingRead(answers: JobRead["answers"]): string | null {
  const lost = unreadable(answers).length;
  return lost < answers.length ? null : `no total: ${counted(lost, "file")} not read`;
}

export function unreadable(answers: JobRead["answers"]): { book: string; why: string }[] {
  return answers.flatMap(({ path, error }) => (error === null ? [] : [{ book: path, why: error }]));
}
