import { parseStructRef, stringifyA1Ref, stringifyTokens, tokenize } from "@borgar/fx";
import type { WorkbookTable } from "../../xlsx/read/read-tables";

/** The cell that a formula stands in. */
export interface FormulaCell {
  readonly sheet: string;
  readonly row: number;
  readonly column: number;
}

/**
 * A formula whose references to tables (`Rates[Rate]`, `[@Number]`) are written as the cells that they mean, which
 * the grid follows where it knows of no tables. One that means none stays as it is: so do the heads of a table
 * without heads, a row beside the table and a column that it lacks.
 *
 * @param cell where it stands; null for what a name stands for
 */
export function withoutTables(
  formula: string,
  tables: readonly WorkbookTable[],
  cell: FormulaCell | null,
): string {
  if (!mayNameTable(formula, tables)) return formula;
  const tokens = tokenize(formula, { withLocation: false });
  return stringifyTokens(
    tokens.map((token) => {
      if (token.type !== "structured" && token.type !== "range_named") return token;
      return { ...token, value: cellsOf(token.value, tables, cell) ?? token.value };
    }),
  );
}

function mayNameTable(formula: string, tables: readonly WorkbookTable[]): boolean {
  if (tables.length === 0) return false;
  const text = formula.toLowerCase();
  return text.includes("[") || tables.some(({ name }) => text.includes(name.toLowerCase()));
}

function cellsOf(text: string, tables: readonly WorkbookTable[], cell: FormulaCell | null): string | null {
  const {
    table: name,
    columns = [],
    sections = [],
  } = text.includes("[") ? (parseStructRef(text) ?? {}) : { table: text };
  const table = name ? tables.find((one) => same(one.name, name)) : tables.find((one) => holds(one, cell));
  if (table === undefined || (name === undefined && !text.includes("["))) return null;
  const span = columnsOf(table, columns);
  const isRow = sections.length === 1 && sections[0] === "this row";
  const rows = isRow ? rowOf(table, cell) : rowsOf(table, sections);
  if (span === null || rows === null) return null;
  return stringifyA1Ref({
    ...(table.sheet !== cell?.sheet && { context: [table.sheet] }),
    range: { ...span, ...rows, $left: true, $right: true, $top: !isRow, $bottom: !isRow },
  });
}

const same = (a: string, b: string): boolean => a.toLowerCase() === b.toLowerCase();

const holds = ({ sheet, range }: WorkbookTable, cell: FormulaCell | null): boolean =>
  cell !== null &&
  sheet === cell.sheet &&
  cell.row >= range.top &&
  cell.row <= range.bottom &&
  cell.column >= range.left &&
  cell.column <= range.right;

function columnsOf({ range, columns }: WorkbookTable, named: readonly string[]) {
  if (named.length === 0) return { left: range.left, right: range.right };
  const places = named.map((name) => columns.findIndex((one) => same(one, name)));
  if (places.includes(-1)) return null;
  return { left: range.left + Math.min(...places), right: range.left + Math.max(...places) };
}

function rowsOf({ range, heads, totals }: WorkbookTable, sections: readonly string[]) {
  const parts = {
    all: { top: range.top, bottom: range.bottom },
    headers: { top: range.top, bottom: range.top + heads - 1 },
    data: { top: range.top + heads, bottom: range.bottom - totals },
    totals: { top: range.bottom - totals + 1, bottom: range.bottom },
  };
  const asked = sections.length === 0 ? ["data"] : sections;
  const rows = asked.map((section) => parts[section as keyof typeof parts]);
  if (rows.some((part) => part === undefined || part.top > part.bottom)) return null;
  return {
    top: Math.min(...rows.map(({ top }) => top)),
    bottom: Math.max(...rows.map(({ bottom }) => bottom)),
  };
}

function rowOf(table: WorkbookTable, cell: FormulaCell | null) {
  const data = rowsOf(table, ["data"]);
  const isIn = cell !== null && data !== null && cell.row >= data.top && cell.row <= data.bottom;
  return isIn && cell.sheet === table.sheet ? { top: cell.row, bottom: cell.row } : null;
}
