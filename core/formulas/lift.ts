import type { Cell, CellError } from "../schedule/sheet";
import type { LengthUnit } from "../units/length-unit";
import { defineRefusal, isRefusal, type Refusal, refusalText } from "../units/refusal";
import type { Block, FunctionArgument, FunctionEnvironment, WorksheetFunction } from "./worksheet-function";

/** The cells of one row, by argument; the same object serves every row of a call. */
export interface RowReader {
  readonly environment: FunctionEnvironment;
  /** the cell of a `column` argument; null where it is blank or not given */
  cell(argument: number): Cell;
  /** the cells of a `dims` argument in this row; empty where it is not given */
  dims(argument: number): readonly Cell[];
}

interface RowFunctionDefinition {
  readonly name: string;
  readonly description: string;
  readonly args: readonly FunctionArgument[];
  /** its `table` arguments stand in `blocks`, the others in `row` */
  readonly row: (row: RowReader, blocks: readonly (Block | undefined)[]) => Cell | Refusal;
}

const rowsUnequal = defineRefusal(
  "rows-unequal",
  "value",
  "{name} has {rows} rows and {other} has {otherRows}: give ranges of as many rows, or one row",
);
const columnTooWide = defineRefusal(
  "column-too-wide",
  "value",
  "{name} has {columns} columns: give one cell or one column",
);
const tooManyArguments = defineRefusal(
  "too-many-arguments",
  "value",
  "{count} arguments were given: {function} takes {limit}",
);

/**
 * A worksheet function that answers row by row. Columns of n rows give n rows, one row broadcasts,
 * unequal row counts are refused as a whole. The result ends at the last row that is not blank; blank
 * rows stay blank; an error cell or a refusal stands in its own row.
 */
export function rowFunction({ name, description, args, row }: RowFunctionDefinition): WorksheetFunction {
  const call = (blocks: readonly (Block | undefined)[], environment: FunctionEnvironment): Block => {
    const refusal = shapeRefusal(name, args, blocks);
    if (refusal !== null) return [[errorCell(refusal)]];
    const reader = new BlockRows(args, withoutTables(args, blocks), environment);
    const answers: Cell[][] = [];
    const count = reader.countRows();
    for (let at = 0; at < count; at += 1) {
      reader.moveTo(at);
      if (reader.isBlank()) answers.push([null]);
      else answers.push([reader.errorHere() ?? cellOf(row(reader, blocks))]);
    }
    return answers;
  };
  return { name, description, args, call };
}

interface BlockFunctionDefinition {
  readonly name: string;
  readonly description: string;
  readonly args: readonly FunctionArgument[];
  /** its `table` arguments stand in `blocks`, the others in `row` */
  readonly block: (row: RowReader, blocks: readonly (Block | undefined)[]) => Block | Refusal;
}

const oneBarOnly = defineRefusal(
  "one-bar-only",
  "value",
  "{name} has {rows} rows: BAR.{function} takes one bar, so give one row",
);

/**
 * A worksheet function that answers one bar with several rows. Only `table` arguments may have more
 * than one row. A blank bar gives a blank; an error cell among its arguments is the answer.
 */
export function blockFunction({
  name,
  description,
  args,
  block,
}: BlockFunctionDefinition): WorksheetFunction {
  const call = (blocks: readonly (Block | undefined)[], environment: FunctionEnvironment): Block => {
    const refusal = shapeRefusal(name, args, blocks) ?? manyRowsRefusal(name, args, blocks);
    if (refusal !== null) return [[errorCell(refusal)]];
    const reader = new BlockRows(args, withoutTables(args, blocks), environment);
    if (reader.isBlank()) return [[null]];
    const error = reader.errorHere();
    if (error !== null) return [[error]];
    const answer = block(reader, blocks);
    return isRefusal(answer) ? [[errorCell(answer)]] : answer.map((row) => row.map(cellOf));
  };
  return { name, description, args, call };
}

/** A table is taken whole, so it neither lifts nor decides where the result ends. */
function withoutTables(
  args: readonly FunctionArgument[],
  blocks: readonly (Block | undefined)[],
): readonly (Block | undefined)[] {
  if (!args.some((argument) => argument.lifts === "table")) return blocks;
  return blocks.map((given, index) => (args[index]?.lifts === "table" ? undefined : given));
}

/** The cell of an answer: a refusal becomes an error with its words, a number loses its float noise. */
function cellOf(answer: Cell | Refusal): Cell {
  if (typeof answer === "number") return cleanNumber(answer);
  return isRefusal(answer) ? errorCell(answer) : answer;
}

const resultTooLarge = defineRefusal(
  "result-too-large",
  "value",
  "the result is beyond the largest number that a cell holds: look for a dimension, count or former with too many figures",
);

export function errorCell(refusal: Refusal, unit: LengthUnit = "mm"): CellError {
  return { error: refusal.kind === "value" ? "#VALUE!" : "#N/A", message: refusalText(refusal, unit) };
}

export function isBlankCell(cell: Cell | undefined): boolean {
  return cell === null || cell === undefined || (typeof cell === "string" && cell.trim() === "");
}

/** Digits that a computed number keeps: beyond them is float noise. */
const DIGITS = 13;

function cleanNumber(value: number): Cell {
  return Number.isFinite(value) && !Number.isInteger(value)
    ? Number(value.toPrecision(DIGITS))
    : numberCell(value);
}

/** A number as a cell holds it; one beyond all cells is refused. */
export function numberCell(value: number): number | CellError {
  return Number.isFinite(value) ? value : errorCell(resultTooLarge({}));
}

/** Rows beside each other over the blocks of one call. */
class BlockRows implements RowReader {
  /** the cells of the row in force, by argument; none where it is not given */
  readonly #current: (readonly Cell[])[];
  /** arguments that say whether a row is blank and where the result ends */
  readonly #keys: readonly number[];

  constructor(
    args: readonly FunctionArgument[],
    readonly blocks: readonly (Block | undefined)[],
    readonly environment: FunctionEnvironment,
  ) {
    const isKey = (argument: FunctionArgument) => !argument.optional || argument.lifts === "dims";
    const given = (wanted: (argument: FunctionArgument) => boolean, fromRows: number) =>
      [...args.keys()].filter((index) => wanted(args[index]!) && (blocks[index]?.length ?? 0) >= fromRows);
    const candidates = [given(isKey, 2), given(() => true, 2), given((argument) => !argument.optional, 1)];
    this.#keys = candidates.find((kind) => kind.length > 0) ?? [];
    this.#current = args.map((_, index) => blocks[index]?.[0] ?? NO_CELLS);
  }

  countRows(): number {
    let last = 0;
    for (const key of this.#keys) {
      const block = this.blocks[key]!;
      let row = block.length - 1;
      while (row > last && block[row]!.every(isBlankCell)) row -= 1;
      last = Math.max(last, row);
    }
    return last + 1;
  }

  moveTo(row: number): void {
    for (let index = 0; index < this.#current.length; index += 1) {
      const block = this.blocks[index];
      if (block !== undefined && block.length > 1) this.#current[index] = block[row] ?? NO_CELLS;
    }
  }

  isBlank(): boolean {
    for (let key = 0; key < this.#keys.length; key += 1) {
      const cells = this.#current[this.#keys[key]!]!;
      for (let column = 0; column < cells.length; column += 1) if (!isBlankCell(cells[column])) return false;
    }
    return true;
  }

  errorHere(): Cell {
    for (let index = 0; index < this.#current.length; index += 1) {
      const cells = this.#current[index]!;
      for (let column = 0; column < cells.length; column += 1) {
        const cell = cells[column] ?? null;
        if (typeof cell === "object" && cell !== null) return cell;
      }
    }
    return null;
  }

  cell(argument: number): Cell {
    const cell = this.#current[argument]?.[0];
    return cell === undefined || isBlankCell(cell) ? null : cell;
  }

  dims(argument: number): readonly Cell[] {
    return this.#current[argument] ?? NO_CELLS;
  }
}

const NO_CELLS: readonly Cell[] = [];

function shapeRefusal(
  name: string,
  args: readonly FunctionArgument[],
  blocks: readonly (Block | undefined)[],
): Refusal | null {
  if (blocks.length > args.length) {
    return tooManyArguments({ count: blocks.length, function: `BAR.${name}`, limit: args.length });
  }
  let longest: { readonly name: string; readonly rows: number } | null = null;
  for (const [index, argument] of args.entries()) {
    const block = blocks[index];
    if (block === undefined) continue;
    const columns = block[0]?.length ?? 0;
    if (argument.lifts === "column" && columns > 1) return columnTooWide({ name: argument.name, columns });
    if (block.length <= 1 || argument.lifts === "table") continue;
    if (longest !== null && longest.rows !== block.length) {
      return rowsUnequal({
        name: longest.name,
        rows: longest.rows,
        other: argument.name,
        otherRows: block.length,
      });
    }
    longest = { name: argument.name, rows: block.length };
  }
  return null;
}

function manyRowsRefusal(
  name: string,
  args: readonly FunctionArgument[],
  blocks: readonly (Block | undefined)[],
): Refusal | null {
  const index = args.findIndex((argument, at) => argument.lifts !== "table" && (blocks[at]?.length ?? 0) > 1);
  if (index < 0) return null;
  return oneBarOnly({ name: args[index]!.name, rows: blocks[index]!.length, function: name });
}
