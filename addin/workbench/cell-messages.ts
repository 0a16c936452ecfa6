import { cellAddress } from "../workbook/cell-address";
import type { Grid } from "./grid/create-grid";

/** Says what a BAR formula's error means while its cell is selected: the grid's own errors carry no words. */
export function watchCellMessages(grid: Grid, line: HTMLElement): void {
  const bySource = new Map<string, ReadonlyMap<string, string>>();
  let place: { sheet: string; row: number; column: number } | null = null;
  const show = (): void => {
    const cell = place;
    const key = cell === null ? "" : `${cell.row} ${cell.column}`;
    const messages = [...bySource].filter(([source]) => source.startsWith(`${cell?.sheet} `));
    const text = messages.map(([, cells]) => cells.get(key)).find((message) => message !== undefined);
    line.textContent =
      cell === null || text === undefined ? "" : `${cellAddress(cell.row, cell.column)}: ${text}`;
  };
  grid.onResults((results) => {
    for (const { place: source, messages } of results) {
      const key = `${source.sheet} ${source.row} ${source.column}`;
      if (messages.length === 0) bySource.delete(key);
      else
        bySource.set(key, new Map(messages.map(({ row, column, message }) => [`${row} ${column}`, message])));
    }
    show();
  });
  grid.api.addEvent(grid.api.Event.SelectionChanged, () => {
    const workbook = grid.api.getActiveWorkbook();
    const cell = workbook?.getActiveCell();
    place =
      workbook && cell
        ? { sheet: workbook.getActiveSheet().getSheetId(), row: cell.getRow(), column: cell.getColumn() }
        : null;
    show();
  });
}
