import type { Block } from "../../core/formulas";
import { type Cell, type CellError, isCellError } from "../../core/schedule/sheet";

/**
 * What Excel hands over for an argument: rows of cells, or nothing where it was left out. Office.js puts what it
 * says of the call behind the last argument that was given, which is then no rows.
 */
export type Given = Rows | object | null | undefined;
type Rows = readonly (readonly unknown[])[];

/**
 * The arguments as core takes them; undefined where one was left out. A whole column has a million rows,
 * most of them blank: ranges of as many rows end together, at the last row in which one of them is filled.
 * Ranges of unequal height keep their rows, which core refuses or takes as tables.
 */
export function blocksOf(given: readonly Given[]): (Block | undefined)[] {
  const ranges = given.filter((rows): rows is Rows => isRows(rows) && rows.length > 1);
  const height = ranges[0]?.length ?? 0;
  const isOneHeight = ranges.every((rows) => rows.length === height);
  // one row serves all rows, which a range of several must never come to do
  const end = isOneHeight ? ranges.reduce((least, rows) => lastFilled(rows, least), 2) : Infinity;
  return given.map((rows) => (isRows(rows) ? filledRows(rows, Math.min(end, rows.length)) : undefined));
}

const isRows = (given: Given): given is Rows => Array.isArray(given);

/** Rows up to the last that is not blank, no fewer than `least`. */
function lastFilled(rows: readonly (readonly unknown[])[], least: number): number {
  let end = rows.length;
  while (end > least && isBlankRow(rows[end - 1]!)) end -= 1;
  return end;
}

function isBlankRow(row: readonly unknown[]): boolean {
  for (let column = 0; column < row.length; column += 1) {
    if (row[column] !== "" && row[column] !== null) return false;
  }
  return true;
}

function filledRows(rows: readonly (readonly unknown[])[], end: number): Block {
  const blank: readonly Cell[] = rows[0]?.map(() => null) ?? [];
  const block = new Array<readonly Cell[]>(end).fill(blank);
  const filled = end === rows.length ? lastFilled(rows, 0) : end;
  for (let row = 0; row < filled; row += 1) block[row] = rowOf(rows[row]!, blank);
  return block;
}

/** Blank rows share one row, plain ones are kept. */
function rowOf(row: readonly unknown[], blank: readonly Cell[]): readonly Cell[] {
  if (row.length === blank.length && isBlankRow(row)) return blank;
  return row.every(isPlain) ? row : row.map(cellOf);
}

function isPlain(value: unknown): value is Cell {
  return typeof value === "number" || (typeof value === "string" && value !== "");
}

/** Excel shows texts with two of its errors only; the others may not come from a function. */
const SHOWN_WITH_TEXT = ["#VALUE!", "#N/A"] as const;

/** The result as Excel takes it: blanks as empty texts, errors as Excel's own with their words. */
export function excelRows(block: Block): unknown[][] {
  return block.map((row) => row.map((cell) => (isCellError(cell) ? excelError(cell) : (cell ?? ""))));
}

export function excelError(cell: CellError): CustomFunctions.Error {
  const code = SHOWN_WITH_TEXT.find((own) => own === cell.error);
  const words = cell.message ?? `a cell of this row holds ${cell.error}: put it right first`;
  return new CustomFunctions.Error(
    code === "#N/A" ? CustomFunctions.ErrorCode.notAvailable : CustomFunctions.ErrorCode.invalidValue,
    words,
  );
}

interface ExcelObject {
  /** of an error cell */
  readonly code?: unknown;
  readonly basicType?: unknown;
  readonly basicValue?: unknown;
}

function cellOf(value: unknown): Cell {
  switch (typeof value) {
    case "number":
    case "boolean":
      return value;
    case "string":
      return value === "" ? null : value;
    case "object":
      return value === null ? null : cellOfObject(value);
    default:
      return null;
  }
}

/** Error cells come as errors, formatted numbers and linked data as objects with a basic value. */
function cellOfObject({ code, basicType, basicValue }: ExcelObject): Cell {
  if (typeof code === "string") return { error: code };
  if (basicType === "Error" && typeof basicValue === "string") return { error: basicValue };
  return cellOf(typeof basicValue === "object" ? null : basicValue);
}
