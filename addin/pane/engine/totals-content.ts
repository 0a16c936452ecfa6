import { ROWMASS } from "../../../core/formulas/rowmass";
import type { BarRow, ColumnKind, ScheduleReading, Sheet, TableReading } from "../../../core/schedule";
import { isCellError } from "../../../core/schedule";
import type { RowMass } from "../../../core/totals";
import { cellAddress, columnLetters } from "../../workbook/cell-address";
import type { SheetCell, SheetContent } from "../../workbook/workbook-port";
import { TOTALS_MARK } from "./totals-mark";

/** Column of the rows behind the totals, where they are needed: clear of any spilled result. */
const HELPER_LEFT = 25;
const HELPER_TOP = 1;
const LETTERS = ["A", "B", "C", "D", "E", "F", "G", "H", "J", "K"] as const satisfies readonly ColumnKind[];

/**
 * The Totals sheet of a schedule: one live BAR.TONNAGE over the schedule's own columns. Where those do not
 * serve as they stand (no mass column, errors in it, pours that stand in headings), rows behind the totals
 * refer to the schedule cell by cell, far to the right on the same sheet. Waste stands apart.
 */
export function totalsContent(
  sheet: Sheet,
  reading: ScheduleReading,
  masses: readonly (RowMass | null)[],
  standard: string,
): SheetContent {
  const direct = directColumns(sheet, reading, masses);
  const columns = direct ?? helperColumns(reading.bars.length);
  const { pours, sizes, mass } = columns;
  const withoutMass = `SUMPRODUCT(--(${mass}=""))`;
  const rows: SheetCell[][] = [
    [text(TOTALS_MARK, true), text(`of ${sheet.name}, in tonnes`)],
    [text("The table follows the schedule. Waste is not in it.")],
    [text("Rows without a mass, in no total"), direct === null ? formula(withoutMass) : { value: 0 }],
    [text("Waste, % (yours to fill in)"), { value: null }],
    [text("To buy with waste, t"), formula(`IF(ISNUMBER(B4),SUMIF(${mass},">0")/1000*(1+B4/100),"")`)],
    [],
    [formula(`BAR.TONNAGE(${pours},${sizes},${mass})`)],
  ];
  if (direct === null) addHelper(rows, sheet, reading, masses, standard);
  return { rows, widths: [32, 18] };
}

interface Columns {
  readonly pours: string;
  readonly sizes: string;
  readonly mass: string;
}

const text = (value: string, bold = false): SheetCell => ({ value, ...(bold && { bold }) });
const formula = (words: string): SheetCell => ({ value: null, formula: words });

/** The schedule's own columns, where they say of each row what the reading says; null where they do not. */
function directColumns(
  sheet: Sheet,
  { tables, bars, rowClasses }: ScheduleReading,
  masses: readonly (RowMass | null)[],
): Columns | null {
  const [table, more] = tables;
  const [first, last] = [bars[0], bars.at(-1)];
  if (table === undefined || more !== undefined || first === undefined || last === undefined) return null;
  const column = (kind: ColumnKind): number | null => table.columns.get(kind)?.column ?? null;
  const [pour, size, mass] = [column("pour"), column("size"), column("mass")];
  const unit = table.columns.get("mass")?.unit ?? "kg";
  if (pour === null || size === null || mass === null || unit !== "kg") return null;
  for (let row = first.row; row <= last.row; row += 1) {
    if (rowClasses[row] !== "bar" && sheet.cell(row, mass) !== null) return null;
  }
  const isPlain = bars.every(
    (bar, index) =>
      isOwnMass(bar, masses[index] ?? null) &&
      !bar.struckThrough &&
      bar.superseded !== true &&
      typeof sheet.cell(bar.row, mass) === "number" &&
      sheet.cell(bar.row, size) !== null &&
      said(sheet, bar.row, pour) === (bar.pour ?? ""),
  );
  if (!isPlain) return null;
  const range = (at: number): string =>
    `${prefix(sheet)}${cell(sheet, first.row, at)}:${cell(sheet, last.row, at)}`;
  return { pours: range(pour), sizes: range(size), mass: range(mass) };
}

/** kg: to the gram */
const GRAM = 0.0005;

/** True where the schedule's own mass is what the totals count, so that the sheet may refer to it. */
function isOwnMass({ mass }: BarRow, known: RowMass | null): boolean {
  return mass !== null && known !== null && Math.abs(mass - known.mass) <= GRAM;
}

/** True where BAR.ROWMASS over the row's cells alone, without former or use, gives what the totals count. */
function weighsAlike({ shape, size, dims }: BarRow, known: RowMass, standard: string): boolean {
  if (size === null || known.count === null) return false;
  const cells = [[[shape]], [[size.typed]], [dims], [[known.count]]];
  const mass = ROWMASS.call(cells, { defaultStandard: standard })[0]?.[0];
  return typeof mass === "number" && Math.abs(mass - known.mass) <= GRAM;
}

function said(sheet: Sheet, row: number, column: number): string {
  const value = sheet.cell(row, column);
  return value === null || isCellError(value) ? "" : String(value).trim();
}

function helperColumns(count: number): Columns {
  const range = (column: number): string => {
    const letters = columnLetters(HELPER_LEFT + column);
    return `${letters}${HELPER_TOP + 2}:${letters}${HELPER_TOP + 1 + count}`;
  };
  return { pours: range(0), sizes: range(1), mass: range(2) };
}

function addHelper(
  rows: SheetCell[][],
  sheet: Sheet,
  { bars }: ScheduleReading,
  masses: readonly (RowMass | null)[],
  standard: string,
): void {
  const put = (row: number, cells: readonly SheetCell[]): void => {
    while (rows.length <= row) rows.push([]);
    const line = rows[row] as SheetCell[];
    while (line.length < HELPER_LEFT) line.push({ value: null });
    line.push(...cells);
  };
  put(0, [text("Rows behind the totals", true)]);
  put(HELPER_TOP, [text("Pour", true), text("Size", true), text("Mass kg", true)]);
  bars.forEach((bar, index) => {
    const isDropped = bar.struckThrough || bar.superseded === true;
    const place = (kind: ColumnKind, held: string | null): SheetCell => {
      const column = bar.table.columns.get(kind)?.column;
      const isThere = column !== undefined && said(sheet, bar.row, column) !== "";
      return isThere ? formula(`${prefix(sheet)}${cell(sheet, bar.row, column)}`) : { value: held };
    };
    put(HELPER_TOP + 1 + index, [
      place("pour", bar.pour),
      place("size", bar.sizeTyped),
      isDropped ? { value: null } : massCell(sheet, bar, masses[index] ?? null, standard),
    ]);
  });
}

/** The schedule's own mass, else BAR.ROWMASS over the row's cells, else what was reckoned. */
function massCell(sheet: Sheet, bar: BarRow, known: RowMass | null, standard: string): SheetCell {
  const { columns } = bar.table;
  const at = (kind: ColumnKind): string | null => {
    const column = columns.get(kind)?.column;
    return column === undefined ? null : `${prefix(sheet)}${cell(sheet, bar.row, column)}`;
  };
  const mass = at("mass");
  if (
    mass !== null &&
    isOwnMass(bar, known) &&
    (columns.get("mass")?.unit ?? "kg") === "kg" &&
    sheet.cell(bar.row, columns.get("mass")!.column) !== null
  )
    return formula(`IFERROR(${mass},"")`);
  const dims = dimensions(sheet, bar);
  const [shape, size, count] = [at("shape"), at("size"), countOf(at)];
  const isInMillimetres = LETTERS.every((letter) => (columns.get(letter)?.unit ?? "mm") === "mm");
  const isLive = shape !== null && size !== null && count !== null && dims !== null && isInMillimetres;
  if (isLive && known?.from === "cut length" && weighsAlike(bar, known, standard))
    return formula(`IFERROR(BAR.ROWMASS(${shape},${size},${dims},${count}),"")`);
  return { value: known?.mass ?? null };
}

function countOf(at: (kind: ColumnKind) => string | null): string | null {
  const total = at("total");
  if (total !== null) return total;
  const [members, each] = [at("members"), at("each")];
  return members !== null && each !== null ? `${members}*${each}` : each;
}

/** The row's cells from A to the last letter, where the columns follow one another; null where they do not. */
function dimensions(sheet: Sheet, { table, row }: BarRow): string | null {
  const held = letterColumns(table);
  const [first] = held;
  if (first === undefined || held.some((column, index) => column !== first + index)) return null;
  return `${prefix(sheet)}${cell(sheet, row, first)}:${cell(sheet, row, first + held.length - 1)}`;
}

function letterColumns({ columns }: TableReading): number[] {
  const list: number[] = [];
  for (const letter of LETTERS) {
    const column = columns.get(letter)?.column;
    if (column === undefined) break;
    list.push(column);
  }
  return list;
}

const prefix = ({ name }: Sheet): string => `'${name.replaceAll("'", "''")}'!`;
const cell = (sheet: Sheet, row: number, column: number): string =>
  cellAddress(sheet.top + row, sheet.left + column);
