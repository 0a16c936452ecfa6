import { SHOP_SHEET } from "./shop";

/** True for the name of the sheet that says what the yard owns, in any case and with spaces around. */
export function isShopSheet(name: string): boolean {
  return name.trim().toLowerCase() === SHOP_SHEET.toLowerCase();
}
