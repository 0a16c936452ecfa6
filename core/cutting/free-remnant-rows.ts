import type { Sheet } from "../schedule/sheet";
import { type ShopSection, sectionKind } from "../shop/find-sections";
import type { ShopStock } from "../shop/shop";
import { SHOP_REMNANT_COLUMNS } from "../shop/shop-words.data";

export type RemnantColumn = (typeof SHOP_REMNANT_COLUMNS)[number];

/** A row of the Shop sheet that a remnant can be written into; rows and columns within the used range. */
export interface FreeRow {
  readonly row: number;
  /** a list may do without heats */
  readonly columns: Readonly<Record<RemnantColumn, number>> & { readonly heat?: number };
  /** what stands there without a bar on hand, where it is written over */
  readonly replaces: ShopStock | null;
}

/** rows left free under a trial log that ends the sheet, so that it can grow */
const ROOM_FOR_TRIALS = 20;

/**
 * Free rows for so many remnants. First lines of remnants that hold no bar and nothing besides, then blank
 * rows under a list, of which the last is left so that the next title stays apart; at last rows under a
 * heading of their own below everything, whose row is `headingRow`.
 */
export function freeRemnantRows(
  sheet: Sheet,
  sections: readonly ShopSection[],
  emptied: readonly ShopStock[],
  wanted: number,
): { readonly rows: readonly FreeRow[]; readonly headingRow: number | null } {
  const lists = sections.flatMap((section) => {
    const columns = sectionKind(section) === "stock" ? columnsOf(section) : null;
    return columns === null ? [] : [{ section, columns }];
  });
  const rows: FreeRow[] = [];
  for (const { section, columns } of lists) {
    for (const line of emptied) {
      const isOurs =
        section.rows.includes(line.row) && filled(sheet, line.row) <= SHOP_REMNANT_COLUMNS.length;
      if (isOurs && rows.length < wanted) rows.push({ row: line.row, columns, replaces: line });
    }
  }
  for (const { section, columns } of lists) {
    let row = (section.rows.at(-1) ?? section.headerRow) + 1;
    while (rows.length < wanted && filled(sheet, row) === 0 && filled(sheet, row + 1) === 0) {
      rows.push({ row, columns, replaces: null });
      row += 1;
    }
  }
  if (rows.length === wanted) return { rows, headingRow: null };
  const last = sections.at(-1);
  const endsWithTrials = last !== undefined && sectionKind(last) === "trials";
  const headingRow = sheet.rowCount + (endsWithTrials ? ROOM_FOR_TRIALS : 1);
  const columns = Object.fromEntries([...SHOP_REMNANT_COLUMNS, "heat"].map((column, at) => [column, at]));
  for (let row = headingRow + 2; rows.length < wanted; row += 1)
    rows.push({ row, columns: columns as FreeRow["columns"], replaces: null });
  return { rows, headingRow };
}

/** Columns of a list that can say of a remnant all that must be said; null where one is missing. */
function columnsOf({ columns }: ShopSection): FreeRow["columns"] | null {
  const found = SHOP_REMNANT_COLUMNS.map((column) => [column, columns.get(column)] as const);
  const heat = columns.get("heat");
  const all = heat === undefined ? found : [...found, ["heat", heat] as const];
  return found.every(([, at]) => at !== undefined) ? (Object.fromEntries(all) as FreeRow["columns"]) : null;
}

/** Cells that hold anything; a formula that shows nothing counts too. */
function filled(sheet: Sheet, row: number): number {
  let count = 0;
  for (let column = 0; row < sheet.rowCount && column < sheet.columnCount; column += 1) {
    if (sheet.cell(row, column) !== null) count += 1;
  }
  return count;
}
