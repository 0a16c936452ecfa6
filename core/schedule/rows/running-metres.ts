import { cleanText } from "../cells/clean-text";
import { LONGEST_VALUE } from "../cells/longest-text";
import type { CommaUse } from "../cells/read-number-text";
import { endsWithWord, isWord, plainWords } from "../cells/row-words";
import { numberIn } from "../columns/column-sample";
import type { TableColumns } from "../columns/table-columns";
import type { Cell } from "../sheet";

const MM_PER_METRE = 1000;
const MM_PER_FOOT = 304.8;
/** "M1" is a mark and "Wall M1" a wall, where "m1" elsewhere is a metre */
const MARK_OR_METRE = /(?:^|\s)m\s?1$/i;
const IN_FEET = /f(?:t|eet)|lf|rft/;

/** Bars that a row gives in metres alone, to be cut on site: "lfm", "п.м.", "ml" in place of a length or a count. */
export interface RunningMetres {
  /** without what stands for a count or a length and is none */
  readonly cells: readonly Cell[];
  /** mm, where no column of total lengths has it */
  readonly totalLength: number | null;
  /** those of one member */
  readonly isOfOne: boolean;
}

/** Null for a row that has a length and a count, or no word for running metres. */
export function runningMetres(
  cells: readonly Cell[],
  { length, total, each, totalLength, members, unitMass, pieceMass, mark, member }: TableColumns,
  comma: CommaUse,
): RunningMetres | null {
  const lengthAt = length?.column ?? -1;
  const countAt = total >= 0 ? total : each;
  const counted = numberIn(cells[countAt], comma);
  // a bar that has a length is counted by it, whatever a remark says: "GRADE BM" is a grade beam
  if (counted !== null && isLength(cells[lengthAt])) return null;
  const isName = (cell: Cell, column: number): boolean =>
    (column === mark || column === member) && MARK_OR_METRE.test(String(cell));
  const word = cells.find((cell, column) => isRunning(cell) && !isName(cell, column));
  if (typeof word !== "string") return null;
  const own = numberIn(cells[totalLength?.column ?? -1], comma);
  const perUnit = IN_FEET.test(word.toLowerCase()) ? MM_PER_FOOT : MM_PER_METRE;
  const long = numberIn(cells[lengthAt], comma);
  const typed = counted === null ? null : counted * perUnit;
  const metres = typed ?? (long === null ? null : long * (length?.how.factor ?? perUnit));
  if (own === null && metres === null) return null;
  const taken = new Set([lengthAt, total, each, own === null || members < 0 ? -1 : members]);
  const isOfMetre = (column: number): boolean => column === pieceMass && unitMass < 0;
  return {
    cells: cells.map((cell, column) => (taken.has(column) || isOfMetre(column) ? null : cell)),
    totalLength: own === null ? metres : null,
    isOfOne: counted !== null && total < 0,
  };
}

/** A number, or a text such as "12-06" or "3.20 m". */
function isLength(cell: Cell | undefined): boolean {
  if (typeof cell === "number") return true;
  return typeof cell === "string" && /\d/.test(cell) && !isRunning(cell);
}

/** A cell that says running metres, or ends so. */
export function isRunning(cell: Cell): boolean {
  if (typeof cell !== "string" || cell.length > LONGEST_VALUE) return false;
  const plain = plainWords(cleanText(cell).replace(/^[Ll]\s*[=:]\s*/, ""));
  return isWord("running-metres", plain) || endsWithWord("running-metres", plain);
}
