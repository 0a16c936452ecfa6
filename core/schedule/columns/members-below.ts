import { cleanText } from "../cells/clean-text";
import type { CommaUse } from "../cells/read-number-text";
import type { Header } from "../header/find-header";
import type { HeaderBlock } from "../header/header-blocks";
import { readHeading } from "../rows/read-heading";
import type { Cell } from "../sheet";
import { numberIn, SAMPLE_ROWS } from "./column-sample";

/** A line under the bars of a member that says how many of it are made: "Footing P1: 4 nos" beside 4 times their amount. */
export interface ClosingLine {
  readonly row: number;
  readonly members: number;
}

interface Seen extends ClosingLine {
  readonly holds: boolean;
}

/** so near is an amount to that of one member times the members */
const NEAR = 0.005;

/**
 * The lines that give the members of the bars above them, where no column and no heading does: at least half of them stand
 * beside so many times what those bars take. Empty where the list has none.
 */
export function membersBelow(
  source: { readonly rowCount: number; cells(row: number): readonly Cell[] },
  { bottom }: Header,
  { columns, left, right }: HeaderBlock,
  comma: CommaUse,
): readonly ClosingLine[] {
  const at = (...kinds: readonly string[]): number =>
    columns.find(({ kind }) => kinds.includes(kind))?.column ?? -1;
  const [count, mass, totalLength] = [at("total", "each"), at("mass"), at("totalLength")];
  const summed = mass >= 0 ? mass : totalLength;
  if (at("members") >= 0 || count < 0 || summed < 0 || bottom < 0) return NONE;
  const lines: Seen[] = [];
  let one = 0;
  for (let row = bottom + 1; row < source.rowCount; row += 1) {
    if (lines.length === 0 && row > bottom + SAMPLE_ROWS) return NONE;
    const cells = source.cells(row);
    const amount = numberIn(cells[summed], comma);
    if ((numberIn(cells[count], comma) ?? 0) > 0) one += amount ?? 0;
    else if (amount !== null && amount > 0) {
      const members = membersSaid(cells, left, right);
      if (members === null) continue;
      if (one > 0) lines.push({ row, members, holds: Math.abs(amount / (one * members) - 1) <= NEAR });
      one = 0;
    }
  }
  // the habit is looked for where an edit has the columns decided anew
  const several = lines.filter(({ row, members }) => members > 1 && row <= bottom + SAMPLE_ROWS);
  const kept = several.filter(({ holds }) => holds);
  return kept.length > 0 && kept.length * 2 >= several.length ? lines : NONE;
}

const NONE: readonly ClosingLine[] = [];

function membersSaid(cells: readonly Cell[], left: number, right: number): number | null {
  for (let column = left; column <= right; column += 1) {
    const cell = cells[column];
    if (typeof cell !== "string" || !/\d/.test(cell)) continue;
    const { members } = readHeading(cleanText(cell));
    if (members !== null) return members;
  }
  return null;
}

/** Members of the bars in this row: those of the next line below. */
export function membersOfNext(lines: readonly ClosingLine[], row: number): number | null {
  let [low, high] = [0, lines.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((lines[middle] as ClosingLine).row <= row) low = middle + 1;
    else high = middle;
  }
  return lines[low]?.members ?? null;
}
