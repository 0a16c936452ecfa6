import type { BarFacts } from "../bar/bar-facts";
import type { SheetFacts } from "../bar/sheet-facts";
import type { RowClass } from "../schedule/bar-row";
import { cleanText } from "../schedule/cells/clean-text";
import { readNumberText } from "../schedule/cells/read-number-text";
import { commaIn } from "../schedule/rows/sums-beside";
import type { Cell } from "../schedule/sheet";
import { DIMENSION_LETTERS } from "../standards/dimension-letters";
import { KG_PER_UNIT, MM_PER_UNIT } from "../units/unit-table";
import { isOneOf, massMade, type SummedField } from "./sum-lines";
import type { WrongSum } from "./wrong-sum";

/** A number in a row or a column of no bar, where most such numbers sum a group of bars each. */
export interface LooseSum extends WrongSum {
  readonly field: SummedField;
  /** of so many such numbers so many come out */
  readonly right: number;
  readonly of: number;
}

/** numbers of a column before they can show what they sum, how many must come out, and what share of all */
const FEWEST = 3;
const FEWEST_RIGHT = 2;
const SHARE = 0.6;
/** share of the bars beyond which a column of numbers is one of theirs */
const BESIDE_BARS = 0.5;
/** numbers of bars as small as this come out by chance */
const LEAST_COUNT = 10;
/** sums of rounded figures; masses by tables that differ */
const ROUNDED = 0.0005;
const OTHER_TABLE = 0.012;
const MOST_BARS = 20_000;
const MOST_COLUMNS = 100;

const known = new WeakMap<SheetFacts, readonly LooseSum[]>();

/** Numbers that are not what the bars above or below them add up to, as the others of their column are. */
export function looseSums(sheet: SheetFacts): readonly LooseSum[] {
  let found = known.get(sheet);
  if (found === undefined) {
    const { length } = sheet.bars;
    found = length < FEWEST || length > MOST_BARS ? [] : oddOnes(sheet);
    known.set(sheet, found);
  }
  return found;
}

function oddOnes(sheet: SheetFacts): readonly LooseSum[] {
  const columns = [...looseNumbers(sheet)];
  if (columns.length === 0) return [];
  const bars = sheet.bars.filter(({ row }) => !row.struckThrough && row.superseded !== true);
  const figures = figuresOf(sheet).map((figure) => new Sums(bars, figure));
  const { rowClasses } = sheet.reading;
  const headings = rowClasses.flatMap((kind, row) => (kind === "heading" ? [row] : []));
  return columns.flatMap(([column, all]) => {
    const found = bestOf(all, figures, groupings(all, headings, rowClasses.length));
    return found === null ? [] : oddOf(column, all, found);
  });
}

interface Loose {
  readonly row: number;
  readonly isBar: boolean;
  readonly value: number;
}

/** By column: in rows that are no bars, or beside bars in a column that is blank beside most of them and is no leg's. */
function looseNumbers({ sheet, reading, bars }: SheetFacts): ReadonlyMap<number, readonly Loose[]> {
  const { tables, rowClasses, rowReasons } = reading;
  const top = Math.min(...tables.map(({ headerBottom }) => headerBottom));
  const found = new Map<number, Loose[]>();
  const legs = new Set(
    tables.flatMap(({ columns }) => DIMENSION_LETTERS.flatMap((letter) => columns.get(letter)?.column ?? [])),
  );
  const besideBars = new Map<number, number>();
  for (let row = top + 1; row < rowClasses.length; row += 1) {
    const kind = rowClasses[row] as RowClass;
    const isBar = kind === "bar";
    if (!isBar && (!LOOSE.has(kind) || rowReasons[row]?.code === "header")) continue;
    for (let column = 0; column < Math.min(sheet.columnCount, MOST_COLUMNS); column += 1) {
      const beside = besideBars.get(column) ?? 0;
      if (isBar && (beside > BESIDE_BARS * bars.length || legs.has(column))) continue;
      const value = numberOf(sheet.cell(row, column));
      if (value === null || value <= 0) continue;
      if (isBar) besideBars.set(column, beside + 1);
      const all = found.get(column);
      if (all === undefined) found.set(column, [{ row, value, isBar }]);
      else all.push({ row, value, isBar });
    }
  }
  for (const [column, all] of found) {
    const isOfBars = (besideBars.get(column) ?? 0) > BESIDE_BARS * bars.length;
    const loose = isOfBars ? all.filter(({ isBar }) => !isBar) : all;
    if (loose.length < FEWEST) found.delete(column);
    else found.set(column, loose);
  }
  return found;
}

const LOOSE: ReadonlySet<RowClass> = new Set(["note", "heading", "unread"]);
const LONGEST = 24;
const WRITTEN = /^\d[\d.,\s]*$/;

function numberOf(cell: Cell): number | null {
  if (typeof cell === "number") return Number.isFinite(cell) ? cell : null;
  if (typeof cell !== "string" || cell.length > LONGEST || !WRITTEN.test(cell.trim())) return null;
  const value = readNumberText(cleanText(cell), commaIn([[cell]], 0, 0));
  return typeof value === "number" ? value : null;
}

/** The first and the last row of the group that a number stands for. */
type Grouping = (row: number) => readonly [first: number, last: number];

/** The rows since the number before, or up to the next one; the same no further than the next heading. */
function groupings(
  all: readonly Loose[],
  headings: readonly number[],
  rowCount: number,
): readonly Grouping[] {
  const rows = all.map(({ row }) => row);
  const marks = [...rows, ...headings].sort((one, other) => one - other);
  return [rows, marks].flatMap((ends): Grouping[] => [
    (row) => [(ends[firstAtLeast(ends, row) - 1] ?? -1) + 1, row],
    (row) => [row, (ends[firstAtLeast(ends, row + 1)] ?? rowCount) - 1],
  ]);
}

/** The place of the first of some rising numbers that is so great. */
function firstAtLeast(rising: readonly number[], least: number): number {
  let [low, high] = [0, rising.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((rising[middle] as number) < least) low = middle + 1;
    else high = middle;
  }
  return low;
}

interface Figure {
  readonly field: SummedField;
  /** mm, kg or bars in one of the number's unit */
  readonly per: number;
  /** as a share of the sum: what is right all the same */
  readonly within: number;
  of(facts: BarFacts): number | null;
}

function figuresOf(sheet: SheetFacts): readonly Figure[] {
  const { t, lb } = KG_PER_UNIT;
  const isTyped = sheet.has("mass");
  const mass = {
    field: "mass" as const,
    within: isTyped ? ROUNDED : OTHER_TABLE,
    of: isTyped ? ({ row }: BarFacts) => row.mass : massMade,
  };
  const of = ({ row, count }: BarFacts): number | null =>
    row.totalLength ?? (row.length === null || count === null ? null : row.length * count);
  return [
    ...[1, t, lb].map((per) => ({ ...mass, per })),
    ...[MM_PER_UNIT.m, MM_PER_UNIT.ft].map((per) => ({
      ...{ field: "totalLength" as const, within: ROUNDED, of },
      per,
    })),
    { field: "total", per: 1, within: 0, of: ({ count }) => count },
  ];
}

/** Sums of one figure over the bars of any stretch of rows. */
class Sums {
  private readonly upTo: number[] = [0];
  private readonly open: number[] = [0];
  private readonly rows: readonly number[];

  constructor(
    readonly bars: readonly BarFacts[],
    readonly figure: Figure,
  ) {
    this.rows = bars.map(({ row }) => row.row);
    let [sum, open] = [0, 0];
    for (const facts of bars) {
      const value = figure.of(facts);
      sum += value ?? 0;
      open += value === null ? 1 : 0;
      this.upTo.push(sum);
      this.open.push(open);
    }
  }

  /** The bars of these rows, and what they make in the unit; null where one of them lacks the figure. */
  of([first, last]: readonly [number, number]): { bars: readonly [number, number]; sum: number | null } {
    const [from, to] = [firstAtLeast(this.rows, first), firstAtLeast(this.rows, last + 1)];
    const isOpen = from >= to || this.open[from] !== this.open[to];
    const sum = ((this.upTo[to] ?? 0) - (this.upTo[from] ?? 0)) / this.figure.per;
    return { bars: [from, to], sum: isOpen ? null : sum };
  }

  comesOut({ value }: Loose, rows: readonly [number, number]): boolean {
    const { sum } = this.of(rows);
    const half = 0.5000001 * 10 ** -(/\.(\d+)/.exec(String(value))?.[1]?.length ?? 0);
    return sum !== null && Math.abs(value - sum) <= half + this.figure.within * sum;
  }
}

interface Found {
  readonly right: ReadonlySet<Loose>;
  readonly sums: Sums;
  readonly grouping: Grouping;
}

/** What the numbers of a column sum, and of which bars: that by which most of them come out. */
function bestOf(all: readonly Loose[], figures: readonly Sums[], ways: readonly Grouping[]): Found | null {
  let best: Found | null = null;
  for (const grouping of ways) {
    for (const sums of figures) {
      const right = all.filter((one) => sums.comesOut(one, grouping(one.row)));
      if (right.length < SHARE * all.length || right.length <= (best?.right.size ?? 0)) continue;
      const least = sums.figure.field === "total" ? LEAST_COUNT : 0;
      const telling = right.filter(({ row, value }) => {
        const [from, to] = sums.of(grouping(row)).bars;
        return to - from > 1 && value >= least;
      });
      if (telling.length >= FEWEST_RIGHT) best = { right: new Set(right), sums, grouping };
    }
  }
  return best;
}

function oddOf(column: number, all: readonly Loose[], { right, sums, grouping }: Found): LooseSum[] {
  const { field, per } = sums.figure;
  let before = 0;
  return all.flatMap((one) => {
    const { row, value } = one;
    const group = sums.of(grouping(row));
    // or all so far
    const others = [before, sums.of([0, row]).sum ?? 0, sums.of([0, Number.MAX_SAFE_INTEGER]).sum ?? 0];
    before += value;
    if (right.has(one) || group.sum === null || isOneOf(value, others)) return [];
    const bars = sums.bars.slice(...group.bars);
    const way = { bars, figure: field, per, within: ROUNDED, isOfSize: false, takes: () => true };
    const of = { right: right.size, of: all.length };
    return [{ row, column, typed: value, sums: [group.sum], ways: [way], field, ...of }];
  });
}
