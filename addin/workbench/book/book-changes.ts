import { translateFormulaToA1, translateFormulaToR1C1 } from "@borgar/fx";
import type { ICellData } from "@univerjs/core";
import { addressAt } from "../../../core/schedule/cell-address";
import { type Cell, isCellError } from "../../../core/schedule/sheet";
import { hasBarFunction } from "../../workbook/bar-formula-names";
import { parseRange } from "../../workbook/cell-address";
import type { CellRange, SheetChanges } from "../../workbook/sheet-changes";
import type { SheetReading } from "../../xlsx/read/read-sheet";
import { fileFormulas } from "./file-formula";

type Write = NonNullable<SheetChanges["writes"]>[number];
type CellData = Readonly<Record<number, Readonly<Record<number, ICellData>>>>;

/** A grid sheet as it stands now, by the sheet's own rows and columns from 0. */
export interface GridSheetNow {
  readonly cells: ReadonlyMap<number, ReadonlyMap<number, ICellData>>;
  /** formula as typed, also of a cell that shares one; null where there is none */
  formulaAt(row: number, column: number): string | null;
  /** value, calculated or typed */
  valueAt(row: number, column: number): Cell;
  /** rows and columns that a formula's result fills; null where it fills its own cell */
  spillAt(row: number, column: number): { readonly rows: number; readonly columns: number } | null;
}

/** A sheet as it was opened, beside what the file said of it. */
export interface SheetBefore {
  readonly cellData: CellData;
  readonly reading: SheetReading;
  /** the cells' groups of shared formulas are other than the grid's: formulas are compared by their text */
  readonly isRegrouped: boolean;
  /** the grid came to another result than the file holds, before anything was edited */
  readonly isDoubted: (row: number, column: number) => boolean;
}

/** What of a sheet's cells must be written, and which stored results the grid cannot answer for. */
export interface CellChanges {
  readonly writes: readonly Write[];
  /** cells whose content was edited, not only calculated anew */
  readonly edited: readonly { readonly row: number; readonly column: number }[];
  readonly doubted: readonly { readonly row: number; readonly column: number }[];
}

/**
 * What must be written into the file: cells whose value or formula is another than it opened with, and
 * results that came out otherwise than the file holds them. All else keeps its bytes.
 */
export function changedCells(before: SheetBefore, now: GridSheetNow): CellChanges {
  const writes: Write[] = [];
  const edited: { row: number; column: number }[] = [];
  const doubted: { row: number; column: number }[] = [];
  const filled = new Set<string>();
  const formulaBefore = formulaTexts(before);
  const formulaOfFile = fileFormulas(before.reading);
  for (const [row, cells] of now.cells) {
    for (const [column, cell] of cells) {
      const was = before.cellData[row]?.[column];
      const formula = now.formulaAt(row, column);
      const isEdited = !sameContent(was, cell, () => sameFormula(formulaBefore(row, column), formula));
      if (isEdited) edited.push({ row, column });
      else if (formula === null || !hasNewResult(before.reading, now, row, column)) continue;
      else if (before.isDoubted(row, column) && !hasBarFunction(formula)) {
        doubted.push({ row, column });
        continue;
      }
      const value = now.valueAt(row, column);
      if (formula === null) {
        if (!filled.has(`${row} ${column}`)) writes.push({ row, column, value });
        continue;
      }
      const fills = now.spillAt(row, column);
      const kept = (isEdited ? null : formulaOfFile(row, column)) ?? formula;
      writes.push({ row, column, value, formula: kept, ...(fills && { fills }) });
      const left = filledBefore(before.reading, row, column);
      const filledNow = block(row, column, fills);
      for (const place of placesOf(left === null ? filledNow : around(left, filledNow))) {
        if (place.row === row && place.column === column) continue;
        const isIn = place.row <= filledNow.bottom && place.column <= filledNow.right;
        if (!isIn && now.cells.get(place.row)?.has(place.column)) continue;
        filled.add(`${place.row} ${place.column}`);
        writes.push({ ...place, value: isIn ? now.valueAt(place.row, place.column) : null });
      }
    }
  }
  for (const [row, cells] of Object.entries(before.cellData)) {
    for (const [column, cell] of Object.entries(cells)) {
      const place = { row: Number(row), column: Number(column) };
      const isGone = now.cells.get(place.row)?.get(place.column) === undefined;
      if (!isGone || !hasContent(cell) || filled.has(`${row} ${column}`)) continue;
      edited.push(place);
      writes.push({ ...place, value: null });
    }
  }
  return { writes, edited, doubted };
}

/** Formulas of the file that the grid calculates otherwise than the file says, as it was opened. */
export function doubtedFormulas(reading: SheetReading, now: GridSheetNow): ReadonlySet<string> {
  const doubted = new Set<string>();
  if (!reading.hasFormulas) return doubted;
  for (const [row, cells] of now.cells) {
    for (const [column, cell] of cells) {
      if (hasFormula(cell) && hasNewResult(reading, now, row, column)) doubted.add(`${row} ${column}`);
    }
  }
  return doubted;
}

function formulaTexts({ cellData, isRegrouped }: SheetBefore) {
  if (!isRegrouped) return (): string | null => null;
  const groups = new Map<string, string>();
  for (const [row, cells] of Object.entries(cellData)) {
    for (const [column, { f, si }] of Object.entries(cells)) {
      if (f && si) groups.set(si, translateFormulaToR1C1(f, addressAt(Number(row), Number(column))));
    }
  }
  return (row: number, column: number): string | null => {
    const { f, si } = cellData[row]?.[column] ?? {};
    if (f) return f;
    const relative = si ? groups.get(si) : undefined;
    return relative === undefined ? null : translateFormulaToA1(relative, addressAt(row, column));
  };
}

const plain = (formula: string | null): string => (formula ?? "").replace(/^=/, "").replace(/\s+/g, "");
const sameFormula = (before: string | null, now: string | null): boolean => plain(before) === plain(now);

/** Formulas are compared by their text or the group that shares one, values where there is no formula. */
function sameContent(before: ICellData | undefined, now: ICellData, sameText: () => boolean): boolean {
  const was = before ?? {};
  if (hasFormula(was) || hasFormula(now)) {
    const isSame = (was.f ?? null) === (now.f ?? null) && (was.si ?? null) === (now.si ?? null);
    return isSame || (hasFormula(was) && hasFormula(now) && sameText());
  }
  return (was.v ?? null) === (now.v ?? null) && (was.v === undefined || now.v === null || was.t === now.t);
}

const hasFormula = ({ f, si }: ICellData): boolean => Boolean(f) || Boolean(si);
const hasContent = (cell: ICellData): boolean => hasFormula(cell) || (cell.v ?? null) !== null;

function filledBefore(reading: SheetReading, row: number, column: number): CellRange | null {
  const formula = reading.formulaAt(row, column);
  return formula?.kind === "array" && formula.range?.includes(":") ? parseRange(formula.range) : null;
}

/** The result, or one of the cells that it fills, is another than the file holds. */
function hasNewResult(reading: SheetReading, now: GridSheetNow, row: number, column: number): boolean {
  const before = filledBefore(reading, row, column);
  const fills = block(row, column, now.spillAt(row, column));
  if (before === null && fills.bottom === row && fills.right === column)
    return !sameValue(reading.valueAt(row, column), now.valueAt(row, column));
  for (const place of placesOf(before === null ? fills : around(before, fills))) {
    const isIn = place.row <= fills.bottom && place.column <= fills.right;
    const value = isIn ? now.valueAt(place.row, place.column) : null;
    if (!sameValue(reading.valueAt(place.row, place.column), value)) return true;
  }
  return false;
}

/** Other programs add up in another order: the last digits of a sum may differ. */
const LAST_DIGITS = 1e-12;

function sameValue(before: Cell, now: Cell): boolean {
  if (typeof before === "number" && typeof now === "number")
    return Math.abs(before - now) <= LAST_DIGITS * Math.max(Math.abs(before), Math.abs(now));
  if (isError(before) && isError(now)) return before.error === now.error && before.message === undefined;
  return before === now;
}

const isError = (cell: Cell): cell is Extract<Cell, { error: string }> => cell !== null && isCellError(cell);

function block(row: number, column: number, fills: { rows: number; columns: number } | null): CellRange {
  const { rows, columns } = fills ?? { rows: 1, columns: 1 };
  return { top: row, left: column, bottom: row + rows - 1, right: column + columns - 1 };
}

const around = (a: CellRange, b: CellRange): CellRange => ({
  top: Math.min(a.top, b.top),
  left: Math.min(a.left, b.left),
  bottom: Math.max(a.bottom, b.bottom),
  right: Math.max(a.right, b.right),
});

function* placesOf({ top, left, bottom, right }: CellRange): Generator<{ row: number; column: number }> {
  for (let row = top; row <= bottom; row += 1)
    for (let column = left; column <= right; column += 1) yield { row, column };
}
