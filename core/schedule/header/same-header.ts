import type { Standard } from "../../standards/port";
import type { ReadOptions } from "../read-options";
import type { Sheet } from "../sheet";
import { sheetAccess } from "../sheet-access";
import { findHeader, type Header } from "./find-header";

/** Whether the words of a header mean the same over the cells that stand under it in another state of its sheet. */
export function sameHeader(
  header: Header,
  standard: Standard,
  options: ReadOptions,
  least: number | undefined,
): (changed: Sheet) => boolean {
  return (changed) => {
    const source = { rowCount: changed.rowCount, ...sheetAccess(changed, options) };
    const again = findHeader(source, header.top, standard, least);
    return JSON.stringify(again) === JSON.stringify(header);
  };
}
