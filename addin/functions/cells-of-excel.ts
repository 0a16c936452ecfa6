import type { Block } from "../../core/formulas";
import { type Cell, type CellError, isCellError } from "../../core/schedule/sheet";

/** What Excel hands over for an argument: rows of cells, or nothing where it was left out. */
export type Given = readonly (readonly unknown[])[] | null | undefined;

/** The argument as core takes it; undefined where it was left out. */
export function blockOf(given: Given): Block | undefined {
  return given?.map(rowOf);
}

const BLANK_ROW: readonly Cell[] = [null];

/** A whole column has a million rows, most of them blank: those share one row, plain ones are kept. */
function rowOf(row: readonly unknown[]): readonly Cell[] {
  if (row.length === 1 && (row[0] === "" || row[0] === null)) return BLANK_ROW;
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
