import type { AuditReport } from "../audit";
import type { AuditedSheet } from "../audit/audit-report";
import { factsJudged } from "../audit/audit-state";
import type { Finding } from "../audit/finding";
import { barsByFacts } from "../audit/not-told";
import summaryDiffers from "../audit/rules/summary-differs";
import { openAudit } from "../audit/run-audit";
import { waivedApart } from "../audit/withhold";
import type { SheetFacts } from "../bar/sheet-facts";
import { type ReckonedTonnage, reckonTonnage } from "../totals/reckon-tonnage";
import { isRefusal, type Refusal } from "../units/refusal";
import type { Book } from "./book";
import { measuredOf } from "./measured";
import { type JobQuestion, type OpenedBook, openForJob, type ReadBook, withSchedules } from "./read-book";

/** A book with its audit, and the tonnes of what was read. */
export interface CheckedBook extends ReadBook {
  /** findings of its schedules and of the Shop sheet; none of a sheet that is no schedule */
  readonly report: AuditReport;
  readonly tonnage: ReckonedTonnage;
}

/** The audit of every schedule of books, one answer each. */
export function checkBooks(books: readonly Book[], asked: JobQuestion): (CheckedBook | Refusal)[] {
  return books.map((book) => checkBook(book, asked));
}

function checkBook(book: Book, asked: JobQuestion): CheckedBook | Refusal {
  const opened = openForJob(book, asked);
  return isRefusal(opened) ? opened : checkOpened(opened, asked);
}

/** The audit of a book that was opened by the same question. */
export function checkOpened(opened: OpenedBook, asked: JobQuestion): CheckedBook | Refusal {
  const { book, all, only, standard, settings, isStandardAssumed, isStandardNamed } = opened;
  const helper = asked.helper ?? null;
  const made: ReturnType<typeof weigh>[] = [];
  const audit = openAudit({
    ...{ sheets: all, only, standard, settings, isStandardAssumed, isStandardNamed },
    ...{ isOnce: true, helper },
    meanwhile: (audited, facts) => void made.push(weigh(opened, audited, facts)),
  });
  const whole = audit.report;
  const weighed = made[0]!;
  if (isRefusal(weighed)) return weighed;
  const { readBook, tonnage } = weighed;
  const told = new Set(readBook.schedules.map(({ sheet }) => sheet.name));
  if (whole.shopSheet !== null) told.add(whole.shopSheet);
  if (whole.ownSheet !== null) told.add(whole.ownSheet);
  const isTold = ({ sheet, code }: Finding): boolean => told.has(sheet) || code === summaryDiffers.code;
  const turned = new Set(all.filter(({ isTurned }) => isTurned === true).map(({ name }) => name));
  const inOwnRow = (finding: Finding): Finding => (turned.has(finding.sheet) ? ofCell(finding) : finding);
  const report = {
    ...whole,
    findings: whole.findings.filter(isTold).map(inOwnRow),
    // by the lines that the bars stand in, as tickets and waivers go
    byRow: whole.byRow.filter(isTold),
  };
  const shop =
    whole.shopSheet === null ? [] : [`sheet "${whole.shopSheet}": read for machines, stock and limits`];
  const measured = measuredOf(book, { ...readBook, report }, asked.sheet === null);
  const { told: off, notTold } = waivedApart(
    measured?.findings ?? [],
    settings,
    barsByFacts(audit.state.sheets),
  );
  return {
    ...readBook,
    notes: [...readBook.notes, ...shop, ...(measured === null ? [] : [measured.note])],
    report: {
      ...report,
      findings: [...report.findings, ...off],
      waivers: [...report.waivers, ...notTold],
    },
    tonnage,
  };
}

/** The schedules of an opened book, and their tonnes. */
function weigh(opened: OpenedBook, audited: readonly AuditedSheet[], facts: readonly SheetFacts[]) {
  const read = audited.map(({ sheet, reading }) => ({
    sheet: opened.all.find(({ name }) => name === sheet)!,
    reading,
  }));
  const readBook = withSchedules(opened, read);
  if (isRefusal(readBook)) return readBook;
  const { schedules, standard } = readBook;
  return { readBook, tonnage: reckonTonnage(schedules, standard, (one) => factsJudged(facts, one)) };
}

/** Where bars stand in columns, the row of a finding is that of its cell. */
function ofCell(finding: Finding): Finding {
  const row = /\d+$/.exec(finding.cell ?? "")?.[0];
  const { rows: _rows, ...own } = finding;
  return { ...own, row: row === undefined ? null : Number(row) };
}

/** True where something that may hurt, or cannot be made, was found for certain. */
export function isBroken({ report }: Pick<CheckedBook, "report">): boolean {
  return report.findings.some(
    ({ severity, outcome }) => outcome === "broken" && (severity === "unsafe" || severity === "unbendable"),
  );
}
