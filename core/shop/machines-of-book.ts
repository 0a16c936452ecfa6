import type { Machine } from "../bending/machine";
import type { Cell, Sheet } from "../schedule/sheet";
import type { Standard } from "../standards/port";
import { isShopSheet } from "./is-shop-sheet";
import { readShop } from "./read-shop";

/**
 * The benders of the workbook's Shop sheet, for the functions that ask which machine bends; undefined where
 * the book has no such sheet, so that any name of a machine is taken.
 */
export function machinesOfBook(sheets: readonly Sheet[], standard: Standard): readonly Machine[] | undefined {
  const shop = sheets.find(isShopSheet);
  return shop === undefined ? undefined : readShop(shop, standard).benders;
}

/** The table of rates of the workbook's Shop sheet with its header row; undefined where it has none. */
export function ratesOfBook(
  sheets: readonly Sheet[],
  standard: Standard,
): readonly (readonly Cell[])[] | undefined {
  const shop = sheets.find(isShopSheet);
  return shop === undefined ? undefined : readShop(shop, standard).rates?.block;
}
