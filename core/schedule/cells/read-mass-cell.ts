import type { ColumnKind } from "../bar-row";
import { type Cell, cellErrorReason, isCellError } from "../sheet";
import { type Told, unread } from "./cell-answer";
import { cleanText } from "./clean-text";
import { LONGEST_VALUE, shortened } from "./longest-text";
import { type CommaUse, readNumberText } from "./read-number-text";
import { isWord, plainWords } from "./row-words";

/** units of masses behind a number; \u043a\u0433/\u043c is kg/m */
const WEIGHED = /\s*(?:kgs?|t|mt|lbs?)\.?$/i;
const PER_LENGTH = /\s*(?:kgs?|lbs?|\u043a\u0433)\.?(?:\s?\/\s?(?:lfm|ml|m|ft|\u043c\.?\u043f?))?\.?$/i;

/** Above it no number is the mass of bars, in any unit. */
export const MOST_MASS = 1e9;

/** The number of a cell of masses, in its column's unit; null for a blank one. */
export function readMassCell(
  field: ColumnKind,
  column: number,
  cell: Cell | undefined,
  comma: CommaUse,
): number | null | Told<number> {
  if (cell === null || cell === undefined) return null;
  if (typeof cell === "number" && cell >= 0 && cell <= MOST_MASS) return cell;
  if (typeof cell === "string") {
    const clean = cleanText(cell);
    if (clean === "" || isWord("blank", plainWords(clean))) return null;
    const value = clean.length > LONGEST_VALUE ? "" : clean;
    const number = readNumberText(value.replace(field === "unitMass" ? PER_LENGTH : WEIGHED, ""), comma);
    if (number !== null && number >= 0 && number <= MOST_MASS) return number;
  }
  const reason = isCellError(cell) ? cellErrorReason(cell) : `"${shortened(String(cell))}" is no mass`;
  return unread({ field, column, typed: cell }, reason);
}
