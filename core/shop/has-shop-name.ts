import { SHOP_SHEET } from "./shop";

/** True for the name that the sheet of what the yard owns has, in any case and with spaces around; its content decides. */
export function hasShopName(name: string): boolean {
  return name.trim().toLowerCase() === SHOP_SHEET.toLowerCase();
}
