import { mkdtempSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { writeNewWorkbook } from "../../addin/xlsx/write/new-workbook";
import type { Cell } from "../../core/schedule";

type Rows = readonly (readonly Cell[])[];

/** A folder of its own, and books in it: a sheet Bars under one header, and the yard's sheet Shop. */
export function booksWithShop(folderName: string, header: readonly Cell[], shop: Rows) {
  const folder = mkdtempSync(join(tmpdir(), `barwright-${folderName}-`));
  const at = (name: string): string => join(folder, name);
  /** `hiddenRows` are rows of the sheet, from 0 */
  const book = (name: string, rows: Rows, hiddenRows: readonly number[] = []): string => {
    const bars = { name: "Bars", rows: [header, ...rows], hiddenRows: new Set(hiddenRows) };
    writeFileSync(at(name), writeNewWorkbook({ sheets: [bars, { name: "Shop", rows: shop }] }));
    return at(name);
  };
  return { at, book };
}
