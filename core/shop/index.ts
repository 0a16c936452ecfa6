export { isShopSheet } from "./is-shop-sheet";
export { machinesOfBook, ratesOfBook } from "./machines-of-book";
export { readShop } from "./read-shop";
export {
  type Cutter,
  SHOP_SHEET,
  type Shop,
  type ShopLimits,
  type ShopProblem,
  type ShopStock,
} from "./shop";
export { shopTemplate, type TemplateRow } from "./shop-template";
export { Workshop } from "./workshop";
