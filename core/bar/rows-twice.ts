import type { BarRow } from "../schedule/bar-row";
import type { Cell } from "../schedule/sheet";
import { hashOf, repeatedIn } from "../units/hash";
import type { BarFacts } from "./bar-facts";
import { TWICE } from "./identities.data";
import { firstDifference } from "./same-bar";
import type { SheetFacts } from "./sheet-facts";
import type { SheetOfRow } from "./sheet-habits";
import { textColumns } from "./text-columns";

interface Pair {
  readonly first: BarFacts;
  readonly again: BarFacts;
}

/** A row that repeats another, and whether its mark tells or all that the row says. */
export interface RowTwice extends Pair {
  /** "ways": right below the other and numbered on, as the bars of both ways of a square are */
  readonly by: "mark" | "words" | "ways";
}

/** Rows that seem to be entered twice: few of a list, and the same in all that names them. */
export function rowsTwice(sheet: SheetFacts): readonly RowTwice[] {
  const marked = markedTwice(sheet).map((pair) => ({ ...pair, by: "mark" as const }));
  const told = new Set(marked.map(({ again }) => again));
  const found = sheet.answers.whole(rowsAlike, rowText);
  const isMany = (pairs: typeof found): boolean =>
    pairs.length > TWICE.value.mostRepeated * sheet.answers.length;
  // where bars come again anyway, as in both ways of a slab, the number of the row tells which was copied
  const alike = isMany(found)
    ? found.filter(([first, again]) => isNumberedAlike(sheet, first, again))
    : found;
  if (isMany(alike)) return marked;
  const worded = alike
    .map(([first, again]) => ({ first: sheet.answers.bar(first), again: sheet.answers.bar(again) }))
    .filter(({ first, again }) => !first.row.struckThrough && !again.row.struckThrough && !told.has(again))
    .map((pair) => ({ ...pair, by: isNumberedOn(pair) ? ("ways" as const) : ("words" as const) }));
  return [...marked, ...worded];
}

/** Rows with the mark, the bar and the number of another, where few marks come again. */
function markedTwice(sheet: SheetFacts): readonly Pair[] {
  const { mostRepeated, leastRows, leastOfAlike } = TWICE.value;
  const marked = sheet.answers.count(hasMark);
  if (marked < leastOfAlike) return [];
  const isTwice = marked < leastRows ? isSameText : isSameRow;
  const twice: Pair[] = [];
  let repeated = 0;
  for (const bars of sheet.repeatedMarks) {
    const [first, ...others] = bars;
    if (first === undefined) continue;
    repeated += others.length;
    for (const again of others) if (isTwice(first, again)) twice.push({ first, again });
  }
  // where many marks come again they are meant to: a mark of each member, a mark of each pour
  return repeated > Math.max(1, mostRepeated * marked) ? blocksTwice(twice, sheet) : twice;
}

/**
 * Of rows that come again those of a block that was pasted: at least two in a row, in the order of the first ones,
 * and right below a bar or a sum. Under a heading of its own the same bars are meant.
 */
function blocksTwice(pairs: readonly Pair[], { reading: { rowClasses } }: SheetFacts): readonly Pair[] {
  const byRow = new Map(pairs.filter(isOfOneMember).map((pair) => [pair.again.row.row, pair]));
  const firstOf = (row: number): number | undefined => byRow.get(row)?.first.row.row;
  return [...byRow].flatMap(([row, pair]) => {
    const first = pair.first.row.row;
    let top = row;
    while (firstOf(top - 1) === first - (row - top) - 1) top -= 1;
    const isOfBlock = top < row || firstOf(row + 1) === first + 1;
    const above = rowClasses[top - 1];
    return isOfBlock && (above === "bar" || above === "total") ? [pair] : [];
  });
}

const isOfOneMember = ({ first, again }: Pair): boolean => first.row.member === again.row.member;

/** What stands in a row under the columns of its table; empty where no words tell it from others. */
function rowText({ row, sheet, count }: BarFacts): string {
  if (count === null || row.length === null) return "";
  const { columns } = row.table;
  const [cells, items] = cellsOf(row, sheet);
  const isNamed = textColumns(row.table).some((column) => {
    const cell = column === columns.get("shape")?.column ? null : sheet.sheet.cell(row.row, column);
    const isMember = column === columns.get("member")?.column;
    return typeof cell === "string" && (isMember || WORDS.test(cell));
  });
  return isNamed || items.length > 0 ? JSON.stringify([row.member, cells, items]) : "";
}

/** The same whole number in the column that numbers the rows, such as "No." of a list without marks. */
function isNumberedAlike({ answers }: SheetFacts, first: number, again: number): boolean {
  const [one, other] = [numbersOf(answers.bar(first)), numbersOf(answers.bar(again))];
  return one.length > 0 && one.every((number, at) => number === other[at]);
}

/** a row's number may be typed as text */
const TYPED_NUMBER = /^\d{1,4}$/;

/** The row right below, with the next number. */
function isNumberedOn({ first, again }: Pair): boolean {
  if (again.row.row !== first.row.row + 1) return false;
  const [one, other] = [numbersOf(first), numbersOf(again)];
  return one.length === 1 && Number(other[0]) === Number(one[0]) + 1;
}

function numbersOf({ row, sheet }: BarFacts): readonly Cell[] {
  const cells = columnsOf(row).others.map((column) => sheet.sheet.cell(row.row, column));
  return cells
    .map((cell) => (typeof cell === "string" && TYPED_NUMBER.test(cell) ? Number(cell) : cell))
    .filter(Number.isInteger);
}

/** The columns that a heading is read or asked of, and those between them that only number the rows. */
function columnsOf({ table }: BarRow): {
  readonly known: readonly number[];
  readonly others: readonly number[];
} {
  const { columns, bySize = [], unknownHeaders = [], left = 0, right = -1 } = table;
  const known = new Set([...columns.values(), ...bySize, ...unknownHeaders].map(({ column }) => column));
  const all = Array.from({ length: right - left + 1 }, (_, at) => left + at);
  return { known: [...known], others: all.filter((column) => !known.has(column)) };
}

/** "C-2", and "3.03" as text */
const ITEM = /^\p{L}.*\d|\d.*\p{L}|^\d{1,3}(?:\.\d{1,3})+$/u;

/** The cells of a row under its table's columns; and the items, such as "C-2", of columns that number the rows. */
function cellsOf(
  row: BarRow,
  { sheet }: Pick<SheetOfRow, "sheet">,
): readonly [readonly Cell[], readonly string[]] {
  const { known, others } = columnsOf(row);
  const items = others.flatMap((column) => {
    const cell = sheet.cell(row.row, column);
    return typeof cell === "string" && ITEM.test(cell) ? [cell] : [];
  });
  // a member may be said once for the rows below, whose items tell which was copied
  const member =
    row.member === null || items.length === 0 ? undefined : row.table.columns.get("member")?.column;
  const cells = known.map((column) => (column === member ? null : (sheet.cell(row.row, column) ?? null)));
  return [cells, items];
}

function isSameText(first: BarFacts, again: BarFacts): boolean {
  if (!isSameRow(first, again)) return false;
  const [one, other] = [first, again].map(({ row, sheet }) => JSON.stringify(cellsOf(row, sheet)));
  return one === other;
}

const WORDS = /\p{L}{3}|[\p{Script=Han}\p{Script=Hangul}\p{Script=Kana}]{2}/u;

/** Places of rows alike, each with the first of them; only lists long enough to tell a habit. */
function rowsAlike(bars: readonly BarFacts[]): readonly (readonly [number, number])[] {
  if (bars.length < TWICE.value.leastRows) return [];
  const again = keysAgain(bars);
  const first = new Map<string, number>();
  const alike: (readonly [number, number])[] = [];
  bars.forEach((facts, place) => {
    if (!again(place)) return;
    const text = rowText(facts);
    const before = text === "" ? undefined : first.get(text);
    if (before !== undefined) alike.push([before, place]);
    else if (text !== "") first.set(text, place);
  });
  return alike;
}

/** What two rows alike share at the least, as a number: all rows of a sheet are held against each other by it. */
function numberOf({ markKey, row, count }: BarFacts): number {
  return hashOf(count, hashOf(row.length, hashOf(row.member, hashOf(markKey))));
}

/** Of each bar whether its key may come again, in eight bytes a bar: the keys themselves of a full sheet would take a hundred. */
function keysAgain(bars: readonly BarFacts[]): (place: number) => boolean {
  const hashes = new Int32Array(bars.length);
  for (let place = 0; place < bars.length; place += 1) hashes[place] = numberOf(bars[place] as BarFacts);
  const again = repeatedIn(hashes);
  return (place) => again.has(hashes[place] as number);
}

function hasMark({ markKey }: BarFacts): boolean {
  return markKey !== null;
}

function isSameRow(first: BarFacts, again: BarFacts): boolean {
  const [one, other] = [first.row, again.row];
  if (one.table !== other.table || one.revision !== other.revision || one.pour !== other.pour) return false;
  if (one.struckThrough || other.struckThrough || one.superseded === true || other.superseded === true)
    return false;
  return first.count === again.count && first.count !== null && firstDifference(one, other) === null;
}
