import { cleanText } from "../cells/clean-text";
import { LONGEST_WORDS } from "../cells/longest-text";
import { recogniseHeader } from "../header/recognise-header";
import type { Cell } from "../sheet";

/** rows of the tallest title block */
const TITLE_ROWS = 8;
const SAID = /^(.*?\p{L}.*?)\s*[:=]\s*(\d{1,4})?(?:\s*\p{L}{1,5}\.?)?$/u;

/** "Anzahl Fertigteile: 6" in one cell or two over the head of a list: members that the list is made for; null where none is said. */
export function membersInTitle(cellsOf: (row: number) => readonly Cell[], top: number): number | null {
  for (let row = top - 1; row >= Math.max(0, top - TITLE_ROWS); row -= 1) {
    const cells = cellsOf(row);
    for (const [at, cell] of cells.entries()) {
      if (typeof cell !== "string" || cell.length > LONGEST_WORDS) continue;
      const [, words = "", figure] = SAID.exec(cleanText(cell)) ?? [];
      if (words === "" || recogniseHeader(words)?.kind !== "members") continue;
      const beside = cells.slice(at + 1).find((one) => one !== null && one !== undefined && one !== "");
      const members = Number(figure ?? beside);
      if (Number.isSafeInteger(members) && members > 0) return members;
    }
  }
  return null;
}
