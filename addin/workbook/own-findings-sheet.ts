import { isFindingsSheet } from "../../core/own/own-papers";
import { type Cell, isCellError, type Sheet } from "../../core/schedule/sheet";
import { CHART_WORDS } from "./stacked-bars";

/** Name of the sheet that findings are written to; numbered where the user has one of that name. */
export const FINDINGS_SHEET = "Findings";

/** Whether a sheet has the name of a findings sheet, numbered or not; what stands on it is another matter. */
export function hasFindingsName(sheet: string): boolean {
  return /^findings( \(\d+\))?$/i.test(sheet);
}

/** Words before the seal, in a cell of the first column. */
const SEAL = "Barwright wrote this sheet, seal ";
const SEAL_REST = ". As long as no cell of it is changed, the next check writes it anew.";

/** The line for one cell of a findings sheet: any change of another cell makes it another. */
export function sealLine(rows: readonly (readonly { readonly value: Cell }[])[]): string {
  return SEAL + seal(rows, ({ value }) => value) + SEAL_REST;
}

/**
 * Whether a sheet is a findings sheet of ours: `untouched` as it was written, `edited` where somebody
 * has written on it since, null where it is none.
 */
export function findingsSheetState(sheet: Sheet): "untouched" | "edited" | null {
  if (!isFindingsSheet(sheet)) return null;
  const said: Cell[] = [];
  const rows = Array.from({ length: sheet.rowCount }, (_, row) =>
    Array.from({ length: sheet.columnCount }, (_, column) => {
      const cell = sheet.cell(row, column);
      if (column > 0 || typeof cell !== "string" || !cell.startsWith(SEAL)) return cell;
      said.push(cell);
      return null;
    }),
  );
  return said.length === 1 && said[0] === SEAL + seal(rows, (cell) => cell) + SEAL_REST
    ? "untouched"
    : "edited";
}

/** FNV-1a over every filled cell with its place, but for what stands for a chart. */
function seal<T>(rows: readonly (readonly T[])[], cellOf: (cell: T) => Cell): string {
  let hash = 0x811c9dc5;
  const add = (text: string): void => {
    for (let at = 0; at < text.length; at += 1) hash = Math.imul(hash ^ text.charCodeAt(at), 0x01000193);
  };
  rows.forEach((cells, row) => {
    cells.forEach((held, column) => {
      const cell = cellOf(held);
      if (cell === null || cell === "" || cell === CHART_WORDS) return;
      add(`${row} ${column} ${typeof cell} `);
      // parts of a long text are not put together
      add(isCellError(cell) ? cell.error : String(cell).replaceAll("\r\n", "\n"));
      add("\n");
    });
  });
  return (hash >>> 0).toString(16).padStart(8, "0");
}
