import {
  type ICellData,
  ICommandService,
  type IRange,
  type Nullable,
  ObjectMatrix,
  type Worksheet,
} from "@univerjs/core";
import {
  FormulaDataModel,
  ISheetClipboardService,
  SheetPasteCommand,
  SheetPasteShortKeyCommand,
  SheetPasteValueCommand,
} from "@univerjs/preset-sheets-core";
import type { Grid } from "./create-grid";
import type { SpilledCells } from "./read-sheet";

/**
 * Cells that a formula fills are copied with their values. Pasted as values they stay so; pasted as they
 * are beside their formula they are left out, since it fills them again.
 */
export function copySpills(grid: Grid): void {
  const injector = grid.univer.__getInjector();
  const clipboard = injector.get(ISheetClipboardService);
  const commands = injector.get(ICommandService);
  let worksheet: Worksheet | null = null;
  let copied: IRange = { startRow: 0, startColumn: 0, endRow: 0, endColumn: 0 };
  /** spilled cells of the sheet that is copied from, and ranges that formulas within the copy fill */
  let cells: SpilledCells = {};
  let own: readonly IRange[] = [];
  /** of the last copy, by its own rows and columns: what its own formulas fill */
  let filled = new Map<string, ICellData>();
  clipboard.addClipboardHook({
    id: "barwright-spills",
    onBeforeCopy(unit, sheet, range) {
      const model = injector.get(FormulaDataModel);
      worksheet = grid.api.getActiveWorkbook()?.getSheetBySheetId(sheet)?.getSheet() ?? null;
      copied = range;
      cells = model.getArrayFormulaCellData()?.[unit]?.[sheet] ?? {};
      own = rangesFrom(model.getArrayFormulaRange()?.[unit]?.[sheet] ?? {}, range);
      filled = new Map();
    },
    getCellValueBySpecialMatrix(row, column) {
      const cell = cells[row]?.[column];
      const raw = worksheet?.getCellRaw(row, column);
      if (!cell || !worksheet || raw?.f || raw?.si) return undefined;
      const plain: ICellData = { ...raw, v: cell.v ?? null, t: cell.t ?? null };
      if (own.some((range) => holds(range, row, column))) {
        filled.set(`${row - copied.startRow} ${column - copied.startColumn}`, plain);
      }
      return { ...plain, displayV: String(worksheet.getCell(row, column)?.v ?? cell.v ?? "") };
    },
  });
  commands.beforeCommandExecuted(({ id, params }) => {
    const isValue =
      id === SheetPasteValueCommand.id ||
      (id === SheetPasteCommand.id && (params as { value?: string } | undefined)?.value !== undefined);
    if (!isValue && id !== SheetPasteCommand.id && id !== SheetPasteShortKeyCommand.id) return;
    const cache = clipboard.copyContentCache();
    const matrix = cache.get(cache.getLastCopyId() ?? "")?.matrix;
    if (!(matrix instanceof ObjectMatrix)) return;
    for (const [place, cell] of filled) {
      const [row = 0, column = 0] = place.split(" ").map(Number);
      matrix.setValue(row, column, isValue ? cell : { ...cell, v: null, t: null });
    }
  });
}

const holds = (range: IRange, row: number, column: number): boolean =>
  row >= range.startRow && row <= range.endRow && column >= range.startColumn && column <= range.endColumn;

/** Ranges that the formulas in a range fill. */
function rangesFrom(
  all: Readonly<Record<number, Readonly<Record<number, Nullable<IRange>>> | undefined>>,
  range: IRange,
): readonly IRange[] {
  return Object.entries(all).flatMap(([row, columns]) =>
    Object.entries(columns ?? {}).flatMap(([column, spill]) =>
      spill && holds(range, Number(row), Number(column)) ? [spill] : [],
    ),
  );
}
