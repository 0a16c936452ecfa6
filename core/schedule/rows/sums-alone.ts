import type { Standard } from "../../standards/port";
import { plainWords } from "../cells/row-words";
import { sizeNamed } from "../header/header-blocks";
import { recogniseHeader } from "../header/recognise-header";
import type { Cell, Sheet } from "../sheet";
import { filledColumns, labelOf } from "./row-cells";
import { totalRow } from "./sum-rows";
import { commaIn } from "./sums-beside";

/** A size of a sheet of sums, and what stands over or beside it: a grade, or nothing. */
export interface SizeAlone {
  readonly size: string;
  readonly grade: string;
}

/** Sums by size on a sheet that lists no bars. Places within the used range. */
export interface SumsAlone {
  /** rows of numbers, with the words that stand before them */
  readonly rows: readonly { readonly row: number; readonly label: string; readonly values: Values }[];
  /** columns of numbers, with the words over them */
  readonly columns: readonly { readonly column: number; readonly label: string }[];
  /** one of the two is empty */
  readonly sizesOfColumns: ReadonlyMap<number, SizeAlone>;
  readonly sizesOfRows: ReadonlyMap<number, SizeAlone>;
}

/** numbers by column */
type Values = ReadonlyMap<number, number>;
type Cells = readonly (readonly Cell[])[];

const MOST_ROWS = 200;
const MOST_COLUMNS = 80;
const LEAST_SIZES = 2;

/** The tables of sums of a sheet: bar sizes side by side over them, or one below another in one of their columns. */
export function sumsAlone(sheet: Sheet, standard: Standard): readonly SumsAlone[] {
  if (sheet.rowCount > MOST_ROWS || sheet.columnCount > MOST_COLUMNS) return [];
  const rows = Array.from({ length: sheet.rowCount }, (_, row) =>
    Array.from({ length: sheet.columnCount }, (_, column) => sheet.cell(row, column)),
  );
  const heads = [...rows.keys()].filter((row) => sizesIn(rows[row] as readonly Cell[], standard).size > 1);
  if (heads.length === 0) return below(rows, standard);
  return heads.map((head, at) => beside(rows, head, (heads[at - 1] ?? -1) + 1, heads[at + 1], standard));
}

/** The sizes of a row in which no number stands, by column. */
function sizesIn(cells: readonly Cell[], standard: Standard): ReadonlyMap<number, string> {
  const sizes = new Map<number, string>();
  for (const column of filledColumns(cells)) {
    const cell = cells[column];
    if (typeof cell !== "string") return new Map();
    const size = sizeNamed(cell, standard);
    if (size !== null) sizes.set(column, cell.trim());
  }
  return sizes;
}

/** A table under sizes that stand side by side, between the row after the one before it and the next one's head. */
function beside(rows: Cells, head: number, from: number, next = rows.length, standard: Standard): SumsAlone {
  const sizes = sizesIn(rows[head] as readonly Cell[], standard);
  const first = Math.min(...sizes.keys());
  const body = numbersOf(rows, head + 1, next, first);
  const over = rows.slice(from, head + 1);
  const grades = over
    .slice(0, -1)
    .filter((cells) => filledColumns(cells).some((one) => one >= first))
    .at(-1);
  const graded = new Map<number, SizeAlone>();
  for (const [column, size] of sizes) {
    // a grade stands over the first of its sizes
    const at = filledColumns(grades ?? [])
      .filter((one) => one >= first && one <= column)
      .at(-1);
    graded.set(column, { size, grade: at === undefined ? "" : labelOf(grades ?? [], [at]) });
  }
  return { rows: body, columns: columnsOf(body, over), sizesOfColumns: graded, sizesOfRows: new Map() };
}

/** Tables with a size in each line. */
function below(rows: Cells, standard: Standard): readonly SumsAlone[] {
  const at = columnOfSizes(rows, standard);
  if (at === null) return [];
  const sizes = new Map<number, SizeAlone>();
  let grade = "";
  rows.forEach((cells, row) => {
    const [own, words] = [cells[at] ?? null, cells.slice(0, at)];
    grade = labelOf(words, filledColumns(words).slice(-1)) || grade;
    const isSize = isSizeCell(own, standard) && filledColumns(cells).some((column) => column > at);
    if (isSize) sizes.set(row, { size: String(own).trim(), grade });
  });
  const first = Math.min(...sizes.keys());
  const body = numbersOf(rows, first, rows.length, at + 1);
  return [
    {
      rows: body,
      columns: columnsOf(body, rows.slice(0, first)),
      sizesOfColumns: new Map(),
      sizesOfRows: sizes,
    },
  ];
}

/** The first column in which sizes stand: in words, or as numbers under a head that says so. */
function columnOfSizes(rows: Cells, standard: Standard): number | null {
  const width = Math.min(rows[0]?.length ?? 0, MOST_BEFORE);
  for (let column = 0; column < width; column += 1) {
    const cells = rows.map((one) => one[column] ?? null);
    const isHeaded = cells.some((cell) => typeof cell === "string" && recogniseHeader(cell)?.kind === "size");
    const named = cells.filter(
      (cell) => isSizeCell(cell, standard) && (isHeaded || typeof cell === "string"),
    );
    if (
      named.length >= LEAST_SIZES &&
      cells.every((cell) => typeof cell !== "number" || named.includes(cell))
    )
      return column;
  }
  return null;
}

const MOST_BEFORE = 4;

function isSizeCell(cell: Cell, standard: Standard): boolean {
  return (typeof cell === "string" || typeof cell === "number") && sizeNamed(String(cell), standard) !== null;
}

function numbersOf(rows: Cells, from: number, to: number, left: number): SumsAlone["rows"] {
  const comma = commaIn(rows, left, MOST_COLUMNS);
  return rows.slice(from, to).flatMap((cells, at) => {
    const filled = filledColumns(cells);
    const label = labelOf(cells, filled);
    const line = totalRow(
      cells,
      from + at,
      filled.filter((one) => one >= left),
      label,
      "summary",
      comma,
    );
    const values = new Map(line.cells.map(({ column, value }) => [column, value]));
    return values.size === 0 ? [] : [{ row: line.row, label: plainWords(label), values }];
  });
}

/** The columns in which numbers stand; what is written lowest over each, and is no size of the next, names it. */
function columnsOf(body: SumsAlone["rows"], over: Cells): SumsAlone["columns"] {
  const columns = new Set(body.flatMap(({ values }) => [...values.keys()]));
  return [...columns]
    .sort((one, other) => one - other)
    .map((column) => {
      const head = over.filter((cells) => typeof cells[column] === "string").at(-1);
      return { column, label: plainWords(labelOf(head ?? [], [column])) };
    });
}
