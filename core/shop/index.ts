export { hasShopName } from "./has-shop-name";
export { isShopSheet } from "./is-shop-sheet";
export { machinesOfBook, ratesOfBook } from "./machines-of-book";
export { readShop } from "./read-shop";
export { SHOP_SHEET } from "./shop";
export { shopTemplate } from "./shop-template";
export { Workshop } from "./workshop";
