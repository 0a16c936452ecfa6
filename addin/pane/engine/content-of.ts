import { isCellError, type Sheet } from "../../../core/schedule/sheet";
import { parseAddress } from "../../workbook/cell-address";
import type { CellContent } from "./audit-view";

/** What a cell of a sheet holds, by its address. */
export function contentOf(sheet: Sheet, address: string): CellContent {
  const place = parseAddress(address);
  const content = place === null ? null : sheet.cell(place.row - sheet.top, place.column - sheet.left);
  return isCellError(content) ? content.error : content;
}
