import type { AuditedSheet, AuditReport } from "../../core/audit/audit-report";
import type { Finding } from "../../core/audit/finding";
import type { Sheet } from "../../core/schedule/sheet";
import { parseAddress } from "../workbook/cell-address";
import { findingsSheet, type KnownTonnage, rank } from "../workbook/findings-sheet";
import { findingsSheetState, hasFindingsName } from "../workbook/own-findings-sheet";
import { rowNote } from "../workbook/row-note";
import type { CellNote, FlagBand, SheetChanges } from "../workbook/sheet-changes";
import { beginSheet } from "../xlsx/patch/begun-sheet";
import { patchInPieces } from "../xlsx/patch/patch-workbook";
import type { RowsApart, RowsTask } from "../xlsx/patch/rows-apart";
import type { Workbook } from "../xlsx/read/open-workbook";
import type { SheetReading } from "../xlsx/read/read-sheet";
import { xmlTags } from "../xlsx/xml/xml-text";
import type { ZipHost } from "../xlsx/zip/write-zip";

/** A workbook's bytes with the findings marked. */
export interface AnnotatedCopy {
  /** can be gone through once */
  readonly pieces: Iterable<Uint8Array>;
  /** findings sheets of earlier checks that somebody has written on since: they stay as they are */
  readonly kept: readonly string[];
}

/**
 * A copy of the workbook with the findings marked: rows coloured by the worst finding, one note a row, one
 * sheet with all of them behind the others. Flags and notes of an earlier check are taken off first, and
 * its findings sheet is written anew where nobody has written on it. Every part that this does not concern
 * keeps its bytes.
 */
export function annotatedCopy(
  workbook: Workbook,
  report: AuditReport,
  sheets: readonly Sheet[],
  {
    host,
    known,
    names,
    onCellsRead,
    beginRows,
  }: {
    host?: ZipHost;
    known?: KnownTonnage;
    /** workbook-wide names to be kept in the copy, each with its formula */
    names?: ReadonlyMap<string, string>;
    /** told before the copy is made, when no cell of the sheets is asked for any more */
    onCellsRead?: () => void;
    /** starts another thread that rewrites a sheet while this one makes the rest */
    beginRows?: (task: RowsTask) => RowsApart | null;
  } = {},
): AnnotatedCopy {
  const earlier = earlierFindings(workbook, sheets);
  const changes = new Map<string, SheetChanges>();
  const findings = groupBy(report.byRow, (finding) => finding.sheet);
  for (const audited of report.sheets) {
    const sheet = sheets.find((one) => one.name === audited.sheet);
    const listing = workbook.sheet(audited.sheet);
    // its bars stand in columns, which no row's colour would mark
    if (sheet?.isTurned === true) continue;
    if (sheet === undefined || listing === undefined || earlier.has(audited.sheet)) continue;
    const marks = marksOf(audited, sheet, findings.get(audited.sheet) ?? []);
    const clear = workbook.hasFlags(listing);
    if (marks.flags.length > 0 || clear) changes.set(audited.sheet, { ...marks, clear });
  }
  const begun = beginRows === undefined ? null : beginOnly(workbook, changes, sheets, beginRows);
  const replaces = [...earlier].find(([, isOurs]) => isOurs)?.[0];
  const added = { ...findingsSheet(report, sheets, known), ...(replaces !== undefined && { replaces }) };
  onCellsRead?.();
  return {
    pieces: patchInPieces(
      workbook,
      { sheets: changes, added: [added], ...(names !== undefined && { names }) },
      host,
      begun,
    ),
    kept: [...earlier].filter(([, isOurs]) => !isOurs).map(([name]) => name),
  };
}

/** The one sheet that is marked, as another thread begins with it; null where there are more, or none begins. */
function beginOnly(
  workbook: Workbook,
  changes: ReadonlyMap<string, SheetChanges>,
  sheets: readonly Sheet[],
  beginRows: (task: RowsTask) => RowsApart | null,
) {
  const [name] = changes.keys();
  // a sheet of a job is spread over what was read
  const { styleAt } = (sheets.find((one) => one.name === name) ?? {}) as Partial<SheetReading>;
  return styleAt === undefined ? null : beginSheet(workbook, changes, styleAt, beginRows);
}

/** Findings sheets by name; true where nothing but us has written on it, so that it can be written anew. */
function earlierFindings(workbook: Workbook, sheets: readonly Sheet[]): Map<string, boolean> {
  const found = new Map<string, boolean>();
  for (const { name, part } of workbook.sheets) {
    if (!hasFindingsName(name)) continue;
    const state = findingsSheetState(sheets.find((one) => one.name === name) ?? workbook.read(name));
    if (state !== null) found.set(name, state === "untouched" && !hasOwnParts(workbook, part));
  }
  return found;
}

/** A remark, a table or a drawing beside our chart is the user's own. */
function hasOwnParts({ parts }: Workbook, part: string): boolean {
  return parts.relationships(part).some(({ type, target }) => {
    if (type === "printerSettings") return false;
    return type !== "drawing" || !parts.has(target) || anchors(parts.text(target)) > 1;
  });
}

function anchors(drawing: string): number {
  return [...xmlTags(drawing)].filter(({ name, kind }) => kind === "open" && name.endsWith("Anchor")).length;
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
    notes.push({ row: row - 1, column: place.column, text: rowNote(ofRow) });
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

function groupBy<T, K>(items: readonly T[], key: (item: T) => K): Map<K, T[]> {
  const groups = new Map<K, T[]>();
  for (const item of items) {
    const group = groups.get(key(item));
    if (group === undefined) groups.set(key(item), [item]);
    else group.push(item);
  }
  return groups;
}
