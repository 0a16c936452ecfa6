import type { BarRow, ScheduleReading, TableReading } from "../../../core/schedule/bar-row";
import { massPerMetreOf } from "../../../core/schedule/cells/size-elsewhere";
import type { Cell } from "../../../core/schedule/sheet";
import type { Alteration, AlteredSheet } from "./altered-books";
import { type WordsOfSums, wordsOfSums } from "./words-of-sums";

/** What a list holds of one size, one member or both. */
export interface Amount {
  readonly size: string;
  readonly diameter: number;
  readonly grade: string;
  readonly member: string;
  readonly bars: number;
  /** m, or ft where the list is in feet */
  readonly length: number;
  /** kg, or lb */
  readonly mass: number;
  /** kg/m, or lb/ft */
  readonly perLength: number;
}

/** A list whose bars can be summed by anybody, and where its sums may stand. */
export interface Summable {
  readonly sheet: AlteredSheet;
  readonly reading: ScheduleReading;
  readonly table: TableReading;
  readonly words: WordsOfSums;
  /** of each bar */
  readonly amounts: readonly Amount[];
  readonly lastRow: number;
  readonly firstColumn: number;
  readonly lastColumn: number;
  readonly isImperial: boolean;
  /** the list writes decimals as texts with a comma */
  readonly hasCommas: boolean;
}

const NEAR = 0.003;
const KG_PER_TONNE = 1000;
const KG_PER_LB = 0.45359237;
const MM_PER_FOOT = 304.8;
const LEAST_BARS = 3;

/** A sheet of the book with a plain list and no summary yet; null where it has none, or where its bars do not make the total. */
export function summable({ book, readings, total, draw }: Alteration): Summable | null {
  const ofAll = readings.flatMap(({ bars }) => bars.filter((bar) => bar.superseded !== true));
  const made = ofAll.reduce((so, bar) => so + massOf(bar), 0) / KG_PER_TONNE;
  if (!(Math.abs(made - total) <= NEAR * total)) return null;
  const found = readings.flatMap((reading) => {
    const sheet = book.sheets.find(({ name }) => name === reading.sheet);
    const [table] = reading.tables;
    if (sheet === undefined || table === undefined || reading.pasted === true) return [];
    if (reading.rowClasses.length !== sheet.rows.length || (reading.summaries ?? []).length > 0) return [];
    const isBeside = reading.tables.some((one) => one.headerTop === table.headerTop && one !== table);
    const last = reading.bars.at(-1);
    if (isBeside || last === undefined || reading.bars.length < LEAST_BARS) return [];
    return [{ reading, sheet, table, last }];
  });
  if (found.length === 0) return null;
  const { reading, sheet, table, last } = draw.pick(found);
  const isImperial =
    ["ft", "in"].includes(String(table.columns.get("length")?.unit ?? "")) ||
    reading.bars.some((bar) => bar.mass !== null && table.columns.get("mass")?.unit === "lb");
  const heads = [...table.columns.values()].map(({ header }) => header).join(" ");
  let lastRow = last.row;
  for (let row = last.row + 1; row <= lastRow + 2; row += 1)
    if (reading.rowClasses[row] === "total") lastRow = row;
  const columns = [...table.columns.values()].map(({ column }) => column);
  const widest = sheet.rows.reduce((so, cells) => Math.max(so, cells.length), 0);
  return {
    ...{ sheet, reading, table, isImperial, lastRow },
    words: wordsOfSums(book.country, heads),
    amounts: reading.bars.filter((bar) => bar.superseded !== true).map((bar) => amountOf(bar, isImperial)),
    firstColumn: Math.min(...columns),
    lastColumn: widest - 1,
    hasCommas: reading.bars.some(({ row }) =>
      (sheet.rows[row] ?? []).some((cell) => typeof cell === "string" && /^\d+,\d+$/.test(cell)),
    ),
  };
}

const countOf = ({ total, members, each }: BarRow): number => total ?? (members ?? 1) * (each ?? 0);
const lengthOf = (bar: BarRow): number => bar.totalLength ?? countOf(bar) * (bar.length ?? 0);

/** As the list itself says, so that its sums are those of what it shows. */
function massOf(bar: BarRow): number {
  return bar.mass ?? (lengthOf(bar) / 1000) * (massPerMetreOf(bar.size) ?? Number.NaN);
}

function amountOf(bar: BarRow, isImperial: boolean): Amount {
  const perMetre = massPerMetreOf(bar.size) ?? 0;
  return {
    size: bar.size?.bar?.size ?? String(bar.size?.diameter),
    diameter: bar.size?.diameter ?? 0,
    grade: bar.grade ?? "",
    member: bar.member ?? "",
    bars: countOf(bar),
    length: lengthOf(bar) / (isImperial ? MM_PER_FOOT : 1000),
    mass: massOf(bar) / (isImperial ? KG_PER_LB : 1),
    perLength: isImperial ? (perMetre / KG_PER_LB) * (MM_PER_FOOT / 1000) : perMetre,
  };
}

/** The amounts put together by what `by` says of each, in the order of the sizes or of the list. */
export function summed(amounts: readonly Amount[], by: (one: Amount) => string): Amount[] {
  const sums = new Map<string, Amount>();
  for (const one of amounts) {
    const so = sums.get(by(one));
    sums.set(
      by(one),
      so === undefined
        ? one
        : { ...so, bars: so.bars + one.bars, length: so.length + one.length, mass: so.mass + one.mass },
    );
  }
  return [...sums.values()];
}

export const bySize = (amounts: readonly Amount[]): Amount[] =>
  summed(amounts, ({ size }) => size).sort((one, other) => one.diameter - other.diameter);

/** A number with so many places, written as the list writes its own. */
export function written({ hasCommas }: Summable, value: number, places: number): Cell {
  const typed = Number(value.toFixed(places));
  return hasCommas && places > 0 ? typed.toFixed(places).replace(".", ",") : typed;
}

/** Puts rows below the list, `blanks` rows under its last one, and moves what stands there. */
export function putBelow(
  { sheet, lastRow }: Summable,
  book: { mistakes: readonly { sheet: string; row: number; cell: string }[] },
  rows: readonly (readonly Cell[])[],
  blanks: number,
  merges: readonly string[] = [],
): number {
  const at = lastRow + 1 + blanks;
  const rest = sheet.rows.slice(lastRow + 1);
  while (rest.length > 0 && (rest[0] as Cell[]).every((cell) => cell === null || cell === "")) rest.shift();
  const shift = at + rows.length + 1 - (sheet.rows.length - rest.length);
  const from = sheet.rows.length - rest.length;
  const moved = (row: number): number => (row >= from ? row + shift : row);
  const gap = Array.from({ length: blanks }, (): Cell[] => []);
  sheet.rows = [
    ...sheet.rows.slice(0, lastRow + 1),
    ...gap,
    ...rows.map((cells) => [...cells]),
    ...(rest.length > 0 ? [[], ...rest] : []),
  ];
  const movedName = (name: string): string =>
    name.replace(/\d+/g, (row) => String(moved(Number(row) - 1) + 1));
  sheet.merges = [
    ...(sheet.merges ?? []).map(movedName),
    ...merges.map((name) => name.replace(/\d+/g, (row) => String(at + Number(row)))),
  ];
  sheet.struck = (sheet.struck ?? []).map((row) => moved(row - 1) + 1);
  for (const mistake of book.mistakes as { sheet: string; row: number; cell: string }[]) {
    if (mistake.sheet !== sheet.name) continue;
    mistake.row = moved(mistake.row - 1) + 1;
    mistake.cell = movedName(mistake.cell);
  }
  return at;
}

/** Puts a block of cells to the right of the list, from a row on. */
export function putBeside(
  sheet: AlteredSheet,
  top: number,
  left: number,
  rows: readonly (readonly Cell[])[],
): void {
  rows.forEach((cells, index) => {
    while (sheet.rows.length <= top + index) sheet.rows.push([]);
    const own = sheet.rows[top + index] as Cell[];
    cells.forEach((cell, column) => {
      while (own.length <= left + column) own.push(null);
      own[left + column] = cell;
    });
  });
}
