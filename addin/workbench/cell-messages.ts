import { addressAt } from "../../core/schedule/cell-address";
import { formulaWords } from "./formula-words";
import type { Grid } from "./grid/create-grid";
import type { FlagOverlay } from "./grid/flag-overlay";
import { selectedCell, watchSelection } from "./grid/watch-selection";

type SelectedCell = NonNullable<ReturnType<typeof selectedCell>>;

/**
 * Says what a BAR formula's error means while its cell is selected: the grid's own errors carry no words. Of a
 * coloured row it says what was found, of which the colour shows the worst alone.
 */
export function watchCellMessages(grid: Grid, line: HTMLElement, overlay: FlagOverlay): void {
  const bySource = new Map<string, ReadonlyMap<string, string>>();
  const show = (): void => {
    const cell = selectedCell(grid);
    const messages = [...bySource].filter(([source]) => source.startsWith(`${cell?.book} ${cell?.sheetId} `));
    const key = cell === null ? "" : `${cell.row} ${cell.column}`;
    const said = messages.map(([, cells]) => cells.get(key)).find((message) => message !== undefined);
    // a name or a sign that is wrong makes whatever else is wrong
    const text = wordsOfText(grid) ?? said;
    const found = cell === null ? "" : foundAt(overlay, cell);
    line.textContent =
      cell === null || text === undefined ? found : `${addressAt(cell.row, cell.column)}: ${text}`;
    line.classList.toggle("found", text === undefined);
    line.title = line.textContent;
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
  overlay.onChange(show);
}

function foundAt(overlay: FlagOverlay, { sheetId, row, column }: SelectedCell): string {
  const flags = overlay
    .flags(sheetId)
    .filter(({ firstColumn, lastColumn }) => column >= firstColumn && column <= lastColumn);
  const flag = flags.find((each) => each.row === row);
  if (flag === undefined) return "";
  // where bars stand in columns the note is at the first of their cells
  const note = flag.note || flags.find((each) => each.note !== "" && each.firstColumn === column)?.note;
  const words = (note ?? "").replaceAll("\n", "; ");
  return words === "" ? "" : `Found here: ${words}`;
}

/** What the text of the selected cell's formula tells of its error. */
function wordsOfText(grid: Grid): string | undefined {
  const at = selectedCell(grid);
  const sheet = grid.api.getActiveWorkbook()?.getActiveSheet();
  if (!at || !sheet || at.row >= sheet.getMaxRows() || at.column >= sheet.getMaxColumns()) return undefined;
  const cell = sheet.getRange(at.row, at.column);
  const formula = cell.getFormula();
  const value = String(cell.getValue() ?? "");
  return formula !== "" && value.startsWith("#")
    ? (formulaWords(formula, grid.functionNames()) ?? undefined)
    : undefined;
}
