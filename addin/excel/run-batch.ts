import { WorkbookRefusal } from "../workbook/workbook-port";

/** What Excel's own error codes mean to somebody at the sheet, and what to do about it. */
const REMEDIES: Readonly<Record<string, string>> = {
  AccessDenied:
    "Excel does not allow the change: take off the protection (Review, Unprotect Sheet) or work on a copy",
  InvalidOperationInCellEditMode: "a cell is being edited: finish it with Enter or Esc, then try again",
  RequestPayloadSizeLimitExceeded:
    "Excel on the web takes at most 5 MB at once: split the schedule over two sheets, then try again",
  ResponsePayloadSizeLimitExceeded:
    "Excel on the web gives at most 5 MB at once: move the schedule to a sheet of its own, then try again",
};

export interface BatchOptions {
  /** the sheet it is about, for the words of a refusal */
  readonly sheet?: string;
  /** One undo step for the whole batch, where the version of Excel can. */
  readonly oneUndoStep?: boolean;
}

/**
 * Runs a batch of Excel's API. Errors of Excel come back as refusals with words for the user; the
 * original error stays as their cause.
 */
export async function runBatch<T>(
  batch: (context: Excel.RequestContext) => Promise<T>,
  options: BatchOptions = {},
): Promise<T> {
  try {
    if (options.oneUndoStep && isExcelApi("1.20")) return await Excel.run({ mergeUndoGroup: true }, batch);
    return await Excel.run(batch);
  } catch (error) {
    throw asRefusal(error, options.sheet);
  }
}

/** True where this Excel has a later requirement set than the manifest asks for. */
export function isExcelApi(version: string): boolean {
  return Office.context.requirements.isSetSupported("ExcelApi", version);
}

/** Excel's code of a failed batch; null where the error is no error of Excel. */
export function excelErrorCode(error: unknown): string | null {
  const known = error instanceof WorkbookRefusal ? error.cause : error;
  return known instanceof OfficeExtension.Error ? known.code : null;
}

function asRefusal(error: unknown, sheet: string | undefined): unknown {
  const code = excelErrorCode(error);
  if (code === null || error instanceof WorkbookRefusal) return error;
  const words =
    (code === "ItemNotFound" ? notFound(sheet) : REMEDIES[code]) ??
    `Excel stopped in the middle (${code}): what is already on the sheet stays; try again, or close and reopen the pane`;
  return new WorkbookRefusal(words, { cause: error });
}

function notFound(sheet: string | undefined): string {
  const what = sheet === undefined ? "what was asked for" : `sheet ${sheet}`;
  return `${what} is no longer in the workbook: choose another sheet, then try again`;
}
