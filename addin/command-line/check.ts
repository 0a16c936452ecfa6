import type { AuditReport } from "../../core/audit/audit-report";
import { runAudit } from "../../core/audit/run-audit";
import { severityCounts } from "../../core/audit/severity-counts";
import { explainReading, explainRows, type Sheet } from "../../core/schedule";
import { isShopSheet } from "../../core/shop";
import { annotatedCopy } from "./annotated-copy";
import { auditSettingsOf } from "./audit-settings-of";
import type { Command } from "./command";
import { InputRefused } from "./input-refused";
import { nativeDeflater } from "./native-deflater";
import { type Book, openBook } from "./open-book";
import { noteDecisions, printDecisions } from "./print-decisions";
import { printExplained } from "./print-explained";
import { printFindings } from "./print-findings";
import { readSheets, sayPassedOver, saySettingsUsed, withOtherSheets } from "./read-schedules";
import { standardFor } from "./standard-for";
import { refuseKind, refuseTarget, writeCopy } from "./write-copy";

/** `check BOOK`: the audit of every schedule in a file, and a copy with the findings marked. */
export const check: Command = {
  name: "check",
  usage: "check BOOK [--sheet NAME] [--standard ID] [--explain] [--json] [--out COPY]",
  summary: "audit of a schedule; --out writes a copy with the findings marked",
  options: {
    sheet: { type: "string" },
    standard: { type: "string" },
    explain: { type: "boolean" },
    json: { type: "boolean" },
    out: { type: "string" },
  },
  async run(given, streams) {
    const [path, more] = given.positionals;
    if (path === undefined || more !== undefined) throw new InputRefused("name one .xlsx or .csv file");
    const out = given.text("out");
    if (out !== null) refuseTarget(path, out);
    const book = openBook(path);
    if (out !== null && book.workbook === null)
      throw new InputRefused("--out needs an .xlsx file: a .csv holds no marks");
    if (out !== null && book.workbook !== null) refuseKind(book.workbook, out);
    const standard = standardFor(given.text("standard"), book.setting("Barwright.Standard"));
    const only = given.text("sheet");
    const sheets = withShopSheet(book, readSheets(book, only));
    const settings = auditSettingsOf(book);
    saySettingsUsed(sheets, settings, streams);
    const whole = runAudit({ sheets: withOtherSheets(book, sheets), only, standard, settings });
    if (whole.shopSheet !== null)
      streams.note(`sheet "${whole.shopSheet}": read for machines, stock and limits`);
    sayPassedOver(
      whole.sheets.map(({ sheet, reading }) => ({
        sheet: sheets.find(({ name }) => name === sheet)!,
        reading,
      })),
      streams,
    );
    const schedules = new Set(whole.sheets.filter(({ header }) => header !== null).map(({ sheet }) => sheet));
    if (whole.shopSheet !== null) schedules.add(whole.shopSheet);
    const report = { ...whole, findings: whole.findings.filter(({ sheet }) => schedules.has(sheet)) };
    if (out !== null && book.workbook !== null) {
      const { bytes, kept } = annotatedCopy(book.workbook, report, sheets, nativeDeflater);
      writeCopy(out, bytes);
      for (const name of kept)
        streams.note(`sheet "${name}" has been written on since an earlier check: it stays as it is`);
      streams.note(`written: ${out}`);
    }
    noteDecisions(report, streams);
    const explain = given.flag("explain");
    if (given.flag("json")) streams.result(JSON.stringify(jsonReport(report, sheets, explain)));
    else {
      for (const { sheet, reading } of schedulesRead(report, sheets)) {
        if (explain) printExplained(sheet, reading, streams);
        else if (reading.held !== null)
          streams.result(`sheet "${sheet.name}": totals are held back: ${reading.held.reason}`);
      }
      printDecisions(report, settings, streams);
      printFindings(report, sheets, streams);
    }
    const isBroken = report.findings.some(
      ({ severity, outcome }) => outcome === "broken" && (severity === "unsafe" || severity === "unbendable"),
    );
    return isBroken ? 1 : 0;
  },
};

/** What the yard owns is told by its own sheet, whichever schedules are asked for. */
function withShopSheet(book: Book, sheets: readonly Sheet[]): readonly Sheet[] {
  const name = book.sheetNames.find(isShopSheet);
  return name === undefined ? sheets : [...sheets, book.read(name)];
}

/** The report in the shape that scripts rely on. */
function jsonReport(report: AuditReport, read: readonly Sheet[], explain: boolean) {
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
  const reading = schedulesRead(report, read).map(({ sheet, reading: own }) => ({
    ...explainReading(sheet, own),
    ...(explain ? { rows: explainRows(sheet, own) } : {}),
  }));
  const counts = severityCounts(findings);
  return { standard: standard.id, rows, sheets, reading, findings, waivers, counts };
}

/** Every sheet on which a schedule was found, with its reading. */
function schedulesRead(report: AuditReport, sheets: readonly Sheet[]) {
  return report.sheets.flatMap(({ sheet: name, reading }) => {
    const sheet = sheets.find((one) => one.name === name);
    return sheet === undefined || reading.tables.length === 0 ? [] : [{ sheet, reading }];
  });
}
