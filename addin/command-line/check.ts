import { severityCounts } from "../../core/audit/severity-counts";
import { type CheckedBook, checkBooks, isBroken } from "../../core/jobs";
import { explainReading, explainRows } from "../../core/schedule";
import { notInTotalWords } from "../../core/totals";
import { annotatedCopy } from "./annotated-copy";
import { answerOf } from "./answer-of";
import { bookAsked } from "./book-asked";
import type { Command } from "./command";
import { InputRefused } from "./input-refused";
import { nativeDeflater } from "./native-deflater";
import { noteDecisions, printDecisions } from "./print-decisions";
import { printExplained } from "./print-explained";
import { printFindings } from "./print-findings";
import { STANDARD_OPTIONS } from "./standard-for";
import { refuseKind, refuseTarget, writeCopy } from "./write-copy";

/** `check BOOK`: the audit of every schedule in a file, and a copy with the findings marked. */
export const check: Command = {
  name: "check",
  usage: "check BOOK [--sheet NAME] [--standard ID] [--own FILE] [--explain] [--json] [--out COPY]",
  summary: "audit of a schedule; --out writes a copy with the findings marked",
  options: {
    sheet: { type: "string" },
    ...STANDARD_OPTIONS,
    explain: { type: "boolean" },
    json: { type: "boolean" },
    out: { type: "string" },
  },
  async run(given, streams) {
    const out = given.text("out");
    const { book, question } = bookAsked(given, streams, (path) => {
      if (out !== null) refuseTarget(path, out);
    });
    if (out !== null && book.workbook === null)
      throw new InputRefused("--out needs an .xlsx file: a .csv holds no marks");
    if (out !== null && book.workbook !== null) refuseKind(book.workbook, out);
    const [answer] = checkBooks([book], question);
    const checked = answerOf(answer!);
    const { report, all: sheets } = checked;
    for (const note of checked.notes) streams.note(note);
    if (out !== null && book.workbook !== null) {
      const { bytes, kept } = annotatedCopy(book.workbook, report, sheets, nativeDeflater);
      writeCopy(out, bytes);
      for (const name of kept)
        streams.note(`sheet "${name}" has been written on since an earlier check: it stays as it is`);
      streams.note(`written: ${out}`);
    }
    noteDecisions(report, streams);
    for (const note of notInTotalWords(checked.tonnage.notInTotal)) streams.note(note);
    const explain = given.flag("explain");
    if (given.flag("json")) streams.result(JSON.stringify(jsonReport(checked, explain)));
    else {
      for (const { sheet, reading } of checked.schedules) {
        if (explain) printExplained(sheet, reading, streams);
        else if (reading.held !== null)
          streams.result(`sheet "${sheet.name}": totals are held back: ${reading.held.reason}`);
      }
      printDecisions(report, checked.settings, streams);
      printFindings(checked, streams);
    }
    return isBroken(checked) ? 1 : 0;
  },
};

/** The report in the shape that scripts rely on. */
function jsonReport({ report, tonnage, schedules }: CheckedBook, explain: boolean) {
  const sheets = report.sheets.map(({ sheet, header, rows }) => ({ sheet, header, rows }));
  const { standard, rows, findings } = report;
  const waivers = report.waivers.map(({ rule, sheet, row, reason, by, date, bars }) => ({
    rule,
    sheet,
    row,
    reason,
    by,
    date,
    bars,
  }));
  const reading = schedules.map(({ sheet, reading: own }) => ({
    ...explainReading(sheet, own),
    ...(explain ? { rows: explainRows(sheet, own) } : {}),
  }));
  const told = findings.map(({ rows: _, fix, ...finding }) => ({
    ...finding,
    fix: fix === null ? null : { ...fix, edits: fix.edits.map(({ cell, to }) => ({ cell, to })) },
  }));
  const counts = severityCounts(findings);
  const { notInTotal } = tonnage;
  return { standard: standard.id, rows, sheets, reading, findings: told, waivers, counts, notInTotal };
}
