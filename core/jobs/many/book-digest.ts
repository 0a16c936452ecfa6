import type { Finding } from "../../audit/finding";
import { isHolding, isOfTotals, isSevere } from "../../audit/holds";
import { notToldLine } from "../../audit/not-told-words";
import { severityCounts } from "../../audit/severity-counts";
import type { Cell, Sheet } from "../../schedule/sheet";
import { type ReckonedTonnage, reckonTonnage } from "../../totals/reckon-tonnage";
import { isRefusal, type Refusal } from "../../units/refusal";
import type { Book } from "../book";
import { checkBooks, isBroken } from "../check";
import { type CheckReport, checkReport } from "../check-report";
import { ratesOf } from "../costs";
import { heldRows } from "../held-by-stock";
import { type JobQuestion, type OpenedBook, openForJob } from "../read-book";
import { type TonnageReport, tonnageReport } from "../tonnage-report";
import { unplannedWords } from "../unplanned-words";
import { type JobBar, jobBars } from "./job-bar";
import { type JobPapers, jobPapers } from "./job-papers";
import { type ScheduleEntry, scheduleEntry } from "./schedule-entry";

type Holding = Pick<Finding, "name" | "severity" | "outcome" | "sheet" | "row" | "message">;
type Block = readonly (readonly Cell[])[];

/** Everything that a job of many books keeps of one: plain data, so that it can be stored and sent. */
export interface BookDigest {
  /** the name under which it was given */
  readonly book: string;
  readonly report: CheckReport;
  readonly tonnage: TonnageReport;
  /** what is to be said of it, whichever of its rows count in the job */
  readonly notes: readonly string[];
  /** what the cut list has in no plan and no finding tells of */
  readonly unplanned: readonly string[];
  /** rows of its own total that its sheets hide, and those that weigh otherwise by another figure */
  readonly hidden: ReckonedTonnage["hidden"];
  readonly doubted: ReckonedTonnage["doubted"];
  /** what somebody said is not to be told; null where nothing is */
  readonly notTold: string | null;
  readonly isBroken: boolean;
  /** findings that keep a row from being made or are to be asked about before it is, row by row; and those of whole sheets */
  readonly holding: readonly Holding[];
  readonly schedules: readonly ScheduleEntry[];
  readonly bars: readonly JobBar[];
  /** what its other sheets say of the job */
  readonly papers: JobPapers;
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
  if (checked === undefined || isRefusal(checked)) return digestPapers(book, name, asked) ?? checked!;
  const { schedules, standard } = checked;
  const read = schedules.map((schedule) => ({ schedule, bars: jobBars(schedule, standard) }));
  const isOnly = schedules.length === 1;
  return {
    book: name,
    report: checkReport(checked, asked.explain),
    tonnage: tonnageReport(checked.tonnage),
    notes: checked.notes,
    unplanned: unplannedWords(checked.report, schedules, checked.workshop),
    hidden: checked.tonnage.hidden,
    doubted: checked.tonnage.doubted,
    notTold: notToldLine(checked.report.waivers),
    isBroken: isBroken(checked),
    holding: holdingOf(heldRows(checked.report, schedules, checked.workshop)),
    schedules: read.map(({ schedule, bars }) =>
      scheduleEntry(name, schedule, bars, { standard: standard.id, isOnly }),
    ),
    bars: read.flatMap(({ bars }) => bars),
    papers: jobPapers(name, othersOf(checked, schedules), checked.workshop),
    rates:
      ratesOf(checked.workshop, checked.standard) === null
        ? null
        : (checked.workshop.shop.rates?.block ?? null),
  };
}

function holdingOf(findings: readonly (Holding & Pick<Finding, "also">)[]): Holding[] {
  const isKept = (finding: Holding): boolean =>
    isHolding(finding) || isSevere(finding) || isOfTotals(finding);
  return findings.filter(isKept).flatMap(({ name, severity, outcome, sheet, row, message, also }) => {
    const own = { name, severity, outcome, sheet, row, message };
    return also === undefined ? [own] : [own, { ...own, ...also }];
  });
}

const NO_ROWS = { bars: 0, headings: 0, totals: 0, notes: 0, blank: 0, unread: 0 };

/** A book without a schedule that is the job's register or says what is in stock; null where it is neither. */
function digestPapers(book: Book, name: string, asked: DigestQuestion): BookDigest | null {
  if (asked.sheet !== null) return null;
  const opened = openForJob(book, asked);
  if (isRefusal(opened)) return null;
  const papers = jobPapers(name, opened.sheets, opened.workshop);
  const { registers, held } = papers;
  if (registers.length + held.length === 0) return null;
  const tonnage = tonnageReport(reckonTonnage([], opened.standard));
  const listed = registers.map(({ lines }) => `a register of ${lines.length} schedules`);
  return {
    book: name,
    report: {
      standard: opened.standard.id,
      rows: NO_ROWS,
      sheets: [],
      reading: [],
      findings: [],
      waivers: [],
      counts: severityCounts([]),
      notInTotal: [],
    },
    tonnage,
    notes: [`${[...listed, ...held.map(() => "sizes in stock")].join(", ")}: no bars of its own`],
    unplanned: [],
    hidden: [],
    doubted: [],
    notTold: null,
    isBroken: false,
    holding: [],
    schedules: [],
    bars: [],
    papers,
    rates: opened.workshop.shop.rates?.block ?? null,
  };
}

/** The sheets of a book that are no schedules. */
function othersOf({ all }: OpenedBook, schedules: readonly { readonly sheet: Sheet }[]): Sheet[] {
  const read = new Set(schedules.map(({ sheet }) => sheet));
  return all.filter((sheet) => !read.has(sheet));
}
