import { isCellError, type Sheet } from "../../../core/schedule/sheet";
import type { CellContent } from "./audit-view";
import { placeIn } from "./place-in";

/** What a cell of a sheet holds, by its address. */
export function contentOf(sheet: Sheet, address: string): CellContent {
  const place = placeIn(sheet, address);
  const content = place === null ? null : sheet.cell(place.row, place.column);
  return isCellError(content) ? content.error : content;
}
