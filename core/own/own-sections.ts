import type { Cell, Sheet } from "../schedule/sheet";
import { FIGURES_TITLE, LAPS_TITLE, OWN_COLUMNS, SHAPES_TITLE } from "./own-words.data";

export type OwnColumn = keyof typeof OWN_COLUMNS;
export type OwnTable = "figures" | "shapes" | "laps";

/** Rows under one header row of the sheet Standard. */
export interface OwnSection {
  readonly table: OwnTable;
  readonly columns: ReadonlyMap<OwnColumn, number>;
  readonly rows: readonly number[];
}

const KNOWN: ReadonlyMap<string, OwnColumn> = new Map(
  (Object.keys(OWN_COLUMNS) as OwnColumn[]).flatMap((column) =>
    OWN_COLUMNS[column].map((word) => [word, column] as const),
  ),
);

/** The tables of a sheet, each under its own heads; a title or other heads end one, a blank row does not. */
export function ownSections(sheet: Sheet): OwnSection[] {
  const sections: OwnSection[] = [];
  let open: { table: OwnTable; columns: ReadonlyMap<OwnColumn, number>; rows: number[] } | null = null;
  for (let row = 0; row < sheet.rowCount; row += 1) {
    const columns = headsOf(sheet, row);
    const table = tableOf(columns);
    if (table !== null) {
      open = { table, columns, rows: [] };
      sections.push(open);
    } else if (isTitle(sheet.cell(row, 0))) open = null;
    else if (!isBlank(sheet, row)) open?.rows.push(row);
  }
  return sections;
}

const TITLES = new Set([FIGURES_TITLE, SHAPES_TITLE, LAPS_TITLE]);

function isTitle(cell: Cell): boolean {
  return typeof cell === "string" && TITLES.has(cell.trim());
}

function tableOf(columns: ReadonlyMap<OwnColumn, number>): OwnTable | null {
  if (columns.has("figure") && columns.has("copy")) return "figures";
  if (columns.has("code") && columns.has("course")) return "shapes";
  return columns.has("size") && columns.has("lap") ? "laps" : null;
}

function headsOf(sheet: Sheet, row: number): ReadonlyMap<OwnColumn, number> {
  const columns = new Map<OwnColumn, number>();
  for (let column = 0; column < sheet.columnCount; column += 1) {
    const known = KNOWN.get(plain(sheet.cell(row, column)));
    if (known !== undefined && !columns.has(known)) columns.set(known, column);
  }
  return columns;
}

function isBlank(sheet: Sheet, row: number): boolean {
  for (let column = 0; column < sheet.columnCount; column += 1) {
    const cell = sheet.cell(row, column);
    if (cell !== null && !(typeof cell === "string" && cell.trim() === "")) return false;
  }
  return true;
}

function plain(cell: Cell): string {
  return typeof cell === "string" ? cell.toLowerCase().replace(/\s+/g, " ").trim() : "";
}
