import { CommandType, type ICommandInfo, type ICommandService, type IExecutionOptions } from "@univerjs/core";
import {
  SetWorksheetColumnCountMutation,
  SetWorksheetRowAutoHeightMutation,
  SetWorksheetRowCountMutation,
} from "@univerjs/preset-sheets-core";

/** A change of the grid's workbook, as the grid's own log of commands has it. */
export interface LoggedEdit {
  readonly id: string;
  readonly params: object;
}

/** True for a change of the workbook, not of what is selected, drawn or calculated. */
function isChange({ id, type }: Readonly<ICommandInfo>, options?: IExecutionOptions): boolean {
  if (type !== CommandType.MUTATION || options?.onlyLocal || options?.["fromFormula"]) return false;
  return id.startsWith("sheet.mutation.") || id.endsWith("defined-name");
}

/** Mutations that the grid makes by itself, or that no file holds. */
const NO_EDITS: ReadonlySet<string> = new Set([
  SetWorksheetRowAutoHeightMutation.id,
  SetWorksheetRowCountMutation.id,
  SetWorksheetColumnCountMutation.id,
]);

/** A change that a file holds. */
export function isEdit(command: Readonly<ICommandInfo>, options?: IExecutionOptions): boolean {
  return isChange(command, options) && !NO_EDITS.has(command.id);
}

/** All changes since a workbook was opened, in their order: done again on the same file they make the same workbook. */
export class EditLog {
  #edits: LoggedEdit[] = [];
  #isWhole = true;

  constructor(
    /** the file as it was opened */
    readonly bytes: Uint8Array,
  ) {}

  get edits(): readonly LoggedEdit[] {
    return this.#edits;
  }

  /** False once a change could not be copied. */
  get isWhole(): boolean {
    return this.#isWhole;
  }

  note(command: Readonly<ICommandInfo>, options?: IExecutionOptions): void {
    // the grid measures rows by itself
    if (!isChange(command, options) || command.id === SetWorksheetRowAutoHeightMutation.id) return;
    try {
      this.#edits.push({ id: command.id, params: structuredClone(command.params ?? {}) });
    } catch {
      this.#isWhole = false;
    }
  }
}

/** Makes the changes of a log on the workbook of that id, which shows the same file. */
export function doAgain(commands: ICommandService, unitId: string, edits: readonly LoggedEdit[]): void {
  for (const { id, params } of edits) commands.syncExecuteCommand(id, { ...params, unitId });
}
