import { type ICellData, ICommandService, type IWorkbookData } from "@univerjs/core";
import {
  FormulaDataModel,
  InsertColMutation,
  InsertRowMutation,
  InsertSheetMutation,
  MoveColsMutation,
  MoveRowsMutation,
  RemoveColMutation,
  RemoveRowMutation,
  RemoveSheetMutation,
  SetWorksheetNameMutation,
} from "@univerjs/preset-sheets-core";
import type { AddedSheet } from "../workbook/added-sheet";
import { functionEnvironment } from "../workbook/function-environment";
import { SETTING_NAMES } from "../workbook/setting-names";
import type { SheetChanges } from "../workbook/sheet-changes";
import { type RowFlag, WorkbookRefusal } from "../workbook/workbook-port";
import { patchWorkbook } from "../xlsx/patch/patch-workbook";
import { openWorkbook, type Workbook } from "../xlsx/read/open-workbook";
import type { SheetReading } from "../xlsx/read/read-sheet";
import { workbookSetting } from "../xlsx/read/workbook-setting";
import { UnreadableWorkbook } from "../xlsx/unreadable-workbook";
import { addedContent } from "./book/added-content";
import { addedSheet } from "./book/added-sheet";
import { changedCells, type GridSheetNow } from "./book/book-changes";
import { fileFlags } from "./book/file-flags";
import { toGridData } from "./book/to-grid-data";
import { type Grid, openInGrid } from "./grid/create-grid";
import type { FlagOverlay } from "./grid/flag-overlay";
import { readSheet } from "./grid/read-sheet";

/** Changes that move cells or sheets, by the mutation that undoes each. */
const OPPOSITES: ReadonlyMap<string, string> = new Map([
  [InsertRowMutation.id, RemoveRowMutation.id],
  [RemoveRowMutation.id, InsertRowMutation.id],
  [InsertColMutation.id, RemoveColMutation.id],
  [RemoveColMutation.id, InsertColMutation.id],
  [MoveRowsMutation.id, MoveRowsMutation.id],
  [MoveColsMutation.id, MoveColsMutation.id],
  [InsertSheetMutation.id, RemoveSheetMutation.id],
  [RemoveSheetMutation.id, InsertSheetMutation.id],
  [SetWorksheetNameMutation.id, SetWorksheetNameMutation.id],
]);

interface MoveParams {
  readonly subUnitId?: string;
  readonly sheet?: { readonly id: string; readonly custom?: { readonly barwright?: string } };
}

interface OpenFile {
  readonly name: string;
  /** the file as the user gave it */
  readonly workbook: Workbook;
  readonly opened: IWorkbookData;
  readonly readings: readonly SheetReading[];
  /** by sheet name, flags that the file carries */
  readonly flags: ReadonlyMap<string, readonly RowFlag[]>;
}

/** The file that the grid shows: opened from bytes, given back as the same bytes but for what was changed. */
export class Session {
  #file: OpenFile | null = null;
  #count = 0;
  #moves: string[] = [];
  /** ids of sheets that the pane added */
  readonly #added = new Set<string>();

  constructor(
    private readonly grid: Grid,
    private readonly overlay: FlagOverlay,
  ) {
    grid.univer
      .__getInjector()
      .get(ICommandService)
      .onCommandExecuted(({ id, params }) => this.#noteMove(id, params as MoveParams | undefined));
  }

  get name(): string {
    return this.#file?.name ?? "";
  }

  /** True where the file counts dates from 1904: the numbers in its cells stay as they are. */
  get datesFrom1904(): boolean {
    return this.#file?.workbook.from1904 === true;
  }

  get protectedSheets(): ReadonlySet<string> {
    const readings = this.#file?.readings ?? [];
    return new Set(readings.filter(({ isProtected }) => isProtected).map(({ name }) => name));
  }

  /** Shows a workbook. Throws with words for the user where the bytes are none. */
  async open(bytes: Uint8Array, name: string): Promise<void> {
    const workbook = openWorkbook(bytes);
    const flags = new Map(
      workbook.sheets.map(({ name: sheet }) => [sheet, fileFlags(workbook, workbook.read(sheet))]),
    );
    await this.grid.setEnvironment(functionEnvironment(workbook, standardOf(workbook)));
    this.#count += 1;
    const { data, readings } = toGridData(workbook, `workbook-${this.#count}`, name);
    const opened = structuredClone(data);
    this.overlay.clearAll();
    for (const [index, { name: sheet }] of workbook.sheets.entries()) {
      this.overlay.set(data.sheetOrder[index] ?? "", flags.get(sheet) ?? []);
    }
    openInGrid(this.grid, data);
    this.overlay.attach();
    await this.#calculated(data);
    this.#file = { name, workbook, opened, readings, flags };
    this.#moves = [];
    this.#added.clear();
  }

  /** Bytes of the file with the edited cells, the settings and the colours of rows as they stand now. */
  save(): Uint8Array {
    const file = this.#file;
    const open = this.grid.api.getActiveWorkbook();
    if (file === null || open === null) throw new WorkbookRefusal("no workbook is open: open one first");
    if (this.#moves.length > 0) {
      throw new WorkbookRefusal(
        "rows, columns or sheets were inserted, moved, removed or renamed, which this page cannot write back without harm to the file: undo that (Ctrl+Z) and save again, or do it in Excel",
      );
    }
    const sheets = new Map<string, SheetChanges>();
    const replaced: (AddedSheet & { replaces: string })[] = [];
    for (const [index, listing] of file.workbook.sheets.entries()) {
      const reading = file.readings[index];
      const sheetId = file.opened.sheetOrder[index] ?? "";
      const cellData = file.opened.sheets[sheetId]?.cellData ?? {};
      const now = this.#sheetNow(open, sheetId);
      if (reading === undefined || now === null) continue;
      const worksheet = open.getSheetBySheetId(sheetId)?.getSheet();
      if (worksheet !== undefined && addedContent(worksheet) !== null) {
        replaced.push({ ...addedSheet(listing.name, now, worksheet), replaces: listing.name });
        continue;
      }
      const change: SheetChanges = {
        ...writesOf(changedCells(cellData as Record<number, Record<number, ICellData>>, reading, now)),
        ...flagChange(file.flags.get(listing.name) ?? [], this.overlay.flags(sheetId)),
      };
      if (Object.keys(change).length > 0) sheets.set(listing.name, change);
    }
    const added = [...replaced, ...this.#addedSheets(open)];
    return patchWorkbook(file.workbook, { sheets, names: this.#changedNames(file, open), added });
  }

  #addedSheets(open: NonNullable<ReturnType<Grid["api"]["getActiveWorkbook"]>>): AddedSheet[] {
    return open
      .getSheets()
      .filter((sheet) => this.#added.has(sheet.getSheetId()))
      .flatMap((sheet) => {
        const now = this.#sheetNow(open, sheet.getSheetId());
        return now === null ? [] : [addedSheet(sheet.getSheetName(), now, sheet.getSheet())];
      });
  }

  /** Resolves when the grid has calculated the workbook it was given, or has nothing to calculate. */
  #calculated(data: IWorkbookData): Promise<unknown> {
    const hasFormula = Object.values(data.sheets).some(({ cellData = {} }) =>
      Object.values(cellData as Record<number, Record<number, ICellData>>).some((line) =>
        Object.values(line).some(({ f }) => Boolean(f)),
      ),
    );
    return hasFormula ? this.grid.api.getFormula().onCalculationResultApplied() : Promise.resolve();
  }

  #sheetNow(
    open: NonNullable<ReturnType<Grid["api"]["getActiveWorkbook"]>>,
    sheetId: string,
  ): GridSheetNow | null {
    const sheet = open.getSheetBySheetId(sheetId);
    if (sheet === null) return null;
    const model = this.grid.univer.__getInjector().get(FormulaDataModel);
    const spilled = model.getArrayFormulaCellData()?.[open.getId()]?.[sheetId] ?? {};
    const ranges = model.getArrayFormulaRange()?.[open.getId()]?.[sheetId] ?? {};
    const values = readSheet(sheet.getWorkbook(), sheet.getSheet(), spilled);
    const cells = new Map<number, Map<number, ICellData>>();
    sheet
      .getSheet()
      .getCellMatrix()
      .forValue((row, column, cell): undefined => {
        if (!cell) return;
        const line = cells.get(row) ?? new Map<number, ICellData>();
        cells.set(row, line.set(column, cell));
      });
    return {
      cells,
      formulaAt(row, column) {
        const cell = cells.get(row)?.get(column);
        if (!cell?.f && !cell?.si) return null;
        return sheet.getRange(row, column).getFormula().replace(/^=/, "");
      },
      valueAt: (row, column) => values.cell(row - values.top, column - values.left),
      spillAt(row, column) {
        const range = ranges[row]?.[column];
        if (!range) return null;
        const rows = range.endRow - range.startRow + 1;
        const columns = range.endColumn - range.startColumn + 1;
        return rows * columns > 1 ? { rows, columns } : null;
      },
    };
  }

  #changedNames(file: OpenFile, open: NonNullable<ReturnType<Grid["api"]["getActiveWorkbook"]>>) {
    const now = new Map(
      open
        .getDefinedNames()
        .filter((name) => name.isWorkbookScope())
        .map((name) => [name.getName(), name.getFormulaOrRefString().replace(/^=/, "")]),
    );
    const names = new Map<string, string | null>();
    for (const [name, formula] of now) {
      const known = file.workbook.names.find((each) => each.sheetIndex === null && each.name === name);
      if (known === undefined || (isOurs(name) && known.refersTo !== formula)) names.set(name, formula);
    }
    for (const { name, sheetIndex } of file.workbook.names) {
      if (sheetIndex === null && isOurs(name) && !now.has(name)) names.set(name, null);
    }
    return names;
  }

  /** A sheet that the pane added is written whole, so what becomes of its rows is no move. */
  #noteMove(id: string, params: MoveParams | undefined): void {
    const opposite = OPPOSITES.get(id);
    if (opposite === undefined) return;
    if (params?.sheet?.custom?.barwright !== undefined) this.#added.add(params.sheet.id);
    if (this.#added.has(params?.sheet?.id ?? params?.subUnitId ?? "")) return;
    if (this.#moves.at(-1) === opposite) this.#moves.pop();
    else this.#moves.push(id);
  }
}

/** What the workbook's name says; a name that is no text is handed on, so that formulas refuse it in words. */
function standardOf(workbook: Workbook): string {
  try {
    return workbookSetting(workbook, SETTING_NAMES.standard) ?? "";
  } catch (problem) {
    if (!(problem instanceof UnreadableWorkbook)) throw problem;
    const named = SETTING_NAMES.standard.toLowerCase();
    return workbook.names.find(({ name }) => name.toLowerCase() === named)?.refersTo ?? "";
  }
}

const isOurs = (name: string): boolean => name.startsWith("Barwright.");

function writesOf(writes: NonNullable<SheetChanges["writes"]>): SheetChanges {
  return writes.length === 0 ? {} : { writes };
}

/** Colours that are as the file has them stay untouched, and so do the file's notes. */
function flagChange(before: readonly RowFlag[], now: readonly RowFlag[]): SheetChanges {
  const shape = (flags: readonly RowFlag[]): string =>
    flags
      .map(({ row, firstColumn, lastColumn, colour }) => [row, firstColumn, lastColumn, colour].join(" "))
      .sort()
      .join("\n");
  if (shape(before) === shape(now)) return {};
  const notes = now
    .filter(({ note }) => note !== "")
    .map(({ row, firstColumn, note }) => ({ row, column: firstColumn, text: note }));
  return { clear: true, flags: now, notes };
}
