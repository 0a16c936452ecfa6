import type { Cell, Sheet } from "../../../core/schedule/sheet";
import { parseRange } from "../../workbook/cell-address";
import { attribute, findElement, findElements, isTrue, xmlTags } from "../xml/xml-text";
import { CellStore, type PackedCells } from "./cell-store";
import type { CellFormat } from "./cell-styles";
import { DoubtedCells } from "./doubted-cells";
import { shownNumber } from "./number-format";
import { QuickRows } from "./quick-rows";
import { rowEnd } from "./row-bytes";
import { type ScannedRow, scanRows } from "./scan-cells";
import type { SharedStrings } from "./shared-strings";
import type { SheetFormula } from "./sheet-formula";
import { decoded, sheetPieces } from "./sheet-pieces";
import { ValueReader } from "./value-reader";

export interface ColumnWidth {
  readonly first: number;
  readonly last: number;
  /** characters; null keeps the sheet's default */
  readonly width: number | null;
  readonly hidden: boolean;
  readonly style: number;
}

/** A sheet of a workbook as core reads it, and what a grid needs to show it. Places count from the used range. */
export interface SheetReading extends Sheet {
  readonly isProtected: boolean;
  readonly columns: readonly ColumnWidth[];
  /** rows frozen above and columns frozen left of the cells */
  readonly frozen: { readonly rows: number; readonly columns: number };
  /** By the sheet's own row and column, from 0. Only kept where formulas were asked for. */
  formulaAt(row: number, column: number): SheetFormula | undefined;
  /** a formula or more was kept */
  readonly hasFormulas: boolean;
  /** Style index by the sheet's own row and column; the row's or column's where the cell has none. */
  styleAt(row: number, column: number): number;
  /** Value by the sheet's own row and column. */
  valueAt(row: number, column: number): Cell;
  /** Rows that the file holds cells for, the sheet's own numbers from 0. */
  readonly rowNumbers: Iterable<number>;
  cellsOfRow(row: number): Generator<{ column: number; value: Cell; style: number }>;
  /** points, by the sheet's own row; null is the default */
  rowHeight(row: number): number | null;
  /** Gives back the memory of its cells, which nobody asks for any more; its measures and layout stay. */
  letGo(): void;
  /** What another thread makes the same sheet of, by `sheetOfPacked`; null where it cannot be handed over. */
  packed(): PackedSheet | null;
  /** the part's text before its rows and after them */
  readonly layout: SheetLayout;
}

/** A sheet as plain data; the numbers of its cells stand in memory of both threads. */
export interface PackedSheet {
  readonly source: SheetFrame;
  readonly cells: PackedCells;
  readonly scanned: Omit<Scanned, "store" | "doubted" | "formulas">;
}

/** What of its book a sheet's cells go by. */
type SheetFrame = Pick<SheetSource, "name" | "formats" | "from1904">;

/** The sheet that was packed, without its formulas. */
export function sheetOfPacked({ source, cells, scanned }: PackedSheet): Sheet {
  const ofCells = { store: CellStore.of(cells), doubted: new DoubtedCells(), formulas: new Map() };
  return assemble(source, { ...scanned, ...ofCells });
}

/** What stands before and after a sheet's rows in its part. */
export interface SheetLayout {
  readonly head: string;
  readonly tail: string;
}

export interface SheetSource {
  readonly name: string;
  readonly pieces: Iterable<Uint8Array>;
  readonly strings: SharedStrings;
  readonly formats: readonly CellFormat[];
  /** keeps formulas as well */
  readonly formulas: boolean;
  /** dates count from 1904 */
  readonly from1904: boolean;
  /** the stored results of its formulas are not to be relied on */
  readonly isDoubted?: boolean;
}

/** Reads one worksheet's cells, what hides or strikes them, and its layout. */
export function readSheet(source: SheetSource): SheetReading {
  const store = new CellStore();
  const formulas = new Map<number, SheetFormula>();
  const struck = new Set<number>();
  const dates = new Set<number>();
  const doubted = new DoubtedCells();
  const hiddenRows = new Set<number>();
  const rowStyles = new Map<number, number>();
  const heights = new Map<number, number>();
  const takeRow = (row: ScannedRow): void => {
    if (row.hidden) hiddenRows.add(row.row);
    if (row.style !== null) rowStyles.set(row.row, row.style);
    if (row.height !== null) heights.set(row.row, row.height);
  };
  const quick = new QuickRows(store, source.strings, takeRow, (index) => struck.add(index));
  /** Any row, whatever stands in it. */
  const readRow = (text: string, prefix: string): void => {
    const reader = new ValueReader(text, prefix, source);
    quick.last = scanRows(text, prefix, quick.last, {
      row: (row) => {
        store.startRow(row.row);
        takeRow(row);
        return true;
      },
      cell: (cell) => {
        const formula = source.formulas || source.isDoubted === true ? reader.formula(cell) : null;
        const index = store.add(cell.column, cell.style, reader.value(cell));
        if (formula !== null && source.formulas) formulas.set(index, formula);
        if (formula !== null && source.isDoubted === true) doubted.add(cell, formula);
        if (reader.wasStruck) struck.add(index);
        if (reader.wasDate) dates.add(index);
      },
      rowEnd: () => store.endRow(),
    });
  };
  let head = "";
  let tail = "";
  for (const piece of sheetPieces(source.pieces)) {
    if (piece.kind === "head") head = piece.text;
    else if (piece.kind === "tail") tail = piece.text;
    else eachRun(piece.bytes, piece.prefix, quick, readRow);
  }
  store.close();
  return assemble(source, {
    store,
    formulas,
    struck,
    dates,
    doubted,
    hiddenRows,
    rowStyles,
    heights,
    head,
    tail,
  });
}

/** Plain rows are read from their bytes; the text of all others, run by run, is given to `readRow`. */
function eachRun(
  bytes: Uint8Array,
  prefix: string,
  quick: QuickRows,
  readRow: (text: string, prefix: string) => void,
): void {
  if (prefix !== "") {
    readRow(decoded(bytes), prefix);
    return;
  }
  for (let at = quick.read(bytes, 0); at < bytes.length; at = quick.read(bytes, at)) {
    const end = rowEnd(bytes, at, CLOSE_ROW);
    readRow(decoded(bytes.subarray(at, end < 0 ? bytes.length : end)), prefix);
    if (end < 0) return;
    at = end;
  }
}

const CLOSE_ROW = new TextEncoder().encode("</row");

interface Scanned {
  readonly store: CellStore;
  readonly formulas: ReadonlyMap<number, SheetFormula>;
  readonly struck: ReadonlySet<number>;
  readonly dates: ReadonlySet<number>;
  readonly doubted: DoubtedCells;
  readonly hiddenRows: ReadonlySet<number>;
  readonly rowStyles: ReadonlyMap<number, number>;
  readonly heights: ReadonlyMap<number, number>;
  readonly head: string;
  readonly tail: string;
}

function assemble(source: SheetFrame, scanned: Scanned): SheetReading {
  const { store, head, tail } = scanned;
  const { formats } = source;
  const bounds = store.bounds() ?? { top: 0, left: 0, bottom: -1, right: -1 };
  const { top, left } = bounds;
  const columns = readColumns(head);
  const restHidden = isTrue(
    attribute(findElement(head, "sheetFormatPr")?.tag.attributes ?? "", "zeroHeight"),
  );
  const columnAt = (column: number) => columns.find((span) => column >= span.first && column <= span.last);
  const format = (index: number): CellFormat | undefined => formats[store.style(index)];
  const at = (row: number, column: number): number => store.find(row + top, column + left);
  const merges = readMerges(tail).map((range) => ({
    top: range.top - top,
    left: range.left - left,
    bottom: range.bottom - top,
    right: range.right - left,
  }));
  const valueAt = (row: number, column: number): Cell => {
    const index = store.find(row, column);
    return index < 0 ? null : store.cell(index);
  };
  return {
    name: source.name,
    top,
    left,
    rowCount: bounds.bottom - top + 1,
    columnCount: bounds.right - left + 1,
    merges,
    columns,
    frozen: readFrozen(head),
    isProtected: isSheetProtected(tail),
    rowNumbers: store.rowNumbers,
    valueAt,
    cell: (row, column) => valueAt(row + top, column + left),
    rowCells: (row) => store.valuesOfRow(row + top, left),
    shown: (row, column) => {
      const index = at(row, column);
      const value = index < 0 ? null : store.cell(index);
      const code = typeof value === "number" ? format(index)?.numberFormat : undefined;
      return code === undefined || typeof value !== "number" ? undefined : shownNumber(value, code);
    },
    isDate: (row, column) => {
      const index = at(row, column);
      if (index < 0 || typeof store.cell(index) !== "number") return false;
      return scanned.dates.has(index) || format(index)?.isDate === true;
    },
    datesFrom1904: source.from1904,
    ...(!scanned.doubted.isEmpty && {
      isDoubted: (row: number, column: number) => scanned.doubted.has(row + top, column + left),
    }),
    isHiddenRow: (row) => scanned.hiddenRows.has(row + top) || (restHidden && !store.hasRow(row + top)),
    isHiddenColumn: (column) => columnAt(column + left)?.hidden === true,
    isStruckThrough: (row, column) => {
      const index = at(row, column);
      return index >= 0 && (scanned.struck.has(index) || format(index)?.strike === true);
    },
    formulaAt: (row, column) => scanned.formulas.get(store.find(row, column)),
    hasFormulas: scanned.formulas.size > 0,
    styleAt: (row, column) => {
      const index = store.find(row, column);
      if (index >= 0) return store.style(index);
      return scanned.rowStyles.get(row) ?? columnAt(column)?.style ?? 0;
    },
    *cellsOfRow(row) {
      for (const { column, index } of store.cellsOfRow(row)) {
        yield { column, value: store.cell(index), style: store.style(index) };
      }
    },
    letGo: () => store.letGo(),
    packed: () => {
      const { store: _, doubted, formulas: _formulas, ...plain } = scanned;
      const { name, formats, from1904 } = source;
      return doubted.isEmpty
        ? { source: { name, formats, from1904 }, cells: store.packed(), scanned: plain }
        : null;
    },
    layout: { head, tail },
    rowHeight: (row) => scanned.heights.get(row) ?? null,
  };
}

function readColumns(head: string): ColumnWidth[] {
  const columns: ColumnWidth[] = [];
  for (const tag of xmlTags(head)) {
    if (tag.name !== "col" || tag.kind === "close") continue;
    const width = attribute(tag.attributes, "width");
    columns.push({
      first: Number(attribute(tag.attributes, "min") ?? 1) - 1,
      last: Number(attribute(tag.attributes, "max") ?? 1) - 1,
      width: width === null ? null : Number(width),
      hidden: isTrue(attribute(tag.attributes, "hidden")),
      style: Number(attribute(tag.attributes, "style") ?? 0),
    });
  }
  return columns;
}

function readMerges(tail: string) {
  const merges: { top: number; left: number; bottom: number; right: number }[] = [];
  for (const list of findElements(tail, "mergeCells")) {
    for (const tag of xmlTags(tail.slice(list.innerStart, list.innerEnd))) {
      const range = tag.name === "mergeCell" ? parseRange(attribute(tag.attributes, "ref") ?? "") : null;
      if (range !== null) merges.push(range);
    }
  }
  return merges;
}

function readFrozen(head: string): { rows: number; columns: number } {
  const pane = findElement(head, "pane");
  const state = pane === null ? null : attribute(pane.tag.attributes, "state");
  if (pane === null || (state !== "frozen" && state !== "frozenSplit")) return { rows: 0, columns: 0 };
  return {
    rows: Number(attribute(pane.tag.attributes, "ySplit") ?? 0),
    columns: Number(attribute(pane.tag.attributes, "xSplit") ?? 0),
  };
}

function isSheetProtected(tail: string): boolean {
  const protection = findElement(tail, "sheetProtection");
  return protection !== null && isTrue(attribute(protection.tag.attributes, "sheet"));
}
