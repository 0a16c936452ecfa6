import { isShopSheet, Workshop } from "../../core/shop";
import type { Standard } from "../../core/standards";
import { cellAddress } from "../workbook/cell-address";
import type { Book } from "./open-book";
import type { Streams } from "./streams";

/** Reads the sheet called Shop, however it is spelled; a cell that cannot be read is told in a note. */
export function readShopSheet(book: Book, standard: Standard, streams: Streams): Workshop {
  const name = book.sheetNames.find(isShopSheet);
  if (name === undefined) return new Workshop(null, standard);
  const sheet = book.read(name);
  const workshop = new Workshop(sheet, standard);
  for (const { row, column, typed, wanted } of workshop.shop.problems) {
    const address = cellAddress(sheet.top + row, sheet.left + column);
    streams.note(`${name}!${address}: "${typed}" is not known here: write ${wanted}`);
  }
  return workshop;
}
