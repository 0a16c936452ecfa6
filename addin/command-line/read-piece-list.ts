import { type Cell, isCellError, type Sheet } from "../../core/schedule";
import type { LengthUnit } from "../../core/standards";
import { parseLength } from "../../core/units/parse-length";
import { isRefusal, refusalText } from "../../core/units/refusal";
import { cellAddress } from "../ooxml/cell-address";
import { InputRefused } from "./input-refused";

/** Pieces of one size and length to be cut. */
export interface ReadPiece {
  readonly size: string;
  /** empty where the list or row names none */
  readonly mark: string;
  /** mm */
  readonly length: number;
  readonly count: number;
}

/**
 * Pieces of a plain list, whose first row names the columns length, count and perhaps size and mark;
 * null where the sheet is no such list. A cell that is no length or count is refused by its address.
 */
export function readPieceList(sheet: Sheet, unit: LengthUnit): ReadPiece[] | null {
  if (sheet.rowCount === 0) return null;
  const words = Array.from({ length: Math.min(sheet.columnCount, 64) }, (_, column) =>
    String(sheet.cell(0, column) ?? "")
      .trim()
      .toLowerCase(),
  );
  const lengths = words.indexOf("length");
  const counts = words.indexOf("count");
  const sizes = words.indexOf("size");
  const marks = words.indexOf("mark");
  if (lengths < 0 || counts < 0) return null;
  const pieces: ReadPiece[] = [];
  for (let row = 1; row < sheet.rowCount; row += 1) {
    const lengthCell = sheet.cell(row, lengths);
    const countCell = sheet.cell(row, counts);
    if (lengthCell === null && countCell === null) continue;
    pieces.push({
      size: readText(sizes < 0 ? null : sheet.cell(row, sizes)),
      mark: readText(marks < 0 ? null : sheet.cell(row, marks)),
      length: readLength(lengthCell, unit, cellAddress(sheet.top + row, sheet.left + lengths)),
      count: readCount(countCell, cellAddress(sheet.top + row, sheet.left + counts)),
    });
  }
  return pieces;
}

function readText(cell: Cell): string {
  return cell === null || isCellError(cell) ? "" : String(cell).trim();
}

function readLength(cell: Cell, unit: LengthUnit, address: string): number {
  const length = typeof cell === "string" || typeof cell === "number" ? parseLength(cell, unit) : null;
  if (length === null) throw new InputRefused(`${address} holds no length: give one above 0`);
  if (isRefusal(length)) throw new InputRefused(`${address}: ${refusalText(length)}`);
  if (length <= 0) throw new InputRefused(`${address}: a length of ${cell} cannot be cut: give one above 0`);
  return length;
}

function readCount(cell: Cell, address: string): number {
  const count = typeof cell === "string" ? Number(cell) : cell;
  if (typeof count === "number" && Number.isInteger(count) && count >= 0) return count;
  throw new InputRefused(
    `${address}: "${cell === null ? "" : String(cell)}" is no number of bars: give a whole number, 0 or more`,
  );
}
