import type { Sheet } from "../../../core/schedule/sheet";
import { type CellPlace, parseAddress } from "../../workbook/cell-address";

/** Where a sheet's used range has the cell of an address; null where that is no address. */
export function placeIn({ top, left, isTurned }: Sheet, address: string): CellPlace | null {
  const place = parseAddress(address);
  if (place === null) return null;
  const { row, column } = place;
  return isTurned === true
    ? { row: column - top, column: row - left }
    : { row: row - top, column: column - left };
}
