import type { Standard } from "../../standards/port";
import { isRefusal } from "../../units/refusal";
import type { SummaryBlock, TotalRow } from "../bar-row";
import { cleanText } from "../cells/clean-text";
import type { CommaUse } from "../cells/read-number-text";
import { beginsWithWord, holdsWord, plainWords } from "../cells/row-words";
import { massPerMetreOf, sizeElsewhere } from "../cells/size-elsewhere";
import { ROUND_STEEL } from "../evidence/evidence.data";
import { sizeNamed } from "../header/header-blocks";
import { recogniseHeader } from "../header/recognise-header";
import type { Cell, Sheet } from "../sheet";
import { barNamed, headsSums, sizesInRow, totalRow } from "./sum-rows";

/** What stands beside a list and sums it by size: its cells are none of the list's. */
export interface SumsBeside {
  readonly left: number;
  readonly right: number;
  readonly block: SummaryBlock;
}

/** a block beside stands near the head of its sheet */
const ROWS_LOOKED_AT = 120;
const WIDEST = 12;
const MOST_COLUMNS = 200;
const LEAST_SIZES = 3;
const LEAST_WORDS = 3;
const LONGEST_SIZE = 8;
const OF_BARS: ReadonlySet<string> = new Set(["mark", "each", "total", "shape", "members"]);

/** The blocks of sums by size that an empty column parts from the list to their left. */
export function sumsBeside(
  rowCount: number,
  cellsOf: (row: number) => readonly Cell[],
  standard: Standard,
): readonly SumsBeside[] {
  const rows = Array.from({ length: Math.min(rowCount, ROWS_LOOKED_AT) }, (_, row) => cellsOf(row));
  const stretches = filledStretches(rows);
  const first = stretches[0];
  if (first === undefined || stretches.length < 2 || !rows.some((cells) => headsList(cells, first)))
    return [];
  return stretches.slice(1).flatMap((stretch) => {
    if (headsAgain(rows, first, stretch)) return [];
    const block = blockIn(rows, stretch, standard, sizesOfList(rows, first, standard));
    return block === null ? [] : [{ ...stretch, block }];
  });
}

/** The sheet as it is without the blocks beside. */
export function withoutBeside(sheet: Sheet, beside: readonly SumsBeside[]): Sheet {
  const isBeside = (column: number) => beside.some(({ left, right }) => column >= left && column <= right);
  const { name, top, left, rowCount, columnCount, merges, follows, datesFrom1904, isTurned } = sheet;
  const rowCells = (row: number): readonly Cell[] => {
    const cells =
      sheet.rowCells?.(row) ?? Array.from({ length: columnCount }, (_, column) => sheet.cell(row, column));
    return cells.map((cell, column) => (isBeside(column) ? null : cell));
  };
  const from = Math.min(...beside.map((one) => one.left));
  const rows = Array.from({ length: Math.min(rowCount, ROWS_LOOKED_AT) }, (_, row) =>
    (sheet.rowCells?.(row) ?? []).slice(from),
  );
  return {
    beside: rows.filter((cells) => cells.some((cell) => isFilled(cell))),
    ...{ name, top, left, rowCount, columnCount, rowCells },
    ...(merges === undefined ? {} : { merges: merges.filter((one) => !isBeside(one.left)) }),
    ...(follows === undefined ? {} : { follows }),
    ...(datesFrom1904 === undefined ? {} : { datesFrom1904 }),
    ...(isTurned === undefined ? {} : { isTurned }),
    ...(sheet.elsewhere === undefined ? {} : { elsewhere: sheet.elsewhere }),
    cell: (row, column) => (isBeside(column) ? null : sheet.cell(row, column)),
    shown: (row, column) => sheet.shown?.(row, column),
    isDate: (row, column) => sheet.isDate?.(row, column) ?? false,
    isDoubted: (row, column) => sheet.isDoubted?.(row, column) ?? false,
    isHiddenRow: (row) => sheet.isHiddenRow?.(row) ?? false,
    isHiddenColumn: (column) => sheet.isHiddenColumn?.(column) ?? false,
    isStruckThrough: (row, column) => sheet.isStruckThrough?.(row, column) ?? false,
    fill: (row, column) => sheet.fill?.(row, column),
  };
}

/** What the list calls its bars by a standard that is not in force: "No. 3" under "Barra". */
function sizesOfList(
  rows: readonly (readonly Cell[])[],
  { left, right }: Stretch,
  standard: Standard,
): ReadonlySet<string> {
  const texts = new Set<string>();
  for (const cells of rows)
    for (const cell of cells.slice(left, right + 1)) {
      if (typeof cell !== "string" || cell.length > LONGEST_SIZE || !/\d/.test(cell)) continue;
      texts.add(cleanText(cell));
    }
  return new Set([...texts].filter((text) => /\p{L}/u.test(text) && isSizeOfBar(text, standard)));
}

/** a letter of the bar type before a size that the standard in force does not hold: "T18" */
const LETTERED = /^\p{L}{1,2}\s?(\d{1,2}(?:[.,]\d)?)$/u;

function isSizeOfBar(text: string, standard: Standard): boolean {
  const own = standard.readSize(text);
  const round = Number(LETTERED.exec(text)?.[1]);
  if (ROUND_STEEL.value.diameters.includes(round)) return true;
  return massPerMetreOf(isRefusal(own) ? sizeElsewhere(text) : own) !== null;
}

interface Stretch {
  readonly left: number;
  readonly right: number;
}

/** Runs of columns with something in them, an empty column between. */
function filledStretches(rows: readonly (readonly Cell[])[]): readonly Stretch[] {
  const filled: boolean[] = [];
  for (const cells of rows)
    for (let column = 0; column < Math.min(cells.length, MOST_COLUMNS); column += 1)
      if (isFilled(cells[column])) filled[column] = true;
  const stretches: Stretch[] = [];
  for (let column = 0; column < filled.length; column += 1) {
    if (filled[column] !== true) continue;
    const left = column;
    while (filled[column + 1] === true) column += 1;
    stretches.push({ left, right: column });
  }
  return stretches;
}

function headsList(cells: readonly Cell[], { left, right }: Stretch): boolean {
  const kinds = new Set<string>();
  for (let column = left; column <= right; column += 1) {
    const cell = cells[column];
    if (typeof cell === "string") kinds.add(recogniseHeader(cell)?.kind ?? "");
  }
  kinds.delete("");
  return kinds.size >= LEAST_WORDS;
}

/** The heads of the list stand over this stretch again, word for word: it is the list's other half. */
function headsAgain(rows: readonly (readonly Cell[])[], list: Stretch, stretch: Stretch): boolean {
  return rows.some((cells) => {
    if (!headsList(cells, list)) return false;
    const heads = (of: Stretch): readonly string[] =>
      cells.slice(of.left, of.right + 1).flatMap((cell) => (typeof cell === "string" ? [cell.trim()] : []));
    const own = new Set(heads(list));
    const again = heads(stretch);
    return again.length >= LEAST_WORDS && again.every((head) => own.has(head));
  });
}

/** The stretch as a block of sums by size; null where anything of a bar stands in it, or no sizes do. */
function blockIn(
  rows: readonly (readonly Cell[])[],
  { left, right }: Stretch,
  standard: Standard,
  ofList: ReadonlySet<string>,
): SummaryBlock | null {
  if (right - left + 1 > WIDEST || right === left) return null;
  const lines: TotalRow[] = [];
  const totals: TotalRow[] = [];
  const sizes = new Set<string>();
  const grades = new Set<string>();
  const ofGrades = new Set<string>();
  const comma = commaIn(rows, left, right);
  let head: number | null = null;
  let headed: number | null = null;
  let across: number | null = null;
  let labelled = 0;
  for (let row = 0; row < rows.length; row += 1) {
    const cells = rows[row] as readonly Cell[];
    const mine = columnsFilled(cells, left, right);
    if (mine.length === 0) continue;
    if (headsBars(cells, mine)) return null;
    if (head === null && headsSums(cells, mine)) {
      head = row;
      headed = mine.find((column) => kindAt(cells, column) === "size") ?? null;
    }
    if (sizesAcross(cells, mine, standard)) across ??= row;
    const label = cells[mine[0] as number] ?? null;
    const isLabelled = isLabel(label) || isLabel(cells[mine.at(-1) as number] ?? null);
    if (across !== null && row > across) labelled += isLabelled ? 1 : -1;
    const isTotal = typeof label === "string" && mine.length > 1 && saysTotal(label);
    if (isTotal && lines.length > 0)
      totals.push(totalRow(cells, row, mine, labelOf(cells, mine), "summary", comma));
    const size = isTotal
      ? null
      : sizeAmong(cells, headed === null ? mine : [headed], standard, headed !== null, ofList);
    if (size === null || mine.length < 2) continue;
    const line = totalRow(cells, row, mine, String(label), "summary", comma);
    if (!line.cells.some(({ column }) => column !== size)) continue;
    lines.push(line);
    sizes.add(String(cells[size]));
    grades.add(String(label));
    ofGrades.add(`${String(label)} ${String(cells[size])}`);
  }
  // a label in each line, where columns by size of the list itself hold numbers alone
  if (across !== null && labelled > 0) return { headerRow: across, rows: [], sizes: [], left };
  // a size of each of a few grades
  const isOfGrades = grades.size > 1 && grades.size * 2 <= lines.length && ofGrades.size === lines.length;
  if (isOfGrades && sizes.size < lines.length && head !== null && lines.length >= LEAST_SIZES)
    return { headerRow: head, rows: [...lines, ...totals], sizes: [], left };
  const isOfSizes = lines.length >= LEAST_SIZES || (head !== null && lines.length > 0);
  // of each size once, where a list of bars has sizes again
  return isOfSizes && sizes.size === lines.length
    ? { headerRow: head ?? 0, rows: [...lines, ...totals], sizes: [], left }
    : null;
}

const DECIMAL_COMMA = /^\s*\d+(?:\.\d{3})*,\d{1,2}\s*$/;

/** What a comma means in the numbers of these columns. */
export function commaIn(rows: readonly (readonly Cell[])[], left: number, right: number): CommaUse {
  const isDecimal = rows.some((cells) =>
    cells.slice(left, right + 1).some((cell) => typeof cell === "string" && DECIMAL_COMMA.test(cell)),
  );
  return isDecimal ? "decimal" : "thousands";
}

function saysTotal(label: string): boolean {
  const plain = plainWords(label);
  return beginsWithWord("total", plain) || holdsWord("total", plain);
}

/** All that stands before its number: "Total | CA-50 =". */
function labelOf(cells: readonly Cell[], columns: readonly number[]): string {
  const number = columns.findIndex((column) => !isLabel(cells[column] ?? null));
  return columns
    .slice(0, number < 0 ? undefined : number)
    .map((column) => cells[column])
    .join(" ");
}

function isLabel(cell: Cell): boolean {
  return typeof cell === "string" && /\p{L}/u.test(cell);
}

function headsBars(cells: readonly Cell[], columns: readonly number[]): boolean {
  const kinds = columns.map((column) => kindAt(cells, column));
  const ofBars = kinds.filter((kind) => OF_BARS.has(kind));
  return ofBars.length > 1 && kinds.includes("size");
}

function kindAt(cells: readonly Cell[], column: number): string {
  const cell = cells[column];
  return typeof cell === "string" ? (recogniseHeader(cell)?.kind ?? "") : "";
}

/** Sizes one beside another head sums of members, or of all. */
function sizesAcross(cells: readonly Cell[], columns: readonly number[], standard: Standard): boolean {
  const named = columns.filter((column) => isSize(cells[column] ?? null, standard, true));
  return named.length >= LEAST_SIZES || (sizesInRow(cells, columns, standard)?.length ?? 0) > 1;
}

/** The first or second cell that names a size. */
function sizeAmong(
  cells: readonly Cell[],
  columns: readonly number[],
  standard: Standard,
  isHeaded: boolean,
  ofList: ReadonlySet<string>,
): number | null {
  const at = columns.slice(0, 2).find((column) => {
    const cell = cells[column] ?? null;
    if (isSize(cell, standard, false) || (typeof cell === "string" && ofList.has(cleanText(cell))))
      return true;
    // where the head says sizes, those of another standard are some too
    return isHeaded && typeof cell === "string" && barNamed(cell, standard) !== null;
  });
  return at ?? null;
}

function isSize(cell: Cell, standard: Standard, hasWords: boolean): boolean {
  if (typeof cell === "string") return sizeNamed(cell, standard) !== null;
  if (hasWords || typeof cell !== "number") return false;
  const isMetric = !Number.isInteger(cell) && ROUND_STEEL.value.diameters.includes(cell);
  return isMetric || sizeNamed(String(cell), standard) !== null;
}

function columnsFilled(cells: readonly Cell[], left: number, right: number): number[] {
  const filled: number[] = [];
  for (let column = left; column <= Math.min(right, cells.length - 1); column += 1)
    if (isFilled(cells[column])) filled.push(column);
  return filled;
}

function isFilled(cell: Cell | undefined): boolean {
  return cell !== null && cell !== undefined && (typeof cell !== "string" || cleanText(cell) !== "");
}
