import { WORKSHEET_FUNCTIONS } from "../../../core/formulas";
import type { Block } from "../../../core/formulas/worksheet-function";
import type { Cell, CellError } from "../../../core/schedule/sheet";

export type Given = Cell | readonly Cell[] | Block | undefined;

/** What BAR.name answers: a cell is a block of one, a list one row. */
export function call(name: string, ...args: Given[]): Block {
  const definition = WORKSHEET_FUNCTIONS.get(name);
  if (definition === undefined) throw new Error(`no function ${name}`);
  return definition.call(args.map(blockOf), { defaultStandard: "BS8666:2005" });
}

/** The only cell of an answer. */
export function one(name: string, ...args: Given[]): Cell {
  const block = call(name, ...args);
  if (block.length !== 1 || block[0]?.length !== 1) throw new Error(`${name} gave ${JSON.stringify(block)}`);
  return block[0][0]!;
}

/** The error of an answer's only cell, as "#N/A the words". */
export function refused(name: string, ...args: Given[]): string {
  const { error, message } = one(name, ...args) as CellError;
  return `${error} ${message}`;
}

export function column(...cells: Cell[]): Block {
  return cells.map((cell) => [cell]);
}

function blockOf(given: Given): Block | undefined {
  if (given === undefined) return undefined;
  if (!Array.isArray(given)) return [[given as Cell]];
  const list = given as readonly (Cell | readonly Cell[])[];
  return list.every((row) => Array.isArray(row)) ? (list as Block) : [list as readonly Cell[]];
}
