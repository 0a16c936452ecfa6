import { cellAddress } from "../schedule/cell-address";
import { type Cell, isCellError, type Sheet } from "../schedule/sheet";
import type { LengthUnit } from "../units/length-unit";
import { parseLength } from "../units/parse-length";
import { defineRefusal, isRefusal, type Refusal } from "../units/refusal";
import type { CutRow, RefusedRow } from "./cut-row";

const noLength = defineRefusal("listed-length-unread", "value", '"{typed}" is no length: give one above 0');
const noCount = defineRefusal(
  "listed-count-unread",
  "value",
  '"{typed}" is no number of bars: give a whole number, 0 or more',
);

/** Rows of a plain list, and those whose length or count is none. */
export interface PieceList {
  readonly rows: readonly CutRow[];
  readonly refused: readonly RefusedRow[];
}

/**
 * Pieces of a plain list, whose first row names the columns length, count and perhaps size, grade and
 * mark; null where the sheet is no such list. A cell that is no length or count is told by its address.
 */
export function readPieceList(sheet: Sheet, unit: LengthUnit): PieceList | null {
  if (sheet.rowCount === 0) return null;
  const words = Array.from({ length: Math.min(sheet.columnCount, 64) }, (_, column) =>
    String(sheet.cell(0, column) ?? "")
      .trim()
      .toLowerCase(),
  );
  const [lengths, counts] = [words.indexOf("length"), words.indexOf("count")];
  if (lengths < 0 || counts < 0) return null;
  const text = (row: number, word: string): string | null => {
    const column = words.indexOf(word);
    return column < 0 ? null : readText(sheet.cell(row, column));
  };
  const rows: CutRow[] = [];
  const refused: RefusedRow[] = [];
  for (let row = 1; row < sheet.rowCount; row += 1) {
    const lengthCell = sheet.cell(row, lengths);
    const countCell = sheet.cell(row, counts);
    if (lengthCell === null && countCell === null) continue;
    const named = {
      size: text(row, "size") ?? "",
      grade: text(row, "grade"),
      mark: text(row, "mark"),
      sheet: sheet.name,
    };
    const [length, count] = [readLength(lengthCell, unit), readCount(countCell)];
    const refuse = (column: number, reason: Refusal): void => {
      refused.push({
        ...named,
        cell: cellAddress(sheet, row, column),
        length: isRefusal(length) ? null : length,
        count: isRefusal(count) ? null : count,
        longestStock: null,
        reason,
      });
    };
    if (isRefusal(length)) refuse(lengths, length);
    else if (isRefusal(count)) refuse(counts, count);
    else if (count > 0 || length <= 0)
      rows.push({ ...named, cell: cellAddress(sheet, row, lengths), length, count });
  }
  return { rows, refused };
}

function readText(cell: Cell): string | null {
  const text = cell === null || isCellError(cell) ? "" : String(cell).trim();
  return text === "" ? null : text;
}

/** mm; what is not above 0 is left for the plan to refuse. */
function readLength(cell: Cell, unit: LengthUnit): number | Refusal {
  if (typeof cell === "number" && cell <= 0) return cell;
  const length = typeof cell === "string" || typeof cell === "number" ? parseLength(cell, unit) : null;
  return length === null ? noLength({ typed: typed(cell) }) : length;
}

function readCount(cell: Cell): number | Refusal {
  const count = typeof cell === "string" && cell.trim() !== "" ? Number(cell) : cell;
  if (typeof count === "number" && Number.isInteger(count) && count >= 0) return count;
  return noCount({ typed: typed(cell) });
}

function typed(cell: Cell): string {
  if (cell === null) return "";
  return isCellError(cell) ? cell.error : String(cell);
}
