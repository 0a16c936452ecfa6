import { cleanText } from "../schedule/cells/clean-text";
import type { ColumnKind } from "../schedule/column-kind";
import type { BarFacts } from "./bar-facts";

/** 1'-6", 6", 0-08: no metric length is written so */
const FEET_INCHES = /\d\s*(?:'|"|ft\b|in\b)|^\d+\s*-\s*(?:0?\d|1[01])(?!\d)/;

/** True where the row gives a length of this kind in feet or inches, by its column or in its own cell. */
export function isInFeetInches({ row, sheet }: BarFacts, kind: ColumnKind): boolean {
  const column = row.table.columns.get(kind);
  if (column === undefined) return false;
  if (column.unit === "ft" || column.unit === "in") return true;
  const cell = sheet.sheet.cell(row.row, column.column);
  return typeof cell === "string" && FEET_INCHES.test(cleanText(cell));
}
