import type { ICellData } from "@univerjs/core";
import type { Cell } from "../../../core/schedule/sheet";
import { hasBarFunction } from "../../workbook/bar-formula-names";
import type { SheetChanges } from "../../workbook/sheet-changes";
import type { SheetReading } from "../../xlsx/read/read-sheet";

type Write = NonNullable<SheetChanges["writes"]>[number];

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

/**
 * What must be written into the file: cells whose value or formula is another than it opened with, and
 * results of BAR formulas, which no other program can calculate. All else keeps its bytes.
 */
export function changedCells(
  opened: Readonly<Record<number, Readonly<Record<number, ICellData>>>>,
  reading: SheetReading,
  now: GridSheetNow,
): readonly Write[] {
  const writes: Write[] = [];
  const filled = new Set<string>();
  for (const [row, cells] of now.cells) {
    for (const [column, cell] of cells) {
      const before = opened[row]?.[column];
      const formula = now.formulaAt(row, column);
      const edited = !sameContent(before, cell);
      const calls = formula !== null && hasBarFunction(formula);
      if (!edited && !(calls && isStale(reading, now, row, column))) continue;
      const value = now.valueAt(row, column);
      if (formula === null) {
        if (!filled.has(`${row} ${column}`)) writes.push({ row, column, value });
        continue;
      }
      const fills = now.spillAt(row, column);
      writes.push({ row, column, value, formula, ...(fills && { fills }) });
      if (fills === null) continue;
      for (let r = row; r < row + fills.rows; r += 1) {
        for (let c = column; c < column + fills.columns; c += 1) {
          if (r === row && c === column) continue;
          filled.add(`${r} ${c}`);
          writes.push({ row: r, column: c, value: now.valueAt(r, c) });
        }
      }
    }
  }
  for (const [row, cells] of Object.entries(opened)) {
    for (const [column, cell] of Object.entries(cells)) {
      const isGone = now.cells.get(Number(row))?.get(Number(column)) === undefined;
      if (isGone && hasContent(cell)) writes.push({ row: Number(row), column: Number(column), value: null });
    }
  }
  return writes;
}

/** Formulas are compared by their text or the group that shares one, values where there is no formula. */
function sameContent(before: ICellData | undefined, now: ICellData): boolean {
  const was = before ?? {};
  if (hasFormula(was) || hasFormula(now))
    return (was.f ?? null) === (now.f ?? null) && (was.si ?? null) === (now.si ?? null);
  return (was.v ?? null) === (now.v ?? null) && (was.v === undefined || now.v === null || was.t === now.t);
}

const hasFormula = ({ f, si }: ICellData): boolean => Boolean(f) || Boolean(si);
const hasContent = (cell: ICellData): boolean => hasFormula(cell) || (cell.v ?? null) !== null;

/** A stored result that is another than the calculated one. One that fills further cells is left alone. */
function isStale(reading: SheetReading, now: GridSheetNow, row: number, column: number): boolean {
  const range = reading.formulaAt(row, column)?.range;
  if (range?.includes(":")) return false;
  return JSON.stringify(reading.valueAt(row, column)) !== JSON.stringify(now.valueAt(row, column));
}
