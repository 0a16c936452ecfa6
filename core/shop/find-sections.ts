import type { Cell, Sheet } from "../schedule/sheet";
import { SHOP_COLUMNS } from "./shop-words.data";

export type ShopColumn = keyof typeof SHOP_COLUMNS;

/** A run of rows under one header row of the Shop sheet. */
export interface ShopSection {
  readonly headerRow: number;
  /** column within the used range, by what it holds */
  readonly columns: ReadonlyMap<ShopColumn, number>;
  /** rows that hold something, in order */
  readonly rows: readonly number[];
  readonly firstColumn: number;
  readonly lastColumn: number;
}

/** What the rows under a header are, by its words. */
export type SectionKind = "trials" | "plates" | "stock" | "limits" | "cutters" | "benders";

/** Null for a header whose words make no section. */
export function sectionKind({ columns }: Pick<ShopSection, "columns">): SectionKind | null {
  if (columns.has("bentTo") && columns.has("released")) return "trials";
  if (columns.has("bars") && columns.has("size")) return "plates";
  if (columns.has("stockLength")) return "stock";
  if (columns.has("limit") && columns.has("value")) return "limits";
  if (columns.has("kerf") || columns.has("endCrop")) return "cutters";
  return columns.has("machine") ? "benders" : null;
}

const FEWEST_WORDS = 2;

const KNOWN: ReadonlyMap<string, ShopColumn> = new Map(
  (Object.keys(SHOP_COLUMNS) as ShopColumn[]).flatMap((column) =>
    SHOP_COLUMNS[column].map((word) => [word, column] as const),
  ),
);

/** Sections of a Shop sheet: a row with two or more known heads begins one, a blank row ends it. */
export function findSections(sheet: Sheet): ShopSection[] {
  const sections: ShopSection[] = [];
  for (let row = 0; row < sheet.rowCount; row += 1) {
    const columns = headsOf(sheet, row);
    if (columns.size < FEWEST_WORDS) continue;
    const rows: number[] = [];
    let next = row + 1;
    while (next < sheet.rowCount && !isBlankRow(sheet, next) && headsOf(sheet, next).size < FEWEST_WORDS) {
      rows.push(next);
      next += 1;
    }
    const places = filledColumns(sheet, row);
    sections.push({ headerRow: row, columns, rows, firstColumn: places[0]!, lastColumn: places.at(-1)! });
    row = next - 1;
  }
  return sections;
}

/** A head's words without brackets, units' punctuation and spare spaces. */
export function plainWords(cell: Cell): string {
  return typeof cell === "string"
    ? cell
        .toLowerCase()
        .replace(/[().,:°]/g, " ")
        .replace(/\s+/g, " ")
        .trim()
    : "";
}

function headsOf(sheet: Sheet, row: number): Map<ShopColumn, number> {
  const heads = new Map<ShopColumn, number>();
  for (let column = 0; column < sheet.columnCount; column += 1) {
    const kind = KNOWN.get(plainWords(sheet.cell(row, column)));
    if (kind !== undefined && !heads.has(kind)) heads.set(kind, column);
  }
  return heads;
}

function filledColumns(sheet: Sheet, row: number): number[] {
  const filled: number[] = [];
  for (let column = 0; column < sheet.columnCount; column += 1) {
    if (plainWords(sheet.cell(row, column)) !== "") filled.push(column);
  }
  return filled;
}

function isBlankRow(sheet: Sheet, row: number): boolean {
  for (let column = 0; column < sheet.columnCount; column += 1) {
    const cell = sheet.cell(row, column);
    if (cell !== null && !(typeof cell === "string" && cell.trim() === "")) return false;
  }
  return true;
}
