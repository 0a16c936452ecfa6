import type { Cutter, Shop } from "./shop";

/** The one shear or saw of the yard, by whose end crop and kerf bars are cut; undefined where there is none, or several. */
export function soleCutter(shop: Shop | null): Cutter | undefined {
  return shop?.cutters.length === 1 ? shop.cutters[0] : undefined;
}
