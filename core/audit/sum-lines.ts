import type { BarFacts } from "../bar/bar-facts";
import { brokenBy, perMetreOf } from "../bar/row-identities";
import type { SheetFacts } from "../bar/sheet-facts";
import type { BarRow, ColumnKind, TableReading, TotalRow } from "../schedule/bar-row";
import { cleanText } from "../schedule/cells/clean-text";
import { sizeBand } from "../schedule/cells/size-band";
import { IN_COLUMN_UNIT } from "../schedule/columns/in-column-unit";
import { KG_PER_UNIT } from "../units/unit-table";

/** A typed sum under a column, beside what the bars above it add up to. */
export interface SumLine {
  readonly line: TotalRow;
  readonly column: number;
  readonly field: SummedField;
  readonly typed: number;
  /** in the column's unit: the stretches that the line may stand for, nearest first, without bars that are taken out */
  readonly sums: readonly number[];
  /** the same with them, where some are */
  readonly sumsWithStruck: readonly number[];
  /** what the rows in sight make of a stretch that has hidden ones, and what all its rows make */
  readonly shown: readonly { readonly sum: number; readonly whole: number; readonly hidden: number }[];
  /** the bars that it may stand for, nearest first */
  readonly stretches: readonly (readonly BarFacts[])[];
  /** mm or kg in one of the column's unit */
  readonly inUnit: number;
}

export type SummedField = "total" | "mass" | "totalLength";

const FIELDS: readonly SummedField[] = ["total", "mass", "totalLength"];

/** Every sum of the sheet that can be checked: no bar of its stretch lacks the figure. */
export function sumLines(sheet: SheetFacts): readonly SumLine[] {
  let lines = known.get(sheet);
  if (lines === undefined) {
    lines = linesOf(sheet);
    known.set(sheet, lines);
  }
  return lines;
}

/** several rules ask of one sheet */
const known = new WeakMap<SheetFacts, readonly SumLine[]>();

function linesOf(sheet: SheetFacts): readonly SumLine[] {
  const lines: SumLine[] = [];
  const beside = columnsBeside(sheet);
  for (const line of sheet.reading.totals) {
    if (line.kind === "carried" || line.kind === "summary") continue;
    for (const { column, value } of line.cells) {
      const field = fieldOf(sheet, line, column) ?? (beside.has(column) ? massBeside(line) : null);
      if (field === null) continue;
      // tonnes under the number of bars: a number with decimals counts none, nor does a line that says it is of mass
      if (field.kind === "total" && (!Number.isInteger(value) || OF_MASS.test(line.label))) continue;
      const stretches = stretchesOf(sheet, line, field.tableTop).map((bars) =>
        ofItsSize(bars, line, field.table),
      );
      const ofBook = allBefore(sheet, line);
      if (ofBook.length > 0) stretches.push(ofBook);
      const add = (struck: boolean, withBlanks = false) =>
        stretches
          .map((bars) => sumOf(bars, field.kind, field.inUnit, struck, withBlanks))
          .filter((sum) => sum !== null);
      const whole = add(false);
      if (whole.length === 0) continue;
      // the sheet's own sum takes a blank for nought
      const bars = [...whole, ...add(false, true)];
      if (field.kind === "mass") bars.push(...sumsAsWorkedOut(stretches, field.inUnit));
      if (!field.table.columns.has("members")) bars.push(...sumsOfMembers(stretches, field));
      const ofLines = sumOfSumsAbove(sheet, line, field.kind);
      if (ofLines !== null) bars.push(ofLines);
      const added = additionsBefore(sheet, line, column) || unreadBefore(sheet, line, column, field.tableTop);
      const inOwn = added === 0 ? bars : [...bars, ...bars.map((sum) => sum + added)];
      const perUnit = field.kind === "mass" ? field.inUnit / saidUnit(line.label, field.inUnit) : 1;
      const sums = perUnit === 1 ? inOwn : inOwn.map((sum) => sum * perUnit);
      const someStruck = stretches.some((bars) => bars.some(({ row }) => isTakenOut(row)));
      lines.push({
        line,
        column,
        field: field.kind,
        typed: value,
        sums,
        sumsWithStruck: someStruck ? add(true) : [],
        shown: shownOf(stretches, field),
        stretches,
        inUnit: field.inUnit / perUnit,
      });
    }
  }
  return lines;
}

function shownOf(
  stretches: readonly (readonly BarFacts[])[],
  { kind, inUnit }: { readonly kind: SummedField; readonly inUnit: number },
): SumLine["shown"] {
  return stretches.flatMap((bars) => {
    const hidden = bars.filter(({ row }) => row.hidden && !row.struckThrough).length;
    if (hidden === 0) return [];
    const inSight = bars.filter(({ row }) => !row.hidden);
    const [sum, whole] = [inSight, bars].map((some) => sumOf(some, kind, inUnit, false, false));
    return sum == null || whole == null ? [] : [{ sum, whole, hidden }];
  });
}

/** Struck through, or cancelled by its own remark: a bar that its list's sums leave out. */
export function isTakenOut({ struckThrough, superseded, supersededBy }: BarRow): boolean {
  return struckThrough || (superseded === true && supersededBy == null);
}

const OF_MASS =
  /(?<!\p{L})(?:kgs?|lbs?|tons?|tonnes?|mass|weight|wt|masse|gewicht|poids|peso|masa|massa)(?!\p{L})/iu;

/** kg in one of the unit that a line says in words, such as "TOTAL kg" or "Total kg (1 kg = 2.2046 lb)" below pounds; that of the column where it says none. */
function saidUnit(label: string, ofColumn: number): number {
  const [, kg, lb] = OF_UNIT.exec(label.replace(/\([^)]*=[^)]*\)\s*$/, "")) ?? [];
  return kg !== undefined ? 1 : lb !== undefined ? KG_PER_UNIT.lb : ofColumn;
}

const OF_UNIT = /(?<!\p{L})(?:(kgs?|kilos?)|(lbs?|pounds?))\.?\s*[)\]:]?\s*$/iu;

/** True where a typed sum is one of the sums, as far as its decimals and summed rounding can tell. */
export function isOneOf(typed: number, sums: readonly number[]): boolean {
  const decimals = /\.(\d+)/.exec(String(typed))?.[1]?.length ?? 0;
  return sums.some((sum) => {
    const [half, ofSum] = [0.5000001 * 10 ** -decimals, Math.abs(sum) * 0.0005];
    return Math.abs(typed - sum) <= half + ofSum || Math.abs(typed * 1000 - sum) <= half * 1000 + ofSum;
  });
}

/** Sums of all members where each row has what one of them takes, and a heading or a line says how many there are. */
function sumsOfMembers(
  stretches: readonly (readonly BarFacts[])[],
  { kind, inUnit }: { readonly kind: SummedField; readonly inUnit: number },
): number[] {
  return stretches.flatMap((bars) => {
    if (bars.every(({ row: { members, struckThrough } }) => struckThrough || (members ?? 1) < 2)) return [];
    const sum = bars.reduce((so, { row, count }) => {
      const one = row.struckThrough ? 0 : kind === "total" ? row.each : figureOf(row, kind, count);
      return so + (one ?? Number.NaN) * (row.members ?? 1);
    }, 0);
    return Number.isFinite(sum) ? [sum / inUnit] : [];
  });
}

const MM_PER_METRE = 1000;

/** The sums with what number, length and size make where a row's own mass is another: the row is told by itself. */
function sumsAsWorkedOut(stretches: readonly (readonly BarFacts[])[], inUnit: number): number[] {
  const sums: number[] = [];
  for (const bars of stretches) {
    let [sum, another] = [0, false];
    for (const facts of bars) {
      const { mass, struckThrough } = facts.row;
      if (struckThrough) continue;
      const isOther = brokenBy(facts)?.broken.includes("mass") === true;
      another ||= isOther;
      sum += (isOther ? massMade(facts) : mass) ?? Number.NaN;
    }
    if (another && Number.isFinite(sum)) sums.push(sum / inUnit);
  }
  return sums;
}

/** kg by number, length and size; null where one of them is not known. */
export function massMade(facts: BarFacts): number | null {
  const [perMetre, length] = [perMetreOf(facts), facts.row.length];
  if (perMetre === null || length === null || facts.count === null) return null;
  return ((facts.count * length) / MM_PER_METRE) * perMetre;
}

/**
 * What the sums above make together, of this table and those beside it: a grand total right below them goes by them, and
 * which of them is wrong is told where it stands. Null where a bar stands between, which none of them holds.
 */
function sumOfSumsAbove(sheet: SheetFacts, line: TotalRow, kind: SummedField): number | null {
  const { totals } = sheet.reading;
  const above = totals.flatMap((one) => {
    if (one.row >= line.row || one.kind === "carried" || one.kind === "summary") return [];
    return one.cells.filter(({ column }) => fieldOf(sheet, one, column)?.kind === kind).slice(0, 1);
  });
  const last = Math.max(-1, ...totals.filter(({ row }) => row < line.row).map(({ row }) => row));
  if (above.length < 2 || sheet.bars.some(({ row }) => row.row > last && row.row < line.row)) return null;
  return above.reduce(withNext, { sum: 0, lines: 0 }).sum;
}

/** A line that says what those before it make together stands in their place: a net total under sub-totals. */
function withNext(
  { sum, lines }: { readonly sum: number; readonly lines: number },
  { value }: { readonly value: number },
): { readonly sum: number; readonly lines: number } {
  return { sum: lines > 1 && isOneOf(value, [sum]) ? value : sum + value, lines: lines + 1 };
}

/** What of the bars stands in the column above a line, and how much of it is one in its unit; null where no such column does. */
export function fieldOf(sheet: SheetFacts, line: TotalRow, column: number) {
  const tables = line.table === undefined ? sheet.reading.tables : [line.table];
  for (const table of tables) {
    if (table.headerBottom >= line.row) continue;
    for (const kind of FIELDS) {
      const reading = table.columns.get(kind);
      if (reading?.column !== column) continue;
      return {
        kind,
        inUnit: reading.unit === null ? 1 : IN_COLUMN_UNIT[reading.unit],
        tableTop: table.headerBottom,
        table,
      };
    }
  }
  return null;
}

const FEWEST_BESIDE = 3;
const SHARE_BESIDE = 0.6;

/** Columns of nothing of a bar, such as that of remarks, in which most lines of one number sum the masses above. */
function columnsBeside(sheet: SheetFacts): ReadonlySet<number> {
  const lines = new Map<number, TotalRow[]>();
  for (const line of sheet.reading.totals) {
    const [one, another] = line.cells;
    if (one === undefined || another !== undefined || massBeside(line) === null) continue;
    if (fieldOf(sheet, line, one.column) !== null) continue;
    const same = lines.get(one.column);
    if (same === undefined) lines.set(one.column, [line]);
    else same.push(line);
  }
  const isSum = (line: TotalRow): boolean => {
    const stretches = stretchesOf(sheet, line, massBeside(line)?.tableTop ?? 0);
    const sums = stretches.map((bars) => sumOf(bars, "mass", 1, false, false)).filter((sum) => sum !== null);
    return isOneOf(line.cells[0]?.value ?? Number.NaN, sums);
  };
  const columns = [...lines].filter(
    ([, all]) => all.length >= FEWEST_BESIDE && all.filter(isSum).length >= SHARE_BESIDE * all.length,
  );
  return new Set(columns.map(([column]) => column));
}

/** kg under a table; null of a line that is under none, or sums otherwise. */
function massBeside({ table, kind }: TotalRow) {
  if (table === undefined || kind === "carried" || kind === "summary") return null;
  return { kind: "mass" as const, inUnit: 1, tableTop: table.headerBottom, table };
}

/** "Total | 16 | 1234": a line for one size stands for the bars of that size. */
function ofItsSize(bars: readonly BarFacts[], line: TotalRow, table: TableReading): readonly BarFacts[] {
  const isIn = line.label === "" ? null : sizeBand(cleanText(line.label));
  if (isIn !== null) return bars.filter(({ row }) => isIn(row.size?.diameter ?? 0));
  const column = table.columns.get("size")?.column;
  const size = line.cells.find((cell) => cell.column === column)?.value ?? sizeInLabel(line.label, bars);
  if (size === null || column === undefined) return bars;
  const same = bars.filter(({ row }) => row.size?.diameter === size);
  return same.length > 0 && same.length < bars.length ? same : bars;
}

function sizeInLabel(label: string, bars: readonly BarFacts[]): number | null {
  const named = /(?:^|\s)([A-Z]{1,2}|\u00d8)(\d{1,2})$|(?:^|\s)(\d{1,2})\s*mm\b/iu.exec(label);
  if (named === null) return null;
  const [typed, letters = "\u00d8", ofLetters, ofUnit] = named;
  // V5 is a beam where the bars are in one of that name
  const isMember = letters !== "\u00d8" && bars.some(({ row }) => plain(row.member).endsWith(plain(typed)));
  return !isMember ? Number(ofLetters ?? ofUnit) : null;
}

const plain = (typed: string | null): string => (typed ?? "").replace(/\s/g, "").toUpperCase();

/** What lines such as "Add 3 % wastage" between the last sum and this line add, in the column's unit. */
export function additionsBefore(sheet: SheetFacts, line: TotalRow, column: number): number {
  let added = 0;
  for (let row = line.row - 1; row >= 0; row -= 1) {
    const kind = sheet.reading.rowClasses[row];
    if (kind === "bar" || kind === "heading" || kind === "total") break;
    const cell = kind === "note" ? sheet.sheet.cell(row, column) : null;
    const number = typeof cell === "string" && cell.trim() !== "" ? Number(cell.replace(/,/g, "")) : cell;
    if (typeof number === "number" && Number.isFinite(number)) added += number;
  }
  return added;
}

/** What stands in the column in rows that could not be read since the last sum: those rows are told by themselves. */
function unreadBefore(sheet: SheetFacts, line: TotalRow, column: number, top: number): number {
  const { rowClasses } = sheet.reading;
  let sum = 0;
  for (let row = line.row - 1; row > top && rowClasses[row] !== "total"; row -= 1) {
    const cell = rowClasses[row] === "unread" ? sheet.sheet.cell(row, column) : null;
    if (typeof cell === "number") sum += cell;
  }
  return sum;
}

/**
 * The bars that a line may stand for: since the last line that sums, carried or not, since the last heading or line of members, since the
 * header, and over the sheet so far; of its own table first; then with the sheets before it, where the list goes on over sheets.
 */
export function stretchesOf(
  sheet: SheetFacts,
  line: TotalRow,
  tableTop: number,
): readonly (readonly BarFacts[])[] {
  const { rowClasses, rowReasons, totals } = sheet.reading;
  const above = sheet.bars.filter(({ row }) => row.row < line.row);
  let lastTotal = tableTop;
  let lastHeading = tableTop;
  let lastOfMembers = tableTop;
  for (let row = tableTop + 1; row < line.row; row += 1) {
    if (rowClasses[row] === "total") lastTotal = row;
    if (rowClasses[row] === "heading") lastHeading = row;
    if (rowReasons[row]?.code === "sum-of-members") lastOfMembers = row;
  }
  const own = above.filter(({ row }) => row.table === line.table);
  const ownTotals = totals.filter(({ table, row }) => table === line.table && row < line.row);
  const ofTable = own.length === above.length || own.length === 0 ? [] : [own];
  const sinceOwn = Math.max(tableTop, ...ownTotals.map(({ row }) => row));
  // the bars of a group go on over the page, whatever is carried to it
  const lastSum = Math.max(
    -1,
    ...totals.filter(({ kind, row }) => kind !== "carried" && row < line.row).map(({ row }) => row),
  );
  const starts = [...new Set([lastTotal, lastHeading, lastOfMembers, tableTop, lastSum, -1])];
  return [
    ...ofTable.flatMap((bars) => [bars.filter(({ row }) => row.row > sinceOwn), bars]),
    ...starts.map((start) => barsBetween(sheet.bars, start, line.row)),
    ...withSheetsBefore(sheet, above),
  ];
}

function withSheetsBefore(sheet: SheetFacts, above: readonly BarFacts[]): readonly (readonly BarFacts[])[] {
  const { sheets } = sheet.book;
  const stretches: (readonly BarFacts[])[] = [];
  let bars = above;
  for (let place = sheets.indexOf(sheet) - 1; place >= 0; place -= 1) {
    bars = [...(sheets[place]?.bars ?? []), ...bars];
    stretches.push(bars);
  }
  return stretches;
}

/** Bars stand in order of their rows. */
function barsBetween(bars: readonly BarFacts[], start: number, end: number): readonly BarFacts[] {
  const firstAfter = (row: number): number => {
    let low = 0;
    let high = bars.length;
    while (low < high) {
      const middle = (low + high) >> 1;
      if ((bars[middle] as BarFacts).row.row <= row) low = middle + 1;
      else high = middle;
    }
    return low;
  };
  return bars.slice(firstAfter(start), firstAfter(end - 1));
}

/** In the unit; null where a bar lacks the figure, or none has it. */
export function sumOf(
  bars: readonly BarFacts[],
  field: SummedField,
  inUnit: number,
  struck: boolean,
  withBlanks: boolean,
): number | null {
  let sum = 0;
  let any = false;
  for (const { row, count } of bars) {
    if (isTakenOut(row) && !struck) continue;
    const value = figureOf(row, field, count);
    if (value === null && !withBlanks) return null;
    if (value === null) continue;
    sum += value;
    any = true;
  }
  return any ? sum / inUnit : null;
}

function figureOf(row: BarRow, field: SummedField, count: number | null): number | null {
  if (field === "mass") return row.mass;
  return field === "total" ? count : (row.totalLength ?? null);
}

/** The column's name in a message. */
export function fieldWords(field: ColumnKind): string {
  return field === "total" ? "bars" : field === "mass" ? "mass" : "length";
}

/** The bars of the sheets before this one and those above the line, which the last line of a list in several sheets sums. */
export function allBefore(sheet: SheetFacts, line: TotalRow): readonly BarFacts[] {
  const at = sheet.book.sheets.indexOf(sheet);
  const before = sheet.book.sheets.slice(0, Math.max(0, at)).flatMap(({ bars }) => bars);
  return before.length === 0 ? [] : [...before, ...sheet.bars.filter(({ row }) => row.row < line.row)];
}
