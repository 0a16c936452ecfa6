import { Direction, ICommandService } from "@univerjs/core";
import {
  MoveSelectionCommand,
  MoveSelectionEnterAndTabCommand,
  SetSelectionsOperation,
  SheetsSelectionsService,
} from "@univerjs/preset-sheets-core";
import type { Grid } from "./create-grid";

/**
 * Enter goes back under the cell where a run of Tabs began; a cell that is chosen in another way begins a
 * new run. The grid forgets the old one at arrow keys alone, so it is made to move by one and back.
 */
export function watchEntryColumn(grid: Grid): void {
  const injector = grid.univer.__getInjector();
  const commands = injector.get(ICommandService);
  let isRun = false;
  let wasChosenElsewhere = false;
  let isOurs = false;
  commands.beforeCommandExecuted(({ id }) => {
    if (id !== MoveSelectionEnterAndTabCommand.id) return;
    if (wasChosenElsewhere) {
      isOurs = true;
      void forgetRun(grid, commands);
      isOurs = false;
    }
    isRun = true;
    wasChosenElsewhere = false;
    isOurs = true;
  });
  commands.onCommandExecuted(({ id, params }) => {
    if (id === MoveSelectionEnterAndTabCommand.id) isOurs = false;
    // a selection that was not made by Enter or Tab, nor is set again by the cell's own editor
    const extra = (params as { extra?: string } | undefined)?.extra;
    if (id === SetSelectionsOperation.id && !isOurs && extra === undefined) wasChosenElsewhere = isRun;
  });
}

/** Moves of the grid's own run by themselves, so the selection is put back as soon as one is done. */
async function forgetRun(grid: Grid, commands: ICommandService): Promise<void> {
  const book = grid.api.getActiveWorkbook();
  if (!book) return;
  const selections = [...grid.univer.__getInjector().get(SheetsSelectionsService).getCurrentSelections()];
  const isTop = selections.at(-1)?.primary?.startRow === 0;
  const direction = isTop ? Direction.DOWN : Direction.UP;
  const moved = commands.executeCommand(MoveSelectionCommand.id, { direction });
  commands.syncExecuteCommand(SetSelectionsOperation.id, {
    unitId: book.getId(),
    subUnitId: book.getActiveSheet().getSheetId(),
    selections,
  });
  await moved;
}
