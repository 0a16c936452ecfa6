import {
  type ICellData,
  ICommandService,
  type IStyleData,
  type IWorkbookData,
  type Nullable,
  RedoCommand,
  UndoCommand,
} from "@univerjs/core";
import { InsertSheetMutation } from "@univerjs/preset-sheets-core";
import type { AddedSheet } from "../workbook/added-sheet";
import { functionEnvironment } from "../workbook/function-environment";
import type { SheetChanges } from "../workbook/sheet-changes";
import { type RowFlag, WorkbookRefusal } from "../workbook/workbook-port";
import { patchWorkbook } from "../xlsx/patch/patch-workbook";
import { openWorkbook, type Workbook } from "../xlsx/read/open-workbook";
import type { SheetReading } from "../xlsx/read/read-sheet";
import { readSheetFilter } from "../xlsx/read/sheet-filter";
import { LineMap } from "../xlsx/structure/line-map";
import { restructured, type SheetPlan } from "../xlsx/structure/restructure";
import { type FormulaCell, staleFormulas } from "../xlsx/structure/stale-formulas";
import { addedContent } from "./book/added-content";
import { addedSheet } from "./book/added-sheet";
import { changedCells, doubtedFormulas } from "./book/book-changes";
import { fileFlags } from "./book/file-flags";
import { flagChange } from "./book/flag-change";
import { gridFilter } from "./book/grid-filter";
import { gridFormula } from "./book/grid-formula";
import { LineMoves } from "./book/line-moves";
import { notesOf, notShown } from "./book/not-shown";
import { type NamedLook, sheetDifferences } from "./book/sheet-differences";
import { frameNow, type OpenBook, sheetNow } from "./book/sheet-now";
import { standardOf } from "./book/standard-of";
import { gridData, toGridData } from "./book/to-grid-data";
import { workbookNames } from "./book/workbook-names";
import { type Grid, openInGrid } from "./grid/create-grid";
import type { FlagOverlay } from "./grid/flag-overlay";
import { keepFilters } from "./grid/keep-filters";
import { firstCalculation } from "./grid/next-calculation";
import { StoredResults } from "./grid/show-stored";
import { doAgain, EditLog, isEdit, type LoggedEdit } from "./unsaved/edit-log";

/** A file beside the grid's data that it makes. */
interface ReadBook {
  readonly workbook: Workbook;
  /** what the grid was given at first: made anew where a file is saved, not kept beside the grid's own */
  opened(): IWorkbookData;
  readonly readings: readonly SheetReading[];
  /** ids of the grid's sheets that show them, in the file's order */
  readonly sheetIds: readonly string[];
}

interface OpenFile extends ReadBook {
  readonly name: string;
  /** by id of the sheet, flags that the file carries */
  readonly flags: ReadonlyMap<string, readonly RowFlag[]>;
  /** by id of the sheet, formulas that the grid calculates otherwise than the file says */
  readonly doubted: ReadonlyMap<string, ReadonlySet<string>>;
  /** the workbook's names as the grid held them at first */
  readonly names: ReadonlyMap<string, string>;
  /** what it holds and the grid does not draw, in words */
  readonly notShown: string;
}

/** The file that the grid shows: opened from bytes, given back as the same bytes but for what was changed. */
export class GridFile {
  #file: OpenFile | null = null;
  #count = 0;
  #name = "";
  readonly #moves = new LineMoves();
  readonly #stored: StoredResults;
  /** ids of sheets that the pane added */
  readonly #added = new Set<string>();
  #isUndo = false;
  #isEdited = false;
  #log: EditLog | null = null;
  readonly #listeners = new Set<() => void>();

  constructor(
    private readonly grid: Grid,
    private readonly overlay: FlagOverlay,
  ) {
    const commands = grid.univer.__getInjector().get(ICommandService);
    this.#stored = new StoredResults(grid);
    const isBack = (id: string): boolean => id === UndoCommand.id || id === RedoCommand.id;
    commands.beforeCommandExecuted(({ id }) => {
      if (isBack(id)) this.#isUndo = true;
    });
    commands.onCommandExecuted((command, options) => {
      const { id, params } = command;
      if (this.#file !== null) this.#log?.note(command, options);
      if (this.#file !== null && isEdit(command, options)) this.#setEdited(true);
      if (isBack(id)) this.#isUndo = false;
      this.#moves.note(id, params, this.#isUndo);
      if (id === InsertSheetMutation.id) this.#noteSheet(params as InsertedSheet | undefined);
    });
  }

  get name(): string {
    return this.#name;
  }

  /** True where something was edited since the workbook was opened or saved. */
  get isEdited(): boolean {
    return this.#isEdited;
  }

  /** What was done since the workbook was opened; null before one is. */
  get log(): EditLog | null {
    return this.#log;
  }

  /** Does again what was done to the same file in a page that is gone. */
  doAgain(edits: readonly LoggedEdit[]): void {
    doAgain(this.grid.univer.__getInjector().get(ICommandService), this.#book().getId(), edits);
  }

  /** The workbook as it stands was handed to the user, or taken from what a crash left. */
  setEdited(isEdited: boolean): void {
    this.#setEdited(isEdited);
  }

  /** Told at each edit, and when the edits were saved or left behind. */
  onEdited(listener: () => void): void {
    this.#listeners.add(listener);
  }

  #setEdited(isEdited: boolean): void {
    this.#isEdited = isEdited;
    for (const listener of this.#listeners) listener();
  }

  /** The file that is open, what became of its lines, and what its sheets are called now; null before one is. */
  get opened() {
    const names = (id: string) => this.#book().getSheetBySheetId(id)?.getSheetName();
    return this.#file === null ? null : { file: this.#file, moves: this.#moves, names };
  }

  /** What the file holds and the grid does not draw, in words; blank where it draws all. */
  get notShown(): string {
    return this.#file?.notShown ?? "";
  }

  /** True where the file counts dates from 1904: the numbers in its cells stay as they are. */
  get datesFrom1904(): boolean {
    return this.#file?.workbook.from1904 === true;
  }

  /** Names of the sheets that the file protects, as they are called now. */
  get protectedSheets(): ReadonlySet<string> {
    const open = this.grid.api.getActiveWorkbook();
    const { readings = [], sheetIds = [] } = this.#file ?? {};
    const names = readings.flatMap(({ isProtected, name }, index) =>
      isProtected ? [open?.getSheetBySheetId(sheetIds[index] ?? "")?.getSheetName() ?? name] : [],
    );
    return new Set(names);
  }

  /**
   * Shows a workbook; one that is opened meanwhile stays. Throws with words for the user where the bytes are none.
   * True where a formula came to another result than the file holds.
   *
   * @param whenShown called once the last workbook is out of sight, before the new one is calculated
   */
  async open(bytes: Uint8Array, name: string, whenShown = (): void => {}): Promise<boolean> {
    const workbook = openWorkbook(bytes);
    void this.grid.setEnvironment(functionEnvironment(workbook, standardOf(workbook)));
    this.#count += 1;
    const turn = this.#count;
    const { data, readings } = toGridData(workbook, `workbook-${this.#count}`, name);
    const sheetIds = [...data.sheetOrder];
    const flags = new Map(
      sheetIds.map((id, index) => {
        const reading = readings[index];
        return [id, reading === undefined ? [] : fileFlags(workbook, reading)];
      }),
    );
    this.overlay.clearAll();
    for (const [id, list] of flags) this.overlay.set(id, list);
    this.#file = null;
    this.#stored.forget();
    this.#name = name;
    openInGrid(this.grid, data);
    whenShown();
    this.#setEdited(false);
    this.overlay.attach();
    keepFilters(this.grid);
    if (readings.some(({ hasFormulas }) => hasFormulas)) await firstCalculation(this.grid, data);
    if (turn !== this.#count) return false;
    const open = this.#book();
    const shownSheets = workbook.sheets.flatMap(({ name: sheet }, index) => {
      const id = sheetIds[index] ?? "";
      const now = sheetNow(this.grid, open, id);
      const reading = readings[index];
      if (now === null || reading === undefined) return [];
      return [{ id, name: sheet, reading, now, doubted: doubtedFormulas(reading, now) }];
    });
    const doubted = new Map(shownSheets.map((sheet) => [sheet.id, sheet.doubted]));
    const comesOutOtherwise = shownSheets.some((sheet) => sheet.doubted.size > 0);
    if (comesOutOtherwise) {
      const { storedResults } = await import(/* webpackChunkName: "later-stored" */ "./book/stored-results");
      if (turn !== this.#count) return false;
      this.#stored.keep(data.id, storedResults(workbook, shownSheets));
    }
    const opened = (): IWorkbookData => gridData(workbook, readings, data.id, name);
    this.#file = {
      ...{ name, workbook, opened, readings, sheetIds, flags, doubted },
      names: workbookNames(open),
      notShown: notShown(readings, notesOf(workbook)),
    };
    this.#moves.clear();
    this.#added.clear();
    this.#log = new EditLog(bytes);
    this.#setEdited(false);
    return comesOutOtherwise;
  }

  /** Bytes of the file as the grid shows it: what was not changed keeps its bytes. */
  save(): Uint8Array {
    const file = this.#file;
    if (file === null) throw new WorkbookRefusal("no workbook is open: open one first");
    const open = this.#book();
    const base = this.#base(file, open);
    const opened = base.opened();
    const sheets = new Map<string, SheetChanges>();
    const replaced: (AddedSheet & { replaces: string })[] = [];
    const edited = new Map<string, readonly FormulaCell[]>();
    const doubted = new Map<string, readonly FormulaCell[]>();
    for (const [index, { name }] of base.workbook.sheets.entries()) {
      const sheetId = base.sheetIds[index] ?? "";
      const now = sheetNow(this.grid, open, sheetId);
      const worksheet = open.getSheetBySheetId(sheetId)?.getSheet();
      if (now === null || worksheet === undefined) continue;
      if (addedContent(worksheet) !== null) {
        replaced.push({ ...addedSheet(name, now, worksheet), replaces: name });
        continue;
      }
      const change = this.#sheetChanges(file, base, opened, index);
      edited.set(name, change.cells.edited);
      doubted.set(name, change.cells.doubted);
      sheets.set(name, change.sheet);
    }
    // a result that the grid cannot answer for goes where it leans on what was edited
    for (const [name, cells] of staleFormulas(base.workbook, edited)) {
      const unsure = new Set(doubted.get(name)?.map(({ row, column }) => `${row} ${column}`));
      const stale = cells.filter(({ row, column }) => unsure.has(`${row} ${column}`));
      if (stale.length > 0) sheets.set(name, { ...sheets.get(name), stale });
    }
    for (const [name, change] of sheets) if (Object.keys(change).length === 0) sheets.delete(name);
    const added = [...replaced, ...this.#addedSheets(open)];
    const names = this.#changedNames(file, base.workbook, open);
    const bytes = patchWorkbook(base.workbook, { sheets, names, added });
    return open.getSheets().length === file.workbook.sheets.length && base === file
      ? bytes
      : this.#inOrder(bytes, open);
  }

  #book(): OpenBook {
    const open = this.grid.api.getActiveWorkbook();
    if (open === null) throw new WorkbookRefusal("no workbook is open: open one first");
    return open;
  }

  /** The file with the sheets, rows and columns that the grid has now: itself where none came or went. */
  #base(file: OpenFile, open: OpenBook): ReadBook {
    const grid = open.getSheets();
    const plan: SheetPlan[] = [];
    const sheetIds: string[] = [];
    for (const sheet of grid) {
      const id = sheet.getSheetId();
      const index = file.sheetIds.indexOf(id);
      const listing = file.workbook.sheets[index];
      if (listing === undefined) continue;
      sheetIds.push(id);
      plan.push({
        was: listing.name,
        name: sheet.getSheetName(),
        visible: !sheet.isSheetHidden(),
        rows: this.#moves.rows(id),
        columns: this.#moves.columns(id),
      });
    }
    const isSame =
      plan.length === file.workbook.sheets.length &&
      plan.every(({ was, name, visible, rows, columns }, index) => {
        const listing = file.workbook.sheets[index];
        const isKept = listing?.name === was && was === name && listing.visible === visible;
        return isKept && rows.isUnchanged && columns.isUnchanged;
      });
    // sheets that the user added are put in empty, and filled as those of the file are
    const own = grid.filter(
      (sheet) => !file.sheetIds.includes(sheet.getSheetId()) && !this.#added.has(sheet.getSheetId()),
    );
    if (isSame && own.length === 0) return file;
    const moved = isSame ? file.workbook : openWorkbook(restructured(file.workbook, plan));
    const blank = own.map((sheet) => ({ name: sheet.getSheetName(), widths: [], frozenRows: 0, rows: [] }));
    const workbook = own.length === 0 ? moved : openWorkbook(patchWorkbook(moved, { added: blank }));
    const { data, readings } = toGridData(workbook, "saved", file.name);
    return {
      workbook,
      opened: () => data,
      readings,
      sheetIds: [...sheetIds, ...own.map((sheet) => sheet.getSheetId())],
    };
  }

  #sheetChanges(file: OpenFile, base: ReadBook, opened: IWorkbookData, index: number) {
    const open = this.#book();
    const sheetId = base.sheetIds[index] ?? "";
    const sheetBefore = opened.sheets[opened.sheetOrder[index] ?? ""] ?? {};
    const reading = base.readings[index];
    const now = sheetNow(this.grid, open, sheetId);
    if (reading === undefined || now === null) throw new Error(`the sheet ${sheetId} cannot be read`);
    const doubted = file.doubted.get(sheetId);
    const rows = this.#moves.rows(sheetId);
    const columns = this.#moves.columns(sheetId);
    const cells = changedCells(
      {
        cellData: (sheetBefore.cellData ?? {}) as Record<number, Record<number, ICellData>>,
        reading,
        isRegrouped: base !== file,
        isDoubted: (row, column) => doubted?.has(`${rows.from(row)} ${columns.from(column)}`) === true,
      },
      now,
    );
    const styles = open.getWorkbook().getStyles();
    const look = (held: IWorkbookData["styles"], named: NamedLook): Nullable<IStyleData> =>
      typeof named === "string" ? held[named] : named;
    const frame = sheetDifferences(
      sheetBefore,
      readSheetFilter(reading.layout.tail),
      new Set(gridFilter(reading)?.cachedFilteredOut),
      now,
      frameNow(this.grid, open, sheetId),
      {
        before: (named) => look(opened.styles, named),
        now: (named) => (typeof named === "string" ? styles.get(named) : named),
        usual: base.workbook.formats[0] ?? {},
      },
    );
    const flagsBefore = base === file ? (file.flags.get(sheetId) ?? []) : fileFlags(base.workbook, reading);
    const sheet: SheetChanges = {
      ...(cells.writes.length > 0 && { writes: cells.writes }),
      ...frame,
      ...flagChange(flagsBefore, this.overlay.flags(sheetId)),
    };
    return { cells, sheet };
  }

  #addedSheets(open: OpenBook): AddedSheet[] {
    return open
      .getSheets()
      .filter((sheet) => this.#added.has(sheet.getSheetId()))
      .flatMap((sheet) => {
        const now = sheetNow(this.grid, open, sheet.getSheetId());
        return now === null ? [] : [addedSheet(sheet.getSheetName(), now, sheet.getSheet())];
      });
  }

  /** Added sheets stand behind the others in a file: they are brought to where the grid has them. */
  #inOrder(bytes: Uint8Array, open: OpenBook): Uint8Array {
    const wanted = open.getSheets().map((sheet) => sheet.getSheetName());
    const workbook = openWorkbook(bytes);
    const held = workbook.sheets.map(({ name }) => name);
    if (wanted.join("\n") === held.join("\n") || !wanted.every((name) => held.includes(name))) return bytes;
    const plan = wanted.map((name) => ({
      was: name,
      name,
      visible: workbook.sheet(name)?.visible !== false,
      rows: LineMap.unchanged,
      columns: LineMap.unchanged,
    }));
    return restructured(workbook, plan);
  }

  #changedNames(file: OpenFile, workbook: Workbook, open: OpenBook): Map<string, string | null> {
    const names = new Map<string, string | null>();
    const now = workbookNames(open);
    const held = new Map(
      workbook.names.filter(({ sheetIndex }) => sheetIndex === null).map((one) => [one.name, one.refersTo]),
    );
    for (const [name, formula] of now) {
      const before = held.get(name);
      if (before !== undefined && gridFormula(before) === formula) continue;
      // one that nobody touched since stays as the file writes it
      if (before !== undefined && file.names.get(name) === formula) continue;
      names.set(name, formula);
    }
    for (const name of file.names.keys()) if (!now.has(name) && held.has(name)) names.set(name, null);
    return names;
  }

  #noteSheet(params: InsertedSheet | undefined): void {
    if (params?.sheet?.custom?.barwright !== undefined) this.#added.add(params.sheet.id);
  }
}

interface InsertedSheet {
  readonly sheet?: { readonly id: string; readonly custom?: { readonly barwright?: string } };
}
