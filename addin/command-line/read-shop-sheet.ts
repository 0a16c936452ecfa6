import { isShopSheet, readShop, type Shop } from "../../core/shop";
import type { Standard } from "../../core/standards";
import { cellAddress } from "../workbook/cell-address";
import type { Book } from "./open-book";
import type { Streams } from "./streams";

/** The Shop sheet of a book: what it says, and the sheet's own number of its trial log's header row. */
export interface ShopOfBook {
  readonly shop: Shop | null;
  readonly logRow: number;
}

/** Reads the sheet called Shop, however it is spelled; a cell that cannot be read is told in a note. */
export function readShopSheet(book: Book, standard: Standard, streams: Streams): ShopOfBook {
  const name = book.sheetNames.find(isShopSheet);
  if (name === undefined) return { shop: null, logRow: 1 };
  const sheet = book.read(name);
  const shop = readShop(sheet, standard);
  for (const { row, column, typed, wanted } of shop.problems) {
    const address = cellAddress(sheet.top + row, sheet.left + column);
    streams.note(`${name}!${address}: "${typed}" is not known here: write ${wanted}`);
  }
  return { shop, logRow: sheet.top + (shop.trials?.top ?? 0) + 1 };
}
