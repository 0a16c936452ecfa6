import type { AuditReport } from "../../../core/audit/audit-report";
import type { Finding, Severity } from "../../../core/audit/finding";
import { findingRank } from "../../../core/audit/finding-rank";
import { notToldLine, notToldWords } from "../../../core/audit/not-told-words";
import { RULES } from "../../../core/audit/rules/index";
import { BarFacts } from "../../../core/bar/bar-facts";
import { rowKey } from "../../../core/bar/row-facts";
import { SheetFacts } from "../../../core/bar/sheet-facts";
import type { ScheduleReading } from "../../../core/schedule/bar-row";
import { columnLetters } from "../../../core/schedule/cell-address";
import { columnWords } from "../../../core/schedule/columns/column-words";
import { lineWords } from "../../../core/schedule/line-words";
import { type ScheduleHead, scheduleHead } from "../../../core/schedule/schedule-head";
import type { Sheet } from "../../../core/schedule/sheet";
import { unreadRows } from "../../../core/schedule/unread-rows";
import { citationText, type Standard } from "../../../core/standards";
import { reckonTonnage } from "../../../core/totals/reckon-tonnage";
import { rowNote } from "../../workbook/row-note";
import type { AuditView, ColumnView, FindingView, RowFlagView } from "./audit-view";
import { contentOf } from "./content-of";
import type { KeptCheck } from "./kept-check";
import { decisionsView } from "./make-decisions-view";
import { columnName, NO_WAYS, waysOfReading } from "./ways-of-reading";

/** The rule that tells of guesses. */
const GUESSED = "READ102";

const NO_HEAD: ScheduleHead = { job: null, schedule: null, drawing: null, revision: null, date: null };

const DANGEROUS: ReadonlySet<Severity> = new Set(["unsafe", "unbendable"]);

/** A check of one sheet, as the pane shows it: plain data. */
export function auditView({ audit, sheet, settings, shop, otherSheets }: KeptCheck): AuditView {
  const { report } = audit;
  const audited = report.sheets[0];
  const reading = audited?.reading;
  const ofSheet = report.byRow.filter((finding) => finding.sheet === sheet.name);
  const worst = worstByRow(ofSheet, sheet);
  return {
    sheet: sheet.name,
    isTurned: sheet.isTurned === true,
    standard: { id: report.standard.id, title: report.standard.title },
    findings: findingViews(report, sheet),
    otherSheets,
    rules: rulesOf(report),
    rows: report.rows,
    header: audited?.header ?? null,
    columns: reading === undefined ? [] : columnViews(reading, sheet),
    unread: (reading === undefined ? [] : unreadRows(reading)).map(({ row, reason }) => ({
      place: lineWords(sheet, row),
      reason,
    })),
    decisions: decisionsView(report, settings, sheet.name, shop),
    notTold: report.waivers.map(notToldWords),
    notToldLine: notToldLine(report.waivers),
    head: reading === undefined ? NO_HEAD : scheduleHead(reading),
    noHeader: noHeaderText(reading, sheet),
    flags: reading === undefined ? [] : flagsOf(ofSheet, worst, reading, sheet),
    ...masses(reading, sheet, report.standard, worst),
    held: reading?.held?.reason ?? null,
  };
}

function rulesOf({ findings }: AuditReport): AuditView["rules"] {
  const rules: Record<string, AuditView["rules"][string]> = {};
  for (const code of new Set(findings.map((finding) => finding.code))) {
    const docs = RULES.find((rule) => rule.code === code)?.docs;
    if (docs !== undefined) rules[code] = { summary: docs.summary, why: docs.why };
  }
  return rules;
}

/** Keys stay the same while other findings come and go. */
function findingViews(report: AuditReport, sheet: Sheet): FindingView[] {
  const seen = new Map<string, number>();
  const reading = report.sheets[0]?.reading;
  const barAt = barsByRow(report, sheet);
  return report.findings.map((finding) => {
    const isHere = finding.sheet === sheet.name;
    const place = `${finding.code} ${isHere ? "" : `${finding.sheet}!`}${finding.cell ?? finding.row ?? ""}`;
    const count = seen.get(place) ?? 0;
    seen.set(place, count + 1);
    const bar = finding.row === null || !isHere ? undefined : barAt(finding.row - 1 - sheet.top);
    return {
      ...finding,
      key: `${place} ${count}`,
      source: finding.cite === null ? null : citationText(finding.cite),
      rule: finding.name.replaceAll("-", " "),
      member: bar?.row.member ?? null,
      pour: bar?.row.pour ?? null,
      mark: bar?.row.mark ?? null,
      waiverKey: bar === undefined ? (finding.row === null ? null : `row ${finding.row}`) : rowKey(bar),
      guess: guessOf(finding, reading),
      ways: isHere && reading !== undefined ? waysOfReading(finding, reading, sheet) : NO_WAYS,
      before: (finding.fix?.edits ?? []).map(({ cell }) => contentOf(sheet, cell)),
    };
  });
}

function barsByRow(report: AuditReport, sheet: Sheet): (row: number) => BarFacts | undefined {
  const reading = report.sheets[0]?.reading;
  if (reading === undefined) return () => undefined;
  const facts = new SheetFacts(sheet, reading);
  const bars = new Map(reading.bars.map((bar) => [bar.row, bar]));
  return (row) => {
    const bar = bars.get(row);
    return bar && new BarFacts(bar, facts, report.standard);
  };
}

/** An open guess is confirmed by its cell, or by its kind where it is about no one cell; the rest stand as they are. */
function guessOf(
  { code, severity, cell, message }: Finding,
  reading: ScheduleReading | undefined,
): string | null {
  if (code !== GUESSED || severity !== "doubtful") return null;
  return cell ?? reading?.guesses?.find(({ reason }) => reason === message)?.guess ?? null;
}

/** The worst finding of each row of the used range, from 0. */
function worstByRow(findings: readonly Finding[], sheet: Sheet): ReadonlyMap<number, Finding> {
  const worst = new Map<number, Finding>();
  for (const finding of findings) {
    if (finding.row === null) continue;
    const row = finding.row - 1 - sheet.top;
    const known = worst.get(row);
    if (known === undefined || findingRank(finding) < findingRank(known)) worst.set(row, finding);
  }
  return worst;
}

function flagsOf(
  findings: readonly Finding[],
  worst: ReadonlyMap<number, Finding>,
  reading: ScheduleReading,
  sheet: Sheet,
): RowFlagView[] {
  const ofRow = new Map<number | null, Finding[]>();
  for (const finding of findings) {
    const known = ofRow.get(finding.row);
    if (known === undefined) ofRow.set(finding.row, [finding]);
    else known.push(finding);
  }
  return [...worst].flatMap(([row, finding]) => {
    const columns = columnsAt(reading, row);
    const line = sheet.top + row;
    const [first, last] = [sheet.left + Math.min(...columns), sheet.left + Math.max(...columns)];
    const colour = finding.severity;
    const note = rowNote(ofRow.get(finding.row) ?? [finding]);
    if (sheet.isTurned !== true) return [{ row: line, firstColumn: first, lastColumn: last, colour, note }];
    // a bar that stands in a column has one cell in each row, and its note at the first
    return Array.from({ length: last - first + 1 }, (_, at) => ({
      row: first + at,
      firstColumn: line,
      lastColumn: line,
      colour,
      note: at === 0 ? note : "",
    }));
  });
}

/** Columns of the schedule that a row stands in; the whole used range outside any. */
function columnsAt(reading: ScheduleReading, row: number): number[] {
  const table = reading.tables.filter((each) => each.headerTop <= row).at(-1) ?? reading.tables[0];
  const columns = [...(table?.columns.values() ?? [])].map(({ column }) => column);
  return columns.length > 0 ? columns : [0];
}

function columnViews(reading: ScheduleReading, sheet: Sheet): ColumnView[] {
  const columns = reading.tables.flatMap(({ columns: known, unknownHeaders = [] }) =>
    [
      ...known.values(),
      ...unknownHeaders.map((unknown) => ({
        ...unknown,
        kind: null,
        unit: null,
        guess: null,
        corrected: false,
      })),
    ].sort((a, b) => a.column - b.column),
  );
  const headers = columns.map(({ header }) => header);
  return columns.map(({ kind, column, header, unit, guess, corrected = false }) => {
    const at = sheet.left + column;
    const letter = sheet.isTurned === true ? String(at + 1) : columnLetters(at);
    return {
      letter,
      header,
      name: columnName(header, headers, letter),
      kind,
      taken: kind === null ? "not read" : columnWords(kind),
      unit,
      guess,
      corrected,
    };
  });
}

/** Why no bar of the sheet stands in a row that could be marked; null where there are such. */
function noHeaderText(reading: ScheduleReading | undefined, sheet: Sheet): string | null {
  const noHeader = reading?.noHeader ?? null;
  if (noHeader === null) return null;
  const nearest =
    noHeader.nearestRow === null ? "" : ` The nearest row is ${sheet.top + noHeader.nearestRow + 1}.`;
  return `No header row was found on this sheet. Looked for the words ${noHeader.lookedFor.join(", ")}.${nearest}`;
}

function masses(
  reading: ScheduleReading | undefined,
  sheet: Sheet,
  standard: Standard,
  worst: ReadonlyMap<number, Finding>,
): Pick<AuditView, "mass" | "massAffected" | "notInTotal"> {
  const sum: { -readonly [Key in "mass" | "massAffected" | "notInTotal"]: AuditView[Key] } = {
    mass: 0,
    massAffected: 0,
    notInTotal: [],
  };
  if (reading === undefined) return sum;
  // as the totals count them: without bars struck through or superseded
  const { masses, notInTotal } = reckonTonnage([{ sheet, reading }], standard);
  sum.notInTotal = notInTotal;
  reading.bars.forEach((bar, index) => {
    const mass = masses[0]?.massAt(index) ?? 0;
    sum.mass += mass;
    const severity = worst.get(bar.row)?.severity;
    if (severity !== undefined && DANGEROUS.has(severity)) sum.massAffected += mass;
  });
  return sum;
}
