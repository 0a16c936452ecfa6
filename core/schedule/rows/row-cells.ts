import { beginsWithWord, isWord, plainWords } from "../cells/row-words";
import type { Cell } from "../sheet";

/** "Page 2 of 3", "Schedule 9 page 2", "Blatt 4" */
const PAGE =
  /(?:^|\s)(?:page|pg|sheet|blatt|seite|feuille|pagina|hoja|folha|foglio|blad|strona|sayfa)\s*(?:no\s*)?\d+(?:\s*(?:of|\/|von|de|sur|di|van|z)\s*\d+)?$/;

/** True where the first text of a row belongs to a title block or ends the schedule. */
export function isTitleOrFoot(cells: readonly Cell[], filled: readonly number[]): boolean {
  const first = filled.find((column) => typeof cells[column] === "string");
  if (first === undefined) return false;
  const plain = plainWords(String(cells[first]));
  if (PAGE.test(plain)) return true;
  return beginsWithWord("title", plain) || isWord("foot", plain);
}

/** "Prepared by: a.n.", "Rev: B": words, a colon, and what is filled in behind it */
const LABELLED = /^\p{L}[^:\d]{1,30}:(?:\s|$)/u;
const FEWEST_LABELS = 3;

/** Only texts of which each says of itself what it is, as in a title block at the foot of a page. */
export function areLabelled(cells: readonly Cell[], filled: readonly number[]): boolean {
  return filled.length >= FEWEST_LABELS && filled.every((column) => isLabelled(cells[column]));
}

export const isLabelled = (cell: Cell | undefined): boolean =>
  typeof cell === "string" && LABELLED.test(cell.trim());

/** The columns in which something stands, rising. */
export function filledColumns(cells: readonly Cell[]): number[] {
  const filled: number[] = [];
  for (let column = 0; column < cells.length; column += 1) {
    const cell = cells[column];
    if (cell === null || cell === undefined) continue;
    if (typeof cell === "string" && cell.trim() === "") continue;
    filled.push(column);
  }
  return filled;
}

/** The first of these cells as the user sees it. */
export function labelOf(cells: readonly Cell[], filled: readonly number[]): string {
  return shownText(cells[filled[0] ?? -1]);
}

/** A cell as the user sees it; empty for a blank one. */
export function shownText(cell: Cell | undefined): string {
  if (cell === null || cell === undefined) return "";
  if (typeof cell === "object") return cell.error;
  return String(cell).trim();
}
