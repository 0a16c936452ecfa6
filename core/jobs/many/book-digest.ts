import { notToldSummary } from "../../audit/not-told-words";
import type { Cell } from "../../schedule/sheet";
import { isRefusal, type Refusal } from "../../units/refusal";
import type { Book } from "../book";
import { checkBooks, isBroken } from "../check";
import { type CheckReport, checkReport } from "../check-report";
import { ratesOf } from "../costs";
import type { JobQuestion } from "../read-book";
import { type TonnageReport, tonnageReport } from "../tonnage-report";
import { type JobBar, jobBars } from "./job-bar";
import { type ScheduleEntry, scheduleEntry } from "./schedule-entry";

type Block = readonly (readonly Cell[])[];

/** Everything that a job of many books keeps of one: plain data, so that it can be stored and sent. */
export interface BookDigest {
  /** the name under which it was given */
  readonly book: string;
  readonly report: CheckReport;
  readonly tonnage: TonnageReport;
  readonly notes: readonly string[];
  /** what somebody said is not to be told; null where nothing is */
  readonly notTold: string | null;
  readonly isBroken: boolean;
  readonly schedules: readonly ScheduleEntry[];
  readonly bars: readonly JobBar[];
  /** the table of rates of its Shop sheet; null where it has none */
  readonly rates: Block | null;
}

export interface DigestQuestion extends JobQuestion {
  /** tells a class and a reason of each row */
  readonly explain: boolean;
}

/** Checks one book of a job; refuses it as the check of a single one does. */
export function digestBook(book: Book, name: string, asked: DigestQuestion): BookDigest | Refusal {
  const [checked] = checkBooks([book], asked);
  if (checked === undefined || isRefusal(checked)) return checked!;
  const { schedules, standard } = checked;
  const read = schedules.map((schedule) => ({ schedule, bars: jobBars(schedule, standard) }));
  const isOnly = schedules.length === 1;
  return {
    book: name,
    report: checkReport(checked, asked.explain),
    tonnage: tonnageReport(checked.tonnage),
    notes: checked.notes,
    notTold: notToldSummary(checked.report.waivers),
    isBroken: isBroken(checked),
    schedules: read.map(({ schedule, bars }) =>
      scheduleEntry(name, schedule, bars, { standard: standard.id, isOnly }),
    ),
    bars: read.flatMap(({ bars }) => bars),
    rates:
      ratesOf(checked.workshop, checked.standard) === null
        ? null
        : (checked.workshop.shop.rates?.block ?? null),
  };
}
