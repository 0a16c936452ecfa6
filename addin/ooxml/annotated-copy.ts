import type { AuditedSheet, AuditReport } from "../../core/audit/audit-report";
import { type Finding, SEVERITIES } from "../../core/audit/finding";
import type { Sheet } from "../../core/schedule/sheet";
import { citationText } from "../../core/standards/citation";
import type { AddedCell, AddedSheet } from "./added-sheet";
import { parseAddress } from "./cell-address";
import type { Workbook } from "./open-workbook";
import { patchWorkbook } from "./patch-workbook";
import type { CellNote, FlagBand, SheetChanges } from "./sheet-changes";
import type { Deflater } from "./write-zip";

/** Characters of the longest note; a row with more to say points to the findings sheet. */
const LONGEST_NOTE = 1_500;

/**
 * Bytes of a copy of the workbook with the findings marked: rows coloured by the worst finding, one note
 * a row, one sheet with all of them behind the others. Flags and notes of an earlier check are taken off
 * first. Every part that this does not concern keeps its bytes.
 */
export function annotatedCopy(
  workbook: Workbook,
  report: AuditReport,
  sheets: readonly Sheet[],
  newDeflater?: () => Deflater,
): Uint8Array {
  const changes = new Map<string, SheetChanges>();
  const findings = groupBy(report.findings, (finding) => finding.sheet);
  for (const audited of report.sheets) {
    const sheet = sheets.find((one) => one.name === audited.sheet);
    const listing = workbook.sheet(audited.sheet);
    if (sheet === undefined || listing === undefined) continue;
    const marks = marksOf(audited, sheet, findings.get(audited.sheet) ?? []);
    const clear = workbook.hasFlags(listing);
    if (marks.flags.length > 0 || clear) changes.set(audited.sheet, { ...marks, clear });
  }
  return patchWorkbook(workbook, { sheets: changes, added: [findingsSheet(report)] }, newDeflater);
}

function marksOf(audited: AuditedSheet, sheet: Sheet, findings: readonly Finding[]) {
  const flags: FlagBand[] = [];
  const notes: CellNote[] = [];
  const bandOf = bands(audited, sheet);
  for (const [row, ofRow] of groupBy(findings, (finding) => finding.row)) {
    if (row === null) continue;
    const worst = ofRow.reduce((a, b) => (rank(b) < rank(a) ? b : a));
    const band = bandOf(row - 1);
    const place = parseAddress(worst.cell ?? "") ?? { row: row - 1, column: band.firstColumn };
    flags.push({ row: row - 1, ...band, colour: worst.severity });
    notes.push({ row: row - 1, column: place.column, text: noteText(ofRow) });
  }
  return { flags, notes };
}

/** First and last column of the schedule that a row belongs to; of the used range where it is in none. */
function bands(audited: AuditedSheet, sheet: Sheet) {
  const tables = audited.reading.tables.map((table) => {
    const columns = [...table.columns.values()].map(({ column }) => column);
    return { top: table.headerTop, first: Math.min(...columns), last: Math.max(...columns) };
  });
  return (row: number): { firstColumn: number; lastColumn: number } => {
    const table = tables.filter(({ top }) => top <= row - sheet.top).at(-1);
    const first = table?.first ?? 0;
    const last = table?.last ?? sheet.columnCount - 1;
    return { firstColumn: sheet.left + first, lastColumn: sheet.left + last };
  };
}

function noteText(findings: readonly Finding[]): string {
  const lines = [...findings]
    .sort((a, b) => rank(a) - rank(b))
    .map((finding) => {
      const fix = finding.fix === null ? "" : `\n  ${finding.fix.label}`;
      return `${finding.severity} (${finding.code}): ${finding.message}${unsure(finding)}${fix}`;
    });
  const text = lines.join("\n");
  return text.length <= LONGEST_NOTE ? text : `${text.slice(0, LONGEST_NOTE)} ... see the findings sheet`;
}

function findingsSheet(report: AuditReport): AddedSheet {
  const headings = ["Severity", "Sheet", "Cell", "Finding", "Remedy", "Source", "Rule"];
  const rows: AddedCell[][] = [
    [{ value: `Findings under ${report.standard.id}: ${report.findings.length}`, bold: true }],
    headings.map((value) => ({ value, bold: true })),
  ];
  const ordered = [...report.findings].sort((a, b) => rank(a) - rank(b));
  for (const finding of ordered) {
    const { sheet, cell } = finding;
    rows.push([
      { value: finding.severity, flag: finding.severity },
      { value: sheet, wrap: true },
      cell === null ? { value: "whole sheet" } : { value: cell, link: { sheet, cell } },
      { value: finding.message + unsure(finding), wrap: true },
      { value: finding.fix?.label ?? "", wrap: true },
      { value: finding.cite === null ? "" : citationText(finding.cite), wrap: true },
      { value: `${finding.code} ${finding.name}` },
    ]);
  }
  const { bars, headings: heads, totals, notes, blank, unread } = report.rows;
  rows.push([], [{ value: "Rows read", bold: true }]);
  for (const [name, count] of Object.entries({ bars, headings: heads, totals, notes, blank, unread })) {
    rows.push([{ value: name }, { value: count }]);
  }
  return { name: "Findings", widths: [14, 18, 10, 60, 44, 40, 30], frozenRows: 2, rows };
}

function unsure(finding: Finding): string {
  return finding.outcome === "unsure" ? " (could not be judged)" : "";
}

function rank(finding: Finding): number {
  return SEVERITIES.indexOf(finding.severity) + (finding.outcome === "unsure" ? 0.5 : 0);
}

function groupBy<T, K>(items: readonly T[], key: (item: T) => K): Map<K, T[]> {
  const groups = new Map<K, T[]>();
  for (const item of items) {
    const group = groups.get(key(item));
    if (group === undefined) groups.set(key(item), [item]);
    else group.push(item);
  }
  return groups;
}
