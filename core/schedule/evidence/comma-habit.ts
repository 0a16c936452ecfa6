import { LONGEST_VALUE } from "../cells/longest-text";
import type { Cell } from "../sheet";

const COMMA_FOR_SURE = /^\s*[\d. ]*\d,(?:\d{1,2}|\d{4,})\s*$/;
const POINT_FOR_SURE = /^\s*[\d, ]*\d\.(?:\d{1,2}|\d{4,})\s*$/;
const EITHER = /^\s*(?:\d[\d .]*,\d+|\d{1,3}\.\d{3})\s*$/;
const SURELY = 3;

/** The habits of writing decimals that the texts of some rows allow: one where they tell, else both. */
export function commaHabits(rows: readonly (readonly Cell[])[]): readonly boolean[] {
  let commas = 0;
  let points = 0;
  let either = 0;
  for (const cells of rows) {
    for (const cell of cells) {
      if (typeof cell !== "string" || cell.length > LONGEST_VALUE) continue;
      if (COMMA_FOR_SURE.test(cell)) commas += 1;
      if (POINT_FOR_SURE.test(cell)) points += 1;
      if (EITHER.test(cell)) either += 1;
    }
  }
  // a few that tell outweigh none, not each other
  if (commas > SURELY * points + 2) return [true];
  if (points > SURELY * commas + 2) return [false];
  return either > 0 ? [false, true] : [false];
}
