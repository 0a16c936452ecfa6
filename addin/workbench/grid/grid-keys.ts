import { type IRange, RANGE_TYPE } from "@univerjs/core";
import { IEditorBridgeService } from "@univerjs/preset-sheets-core";
import { bringIntoView } from "./bring-into-view";
import type { Grid } from "./create-grid";
import { selectedCell } from "./watch-selection";

type OpenSheet = ReturnType<NonNullable<ReturnType<Grid["api"]["getActiveWorkbook"]>>["getActiveSheet"]>;

interface Place {
  readonly row: number;
  readonly column: number;
}

/** Where a key goes from a cell. */
type Step = (sheet: OpenSheet, from: Place) => Place;

const STEPS: Readonly<Record<string, Step>> = {
  "Ctrl+Home": (sheet) => {
    const { ySplit, xSplit } = sheet.getFreeze();
    return { row: Math.max(0, ySplit), column: Math.max(0, xSplit) };
  },
  "Ctrl+End": (sheet) => ({
    row: Math.max(0, sheet.getLastRow()),
    column: Math.max(0, sheet.getLastColumn()),
  }),
  Home: (sheet, { row }) => ({ row, column: Math.max(0, sheet.getFreeze().xSplit) }),
  PageDown: (sheet, { row, column }) => ({ row: row + page(sheet), column }),
  PageUp: (sheet, { row, column }) => ({ row: row - page(sheet), column }),
};

/** The keys by which sheets are gone through that the grid has none of its own for. */
export function watchGridKeys(grid: Grid, container: HTMLElement): void {
  container.addEventListener(
    "keydown",
    (event) => {
      if (event.altKey || isEditing(grid, event.target)) return;
      const isCtrl = event.ctrlKey || event.metaKey;
      const isDone = event.code === "Space" ? selectLine(grid, event) : goBy(grid, event, isCtrl);
      if (!isDone) return;
      event.preventDefault();
      event.stopImmediatePropagation();
    },
    { capture: true },
  );
}

/** A cell's own editor, the formula bar, the name box and dialogs keep their keys. */
function isEditing(grid: Grid, target: EventTarget | null): boolean {
  const isInput = target instanceof HTMLInputElement || target instanceof HTMLTextAreaElement;
  if (isInput) return true;
  return grid.univer.__getInjector().get(IEditorBridgeService).isVisible().visible;
}

function goBy(grid: Grid, event: KeyboardEvent, isCtrl: boolean): boolean {
  const step = STEPS[`${isCtrl ? "Ctrl+" : ""}${event.key}`];
  const cell = selectedCell(grid);
  const sheet = grid.api.getActiveWorkbook()?.getActiveSheet();
  if (step === undefined || cell === null || sheet === undefined) return false;
  const wanted = step(sheet, cell);
  const row = Math.min(Math.max(0, wanted.row), sheet.getMaxRows() - 1);
  const column = Math.min(Math.max(0, wanted.column), sheet.getMaxColumns() - 1);
  if (event.shiftKey) {
    const first = { row: Math.min(row, cell.row), column: Math.min(column, cell.column) };
    const rows = Math.abs(row - cell.row) + 1;
    const columns = Math.abs(column - cell.column) + 1;
    sheet.getRange(first.row, first.column, rows, columns).activate();
  } else sheet.getRange(row, column).activate();
  bringIntoView(sheet, row, column);
  return true;
}

/** Rows in sight, less one that stays for the eye to hold on to. */
function page(sheet: OpenSheet): number {
  const seen = sheet.getVisibleRange() ?? null;
  return seen === null ? 20 : Math.max(1, seen.endRow - seen.startRow - 1);
}

/** Shift+Space the whole row, Ctrl+Space the whole column, of all that is selected. */
function selectLine(grid: Grid, event: KeyboardEvent): boolean {
  const isCtrl = event.ctrlKey || event.metaKey;
  if (event.shiftKey === isCtrl) return false;
  const sheet = grid.api.getActiveWorkbook()?.getActiveSheet();
  const range = sheet?.getActiveRange()?.getRange();
  if (sheet === undefined || range === undefined) return false;
  const whole: IRange = event.shiftKey
    ? { ...range, startColumn: 0, endColumn: sheet.getMaxColumns() - 1, rangeType: RANGE_TYPE.ROW }
    : { ...range, startRow: 0, endRow: sheet.getMaxRows() - 1, rangeType: RANGE_TYPE.COLUMN };
  sheet.getRange(whole).activate();
  return true;
}
