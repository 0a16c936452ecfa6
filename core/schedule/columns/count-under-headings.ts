import { cleanText } from "../cells/clean-text";
import type { CommaUse } from "../cells/read-number-text";
import { isWord, plainWords } from "../cells/row-words";
import type { HeaderBlock } from "../header/header-blocks";
import { recogniseHeader } from "../header/recognise-header";
import { isHeadingText, readHeading } from "../rows/read-heading";
import type { Cell, RowElsewhere } from "../sheet";
import { numberIn } from "./column-sample";
import {
  APART,
  areTimesMembers,
  byFigures,
  bySizes,
  type Figures,
  NEAR,
  offOf,
  type Sums,
  WITHIN,
} from "./count-by-figures";

/** What is asked beside the rows of the list. */
export interface AskedOfCount {
  /** members that the title gives for the whole list */
  readonly ofList: number | null;
  /** rows of what stands beside the list and sums it */
  readonly beside: readonly (readonly Cell[])[];
  /** rows of other sheets, which may sum the list too */
  readonly elsewhere?: () => readonly RowElsewhere[];
  /** whose bars the title says that the counts are */
  readonly said: "each" | null;
  /** whose bars a count under these words counts on the sheet before */
  before(header: string): "each" | "total" | null;
  /** lists under the same header, one beside another, that the same sums may add up */
  readonly others: readonly ListBeside[];
  /** kg of a row by its size, count and length, where no column sums anything */
  kgOf(cells: readonly Cell[], count: number): number;
}

interface ListBeside {
  readonly block: HeaderBlock;
  readonly rowsOf: () => readonly (readonly Cell[])[];
}

type Whose = "each" | "total" | "open" | null;

/**
 * Whose bars a bare count counts where headings give several members and no column does: "each" where sums of the sheet
 * are so many times those of one member or its title says so, "total" where its last sum is that of the rows as they
 * stand, "open" where neither tells; null where no heading gives members, or the head of the count says whose it is and no
 * sum that it is otherwise. A column of those in each is told of only where sums show that it counts those of all.
 */
export function countUnderHeadings(
  block: HeaderBlock,
  /** whole ones: sums may stand to the right of the columns */
  rowsOf: () => readonly (readonly Cell[])[],
  comma: CommaUse,
  asked: AskedOfCount,
): Whose {
  const counts = block.columns.filter(({ kind }) => COUNTS.has(kind));
  const [counted] = counts;
  if (counted === undefined || counts.length > 1 || counted.kind === "members" || counted.corrected)
    return null;
  const summed = summedColumns(block);
  const read = withOthers(
    readHeadings(block, counted.column, summed, rowsOf(), comma, asked),
    block,
    comma,
    asked,
  );
  // taken for those of each member: only sums show that they are those of all
  if (counted.kind === "each") return read !== "each" && isOfAll(read, asked, summed, comma) ? "total" : null;
  if (read === "each") return "each";
  const { headings, below, sums } = read;
  const { ofList } = asked;
  if (headings.every(({ members }) => members < 2)) return null;
  if (ofList !== null && isTimesBelow(below, ofList, comma)) return "each";
  const [alone, ...others] = headings.filter(({ one }) => one > 0);
  if (alone !== undefined && others.every(({ members }) => members === alone.members)) {
    const lone = below.filter((cells) => cells.filter((cell) => numberIn(cell, comma) !== null).length === 1);
    if (alone.members > 1 && isTimesBelow(lone, alone.members, comma)) return "each";
  }
  if (headings.some((one) => isTimesBeside(asked.beside, one, comma))) return "each";
  if (isSumOfSubTotals(read, comma)) return "total";
  const isApart = areApart(sums);
  const bySums = isApart ? byFigures(read, sumsBelow(read, asked, summed, comma)) : null;
  const meaning = recogniseHeader(counted.header);
  const isOpen = meaning === null || meaning.weak;
  if (bySums !== null || !isOpen) return bySums === "total" && !isOpen ? null : bySums;
  // a list beside the first keeps the count as it stands until sums speak against it
  const isBeside = asked.others.some(({ block: { left } }) => left < block.left);
  const told = byOtherSheets(read, isApart, asked, comma) ?? asked.said ?? asked.before(counted.header);
  return told ?? (isBeside ? null : "open");
}

const COUNTS: ReadonlySet<string> = new Set(["total", "each", "members"]);

const areApart = ({ one, all }: Sums): boolean => one > 0 && all / one >= 1 + APART;

function isOfAll(
  read: ReadHeadings,
  asked: AskedOfCount,
  summed: readonly number[],
  comma: CommaUse,
): boolean {
  if (!areApart(read.sums)) return false;
  if (isSumOfSubTotals(read, comma)) return true;
  return byFigures(read, sumsBelow(read, asked, summed, comma)) === "total";
}

/** The last sum is that of the sub-totals as they stand, and most of these are those of their rows as they stand. */
function isSumOfSubTotals({ headings, below }: ReadHeadings, comma: CommaUse): boolean {
  const summed = headings.filter(({ subTotal }) => subTotal !== null);
  const several = summed.filter(({ members }) => members > 1);
  const plain = several.filter(({ one, subTotal }) => Math.abs((subTotal ?? 0) / one - 1) <= NEAR);
  if (plain.length < LEAST_SUB_TOTALS || plain.length * 2 <= several.length) return false;
  const sum = summed.reduce((so, { subTotal }) => so + (subTotal ?? 0), 0);
  const last = below.flatMap((cells) => cells.map((cell) => numberIn(cell, comma) ?? 0));
  return last.some((value) => Math.abs(value / sum - 1) < EXACTLY);
}

const LEAST_SUB_TOTALS = 2;

/** Sums on the book's other sheets are of this list only where several of its sizes or headings stand there. */
function byOtherSheets(read: ReadHeadings, isApart: boolean, asked: AskedOfCount, comma: CommaUse): Whose {
  const rows = (asked.elsewhere?.() ?? []).map(({ cells }) => cells);
  if (read.headings.some((one) => isTimesBeside(rows, one, comma))) return "each";
  const found = rows.flatMap((cells) => cells.flatMap((cell) => numberIn(cell, comma) ?? []));
  return isApart ? bySizes([...read.bySize.values()], found) : null;
}

interface ReadHeadings extends Figures {
  readonly headings: readonly {
    readonly members: number;
    readonly one: number;
    /** kg of one member, where its rows are summed by lengths */
    readonly kg: number;
    /** the number that stands alone in the first line under its rows */
    readonly subTotal: number | null;
  }[];
  /** rows under the last bar */
  readonly below: readonly (readonly Cell[])[];
}

/**
 * The amounts under each heading; "each" at once where a row between them is so many times what it sums, or the rows
 * themselves are so many times what their count and length make.
 */
function readHeadings(
  block: HeaderBlock,
  total: number,
  summed: readonly number[],
  rows: readonly (readonly Cell[])[],
  comma: CommaUse,
  asked: AskedOfCount,
): ReadHeadings | "each" {
  const { ofList, kgOf } = asked;
  const at = (kind: string): number => block.columns.find((one) => one.kind === kind)?.column ?? -1;
  const [piece, size] = [at("pieceMass"), at("size")];
  const isSummed = summed.length > 0;
  const amountOf = (cells: readonly Cell[], count: number): number => {
    if (isSummed) return summed.reduce((sum, column) => sum + (numberIn(cells[column], comma) ?? 0), 0);
    const ofPiece = numberIn(cells[piece], comma);
    return ofPiece === null ? kgOf(cells, count) : ofPiece * count;
  };
  const sums = { one: 0, all: 0 };
  const bySize = new Map<string, Sums>();
  const headings = [{ members: ofList ?? 1, one: 0, kg: 0, subTotal: null as number | null }];
  let below: (readonly Cell[])[] = [];
  const times: { readonly of: number; readonly members: number }[] = [];
  const ofBars = (cells: readonly Cell[], count: number): number =>
    at("mass") < 0 ? (numberIn(cells[at("length")], comma) ?? 0) * count : kgOf(cells, count);
  const add = (cells: readonly Cell[], amount: number, members: number): void => {
    const key = String(cells[size] ?? "");
    const own = bySize.get(key) ?? { one: 0, all: 0 };
    for (const sum of [sums, own]) {
      sum.one += amount;
      sum.all += amount * members;
    }
    bySize.set(key, own);
    below = [];
  };
  for (const whole of rows) {
    const cells = withoutBars(whole, asked.others);
    const alone = aloneIn(cells, asked.others.length > 0 ? block.left : 0, block.right);
    const lone = alone === null ? null : cells[alone];
    if (alone !== null && typeof lone === "string") {
      const text = cleanText(lone);
      // what groups the bars of one member, or says something of them, ends nothing
      if (!namesMember(text, alone, block)) continue;
      const { members } = readHeading(text);
      headings.push({ members: members ?? ofList ?? 1, one: 0, kg: 0, subTotal: null });
      continue;
    }
    const heading = headings[headings.length - 1] as (typeof headings)[number];
    const count = numberIn(cells[total], comma);
    const amount = amountOf(cells, count ?? 0);
    const isWhole = count !== null && count > 0;
    if (isWhole && (isSummed ? isBar(block, cells, amount / count, comma) : amount > 0)) {
      heading.one += amount;
      heading.kg += kgOf(cells, count);
      const bars = isSummed ? ofBars(cells, count) : 0;
      if (bars > 0) times.push({ of: amount / bars, members: heading.members });
      add(cells, amount, heading.members);
      continue;
    }
    // metres without a number of bars are those of all members
    if (count === null && isSummed && amount > 0 && isMarked(block, cells)) {
      add(cells, amount, 1);
      continue;
    }
    const numbers = cells.map((cell) => numberIn(cell, comma)).filter((value) => value !== null && value > 0);
    const sumsOf = (numbers as number[]).filter((value) => numbers.length < 2 || !isSizeAlone(value));
    if (heading.members > 1 && isTimes(sumsOf, heading.one, heading.members)) return "each";
    if (numbers.length === 1 && heading.one > 0) heading.subTotal ??= numbers[0] ?? null;
    if (numbers.length > 0) below.push(cells);
  }
  return areTimesMembers(times) ? "each" : { headings, sums, bySize, below };
}

/** The amounts of lists that stand side by side together: one summary adds up them all. */
function withOthers(
  own: ReadHeadings | "each",
  block: HeaderBlock,
  comma: CommaUse,
  asked: AskedOfCount,
): ReadHeadings | "each" {
  if (own === "each") return own;
  const sums = { ...own.sums };
  const bySize = new Map([...own.bySize].map(([size, of]) => [size, { ...of }]));
  for (const { block: other, rowsOf } of asked.others) {
    const counted = other.columns.find(({ kind }) => COUNTS.has(kind));
    const summed = summedColumns(other);
    if (counted === undefined || summed.length === 0) return own;
    const others = [{ block, rowsOf }];
    const read = readHeadings(other, counted.column, summed, rowsOf(), comma, { ...asked, others });
    if (read === "each") return own;
    addTo(sums, read.sums);
    for (const [size, of] of read.bySize) {
      const known = bySize.get(size);
      if (known === undefined) bySize.set(size, { ...of });
      else addTo(known, of);
    }
  }
  return { ...own, sums, bySize };
}

/** The row without the bars of the lists beside. */
function withoutBars(cells: readonly Cell[], others: readonly ListBeside[]): readonly Cell[] {
  const beside = others.filter(({ block }) => OF_BAR.every((kind) => isFilledAt(block, cells, kind)));
  if (beside.length === 0) return cells;
  const isBeside = (column: number): boolean =>
    beside.some(({ block: { left, right } }) => column >= left && column <= right);
  return cells.map((cell, column) => (isBeside(column) ? null : cell));
}

const OF_BAR = ["size", "length"] as const;

function addTo(sum: Sums, more: Readonly<Sums>): void {
  sum.one += more.one;
  sum.all += more.all;
}

/** The only column of the table in which something stands; null where none or several are filled. */
function aloneIn(cells: readonly Cell[], left: number, right: number): number | null {
  let alone: number | null = null;
  for (let column = left; column <= Math.min(right, cells.length - 1); column += 1) {
    const cell = cells[column];
    if (cell === null || cell === undefined || cell === "") continue;
    if (alone !== null) return null;
    alone = column;
  }
  return alone;
}

/** As the rows are read afterwards. */
function namesMember(text: string, column: number, { columns, left }: HeaderBlock): boolean {
  const isNamed = columns.some((one) => NAMES.has(one.kind) && one.column === column);
  return !isWord("group", plainWords(text)) && isHeadingText(text, column <= left + 1 || isNamed);
}

const NAMES: ReadonlySet<string> = new Set(["member", "mark"]);

/** The amount of one member stands in a line beside the list, and that of all of them in the same line. */
function isTimesBeside(
  beside: readonly (readonly Cell[])[],
  { members, one, kg }: ReadHeadings["headings"][number],
  comma: CommaUse,
): boolean {
  if (members < 2 || !(one > 0)) return false;
  return beside.some((cells) => {
    const numbers = cells.flatMap((cell) => numberIn(cell, comma) ?? []);
    const isThere = (expected: number): boolean =>
      numbers.some((value) => Math.abs(value / expected - 1) <= NEAR);
    return [one, kg].some((amount) => amount > 0 && isThere(amount) && isThere(amount * members));
  });
}

function isMarked(block: HeaderBlock, cells: readonly Cell[]): boolean {
  return isFilledAt(block, cells, "mark") && isFilledAt(block, cells, "size");
}

function isFilledAt({ columns }: HeaderBlock, cells: readonly Cell[], kind: string): boolean {
  const cell = cells[columns.find((one) => one.kind === kind)?.column ?? -1];
  return cell !== null && cell !== undefined && cell !== "";
}

/**
 * What stands below the last bar: each number, those of a line under the summed columns together, and each column. Lines
 * that say again what one member takes are added up by nobody.
 */
function sumsBelow(
  { below, headings }: ReadHeadings,
  { beside }: AskedOfCount,
  summed: readonly number[],
  comma: CommaUse,
): readonly number[] {
  const columns = new Map<number, number>();
  const found: number[] = [];
  const ofOne = headings.filter(({ members, one }) => members > 1 && one > 0);
  for (const cells of [...below, ...beside]) {
    let across = 0;
    const saysOne = cells.some((cell) => {
      const value = numberIn(cell, comma);
      return value !== null && ofOne.some(({ one }) => Math.abs(value / one - 1) <= NEAR);
    });
    cells.forEach((cell, column) => {
      const value = numberIn(cell, comma);
      if (value === null || value <= 0) return;
      found.push(value);
      if (!saysOne) columns.set(column, (columns.get(column) ?? 0) + value);
      if (summed.includes(column)) across += value;
    });
    found.push(across, ...columns.values());
  }
  return found;
}

/** Columns whose figures a list adds up. */
function summedColumns({ columns, bySize }: HeaderBlock): readonly number[] {
  const named =
    columns.find(({ kind }) => kind === "mass") ?? columns.find(({ kind }) => kind === "totalLength");
  return named === undefined ? bySize.map(({ column }) => column) : [named.column];
}

/** A length stands in the row, and lengths that are summed follow from it. */
function isBar({ columns }: HeaderBlock, cells: readonly Cell[], ofOne: number, comma: CommaUse): boolean {
  const at = (kind: string) => columns.find((one) => one.kind === kind)?.column ?? -1;
  const cell = cells[at("length")];
  const length = numberIn(cell, comma) ?? 0;
  const sumsLengths = at("mass") < 0;
  // feet and inches are no number, and a length all the same
  if (!sumsLengths) return length > 0 || (typeof cell === "string" && /\d/.test(cell));
  return length > 0 && (isNear(length, ofOne) || isNear(ofOne, length));
}

/** A bar size that stands beside its sums, which taken for some unit may be any number. */
function isSizeAlone(value: number): boolean {
  return Number.isInteger(value) && value <= LARGEST_SIZE;
}

const LARGEST_SIZE = 50;

/** A sum is so many times what the rows of one member make, or another sum of its line. */
function isTimes(numbers: readonly number[], one: number, members: number): boolean {
  // ten times a sum may be the same sum in another unit
  const isAmount = UNITS_APART.has(members) ? isSame : isNear;
  return numbers.some((value) =>
    [one, ...numbers].some((part) => part > 0 && isAmount(value, part * members)),
  );
}

const UNITS_APART: ReadonlySet<number> = new Set([10, 100, 1000]);

const isSame = (value: number, expected: number): boolean => Math.abs(value / expected - 1) <= WITHIN;

/** A sum below is so many times another: that of one member, and that of all. */
function isTimesBelow(rows: readonly (readonly Cell[])[], members: number, comma: CommaUse): boolean {
  const sums = rows
    .flatMap((cells) => cells.map((cell) => numberIn(cell, comma) ?? 0))
    .filter((sum) => sum > members);
  return sums.some((sum) => sums.some((one) => Math.abs(sum / (one * members) - 1) < EXACTLY));
}

const EXACTLY = 0.001;

/** As it stands, or in another unit: kg and t, cm and m. */
function isNear(value: number, expected: number): boolean {
  return offOf(value, expected) <= WITHIN;
}
