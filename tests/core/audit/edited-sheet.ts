import type { Fix } from "../../../core/audit/finding";
import type { Cell, Sheet } from "../../../core/schedule/sheet";

/** The sheet as it stands once a fix is applied. */
export function editedSheet(sheet: Sheet, edits: Fix["edits"]): Sheet {
  const changed = new Map<string, Cell>(edits.map(({ cell, to }) => [cell, to]));
  const { rowCells: _held, ...rest } = sheet;
  return {
    ...rest,
    cell: (row, column) => {
      const address = addressOf(sheet.top + row, sheet.left + column);
      return changed.has(address) ? (changed.get(address) ?? null) : sheet.cell(row, column);
    },
  };
}

/** Columns up to Z are enough for an example. */
function addressOf(row: number, column: number): string {
  return `${String.fromCharCode(65 + column)}${row + 1}`;
}
