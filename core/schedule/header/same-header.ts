import type { Standard } from "../../standards/port";
import type { ReadOptions } from "../read-options";
import type { Sheet } from "../sheet";
import { sheetAccess } from "../sheet-access";
import { findHeader, type Header, MOST_ROWS } from "./find-header";
import { knownWords } from "./known-words";

/** Whether no header begins above it, and the words of a header mean the same over the cells that stand under it in another state of its sheet. */
export function sameHeader(
  header: Header,
  standard: Standard,
  options: ReadOptions,
  least: number | undefined,
): (changed: Sheet) => boolean {
  return (changed) => {
    const access = sheetAccess(changed, options);
    const source = { rowCount: changed.rowCount, ...access };
    const mayBegin = (row: number): boolean =>
      least !== undefined || access.corrections > 0 || knownWords(access.cells(row)) >= 2;
    for (let row = Math.max(0, header.bottom + 1 - MOST_ROWS); row < header.top; row += 1)
      if (mayBegin(row) && findHeader(source, row, standard, least) !== null) return false;
    const again = findHeader(source, header.top, standard, least);
    return JSON.stringify(again) === JSON.stringify(header);
  };
}
