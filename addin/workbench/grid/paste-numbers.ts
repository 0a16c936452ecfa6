import {
  CellValueType,
  type ICellData,
  isTextFormat,
  type Nullable,
  type ObjectMatrix,
} from "@univerjs/core";
import { ISheetClipboardService, SetRangeValuesMutation } from "@univerjs/preset-sheets-core";
import type { Grid } from "./create-grid";
import type { NumberSigns } from "./local-number";
import { type PastedText, pastedNumbers } from "./pasted-numbers";

/** behind the grid's own, so that ours stand */
const LAST = 1_000;

interface PasteTarget {
  readonly unitId: string;
  readonly subUnitId: string;
  readonly range: { readonly rows: readonly number[]; readonly cols: readonly number[] };
}

/** Numbers of another place's way of writing are numbers here too, and how they were read is told. */
export function readPastedNumbers(grid: Grid, signs: NumberSigns, tell: (words: string) => void): void {
  const redosOf = ({ unitId, subUnitId }: PasteTarget, texts: readonly PastedText[]) => {
    const sheet = grid.api.getActiveWorkbook()?.getSheetBySheetId(subUnitId)?.getSheet();
    const open = texts.filter(
      ({ row, column }) => !isTextFormat(sheet?.getCellStyle(row, column)?.n?.pattern ?? ""),
    );
    const { numbers, words } = pastedNumbers(open, signs);
    if (words !== null) tell(words);
    const cellValue: Record<number, Record<number, ICellData>> = {};
    for (const { row, column, value } of numbers) {
      const line = cellValue[row] ?? {};
      cellValue[row] = line;
      line[column] = {
        v: value,
        t: CellValueType.NUMBER,
        f: null,
        p: null,
        s: { n: { pattern: "General" } },
      };
    }
    const redo = { id: SetRangeValuesMutation.id, params: { unitId, subUnitId, cellValue } };
    // what stood there is brought back with the rest of what was pasted
    return { redos: numbers.length === 0 ? [] : [redo], undos: [] };
  };
  grid.univer
    .__getInjector()
    .get(ISheetClipboardService)
    .addClipboardHook({
      id: "barwright-numbers",
      priority: LAST,
      onPastePlainText: (target, text) => {
        const [row = 0] = target.range.rows;
        const [column = 0] = target.range.cols;
        return redosOf(target, [{ row, column, text }]);
      },
      onPasteCells: (from, target, cells: ObjectMatrix<Nullable<ICellData>>) =>
        from === null ? redosOf(target, textsOf(cells, target)) : { redos: [], undos: [] },
    });
}

function textsOf(cells: ObjectMatrix<Nullable<ICellData>>, { range }: PasteTarget): PastedText[] {
  const texts: PastedText[] = [];
  const { rows, cols } = range;
  cells.forValue((row, column, cell): undefined => {
    const [toRow, toColumn] = [rows[row], cols[column]];
    if (typeof cell?.v !== "string" || toRow === undefined || toColumn === undefined) return;
    texts.push({ row: toRow, column: toColumn, text: cell.v });
  });
  return texts;
}
