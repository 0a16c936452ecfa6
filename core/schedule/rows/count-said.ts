import { LONGEST_WORDS } from "../cells/longest-text";
import { partsSaid } from "../header/recognise-header";
import type { Cell } from "../sheet";

/** rows of the tallest title block */
const TITLE_ROWS = 8;

/** "each" where a sentence over the head of a list says that its numbers are those of one member: "quantities are per element". */
export function countSaid(cellsOf: (row: number) => readonly Cell[], top: number): "each" | null {
  for (let row = top - 1; row >= Math.max(0, top - TITLE_ROWS); row -= 1) {
    for (const cell of cellsOf(row)) {
      if (typeof cell !== "string" || cell.length > LONGEST_WORDS) continue;
      for (const sentence of cell.split(/[.;]\s/)) {
        const parts = partsSaid(sentence);
        const isOfOne = parts.has("one") || parts.has("per");
        if (
          parts.has("count") &&
          parts.has("member") &&
          isOfOne &&
          !parts.has("total") &&
          !/\d/.test(sentence)
        )
          return "each";
      }
    }
  }
  return null;
}
