import { addressAt } from "../../core/schedule/cell-address";
import { formulaWords } from "./formula-words";
import type { Grid } from "./grid/create-grid";
import { selectedCell, watchSelection } from "./grid/watch-selection";

/** Says what a BAR formula's error means while its cell is selected: the grid's own errors carry no words. */
export function watchCellMessages(grid: Grid, line: HTMLElement): void {
  const bySource = new Map<string, ReadonlyMap<string, string>>();
  const show = (): void => {
    const cell = selectedCell(grid);
    const messages = [...bySource].filter(([source]) => source.startsWith(`${cell?.book} ${cell?.sheetId} `));
    const key = cell === null ? "" : `${cell.row} ${cell.column}`;
    const said = messages.map(([, cells]) => cells.get(key)).find((message) => message !== undefined);
    const text = said ?? wordsOfText(grid);
    line.textContent =
      cell === null || text === undefined ? "" : `${addressAt(cell.row, cell.column)}: ${text}`;
  };
  grid.onResults((results) => {
    for (const { place: source, messages } of results) {
      const key = `${source.book} ${source.sheet} ${source.row} ${source.column}`;
      if (messages.length === 0) bySource.delete(key);
      else
        bySource.set(key, new Map(messages.map(({ row, column, message }) => [`${row} ${column}`, message])));
    }
    show();
  });
  watchSelection(grid, show);
}

/** What the text of the selected cell's formula tells of its error. */
function wordsOfText(grid: Grid): string | undefined {
  const cell = grid.api.getActiveWorkbook()?.getActiveCell();
  const formula = cell?.getFormula() ?? "";
  const value = String(cell?.getValue() ?? "");
  return formula !== "" && value.startsWith("#")
    ? (formulaWords(formula, grid.functionNames()) ?? undefined)
    : undefined;
}
