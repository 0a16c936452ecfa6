import { isCellError, type Sheet } from "../../../core/schedule/sheet";
import type { KeptCheck } from "./kept-check";

/** All that a page of a check rests on, as one text: equal for equal content. */
export function basisOf({ sheet, shop, settings, audit: { report } }: KeptCheck): string {
  const cells = [sheet, ...(shop === null ? [] : [shop])].map(cellsText);
  return JSON.stringify([report.standard.id, settings, cells]);
}

function cellsText(sheet: Sheet): unknown {
  const rows = Array.from({ length: sheet.rowCount }, (_, row) =>
    Array.from({ length: sheet.columnCount }, (_unused, column) => {
      const cell = sheet.cell(row, column);
      return isCellError(cell) ? { error: cell.error } : cell;
    }),
  );
  return [sheet.name, sheet.top, sheet.left, rows];
}
