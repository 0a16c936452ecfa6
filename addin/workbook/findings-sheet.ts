import type { AuditReport } from "../../core/audit/audit-report";
import { type Finding, SEVERITIES } from "../../core/audit/finding";
import { doubtWords, severityWords } from "../../core/audit/finding-words";
import { notToldSummary, notToldWords } from "../../core/audit/not-told-words";
import { severityCounts, severityCountWords } from "../../core/audit/severity-counts";
import { FINDINGS_MARK } from "../../core/own/own-papers";
import { addressAt } from "../../core/schedule/cell-address";
import type { Sheet } from "../../core/schedule/sheet";
import { citationText } from "../../core/standards/citation";
import { type ReadSheet, type ReckonedTonnage, reckonTonnage } from "../../core/totals";
import type { AddedCell, AddedSheet } from "./added-sheet";
import { isLetterPaper } from "./is-letter-paper";
import { FINDINGS_SHEET, sealLine } from "./own-findings-sheet";
import { type TonnageBlock, tonnageBlock } from "./tonnage-block";

/** A text or a number, as every cell of the findings sheet is. */
export type PlainValue = string | number | null;
type FindingsCell = AddedCell<PlainValue>;

/** Tonnes that were reckoned of an audit's schedules already. */
export interface KnownTonnage {
  readonly schedules: readonly ReadSheet[];
  readonly tonnage: ReckonedTonnage;
}

const HEADINGS = ["Severity", "Sheet", "Cell", "Finding", "Remedy", "Source", "Rule"];
const WIDTHS = [12, 14, 11, 57, 36, 36, 30];
const GAP = 3;
/** column of the tonnes: right of the findings, past the gap */
const BLOCK_LEFT = HEADINGS.length + 1;
/** the rule that finds bars of which a later revision stands in the workbook */
const SUPERSEDED = "superseded-revision";
/** characters of a cell, so that one that quotes a whole cell of a schedule can be read and held */
const LONGEST_WORDS = 1_500;
/** rows that stay in view and are printed on every page */
const TITLE_ROWS = 2;

/**
 * All findings of an audit, the worst first, as a sheet. Under them the rows read and, in columns of
 * their own so that neither filter nor width of the list touches them, the tonnes with their chart.
 */
export function findingsSheet(
  report: AuditReport,
  sheets: readonly Sheet[],
  known?: KnownTonnage,
): AddedSheet<PlainValue> {
  const ordered = [...report.findings].sort((a, b) => rank(a) - rank(b));
  const cells = new FindingCells();
  const list = ordered.map((finding) => cells.row(finding));
  const blockTop = TITLE_ROWS + list.length + 1;
  const block = tonnageBlock(reckoned(report, sheets, known), blockTop, BLOCK_LEFT);
  const left = [...notToldRows(report), ...rowsRead(report)];
  const withoutSeal: FindingsCell[][] = [
    titleRow(report, block, blockTop),
    HEADINGS.map((value) => ({ value, bold: true, shade: true })),
    ...list,
    [],
    ...beside(left, block.rows),
  ];
  const lastRow = blockTop + left.length + 1;
  const rows = withSeal(withoutSeal, lastRow);
  const right = BLOCK_LEFT + block.widths.length - 1;
  const areas = [
    `A1:${addressAt(lastRow, HEADINGS.length - 1)}`,
    `${addressAt(blockTop, BLOCK_LEFT)}:${addressAt(block.bottom, right)}`,
  ];
  return {
    name: FINDINGS_SHEET,
    widths: [...WIDTHS, GAP, ...block.widths],
    frozenRows: TITLE_ROWS,
    rows,
    print: {
      isLetter: isLetterPaper(report.standard.id),
      titleRows: TITLE_ROWS,
      areas,
      ...(block.chart !== null && block.breaksBeforeChart && { breakBefore: block.chart.row - 1 }),
    },
    ...(block.chart !== null && { chart: block.chart }),
  };
}

function withSeal(rows: readonly FindingsCell[][], row: number): FindingsCell[][] {
  const all = Array.from({ length: Math.max(rows.length, row + 1) }, (_, index) => rows[index] ?? []);
  all[row] = [{ value: sealLine(rows) }, ...(all[row] ?? []).slice(1)];
  return all;
}

/** In falling order of severity; one that could not be judged stands after those that were. */
export function rank(finding: Finding): number {
  return SEVERITIES.indexOf(finding.severity) + (finding.outcome === "unsure" ? 0.5 : 0);
}

function titleRow(report: AuditReport, block: TonnageBlock, blockTop: number): FindingsCell[] {
  const notTold = notToldSummary(report.waivers);
  const counts = severityCountWords(severityCounts(report.findings));
  return [
    { value: `${FINDINGS_MARK}${report.standard.id}: ${report.findings.length}`, bold: true },
    { value: null },
    { value: null },
    { value: notTold === null ? counts : `${counts}; ${notTold}`, wrap: true },
    { value: null },
    { value: block.summary, link: { sheet: null, cell: addressAt(blockTop, BLOCK_LEFT) } },
  ];
}

/** Cells of findings; those that many of a long sheet share are made once. */
class FindingCells {
  readonly #shared = new Map<unknown, FindingsCell>();

  row(finding: Finding): FindingsCell[] {
    const { sheet, cell, cite } = finding;
    const severity = severityWords(finding);
    return [
      this.#once(`severity ${severity} ${finding.severity}`, () => ({
        value: severity,
        flag: finding.severity,
        ruled: true,
      })),
      this.#once(`sheet ${sheet}`, () => wrapped(sheet)),
      cell === null
        ? this.#once("whole", () => ({ value: "whole sheet", ruled: true }))
        : { value: cell, link: { sheet, cell }, ruled: true },
      wrapped(finding.message + doubtWords(finding)),
      wrapped(finding.fix?.label ?? null),
      this.#once(cite, () => wrapped(cite === null ? null : citationText(cite))),
      this.#once(`rule ${finding.code} ${finding.name}`, () => wrapped(`${finding.code} ${finding.name}`)),
    ];
  }

  #once(key: unknown, make: () => FindingsCell): FindingsCell {
    let made = this.#shared.get(key);
    if (made === undefined) {
      made = make();
      this.#shared.set(key, made);
    }
    return made;
  }
}

function wrapped(value: string | null): FindingsCell {
  const words =
    value === null || value.length <= LONGEST_WORDS ? value : `${value.slice(0, LONGEST_WORDS)} ...`;
  return { value: words, wrap: true, ruled: true };
}

/** What somebody said is not to be told, under the list that it is missing from. */
function notToldRows({ waivers }: AuditReport): FindingsCell[][] {
  if (waivers.length === 0) return [];
  const words = (value: string | null): FindingsCell => ({ value, wrap: true, ruled: true });
  const lines = waivers.flatMap((each) => [
    [words("not told"), words(each.sheet), words(null), words(notToldWords(each))],
    ...each.findings.map(({ severity, sheet, cell, message }) => [
      words(severity),
      words(sheet),
      words(cell),
      words(message),
    ]),
  ]);
  return [[{ value: "Not told, because somebody said so", bold: true }], ...lines, []];
}

function rowsRead({ rows }: AuditReport): FindingsCell[][] {
  const { bars, headings, totals, notes, blank, unread } = rows;
  return [
    [{ value: "Rows read", bold: true }],
    ...Object.entries({ bars, headings, totals, notes, blank, unread }).map(
      ([name, count]): FindingsCell[] => [{ value: name }, { value: count }],
    ),
  ];
}

/** Two blocks side by side, the second from its own column on. */
function beside(
  left: readonly FindingsCell[][],
  right: readonly (readonly FindingsCell[])[],
): FindingsCell[][] {
  return Array.from({ length: Math.max(left.length, right.length) }, (_, row) => {
    const cells = [...(left[row] ?? [])];
    if ((right[row]?.length ?? 0) === 0) return cells;
    while (cells.length < BLOCK_LEFT) cells.push({ value: null });
    return [...cells, ...right[row]!];
  });
}

function reckoned(report: AuditReport, sheets: readonly Sheet[], known?: KnownTonnage) {
  const schedules = report.sheets.flatMap(({ sheet: name, reading }) => {
    const sheet = sheets.find((one) => one.name === name);
    return sheet === undefined || reading.bars.length === 0 ? [] : [{ sheet, reading }];
  });
  const isKnown =
    known?.schedules.length === schedules.length &&
    schedules.every(({ reading }, index) => reading === known.schedules[index]?.reading);
  const tonnes = isKnown ? known.tonnage : reckonTonnage(schedules, report.standard);
  const older = new Set(
    report.findings.flatMap(({ name, severity, sheet, row }) =>
      // a remark that only may take the bar out names no later revision
      name === SUPERSEDED && severity === "unsafe" ? `${row} ${sheet}` : [],
    ),
  );
  // of a long schedule each bar asked for costs time
  const olderCounted = (older.size === 0 ? [] : schedules).flatMap(({ sheet, reading }, index) =>
    reading.bars.filter(
      ({ row }, bar) =>
        tonnes.masses[index]?.massAt(bar) != null && older.has(`${sheet.top + row + 1} ${sheet.name}`),
    ),
  ).length;
  return { ...tonnes, olderCounted, names: schedules.map(({ sheet }) => sheet.name) };
}
