import { ICommandService } from "@univerjs/core";
import { packSheet } from "../../addin/pane/engine/packed-sheet";
import { createGrid } from "../../addin/workbench/grid/create-grid";
import { createFlagOverlay } from "../../addin/workbench/grid/flag-overlay";
import { GridWorkbook } from "../../addin/workbench/grid/grid-workbook";
import { GridFile } from "../../addin/workbench/grid-file";
import type {
  CellEdit,
  IfSheetIsThere,
  RowFlag,
  SheetContent,
  UndoStep,
  Unsubscribe,
} from "../../addin/workbook/workbook-port";

/** A page with the workbench's grid alone, whose port the tests call from outside. */
const grid = createGrid("grid");
const overlay = createFlagOverlay(grid);
const shown = new GridFile(grid, overlay);
const workbook = new GridWorkbook(
  grid,
  overlay,
  () => shown.protectedSheets,
  () => shown.datesFrom1904,
);
let tools: Promise<void> | null = null;
const undoSteps: UndoStep[] = [];
const listening: Unsubscribe[] = [];
const heard: { selections: unknown[]; changes: unknown[]; sheets: unknown[] } = {
  selections: [],
  changes: [],
  sheets: [],
};

const sheetNamed = (name: string) => grid.api.getActiveWorkbook()!.getSheetByName(name)!;

/** What `evaluate` can reach: every argument and answer is plain data. */
const remote = {
  open: async (bytes: number[], name: string) => {
    const opened = shown.open(new Uint8Array(bytes), name);
    grid.bringRest();
    const comesOutOtherwise = await opened;
    tools ??= grid.bringTools(() => undefined);
    await tools;
    return comesOutOtherwise;
  },
  /** opens both at the same time, and says which stands as open */
  openBoth: async (first: number[], second: number[]) => {
    const opening = shown.open(new Uint8Array(first), "first.xlsx");
    await Promise.all([opening, shown.open(new Uint8Array(second), "second.xlsx")]);
    return shown.name;
  },
  save: () => [...shown.save()],
  sheets: () => workbook.sheets(),
  activeSheet: () => workbook.activeSheet(),
  read: async (sheet: string) => {
    const { shown, dates, struck, hiddenRows, hiddenColumns, ...plain } = packSheet(
      await workbook.read(sheet),
    );
    return {
      ...plain,
      shown: [...shown],
      dates: [...dates],
      struck: [...struck],
      hiddenRows: [...hiddenRows],
      hiddenColumns: [...hiddenColumns],
    };
  },
  showFlags: async (sheet: string, flags: readonly RowFlag[]) => {
    const steps: number[] = [];
    await workbook.showFlags(sheet, flags, (done) => steps.push(done));
    return steps;
  },
  clearFlags: (sheet: string) => workbook.clearFlags(sheet),
  hasFlags: (sheet: string) => workbook.hasFlags(sheet),
  formulaCells: async (sheet: string, cells: readonly string[]) => [
    ...(await workbook.formulaCells(sheet, cells)),
  ],
  writeCells: async (sheet: string, edits: readonly CellEdit[]) =>
    undoSteps.push(await workbook.writeCells(sheet, edits)) - 1,
  undo: (index: number) => undoSteps[index]!(),
  addSheet: (name: string, content: SheetContent, ifThere: IfSheetIsThere) =>
    workbook.addSheet(name, content, ifThere),
  goTo: (sheet: string, cell: string) => workbook.goTo(sheet, cell),
  setting: (name: string) => workbook.setting(name),
  saveSetting: (name: string, value: string | null) => workbook.saveSetting(name, value),
  recalculate: () => workbook.recalculate(),
  listen: () => {
    heard.selections = [];
    heard.changes = [];
    heard.sheets = [];
    for (const stop of listening.splice(0)) stop();
    listening.push(workbook.onSelection((place) => heard.selections.push(place)));
    listening.push(workbook.onChange((place) => heard.changes.push(place)));
    listening.push(workbook.onSheets(() => heard.sheets.push(null)));
  },
  heard: () => heard,
  shownFill: (sheet: string, cell: string) => {
    const range = sheetNamed(sheet).getRange(cell);
    const worksheet = sheetNamed(sheet).getSheet();
    const shown = worksheet.getCell(range.getRow(), range.getColumn());
    const style = worksheet.getComposedCellStyle(range.getRow(), range.getColumn());
    const fill = shown?.interceptorStyle?.bg?.rgb ?? style?.bg?.rgb;
    return fill ? fill.toLowerCase() : null;
  },
  setFill: (sheet: string, cell: string, colour: string) => {
    sheetNamed(sheet).getRange(cell).setBackgroundColor(colour);
  },
  /** a command of the grid's own on a sheet, as its menus and toolbar give it */
  run: (sheet: string, id: string, params: object) =>
    grid.univer
      .__getInjector()
      .get(ICommandService)
      .executeCommand(id, {
        unitId: grid.api.getActiveWorkbook()?.getId(),
        subUnitId: sheetNamed(sheet).getSheetId(),
        ...params,
      }),
  calculated: () => grid.api.getFormula().onCalculationResultApplied(),
  isEdited: () => shown.isEdited,
  type: (sheet: string, cell: string, value: string | number) => {
    sheetNamed(sheet).getRange(cell).setValue(value);
  },
  select: (sheet: string, cell: string) => {
    sheetNamed(sheet).activate();
    sheetNamed(sheet).getRange(cell).activate();
  },
  tabs: {
    add: (name: string) => void grid.api.getActiveWorkbook()!.insertSheet(name),
    rename: (sheet: string, name: string) => void sheetNamed(sheet).setName(name),
    move: (sheet: string, place: number) =>
      void grid.api.getActiveWorkbook()!.moveSheet(sheetNamed(sheet), place),
    hide: (sheet: string) => void sheetNamed(sheet).hideSheet(),
    remove: (sheet: string) => void grid.api.getActiveWorkbook()!.deleteSheet(sheetNamed(sheet)),
  },
  selected: () => {
    const open = grid.api.getActiveWorkbook()!;
    return { sheet: open.getActiveSheet().getSheetName(), cell: open.getActiveCell()!.getA1Notation() };
  },
};

export type RemotePort = typeof remote;

Object.assign(globalThis, { remote });
