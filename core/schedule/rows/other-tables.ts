import { KG_PER_UNIT, MM_PER_UNIT } from "../../units/unit-table";
import type { RowClass, TableReading, TotalRow } from "../bar-row";
import { ROUND_STEEL } from "../evidence/evidence.data";
import type { Cell } from "../sheet";
import { filledColumns, labelOf } from "./row-cells";
import type { DraftRow } from "./row-draft";
import type { RowReasonCode } from "./row-reason";
import type { SheetSums } from "./sheet-sums";
import { totalRow } from "./sum-rows";
import { commaIn } from "./sums-beside";
import { comesOut, countOf, lengthOf, massOf, type RowsRead } from "./sums-of-sizes";

/** of mark, size, shape, count and length: so many missing or unread are a bar's slips, and more are none of a bar */
const MOST_SLIPS = 2;
/** rows before a block of them is another table: such as are proven to be sums, and such as are not */
const FEWEST_PROVEN = 2;
const FEWEST = 3;
/** share of bars that have a field before a row without it is unlike them */
const MOST_HAVE = 0.6;
/** sums of rounded figures */
const ROUNDED = 0.001;
/** a sheet holds few tables of sums, and each looked at costs a walk over its bars */
const MOST_STRETCHES = 20;
/** smaller whole numbers are sums by chance */
const LEAST_WHOLE = 20;

/**
 * Rows read as bars that are unlike the bars above them in nearly every cell, several together: no bars with five mistakes
 * each. Where their numbers are what the bars above add up to they are sums, as are rows of which nothing could be read;
 * else they are told as rows that were not read. True where there are such rows, or where another bar above might make them such.
 */
export function takeOtherTables(bars: DraftRow[], sums: SheetSums, read: RowsRead): boolean {
  let isAsked = false;
  let left = MOST_STRETCHES;
  const missing = missingOf(bars);
  for (let until = bars.length; until > 0 && left > 0; ) {
    let from = until;
    while (from > 0 && missing(bars[from - 1] as DraftRow) >= MOST_SLIPS) from -= 1;
    const run = bars.slice(from, until);
    if (run.length > 0 && from >= FEWEST) {
      left -= 1;
      const isUnlike = until === bars.length && run.every((bar) => missing(bar) > MOST_SLIPS);
      const rows = rowsOf(run, read);
      const isSum = takeSums(rows, bars.slice(0, from), sums, read);
      if (!isSum && isUnlike && run.length >= FEWEST) setRows(rows, "unread", "another-table", read);
      if (isSum || (isUnlike && run.length >= FEWEST)) bars.splice(from, run.length);
      isAsked ||= isSum || rows.length >= FEWEST_PROVEN;
    }
    until = from === until ? until - 1 : from;
  }
  return takeUnread(bars, sums, read) || isAsked;
}

/** Stretches of rows below the bars of which nothing could be read, and whose numbers are sums. */
function takeUnread(bars: readonly DraftRow[], sums: SheetSums, read: RowsRead): boolean {
  let isAsked = false;
  let left = MOST_STRETCHES;
  for (
    let row = bars[FEWEST - 1]?.row ?? read.classes.length;
    row < read.classes.length && left > 0;
    row += 1
  ) {
    const rows: number[] = [];
    for (; read.classes[row] === "unread"; row += 1) rows.push(row);
    const [first] = rows;
    if (first === undefined) continue;
    left -= 1;
    const above = bars.filter((bar) => bar.row < first);
    isAsked = takeSums(rows, above, sums, read) || rows.length >= FEWEST_PROVEN || isAsked;
  }
  return isAsked;
}

function takeSums(
  rows: readonly number[],
  above: readonly DraftRow[],
  sums: SheetSums,
  read: RowsRead,
): boolean {
  if (!areSums(rows, above, read)) return false;
  setRows(rows, "total", "sums-of-list", read);
  sums.takeLines(rows.map((row) => lineAt(row, read)));
  return true;
}

function setRows(
  rows: readonly number[],
  rowClass: RowClass,
  code: RowReasonCode,
  { classes, reasons }: RowsRead,
): void {
  for (const row of rows) {
    classes[row] = rowClass;
    reasons[row] = { code };
  }
}

function lineAt(row: number, { cells }: RowsRead): TotalRow {
  const own = cells(row);
  const filled = filledColumns(own);
  return totalRow(own, row, filled, labelOf(own, filled), "summary", commaIn([own], 0, own.length));
}

/** The rows of the run, and those that could not be read right above, below or among them. */
function rowsOf(run: readonly DraftRow[], { classes }: RowsRead): number[] {
  const isOpen = (row: number): boolean => classes[row] === "unread";
  let [top, bottom] = [run[0]?.row ?? 0, run.at(-1)?.row ?? -1];
  while (isOpen(top - 1)) top -= 1;
  while (isOpen(bottom + 1)) bottom += 1;
  const own = new Set(run.map(({ row }) => row));
  const rows: number[] = [];
  for (let row = top; row <= bottom; row += 1) if (own.has(row) || isOpen(row)) rows.push(row);
  return rows;
}

const FIELDS: readonly { has(bar: DraftRow): boolean }[] = [
  { has: ({ mark }) => mark !== null },
  {
    has: ({ size }) =>
      size !== null &&
      (size.bar !== null ||
        size.massPerMetre !== undefined ||
        ROUND_STEEL.value.diameters.includes(size.diameter)),
  },
  { has: ({ shape }) => shape !== null },
  { has: (bar) => countOf(bar) > 0 },
  { has: ({ length }) => length !== null },
];

/** How many of the fields that most bars of its table have are missing in a bar, or could not be read. */
function missingOf(bars: readonly DraftRow[]): (bar: DraftRow) => number {
  const tables = new Map<TableReading, { of: number; readonly having: number[] }>();
  for (const bar of bars) {
    const counts = tables.get(bar.table) ?? { of: 0, having: FIELDS.map(() => 0) };
    tables.set(bar.table, counts);
    counts.of += 1;
    FIELDS.forEach(({ has }, at) => {
      if (has(bar)) counts.having[at] = (counts.having[at] ?? 0) + 1;
    });
  }
  return (bar) => {
    // with size, count and length it is a bar, whatever else it lacks
    if (bar.size !== null && countOf(bar) > 0 && bar.length !== null) return 0;
    const { of, having } = tables.get(bar.table) as { of: number; having: number[] };
    return FIELDS.filter(({ has }, at) => !has(bar) && (having[at] ?? 0) >= MOST_HAVE * of).length;
  };
}

/** In all rows but one the numbers are what the bars above add up to; sizes, masses per metre and words prove nothing. */
function areSums(rows: readonly number[], above: readonly DraftRow[], { cells, reasons }: RowsRead): boolean {
  const made = sumsOf(above);
  let [proven, open] = [0, 0];
  for (const row of rows) {
    const numbers = numbersIn(cells(row)).filter((value) => !isNominal(value));
    if (numbers.length === 0) continue;
    const right = numbers.filter((value) => made.some((sum) => comesOut(value, sum, ROUNDED)));
    if (right.length > 0 && right.length * 2 > numbers.length) proven += 1;
    else open += 1;
  }
  // a line of sums beside them is one of theirs
  const beside = [(rows[0] ?? 0) - 1, (rows.at(-1) ?? -2) + 1];
  const isBeside = beside.some((row) => OF_SUMS.has(reasons[row]?.code ?? "header"));
  return proven >= FEWEST_PROVEN - Number(isBeside) && open <= (proven > 1 ? 1 : 0);
}

const OF_SUMS: ReadonlySet<RowReasonCode> = new Set(["sum-by-size", "summary-line", "sums-of-list"]);

function numbersIn(cells: readonly Cell[]): number[] {
  const comma = commaIn([cells], 0, cells.length);
  return totalRow(cells, 0, filledColumns(cells), "", "summary", comma).cells.map(({ value }) => value);
}

const isNominal = (value: number): boolean =>
  ROUND_STEEL.value.diameters.includes(value) || (Number.isInteger(value) && value < LEAST_WHOLE);

/** Mass, length and number of the bars of each size, of each member, and of all. */
function sumsOf(bars: readonly DraftRow[]): number[] {
  const sums = new Map<string, number>();
  const add = (key: string, value: number): void => {
    if (value > 0) sums.set(key, (sums.get(key) ?? 0) + value);
  };
  for (const bar of bars) {
    if (bar.superseded === true) continue;
    const [mass, length, count] = [massOf(bar), lengthOf(bar), countOf(bar)];
    const member = bar.member ?? "";
    for (const of of ["", `s${bar.size?.diameter}`, `m${member}`, `b${member} ${bar.size?.diameter}`]) {
      add(`kg ${of}`, mass);
      add(`t ${of}`, mass / KG_PER_UNIT.t);
      add(`lb ${of}`, mass / KG_PER_UNIT.lb);
      add(`m ${of}`, length / MM_PER_UNIT.m);
      add(`ft ${of}`, length / MM_PER_UNIT.ft);
      add(`n ${of}`, count);
    }
  }
  return [...sums.values()];
}
