import { beginsWithWord, endsWithWord } from "../schedule/cells/row-words";
import type { SumsAlone } from "../schedule/rows/sums-alone";
import { KG_PER_UNIT } from "../units/unit-table";

/** A number of a table of sums that its totals do not bear out. */
export interface OffCell {
  readonly row: number;
  readonly column: number;
  readonly typed: number;
  readonly sum: number;
  /** the total of its row and that of its column are both off by as much: it is this one that is wrong */
  readonly isCrossing: boolean;
}

/** share of the sums of a line that must come out before the line is one of sums */
const SHARE = 0.6;
const FEWEST = 2;

/** What the lines and columns of totals of a table say of its numbers. */
export function offCells(table: SumsAlone): readonly OffCell[] {
  const rows = table.rows.map(({ row, label }) => ({ at: row, label }));
  const columns = table.columns.map(({ column, label }) => ({ at: column, label }));
  const values = new Map(table.rows.map((line) => [line.row, line.values]));
  const at = (row: number, column: number): number | null => values.get(row)?.get(column) ?? null;
  const down = offIn(rows, columns, at);
  const across = offIn(columns, rows, (column, row) => at(row, column));
  const cells: OffCell[] = [];
  const explained = new Set<Off>();
  for (const one of down) {
    for (const other of across) {
      const [row, column] = [other.across, one.across];
      const [inOne, inOther] = [wayIn(one, row), wayIn(other, column)];
      const typed = at(row, column);
      if (inOne === 0 || inOther === 0 || typed === null) continue;
      const [by, also] = [one.by * inOne, other.by * inOther];
      if (Math.abs(by - also) > one.slack + other.slack) continue;
      cells.push({ row, column, typed, sum: typed - by, isCrossing: true });
      explained.add(one).add(other);
    }
  }
  const others = [
    ...down.map((one) => ({ one, row: one.line, column: one.across })),
    ...across.map((one) => ({ one, row: one.across, column: one.line })),
  ].filter(({ one }) => !explained.has(one));
  for (const { one, row, column } of others)
    cells.push({ row, column, typed: one.typed, sum: one.typed + one.by, isCrossing: false });
  return cells;
}

/** A sum that does not come out. */
interface Off {
  /** the line that sums, and where along it */
  readonly line: number;
  readonly across: number;
  readonly parts: readonly number[];
  readonly typed: number;
  /** the parts less what is typed */
  readonly by: number;
  readonly slack: number;
}

/** How a number too great by one alters what the sum is off by; 0 where it has no part in it. */
function wayIn({ line, parts }: Off, at: number): number {
  if (at === line) return -1;
  return parts.includes(at) ? 1 : 0;
}

interface Line {
  readonly at: number;
  readonly label: string;
}

/** Sums in lines that sum those before them, since the last such line or all. */
function offIn(
  lines: readonly Line[],
  places: readonly Line[],
  at: (line: number, place: number) => number | null,
): readonly Off[] {
  const off: Off[] = [];
  const sums = new Set<number>();
  lines.forEach(({ at: line, label }, index) => {
    const before = lines.slice(0, index);
    const last = before.map((one) => sums.has(one.at)).lastIndexOf(true);
    const plain = before.filter((one) => !sums.has(one.at));
    const ways = [
      before.slice(last + 1),
      ...(last < 0 ? [] : [plain, before.filter((one) => sums.has(one.at))]),
    ];
    const made = ways.map((way) => places.flatMap(({ at: place }) => sumOf(line, way, place, at) ?? []));
    const right = made.map((all) => all.filter(comesOut).length);
    const best = right.indexOf(Math.max(...right));
    const [all, agreeing] = [made[best] ?? [], right[best] ?? 0];
    const isKept =
      agreeing >= FEWEST && agreeing >= SHARE * all.length && all.some(({ parts }) => parts.length > 1);
    if (!isKept && !(isSaidToSum(label) && (all.length === 1 || agreeing * 2 >= all.length))) return;
    sums.add(line);
    off.push(...all.filter((one) => !comesOut(one)));
  });
  return off;
}

const comesOut = ({ by, slack }: Off): boolean => Math.abs(by) <= slack;

/** A total with something added says so. */
function isSaidToSum(label: string): boolean {
  const isSum =
    beginsWithWord("total", label) || beginsWithWord("subtotal", label) || endsWithWord("total", label);
  return isSum && !/[\d%+]/.test(label);
}

function sumOf(
  line: number,
  way: readonly Line[],
  place: number,
  at: (line: number, place: number) => number | null,
): Off | null {
  const typed = at(line, place);
  const parts = way.filter((one) => at(one.at, place) !== null).map((one) => one.at);
  if (typed === null || parts.length === 0) return null;
  const sum = parts.reduce((so, part) => so + (at(part, place) ?? 0), 0);
  const digits = Math.max(...parts.map((part) => decimals(at(part, place) ?? 0)));
  // each part is rounded for itself, the sum once, or by the digits of either
  const slack = 0.5000001 * (parts.length * 10 ** -digits + 10 ** -decimals(typed));
  // kg in the parts, tonnes in their sum
  const isInTonnes = Math.abs(sum - typed * KG_PER_UNIT.t) <= slack * KG_PER_UNIT.t;
  return isInTonnes ? null : { line, across: place, parts, typed, by: sum - typed, slack };
}

function decimals(value: number): number {
  return String(value).split(".")[1]?.length ?? 0;
}
