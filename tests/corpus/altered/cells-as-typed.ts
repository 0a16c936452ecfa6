import type { ColumnKind, ColumnUnit } from "../../../core/schedule/bar-row";
import type { Cell } from "../../../core/schedule/sheet";
import type { Alter, Alteration, AlteredBook, AlteredSheet } from "./altered-books";

/** A column of a list whose rows are rows of the sheet. */
interface TypedColumn {
  readonly sheet: AlteredSheet;
  readonly column: number;
  readonly unit: ColumnUnit | null;
  readonly rows: readonly number[];
}

/** countries whose lists part decimals by a comma: common practice */
const COMMA =
  /German|Austria|Franc|Algeria|Morocco|Tunisia|Senegal|Argentina|Chile|Colombia|Spain|Uruguay|Bolivia|Ecuador|Brazil|Portugal|Ital|Poland|Netherlands|Belgium|Turk|Türk|Russia|Kazakh|Ukraine|Vietnam|Indonesia|Gree|Hungary|Romania|Czech|Slovak|Croatia|Slovenia|Serbia|Bulgaria|Sweden|Norway|Denmark|Finland/;
/** of these, those whose lists part thousands by a point */
const POINT =
  /German|Austria|Ital|Spain|Netherlands|Turk|Türk|Brazil|Denmark|Argentina|Chile|Colombia|Gree|Vietnam|Indonesia/;
const INCHES = /USA|United States/;
const LENGTHS = /^(?:length|totalLength|[A-Z])$/;
const AMOUNTS = /^(?:length|totalLength|[A-Z]|total|each|members|mass|unitMass|pieceMass)$/;
const METRIC: ReadonlySet<string> = new Set(["mm", "cm", "m"]);

const isFilled = (cell: Cell | undefined): boolean =>
  cell !== null && cell !== undefined && String(cell).trim() !== "";

function columnsOf({ book, readings }: Alteration, kinds: RegExp): readonly TypedColumn[] {
  return readings.flatMap((reading) => {
    const sheet = book.sheets.find(({ name }) => name === reading.sheet);
    const isPlain = reading.pasted !== true && reading.noHeader === null;
    if (sheet === undefined || !isPlain || reading.rowClasses.length !== sheet.rows.length) return [];
    return reading.tables.flatMap((table) => {
      const heads = sheet.rows.slice(table.headerTop, table.headerBottom + 1);
      const isOwn = (kind: ColumnKind, column: number): boolean =>
        kinds.test(kind) && heads.some((cells) => isFilled(cells[column]));
      const rows = [
        ...new Set(
          reading.bars
            .filter((bar) => bar.table.left === table.left && bar.table.headerTop === table.headerTop)
            .map(({ row }) => row),
        ),
      ];
      return [...table.columns.values()]
        .filter(({ kind, column }) => isOwn(kind, column))
        .map(({ column, unit }) => ({ sheet, column, unit, rows }));
    });
  });
}

const cellsOf = ({ sheet, column, rows }: TypedColumn): readonly Cell[] =>
  rows.map((row) => sheet.rows[row]?.[column] ?? null).filter(isFilled);

const holdsNumbers = (column: TypedColumn): boolean => {
  const cells = cellsOf(column);
  return cells.length > 1 && cells.every((cell) => typeof cell === "number");
};

/** Each cell of the columns typed otherwise; null where that changes nothing. */
function retyped(
  { book }: Alteration,
  columns: readonly TypedColumn[],
  typed: (cell: Cell, column: TypedColumn) => Cell,
): AlteredBook | null {
  let changed = 0;
  for (const column of columns)
    for (const row of column.rows) {
      const cells = column.sheet.rows[row];
      const before = cells?.[column.column] ?? null;
      const after = isFilled(before) ? typed(before, column) : before;
      if (cells === undefined || after === before) continue;
      cells[column.column] = after;
      changed += 1;
    }
  return changed > 0 ? book : null;
}

const inWords = (number: number, { book }: Alteration): string => {
  const text = String(Math.round(number * 1e6) / 1e6);
  return COMMA.test(book.country) ? text.replace(".", ",") : text;
};

/** The texts of the sheet write decimals otherwise than lists of the country do. */
function writesOtherwise({ book }: Alteration): boolean {
  const other = COMMA.test(book.country) ? /^\d+\.\d{1,2}(?!\d)/ : /^\d+,\d{1,2}(?!\d)/;
  return book.sheets.some(({ rows }) =>
    rows.some((cells) => cells.some((cell) => typeof cell === "string" && other.test(cell.trim()))),
  );
}

const numbers =
  (kinds: RegExp, typed: (number: number, given: Alteration, unit: ColumnUnit | null) => Cell): Alter =>
  (given) => {
    if (writesOtherwise(given)) return null;
    const columns = columnsOf(given, kinds).filter(holdsNumbers);
    return retyped(given, columns, (cell, { unit }) =>
      typeof cell === "number" ? typed(cell, given, unit) : cell,
    );
  };

const withUnit = (blank: string): Alter =>
  numbers(LENGTHS, (number, given, unit) =>
    METRIC.has(unit ?? "") ? `${inWords(number, given)}${blank}${unit}` : number,
  );

const SIZE = /^\s*(?:[ØøΦφ⌀∅]\s?)?(\d{1,2}(?:[.,]\d)?)(?:\s?mm|\s?[ØøΦφ⌀])?\s*$/;

const sizes =
  (typed: (digits: string) => Cell): Alter =>
  (given) => {
    if (INCHES.test(given.book.country)) return null;
    const columns = columnsOf(given, /^size$/).filter((column) =>
      cellsOf(column).every((cell) => SIZE.test(String(cell))),
    );
    return retyped(given, columns, (cell) => typed(SIZE.exec(String(cell))?.[1] ?? ""));
  };

/** Rows one below the other with the same text, of a column that is filled throughout. */
function repeats({ sheet, column, rows }: TypedColumn): readonly number[] {
  const at = (row: number): Cell => sheet.rows[row]?.[column] ?? null;
  if (!rows.every((row) => isFilled(at(row))) || rows.some((row) => sheet.struck?.includes(row + 1)))
    return [];
  return rows.filter((row, place) => rows[place - 1] === row - 1 && at(row - 1) === at(row));
}

const asAbove =
  (kinds: RegExp, marks: readonly string[]): Alter =>
  (given) => {
    const mark = given.draw.pick(marks);
    let changed = 0;
    for (const column of columnsOf(given, kinds))
      for (const row of repeats(column)) {
        (column.sheet.rows[row] as Cell[])[column.column] = mark;
        changed += 1;
      }
    return changed > 0 ? given.book : null;
  };

function thousands(number: number, given: Alteration): Cell {
  const mark = POINT.test(given.book.country) ? "." : COMMA.test(given.book.country) ? "\u00a0" : ",";
  return inWords(number, given).replace(/^\d+/, (whole) => whole.replace(/\B(?=(\d{3})+$)/g, mark));
}

const FEET = /^(\d+)'[\s-]*(\d+)(?:\s(\d+\/\d+))?"$/;

/** Some of the last bits, as sums and products of floats leave them. */
const noisy = (number: number): number => number * (1 + 3 * Number.EPSILON) * (1 + Number.EPSILON);

/** Ways in which offices type the same values. */
export const CELLS_AS_TYPED: Readonly<Record<string, Alter>> = {
  "numbers as texts": numbers(AMOUNTS, (number, given) => inWords(number, given)),
  "numbers as texts with blanks": numbers(AMOUNTS, (number, given) => `\u00a0${inWords(number, given)} `),
  "thousands parted": numbers(/^(?:length|totalLength|mass)$/, thousands),
  "last bits of formulas": numbers(/^(?:length|totalLength|[A-Z]|mass|unitMass)$/, (number) => noisy(number)),
  "a unit behind lengths": withUnit(" "),
  "a unit close behind lengths": withUnit(""),
  "a unit behind masses": numbers(/^mass$/, (number, given, unit) =>
    unit === "kg" ? `${inWords(number, given)} kg` : number,
  ),
  "a unit behind masses a metre": numbers(/^unitMass$/, (number, given) =>
    INCHES.test(given.book.country) ? number : `${inWords(number, given)} kg/m`,
  ),
  "counts with a decimal": numbers(/^(?:total|each|members)$/, (number, given) =>
    inWords(number, given).concat(COMMA.test(given.book.country) ? ",0" : ".0"),
  ),
  "Ø before sizes": sizes((digits) => `Ø${digits}`),
  "Ø apart before sizes": sizes((digits) => `Φ ${digits}`),
  "mm behind sizes": sizes((digits) => `${digits} mm`),
  "sizes as texts": sizes((digits) => digits),
  "marks of repetition for sizes": asAbove(/^size$/, ['"', '-"-', "〃", "//", "„", "do."]),
  "marks of repetition for members": asAbove(/^member$/, ['"', '-"-', "〃"]),
  "marks of repetition for lengths": asAbove(/^length$/, ['"', '-"-', "-//-"]),
  "feet with a dash": (given) => {
    const columns = columnsOf(given, /^(?:length|[A-Z])$/).filter((column) =>
      cellsOf(column).every((cell) => typeof cell === "string" && FEET.test(cell.trim())),
    );
    return retyped(given, columns, (cell) => {
      const [, feet = "", inches = "", part] = FEET.exec(String(cell).trim()) ?? [];
      return `${feet}-${inches}${part === undefined ? "" : ` ${part}`}`;
    });
  },
  "marks with noughts before": (given) => {
    const columns = columnsOf(given, /^mark$/).filter(holdsNumbers);
    return retyped(given, columns, (cell) => String(cell).padStart(3, "0"));
  },
};
