import type { ColumnKind } from "../bar-row";
import type { LengthColumn } from "../cells/read-length-text";
import type { CommaUse } from "../cells/read-number-text";
import type { HeaderBlock } from "../header/header-blocks";
import type { Cell } from "../sheet";
import { numberIn } from "./column-sample";

const LEAST_VOTES = 2;
const OF_VOTES = 0.8;

/**
 * "each" or "total" where members and a bare count stand beside each other and the total lengths, in a column or by
 * size, or where there are none the masses, follow from one reading of the count only. It takes two rows, where
 * weighing all products takes five. Rows of one member prove nothing; blank members are tried as those above.
 *
 * @param kgOf kg of so many bars of a row
 */
export function countBySums(
  block: HeaderBlock,
  rows: readonly (readonly Cell[])[],
  lengths: ReadonlyMap<ColumnKind, LengthColumn>,
  comma: CommaUse,
  kgOf: (cells: readonly Cell[], count: number) => number,
): "each" | "total" | null {
  const at = new Map(block.columns.map((column) => [column.kind, column]));
  const [members, total, length] = [at.get("members"), at.get("total"), at.get("length")];
  if (members === undefined || total === undefined || length === undefined) return null;
  if (at.has("each") || total.corrected) return null;
  const factor = lengths.get("length")?.factor ?? 1;
  const sums = at.get("totalLength");
  const mass = sums === undefined && block.bySize.length === 0 ? at.get("mass") : undefined;
  const sumFactor = lengths.get("totalLength")?.factor ?? 1000;
  let votes = 0;
  let each = 0;
  let above = 0;
  for (const cells of rows) {
    const number = (column: number): number | null => numberIn(cells[column], comma);
    const count = number(total.column) ?? 0;
    const long = number(length.column) ?? 0;
    const own = number(members.column);
    // lines of sums and headings have no length
    if (own !== null && long > 0) above = own;
    const many = own ?? above;
    const sized = block.bySize.map(({ column }) => number(column)).find((one) => one !== null && one > 0);
    const ofLengths = sums === undefined ? (sized ?? 0) * 1000 : (number(sums.column) ?? 0) * sumFactor;
    const whole = mass === undefined ? ofLengths : (number(mass.column) ?? 0);
    const one = mass === undefined ? count * long * factor : kgOf(cells, count);
    if (!(whole > 0) || !(one > 0) || many < 2) continue;
    const ratio = whole / one;
    const isEach = Math.abs(ratio / many - 1) < 0.02;
    if (!isEach && (own === null || Math.abs(ratio - 1) >= 0.02)) continue;
    votes += 1;
    if (isEach) each += 1;
  }
  if (votes < LEAST_VOTES) return null;
  return each >= votes * OF_VOTES ? "each" : each <= votes * (1 - OF_VOTES) ? "total" : null;
}
