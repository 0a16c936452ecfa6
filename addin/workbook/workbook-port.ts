import type { Sheet } from "../../core/schedule/sheet";
import type { PrintSetUp } from "./added-sheet";
import type { StackedBars } from "./stacked-bars";

/** Undoes one step of ours; true where the cells still held what we wrote. */
export type UndoStep = () => Promise<boolean>;
export type Unsubscribe = () => void;

export type FlagColour = "unsafe" | "unbendable" | "off-standard" | "doubtful" | "note";

/** A row to colour, over the schedule's columns; rows and columns are the sheet's, from 0. */
export interface RowFlag {
  readonly row: number;
  readonly firstColumn: number;
  readonly lastColumn: number;
  readonly colour: FlagColour;
  readonly note: string;
}

export interface CellEdit {
  readonly cell: string;
  readonly to: string | number | null;
  /** left alone where a formula stands, which follows by itself */
  readonly keepsFormula?: true;
}

/** A cell of a sheet that is written anew; a text stays a text whatever it looks like. */
export interface SheetCell {
  readonly value: string | number | null;
  /** as typed, without the equals sign; then `value` is not read */
  readonly formula?: string;
  readonly bold?: boolean;
  readonly wrap?: boolean;
  /** at the right edge, as a number is */
  readonly right?: boolean;
  /** with a thin line under it */
  readonly ruled?: boolean;
  /** a heading's grey */
  readonly shade?: boolean;
  readonly flag?: FlagColour;
  /** "0.000" */
  readonly format?: string;
  /** place to jump to, where the workbook can; a null sheet is the one that the cell stands on */
  readonly link?: { readonly sheet: string | null; readonly cell: string };
}

/** The whole content of a sheet that is written anew, its first cell at A1. */
export interface SheetContent {
  readonly rows: readonly (readonly SheetCell[])[];
  /** characters, by column */
  readonly widths?: readonly number[];
  readonly frozenRows?: number;
  readonly print?: PrintSetUp;
  /** drawn where the workbook can draw, else said in words in its place */
  readonly chart?: StackedBars;
}

/** What becomes of a sheet that has the name already: the new one is numbered, or takes its place. */
export type IfSheetIsThere = "number" | "replace";

export interface SheetSummary {
  /** stays the sheet's own when it is renamed or moved */
  readonly id: string;
  readonly name: string;
  /** false where the user, or whoever made the file, has hidden it */
  readonly visible: boolean;
  readonly isProtected: boolean;
}

/** Raised with words for the user: what was refused, and the remedy. */
export class WorkbookRefusal extends Error {
  override readonly name = "WorkbookRefusal";
}

/** Raised where some of the cells were written and then the workbook refused. */
export class PartlyWritten extends WorkbookRefusal {
  /**
   * @param written the cells that hold, or may hold, what was to be written
   * @param undo takes back those that do
   */
  constructor(
    message: string,
    readonly written: readonly CellEdit[],
    readonly undo: UndoStep,
    options?: ErrorOptions,
  ) {
    super(message, options);
  }
}

/**
 * All that the task pane knows of a workbook. The workbench's grid and Excel both implement it, and
 * one suite of tests runs over both.
 */
export interface WorkbookPort {
  sheets(): Promise<readonly SheetSummary[]>;
  activeSheet(): Promise<string>;
  /** A frozen copy of the used range: one read. */
  read(sheet: string): Promise<Sheet>;
  /** Colours rows; what the user's own cells looked like is kept so that `clearFlags` restores it. */
  showFlags(sheet: string, flags: readonly RowFlag[], progress?: (done: number) => void): Promise<void>;
  /** Restores the user's own formats, also after save, close and reopen. */
  clearFlags(sheet: string): Promise<void>;
  hasFlags(sheet: string): Promise<boolean>;
  /** Those of the cells that hold a formula. */
  formulaCells(sheet: string, cells: readonly string[]): Promise<ReadonlySet<string>>;
  /** Writes values, never coercing texts. Gives the way back; raises `PartlyWritten` where it ends half way. */
  writeCells(sheet: string, edits: readonly CellEdit[]): Promise<UndoStep>;
  /**
   * Adds a sheet behind the others and turns to it; gives its name, `Totals (2)` where there is a `Totals`.
   * `replace` empties a sheet of that name first: ask the user before.
   */
  addSheet(name: string, content: SheetContent, ifThere?: IfSheetIsThere): Promise<string>;
  /** Selects a cell and brings it into view. */
  goTo(sheet: string, cell: string): Promise<void>;
  /** The workbook's defined name `Barwright.Standard` and other settings kept in the file. */
  setting(name: string): Promise<string | null>;
  saveSetting(name: string, value: string | null): Promise<void>;
  onSelection(listener: (place: { sheet: string; row: number; column: number }) => void): Unsubscribe;
  /** Cells the user changed, as the sheet's rows from 0. */
  onChange(listener: (place: { sheet: string; firstRow: number; lastRow: number }) => void): Unsubscribe;
  /** Tells that sheets may have come, gone, moved, been renamed, hidden or shown. */
  onSheets(listener: () => void): Unsubscribe;
  /** Recalculates every BAR formula; gives how many there are. */
  recalculate(): Promise<number>;
}
