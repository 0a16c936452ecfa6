import { addressAt } from "../../core/schedule/cell-address";
import type { NewCell, NewSheet } from "../xlsx/write/new-workbook";
import type { NewCellLook } from "../xlsx/write/style-book";

/** A value, or a formula written with its equals sign. */
export type DemoValue = string | number | null;
export type DemoStyle =
  | "title"
  | "subtitle"
  | "head"
  | "sum"
  | "delivered"
  | "queried"
  | "label"
  | "small"
  | "oneDecimal"
  | "deliveredMass";

/** Looks of the demonstration workbook: a yard's own colours, so that clearing can be seen to restore them. */
const LOOKS: Readonly<Record<DemoStyle, NewCellLook>> = {
  title: { bold: true, fontSize: 13 },
  subtitle: { italic: true },
  head: { bold: true, fill: "#dfe9ea", wrap: true, horizontal: "center", bordered: true },
  sum: { bold: true, fill: "#eef1f1", numberFormat: "#,##0" },
  delivered: { fill: "#ece5d8" },
  queried: { fill: "#e7dcf5", bold: true },
  label: { bold: true },
  small: { italic: true },
  oneDecimal: { numberFormat: "0.0" },
  deliveredMass: { fill: "#ece5d8", numberFormat: "0.0" },
};

export interface DemoSheet {
  readonly name: string;
  readonly rows: readonly (readonly DemoValue[])[];
  /** characters, by column */
  readonly widths: readonly number[];
  readonly frozenRows: number;
  /** the look of a cell; null has none */
  style(row: number, column: number): DemoStyle | null;
}

/** What a formula of the demonstration comes to; lines where its result runs on downwards. */
export type DemoResult = string | number | readonly string[];
/** by sheet and cell */
export type DemoResults = Readonly<Record<string, Readonly<Record<string, DemoResult>>>>;

/**
 * A sheet of the demonstration as the file layer writes it.
 *
 * @param results by cell, what its formulas come to; without them the file holds formulas alone
 */
export function newSheet(sheet: DemoSheet, results: DemoResults[string] = {}): NewSheet {
  const { name, widths, frozenRows } = sheet;
  const rows = sheet.rows.map((values, row) =>
    values.map((value, column): NewCell => {
      const style = sheet.style(row, column);
      // a mark such as 0101 stays a text when its cell is entered again
      const look = { ...(style && LOOKS[style]), ...(isNumberAsText(value) && { numberFormat: "@" }) };
      const cell = content(value, results[addressAt(row, column)]);
      return { ...cell, ...(Object.keys(look).length > 0 && { look }) };
    }),
  );
  // a result that runs on stands below the last row
  const lines = rows.at(-1)?.[0]?.fills === undefined ? [] : (Object.values(results).find(isLines) ?? []);
  return { name, rows: [...rows, ...lines.slice(1).map((value) => [{ value }])], widths, frozenRows };
}

function isNumberAsText(value: DemoValue): boolean {
  return typeof value === "string" && value !== "" && !Number.isNaN(Number(value));
}

const isLines = (result: DemoResult): result is readonly string[] => typeof result === "object";

function content(value: DemoValue, result: DemoResult | undefined): NewCell {
  if (typeof value !== "string" || !value.startsWith("=")) return { value };
  const formula = value.slice(1);
  if (result === undefined) return { value: null, formula };
  if (isLines(result))
    return { value: result[0] ?? null, formula, fills: { rows: result.length, columns: 1 } };
  const isError = typeof result === "string" && result.startsWith("#");
  return { value: isError ? { error: result } : result, formula };
}

/** What every schedule of the yard begins with. */
export const FIRST_HEADINGS = [
  "Member",
  "Bar mark",
  "Type and size",
  "No. of members",
  "No. in each",
  "Total no.",
  "Length of each bar mm",
  "Shape code",
  "A mm",
  "B mm",
  "C mm",
] as const;
