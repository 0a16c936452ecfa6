import { readTables, type WorkbookTable } from "../../xlsx/read/read-tables";
import type { GridFile } from "../grid-file";

type Opened = NonNullable<GridFile["opened"]>;

const read = new WeakMap<object, readonly WorkbookTable[]>();

/**
 * The tables of the file that stand where they stood when it was opened: of one whose sheet was renamed, or whose
 * rows or columns came or went, the cells are no longer known.
 */
export function tablesThere({ file, moves, names }: Opened): readonly WorkbookTable[] {
  const all = read.get(file.workbook) ?? readTables(file.workbook);
  read.set(file.workbook, all);
  return all.filter(({ sheet }) => {
    const id = file.sheetIds[file.readings.findIndex(({ name }) => name === sheet)] ?? "";
    return moves.rows(id).isUnchanged && moves.columns(id).isUnchanged && names(id) === sheet;
  });
}
