import type { Sheet } from "../schedule/sheet";
import { hasShopName } from "../shop/has-shop-name";
import { NOTHING_OWN, type OwnStandard } from "../standards/own-standard";
import type { Standard } from "../standards/port";
import { resolveStandard } from "../standards/resolve-standard";
import { isRefusal } from "../units/refusal";
import { isOwnSheet } from "./own-sheet";
import { joinOwn, readOwn } from "./read-own";

/**
 * The standard as a workbook has it: with what its sheet Standard says, before what the standard brings of a
 * file. Asked again of its answer it gives the same, so that every surface may ask.
 */
export function standardOfBook(standard: Standard, sheets: readonly Sheet[]): Standard {
  const own = ownOfSheets(sheets);
  if (own === null) return standard;
  const resolved = resolveStandard(standard.id, joinOwn(own, standard.own));
  return isRefusal(resolved) ? standard : resolved;
}

/** The sheet of a workbook that holds what its owner looked up; null where there is none. */
export function ownSheetOf(sheets: readonly Sheet[]): Sheet | null {
  return sheets.find(isOwnSheet) ?? null;
}

/** What the workbook's sheet Standard says, and the laps of its Shop sheet; null where it has neither. */
export function ownOfSheets(sheets: readonly Sheet[]): OwnStandard | null {
  const sheet = ownSheetOf(sheets);
  const shop = sheets.find(({ name }) => hasShopName(name));
  const laps = shop === undefined ? [] : readOwn(shop).own.laps;
  if (sheet === null) return laps.length === 0 ? null : joinOwn(NOTHING_OWN, { ...NOTHING_OWN, laps });
  const { own } = readOwn(sheet);
  return laps.length === 0 ? own : joinOwn(own, { ...NOTHING_OWN, laps });
}
