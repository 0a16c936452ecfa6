import { severityCounts, severityCountWords } from "../../core/audit/severity-counts";
import {
  askedBars,
  type CheckedBook,
  checkBooks,
  checkReport,
  filteredBy,
  isBroken,
  noneInTotal,
  tonnageOf,
  unplannedWords,
} from "../../core/jobs";
import { notInTotalWords, weighedAsMadeWords } from "../../core/totals";
import { answerOf } from "./answer-of";
import { bookAsked } from "./book-asked";
import type { Command } from "./command";
import { foldLess } from "./fold-less";
import { InputRefused } from "./input-refused";
import { tellJob } from "./job/check-job";
import { copyPlaces } from "./job/copy-places";
import { askedFindings, filterFor, isNarrow, jobAsked } from "./job/job-asked";
import { JOB_OPTIONS } from "./job/read-job";
import { markedCopy } from "./marked-copy";
import { noteDecisions, printDecisions } from "./print-decisions";
import { printExplained } from "./print-explained";
import { printFindings, printSummary } from "./print-findings";
import type { GivenOptions } from "./read-options";
import { rowsHelper } from "./rows-thread";
import { READ_OPTIONS, STANDARD_OPTIONS } from "./standard-for";
import { tidyLater, tidySooner } from "./tidy-sooner";
import { refuseKind, refuseTarget, writeCopy } from "./write-copy";

/** `check BOOK`: the audit of every schedule in a file, and a copy with the findings marked. */
export const check: Command = {
  name: "check",
  usage:
    "check BOOK... [--summary] [--pour NAME] [--size SIZES] [--sheet NAME] [--standard ID] [--own FILE] [--read COLUMNS] [--explain] [--json | --jsonl] [--out COPY | FOLDER]",
  summary: "audit of a schedule, or of all of a job; --out writes a marked copy",
  options: {
    summary: { type: "boolean" },
    ...JOB_OPTIONS,
    jsonl: { type: "boolean" },
    sheet: { type: "string" },
    ...STANDARD_OPTIONS,
    ...READ_OPTIONS,
    explain: { type: "boolean" },
    json: { type: "boolean" },
    out: { type: "string" },
  },
  async run(given, streams) {
    const out = given.text("out");
    const job = jobAsked(given, streams);
    if (job !== null) {
      if (out !== null && !job.named.isJob)
        throw new InputRefused("--out with --jsonl marks copies of several books: name a folder of them");
      const copies = out === null ? null : copyPlaces(job.named, out);
      return tellJob(job, { tells: "findings", by: null, copies }, given, streams);
    }
    const { book, question } = bookAsked(given, streams, (path) => {
      if (out !== null) refuseTarget(path, out);
    });
    const size = book.there?.length ?? 0;
    if (book.there !== null) foldLess(size);
    tidyLater(size);
    if (out !== null && book.workbook === null)
      throw new InputRefused("--out needs an .xlsx file: a .csv holds no marks");
    if (out !== null && book.workbook !== null) refuseKind(book.workbook, out);
    const [answer] = checkBooks([book], { ...question, helper: rowsHelper(() => tidySooner(size)) });
    const checked = answerOf(answer!);
    const shown = narrowed(checked, given);
    const { report } = checked;
    const unplanned = unplannedWords(report, checked.schedules, checked.workshop);
    for (const note of [...checked.notes, ...unplanned]) streams.note(note);
    if (out !== null) refuseTurned(checked);
    if (out !== null && book.workbook !== null) {
      const { pieces, kept } = markedCopy(book.workbook, checked, out, {
        keepsSettings: (question.columns ?? []).length > 0,
        there: book.there,
        // an explanation quotes cells, and is printed after the copy
        onCellsRead: () => void (given.flag("explain") || book.letGo()),
      });
      writeCopy(out, pieces);
      for (const note of kept) streams.note(note);
      streams.note(`written: ${out}`);
    }
    noteDecisions(report, streams);
    for (const note of notInTotalWords(shown.tonnage.notInTotal)) streams.note(note);
    for (const note of notShownNotes(checked, shown)) streams.note(note);
    const explain = given.flag("explain");
    if (shown.tonnage.held === null)
      for (const note of weighedAsMadeWords(shown.tonnage.asTyped, shown.tonnage.tonnage.total))
        streams.note(note);
    if (given.flag("json")) streams.result(JSON.stringify(checkReport(shown, explain)));
    else if (given.flag("summary")) printSummary(shown, shown.bars, streams);
    else {
      for (const { sheet, reading } of checked.schedules) {
        if (explain) printExplained(sheet, reading, streams);
        else if (reading.held !== null)
          streams.result(`sheet "${sheet.name}": totals are held back: ${reading.held.reason}`);
      }
      printDecisions(report, checked.settings, streams);
      printFindings(shown, shown.bars, streams);
    }
    const none = noneInTotal(checked.tonnage);
    if (none !== null) streams.note(none);
    return isBroken(checked) ? 1 : none === null ? 0 : 2;
  },
};

/** Marks colour rows: on a sheet whose bars stand in columns they would stand at the wrong ones. */
function refuseTurned({ schedules }: CheckedBook): void {
  const turned = schedules.find(({ sheet }) => sheet.isTurned === true);
  if (turned === undefined) return;
  throw new InputRefused(
    `sheet "${turned.sheet.name}" has its bars in columns, and --out marks rows: leave --out away, or name another sheet with --sheet`,
  );
}

/** What --pour and --size ask for: its findings, its bars and tonnes; the exit code is of the whole all the same. */
function narrowed(checked: CheckedBook, given: GivenOptions): CheckedBook & { readonly bars: number } {
  const filter = filterFor(given, checked);
  if (!isNarrow(filter)) return { ...checked, bars: checked.report.rows.bars };
  const schedules = askedBars(checked.schedules, filter);
  const findings = askedFindings(checked.report.findings, filteredBy(checked.schedules), filter);
  const { reckoned } = tonnageOf([{ ...checked, schedules }]);
  const bars = schedules.reduce((sum, { reading }) => sum + reading.bars.length, 0);
  return { ...checked, report: { ...checked.report, findings }, tonnage: reckoned, bars };
}

/** What was found on bars that were not asked for, which the exit code goes by. */
function notShownNotes(checked: CheckedBook, shown: CheckedBook): string[] {
  const told = new Set(shown.report.findings);
  const findings = checked.report.findings.filter((finding) => !told.has(finding));
  if (!isBroken({ report: { ...checked.report, findings } })) return [];
  return [`not shown, on bars that were not asked for: ${severityCountWords(severityCounts(findings))}`];
}
