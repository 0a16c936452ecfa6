import type { Sheet } from "../schedule/sheet";
import { filledCells, findSections, isTitle, sectionKind } from "./find-sections";
import { hasShopName } from "./has-shop-name";

/**
 * True for the sheet that says what the yard owns: by its name and by its own titles or heads, for a schedule may be
 * called so. A sheet of that name without a cell, or of notes alone, is one too, to be filled in.
 */
export function isShopSheet(sheet: Sheet): boolean {
  return hasShopName(sheet.name) && holdsShop(sheet);
}

/** cells of a row: no list of bars has fewer columns */
const LEAST_OF_A_LIST = 3;

function holdsShop(sheet: Sheet): boolean {
  let most = 0;
  for (let row = 0; row < sheet.rowCount; row += 1) {
    if (isTitle(sheet, row)) return true;
    most = Math.max(most, filledCells(sheet, row).length);
  }
  if (most < LEAST_OF_A_LIST) return true;
  // a list of bars has heads such as "Size" and "Bars" among many that a yard's tables have not
  return findSections(sheet).some(
    (section) =>
      sectionKind(section) !== null &&
      section.columns.size * 2 >= filledCells(sheet, section.headerRow).length,
  );
}
