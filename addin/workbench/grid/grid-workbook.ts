import {
  type ICellData,
  ICommandService,
  IUndoRedoService,
  type Nullable,
  type Worksheet,
} from "@univerjs/core";
import {
  FormulaDataModel,
  InsertSheetMutation,
  RemoveSheetMutation,
  SetTriggerFormulaCalculationStartMutation,
  SetWorksheetHideMutation,
  SetWorksheetNameMutation,
  SetWorksheetOrderMutation,
} from "@univerjs/preset-sheets-core";
import { addressAt } from "../../../core/schedule/cell-address";
import type { Sheet } from "../../../core/schedule/sheet";
import { ownOfWorkbook } from "../../pane/model/own-of-workbook";
import { shopOfWorkbook } from "../../pane/model/shop-of-workbook";
import { type CellPlace, parseAddress } from "../../workbook/cell-address";
import { constantText, textConstant } from "../../workbook/defined-name";
import { freeSheetName } from "../../workbook/free-sheet-name";
import { SETTING_NAMES } from "../../workbook/setting-names";
import { isSparePiece, settingOfPieces, settingPieces } from "../../workbook/setting-pieces";
import {
  type CellEdit,
  type IfSheetIsThere,
  type RowFlag,
  type SheetContent,
  type SheetSummary,
  type UndoStep,
  type Unsubscribe,
  type WorkbookPort,
  WorkbookRefusal,
} from "../../workbook/workbook-port";
import { addedMark } from "../book/added-content";
import { gridValue } from "../book/to-grid-data";
import { bringIntoView } from "./bring-into-view";
import { changedRows } from "./changed-rows";
import type { Grid } from "./create-grid";
import type { FlagOverlay } from "./flag-overlay";
import { gridCells, SPARE_ROWS } from "./grid-cells";
import { nextCalculation } from "./next-calculation";
import { readSheet, type SpilledCells } from "./read-sheet";
import { watchSelection } from "./watch-selection";

type OpenWorkbook = NonNullable<ReturnType<Grid["api"]["getActiveWorkbook"]>>;
type OpenSheet = NonNullable<ReturnType<OpenWorkbook["getSheetByName"]>>;

/** The task pane's port over the workbook that is open in the grid. */
export class GridWorkbook implements WorkbookPort {
  /**
   * @param protectedSheets names of sheets that the opened file protects
   * @param datesFrom1904 whether the opened file counts dates from 1904
   */
  constructor(
    private readonly grid: Grid,
    private readonly overlay: FlagOverlay,
    private readonly protectedSheets: () => ReadonlySet<string> = () => new Set(),
    private readonly datesFrom1904: () => boolean = () => false,
  ) {}

  async sheets(): Promise<readonly SheetSummary[]> {
    return this.workbook()
      .getSheets()
      .map((sheet) => ({
        id: sheet.getSheetId(),
        name: sheet.getSheetName(),
        visible: !sheet.isSheetHidden(),
        isProtected: this.protectedSheets().has(sheet.getSheetName()),
      }));
  }

  async activeSheet(): Promise<string> {
    return this.workbook().getActiveSheet().getSheetName();
  }

  async read(name: string): Promise<Sheet> {
    const sheet = this.sheet(name);
    return readSheet(sheet.getWorkbook(), sheet.getSheet(), this.spilled(sheet), this.datesFrom1904());
  }

  async showFlags(name: string, flags: readonly RowFlag[], progress?: (done: number) => void): Promise<void> {
    const sheet = this.sheet(name);
    this.overlay.set(sheet.getSheetId(), flags);
    this.redraw();
    progress?.(1);
  }

  async clearFlags(name: string): Promise<void> {
    this.overlay.set(this.sheet(name).getSheetId(), []);
    this.redraw();
  }

  async hasFlags(name: string): Promise<boolean> {
    return this.overlay.flags(this.sheet(name).getSheetId()).length > 0;
  }

  async formulaCells(name: string, cells: readonly string[]): Promise<ReadonlySet<string>> {
    const sheet = this.sheet(name).getSheet();
    return new Set(
      cells.filter((cell) => {
        const { row, column } = cellPlace(cell);
        const { f, si } = contentOf(sheet, row, column);
        return Boolean(f) || Boolean(si);
      }),
    );
  }

  async writeCells(name: string, edits: readonly CellEdit[]): Promise<UndoStep> {
    if (this.protectedSheets().has(name)) {
      throw new WorkbookRefusal(
        `sheet ${name} is protected: take its protection off in the file, then open it again`,
      );
    }
    const sheet = this.sheet(name);
    const before = edits.flatMap(({ cell, to, keepsFormula }) => {
      const place = cellPlace(cell);
      const was = contentOf(sheet.getSheet(), place.row, place.column);
      const isFormula = (was.f ?? null) !== null || (was.si ?? null) !== null;
      return keepsFormula === true && isFormula ? [] : [{ ...place, to, was }];
    });
    const rows = Math.max(0, ...before.map(({ row }) => row + 1));
    if (rows > sheet.getMaxRows()) sheet.setRowCount(rows + SPARE_ROWS);
    this.asOneStep(() => {
      for (const { row, column, to } of before) write(sheet, row, column, { ...BLANK, ...gridValue(to) });
    });
    return async () => {
      const now = this.workbook().getSheetBySheetId(sheet.getSheetId());
      if (now === null) return false;
      const untouched = before.every(({ row, column, to }) => {
        const cell = contentOf(now.getSheet(), row, column);
        return (cell.f ?? null) === null && (cell.si ?? null) === null && (cell.v ?? null) === to;
      });
      if (!untouched) return false;
      this.asOneStep(() => {
        for (const { row, column, was } of before) write(now, row, column, was);
      });
      return true;
    };
  }

  async addSheet(wanted: string, content: SheetContent, ifThere: IfSheetIsThere = "number"): Promise<string> {
    const workbook = this.workbook();
    const sheets = workbook.getSheets();
    const known = sheets.find((each) => each.getSheetName().toLowerCase() === wanted.toLowerCase());
    const isReplaced = known !== undefined && ifThere === "replace";
    if (isReplaced && this.protectedSheets().has(known.getSheetName())) {
      throw new WorkbookRefusal(
        `sheet ${known.getSheetName()} is protected: take its protection off in the file, then open it again`,
      );
    }
    const name = isReplaced
      ? known.getSheetName()
      : freeSheetName(
          wanted,
          sheets.map((each) => each.getSheetName()),
        );
    const { cells, rowCount, columnCount, columnData, hasFormula } = gridCells(content);
    const sheet = isReplaced
      ? known
      : workbook.insertSheet(name, {
          index: sheets.length,
          sheet: { rowCount, columnCount, columnData, custom: addedMark(content) },
        });
    if (isReplaced) {
      sheet.getRange(0, 0, sheet.getMaxRows(), sheet.getMaxColumns()).clear();
      if (sheet.getMaxRows() < rowCount) sheet.setRowCount(rowCount);
      if (sheet.getMaxColumns() < columnCount) sheet.setColumnCount(columnCount);
      sheet.getSheet().getConfig().custom = { ...addedMark(content) };
    }
    const calculated = hasFormula ? nextCalculation(this.grid) : Promise.resolve();
    if (cells.length > 0) sheet.getRange(0, 0, cells.length, cells[0]?.length ?? 1).setValues(cells);
    if (content.frozenRows !== undefined) sheet.setFrozenRows(content.frozenRows);
    if (this.workbook().getActiveSheet().getSheetId() !== sheet.getSheetId()) sheet.activate();
    await calculated;
    return name;
  }

  async goTo(name: string, cell: string): Promise<void> {
    const sheet = this.sheet(name);
    const { row, column } = cellPlace(cell);
    if (row >= sheet.getMaxRows() || column >= sheet.getMaxColumns()) {
      throw new WorkbookRefusal(`sheet ${name} has no cell ${cell}: it ends at ${lastCell(sheet)}`);
    }
    if (this.workbook().getActiveSheet().getSheetId() !== sheet.getSheetId()) sheet.activate();
    sheet.getRange(row, column).activate();
    bringIntoView(sheet, row, column);
  }

  async setting(name: string): Promise<string | null> {
    return settingOfPieces(name, (piece) => {
      const formula = this.workbook().getDefinedName(piece)?.getFormulaOrRefString();
      return formula === undefined ? null : (constantText(formula) ?? formula);
    });
  }

  async saveSetting(name: string, value: string | null): Promise<void> {
    const workbook = this.workbook();
    const pieces = value === null ? new Map<string, string>() : settingPieces(name, value);
    for (const [piece, text] of pieces) {
      const formula = textConstant(text);
      const known = workbook.getDefinedName(piece);
      // the grid puts the equals sign before a formula that is set, and not before one that is inserted
      if (known === null) workbook.insertDefinedName(piece, `=${formula}`);
      else known.setFormula(formula);
    }
    for (const known of workbook.getDefinedNames()) {
      const isGone = value === null && known.getName() === name;
      if (isGone || isSparePiece(name, known.getName(), pieces)) known.delete();
    }
  }

  onSelection(listener: (place: { sheet: string; row: number; column: number }) => void): Unsubscribe {
    return watchSelection(this.grid, ({ sheet, row, column }) => listener({ sheet, row, column }));
  }

  onChange(listener: (place: { sheet: string; firstRow: number; lastRow: number }) => void): Unsubscribe {
    const commands = this.grid.univer.__getInjector().get(ICommandService);
    let uncalculated: Parameters<typeof listener>[0][] = [];
    const edited = commands.onCommandExecuted((command, options) => {
      if (options?.["fromFormula"]) return;
      for (const [sheetId, rows] of changedRows(command)) {
        const sheet = this.grid.api.getActiveWorkbook()?.getSheetBySheetId(sheetId);
        if (!sheet) continue;
        const place = { sheet: sheet.getSheetName(), ...rows };
        uncalculated.push(place);
        listener(place);
      }
    });
    // formulas over the edited cells answer later, from the worker
    const calculated = this.grid.api.getFormula().calculationResultApplied(() => {
      const places = uncalculated;
      uncalculated = [];
      for (const place of places) listener(place);
    });
    return () => {
      edited.dispose();
      calculated.dispose();
    };
  }

  onSheets(listener: () => void): Unsubscribe {
    const heard = this.grid.univer
      .__getInjector()
      .get(ICommandService)
      .onCommandExecuted(({ id }) => {
        if (SHEET_CHANGES.has(id)) listener();
      });
    return () => heard.dispose();
  }

  async recalculate(): Promise<number> {
    const count = this.barFormulas();
    if (count === 0) return 0;
    const own = await ownOfWorkbook(this);
    await this.grid.setEnvironment({
      defaultStandard: (await this.setting(SETTING_NAMES.standard)) ?? "",
      ...(await shopOfWorkbook(this)),
      ...(own === undefined ? {} : { own }),
    });
    const applied = nextCalculation(this.grid);
    await this.grid.univer
      .__getInjector()
      .get(ICommandService)
      .executeCommand(SetTriggerFormulaCalculationStartMutation.id, { commands: [], forceCalculation: true });
    await applied;
    return count;
  }

  /** What is written together is undone together: half of a fix would be a row that does not agree. */
  private asOneStep(act: () => void): void {
    const undo = this.grid.univer.__getInjector().get(IUndoRedoService);
    const step = undo.__tempBatchingUndoRedo(this.workbook().getId());
    try {
      act();
    } finally {
      step.dispose();
    }
  }

  private barFormulas(): number {
    let count = 0;
    for (const sheet of this.workbook().getSheets()) {
      const shared = new Map<string, boolean>();
      sheet
        .getSheet()
        .getCellMatrix()
        .forValue((_row, _column, cell: Nullable<ICellData>): undefined => {
          if (!cell) return;
          if (cell.f && cell.si) shared.set(cell.si, CALLS_BAR.test(cell.f));
          if (cell.f ? CALLS_BAR.test(cell.f) : cell.si && shared.get(cell.si)) count += 1;
        });
    }
    return count;
  }

  private spilled(sheet: OpenSheet): SpilledCells {
    const model = this.grid.univer.__getInjector().get(FormulaDataModel);
    return model.getArrayFormulaCellData()?.[this.workbook().getId()]?.[sheet.getSheetId()] ?? {};
  }

  private redraw(): void {
    this.workbook().getActiveSheet().refreshCanvas();
  }

  private workbook(): OpenWorkbook {
    const open = this.grid.api.getActiveWorkbook();
    if (open === null) throw new WorkbookRefusal("no workbook is open: open one first");
    return open;
  }

  private sheet(name: string): OpenSheet {
    const sheet = this.workbook().getSheetByName(name);
    if (sheet !== null) return sheet;
    const held = this.workbook()
      .getSheets()
      .map((each) => each.getSheetName())
      .join(", ");
    throw new WorkbookRefusal(`the workbook has no sheet ${name}: it has ${held}`);
  }
}

const SHEET_CHANGES: ReadonlySet<string> = new Set([
  InsertSheetMutation.id,
  RemoveSheetMutation.id,
  SetWorksheetNameMutation.id,
  SetWorksheetOrderMutation.id,
  SetWorksheetHideMutation.id,
]);

const CALLS_BAR = /\bBAR\.[A-Z]+\s*\(/i;
/** Takes value, type and formula away, and leaves the cell's looks. */
const BLANK = { v: null, t: null, f: null, si: null, p: null };

function cellPlace(address: string): CellPlace {
  const place = parseAddress(address);
  if (place === null) throw new WorkbookRefusal(`${address} is no cell of a sheet: write it as F12`);
  return place;
}

function contentOf(worksheet: Worksheet, row: number, column: number): ICellData {
  const { v = null, t = null, f = null, si = null, p = null } = worksheet.getCellRaw(row, column) ?? {};
  return { v, t, f, si, p };
}

function write(sheet: OpenSheet, row: number, column: number, content: ICellData): void {
  sheet.getRange(row, column).setValue(content);
}

function lastCell(sheet: OpenSheet): string {
  return addressAt(sheet.getMaxRows() - 1, sheet.getMaxColumns() - 1);
}
