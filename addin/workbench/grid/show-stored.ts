import { type ICellData, ICommandService } from "@univerjs/core";
import {
  SetRangeValuesMutation,
  SetTriggerFormulaCalculationStartMutation,
} from "@univerjs/preset-sheets-core";
import { movesLines } from "../book/line-moves";
import type { StoredResult } from "../book/stored-results";
import { gridValue } from "../book/to-grid-data";
import type { Grid } from "./create-grid";
import { nextCalculation } from "./next-calculation";

/**
 * Shows the results that a file holds where the grid cannot come to them, to whatever leans on them as well. Once
 * something that one leans on is edited, the grid's own error takes its place.
 */
export class StoredResults {
  #book = "";
  #bySheet = new Map<string, readonly StoredResult[]>();

  constructor(private readonly grid: Grid) {
    const commands = grid.univer.__getInjector().get(ICommandService);
    commands.onCommandExecuted(({ id, params }) => {
      // where they stand now is not followed
      if (movesLines(id)) this.#bySheet.delete((params as { readonly subUnitId: string }).subUnitId);
    });
    commands.beforeCommandExecuted(({ id, params }) => {
      if (id !== SetTriggerFormulaCalculationStartMutation.id || this.#bySheet.size === 0) return;
      if ((params as { readonly forceCalculation?: boolean }).forceCalculation !== true) return;
      // all is calculated anew though nothing was edited: what stands until then stands again
      const book = this.#book;
      const standing = new Map(
        [...this.#bySheet].map(([sheet, results]) => [
          sheet,
          results.filter((one) => this.#stands(sheet, one)),
        ]),
      );
      void nextCalculation(grid, book).then(() => {
        if (book === this.#book) this.#show(standing);
      });
    });
  }

  /** Another workbook is to be opened. */
  forget(): void {
    this.#book = "";
    this.#bySheet.clear();
  }

  /** Of a workbook that was just opened and calculated. */
  keep(book: string, results: ReadonlyMap<string, readonly StoredResult[]>): void {
    this.#book = book;
    this.#bySheet = new Map([...results].filter(([, list]) => list.length > 0));
    this.#show(this.#bySheet);
  }

  #stands(sheetId: string, { row, column, value }: StoredResult): boolean {
    const sheet = this.grid.api.getActiveWorkbook()?.getSheetBySheetId(sheetId)?.getSheet();
    return sheet?.getCellRaw(row, column)?.v === gridValue(value).v;
  }

  #show(results: ReadonlyMap<string, readonly StoredResult[]>): void {
    const commands = this.grid.univer.__getInjector().get(ICommandService);
    for (const [subUnitId, list] of results) {
      const cellValue: Record<number, Record<number, ICellData>> = {};
      for (const { row, column, value } of list) {
        cellValue[row] ??= {};
        cellValue[row][column] = gridValue(value);
      }
      // as the grid puts in results of its own, so that nothing counts as edited
      const params = { unitId: this.#book, subUnitId, cellValue };
      const options = { onlyLocal: true, fromFormula: true };
      if (list.length > 0) commands.syncExecuteCommand(SetRangeValuesMutation.id, params, options);
    }
  }
}
