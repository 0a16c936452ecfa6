import type { Cell, Sheet } from "../schedule/sheet";
import { SHOP_COLUMNS, SHOP_TITLES } from "./shop-words.data";

export type ShopColumn = keyof typeof SHOP_COLUMNS;

/** A run of rows under one header row of the Shop sheet. */
export interface ShopSection {
  readonly headerRow: number;
  /** column within the used range, by what it holds */
  readonly columns: ReadonlyMap<ShopColumn, number>;
  /** unit that a head names behind its word */
  readonly units: ReadonlyMap<ShopColumn, ShopUnit>;
  /** rows that hold something, in order */
  readonly rows: readonly number[];
  readonly firstColumn: number;
  readonly lastColumn: number;
}

/** A unit that may stand behind a word of the Shop sheet. */
export type ShopUnit = "mm" | "in" | "kg" | "lb" | "c" | "f" | "mpa";

/** What the rows under a header are, by its words. */
export type SectionKind =
  | "rates"
  | "trials"
  | "plates"
  | "stock"
  | "limits"
  | "pours"
  | "cutters"
  | "benders";

/** Null for a header whose words make no section. */
export function sectionKind({ columns }: Pick<ShopSection, "columns">): SectionKind | null {
  if (columns.has("bentTo") && columns.has("released")) return "trials";
  if (isRates(columns)) return "rates";
  if (columns.has("bars") && columns.has("size")) return "plates";
  if (columns.has("stockLength")) return "stock";
  if (columns.has("limit") && columns.has("value")) return "limits";
  if (columns.has("pour") && columns.has("date")) return "pours";
  if (columns.has("kerf") || columns.has("endCrop")) return "cutters";
  return columns.has("machine") ? "benders" : null;
}

/** Sizes, and what a tonne or a bend of them costs or takes. */
function isRates(columns: ReadonlyMap<ShopColumn, number>): boolean {
  return columns.has("size") && RATES.some((column) => columns.has(column));
}

/** Columns that only a table of rates has. */
const RATES = ["supply", "cutting", "bending", "fixing", "hours", "bendHours"] as const;

const FEWEST_WORDS = 2;

const KNOWN: ReadonlyMap<string, ShopColumn> = new Map(
  (Object.keys(SHOP_COLUMNS) as ShopColumn[]).flatMap((column) =>
    SHOP_COLUMNS[column].map((word) => [word, column] as const),
  ),
);

/** Sections of a Shop sheet: a row with two or more known heads begins one, a blank row or a title ends it. */
export function findSections(sheet: Sheet): ShopSection[] {
  const sections: ShopSection[] = [];
  for (let row = 0; row < sheet.rowCount; row += 1) {
    const { columns, units } = headsOf(sheet, row);
    if (columns.size < FEWEST_WORDS) continue;
    const rows: number[] = [];
    let next = row + 1;
    while (
      next < sheet.rowCount &&
      !isBlankRow(sheet, next) &&
      !isTitle(sheet, next) &&
      headsOf(sheet, next).columns.size < FEWEST_WORDS
    ) {
      rows.push(next);
      next += 1;
    }
    const places = filledColumns(sheet, row);
    sections.push({
      headerRow: row,
      columns,
      units,
      rows,
      firstColumn: places[0]!,
      lastColumn: places.at(-1)!,
    });
    row = next - 1;
  }
  return sections;
}

/** True for a row that holds one cell only, and in it the title of a table. */
export function isTitle(sheet: Sheet, row: number): boolean {
  const filled = filledCells(sheet, row);
  const words = plainWords(filled.length === 1 ? sheet.cell(row, filled[0]!) : null);
  return (
    (SHOP_TITLES.alone as readonly string[]).includes(words) ||
    SHOP_TITLES.first.some((title) => words === title || words.startsWith(`${title} `))
  );
}

/** Columns of a row that hold anything. */
export function filledCells(sheet: Sheet, row: number): number[] {
  const filled: number[] = [];
  for (let column = 0; column < sheet.columnCount; column += 1) {
    const cell = sheet.cell(row, column);
    if (cell !== null && !(typeof cell === "string" && cell.trim() === "")) filled.push(column);
  }
  return filled;
}

/** Known heads of a row. */
export const headCount = (sheet: Sheet, row: number): number => headsOf(sheet, row).columns.size;

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

/** Words apart from the unit behind them: "orbit radius in" is an orbit radius in inches. */
export function wordsAndUnit(cell: Cell): { readonly words: string; readonly unit: ShopUnit | null } {
  const all = plainWords(cell);
  const found = /^(.+) (mm|in|inch|inches|kg|lb|lbs|c|f|mpa)$/.exec(all);
  if (found === null) return { words: all, unit: null };
  return { words: found[1]!, unit: (UNIT_SPELLED.get(found[2]!) ?? found[2]!) as ShopUnit };
}

const UNIT_SPELLED: ReadonlyMap<string, ShopUnit> = new Map([
  ["inch", "in"],
  ["inches", "in"],
  ["lbs", "lb"],
]);

function headsOf(sheet: Sheet, row: number): Pick<ShopSection, "columns" | "units"> {
  const columns = new Map<ShopColumn, number>();
  const units = new Map<ShopColumn, ShopUnit>();
  for (let column = 0; column < sheet.columnCount; column += 1) {
    const { words, unit } = wordsAndUnit(sheet.cell(row, column));
    const kind = KNOWN.get(words) ?? KNOWN.get(plainWords(sheet.cell(row, column)));
    if (kind === undefined || columns.has(kind)) continue;
    columns.set(kind, column);
    if (unit !== null) units.set(kind, unit);
  }
  return { columns, units };
}

function filledColumns(sheet: Sheet, row: number): number[] {
  const filled: number[] = [];
  for (let column = 0; column < sheet.columnCount; column += 1) {
    if (plainWords(sheet.cell(row, column)) !== "") filled.push(column);
  }
  return filled;
}

function isBlankRow(sheet: Sheet, row: number): boolean {
  return filledCells(sheet, row).length === 0;
}
