import type { Sheet } from "../schedule/sheet";
import { filledCells, findSections, isTitle, sectionKind } from "./find-sections";
import { hasShopName } from "./has-shop-name";

/**
 * True for the sheet that says what the yard owns: by its name and by its own titles or heads, for a schedule may be
 * called so. A sheet of that name without a cell is one too, to be filled in.
 */
export function isShopSheet(sheet: Sheet): boolean {
  return hasShopName(sheet.name) && holdsShop(sheet);
}

function holdsShop(sheet: Sheet): boolean {
  let isEmpty = true;
  for (let row = 0; row < sheet.rowCount; row += 1) {
    if (isTitle(sheet, row)) return true;
    isEmpty &&= filledCells(sheet, row).length === 0;
  }
  if (isEmpty) return true;
  // a list of bars has heads such as "Size" and "Bars" among many that a yard's tables have not
  return findSections(sheet).some(
    (section) =>
      sectionKind(section) !== null &&
      section.columns.size * 2 >= filledCells(sheet, section.headerRow).length,
  );
}
