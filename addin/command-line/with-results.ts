import { functionEnvironment } from "../workbook/function-environment";
import { patchWorkbook } from "../xlsx/patch/patch-workbook";
import { openWorkbook } from "../xlsx/read/open-workbook";
import { nativeDeflater } from "./native-deflater";
import { recalculateBook } from "./recalculate-book";

/** The workbook with the results of its formulas stored, as a spreadsheet program saves them. */
export function withResults(bytes: Uint8Array, standard: string): Uint8Array {
  const workbook = openWorkbook(bytes);
  const { writes, formulas } = recalculateBook(workbook, functionEnvironment(workbook, standard));
  if (formulas === 0) return bytes;
  const sheets = new Map([...writes].map(([sheet, written]) => [sheet, { writes: written, stale: [] }]));
  return patchWorkbook(workbook, { sheets, keepsResults: true }, { newDeflater: nativeDeflater });
}
