import {
  CellValueType,
  CommandType,
  type ICellData,
  ICommandService,
  type IRange,
  type Nullable,
  type Univer,
} from "@univerjs/core";
import { FUniver } from "@univerjs/core/facade";
import { expandToContinuousRange } from "@univerjs/preset-sheets-core";
import { SheetsSortService, SortType } from "@univerjs/preset-sheets-sort";

/** Items of the grid's menus that sort what is around the selection. */
const ORDERS = { asc: SortType.ASC, desc: SortType.DESC } as const;

/** Sorts whole rows of the list around the selection, and leaves its head where it stands. */
export async function sortRows(univer: Univer, say: (words: string) => void): Promise<void> {
  const injector = univer.__getInjector();
  const commands = injector.get(ICommandService);
  const ids = (order: string) => ["", "-ctx"].map((menu) => `sheet.command.sort-range-${order}-ext${menu}`);
  // what is added to a grid starts a little later
  while (
    !Object.keys(ORDERS)
      .flatMap(ids)
      .every((id) => commands.hasCommand(id))
  )
    await new Promise((started) => setTimeout(started));
  const sorter = injector.get(SheetsSortService);
  for (const [order, type] of Object.entries(ORDERS)) {
    for (const id of ids(order)) {
      commands.unregisterCommand(id);
      commands.registerCommand({
        id,
        type: CommandType.COMMAND,
        handler: () => {
          const list = rowsOfList(univer);
          if (list === null || !sorter.singleCheck(list) || !sorter.emptyCheck(list)) return false;
          if (!sorter.mergeCheck(list) || !sorter.formulaCheck(list)) {
            say("not sorted: merged cells, or a result that fills several cells, stand among these rows");
            return false;
          }
          const { range, colIndex, unitId, subUnitId } = list;
          sorter.applySort({ range, orderRules: [{ type, colIndex }] }, unitId, subUnitId);
          return true;
        },
      });
    }
  }
}

function rowsOfList(univer: Univer) {
  const book = FUniver.newAPI(univer).getActiveWorkbook();
  const selected = book?.getActiveRange()?.getRange();
  const cell = book?.getActiveSheet().getSelection()?.getCurrentCell();
  if (!book || !selected || !cell) return null;
  const worksheet = book.getActiveSheet().getSheet();
  const around = { up: true, down: true, left: true, right: true };
  const list = expandToContinuousRange(selected, around, worksheet);
  const holdsNumber = (row: number): boolean => {
    for (let column = list.startColumn; column <= list.endColumn; column += 1)
      if (isNumber(worksheet.getCell(row, column))) return true;
    return false;
  };
  let first = list.startRow;
  // heads are words
  while (first <= list.endRow && !holdsNumber(first)) first += 1;
  if (first > list.endRow) first = list.startRow + 1;
  const isMany = selected.endRow > selected.startRow;
  const range: IRange = {
    ...list,
    startRow: isMany ? Math.max(first, selected.startRow) : first,
    endRow: isMany ? Math.min(list.endRow, selected.endRow) : list.endRow,
  };
  return { range, unitId: book.getId(), subUnitId: worksheet.getSheetId(), colIndex: cell.actualColumn };
}

const isNumber = (cell: Nullable<ICellData>): boolean =>
  typeof cell?.v === "number" && cell.t !== CellValueType.STRING;
