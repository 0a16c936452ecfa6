import { isWord, plainWords } from "../cells/row-words";
import type { Cell } from "../sheet";
import { shownText } from "./row-cells";

/** Adds the facts of a title row: "Drawing No." with its value beside it or behind a colon. */
export function addTitleFacts(
  facts: Map<string, string>,
  cells: readonly Cell[],
  filled: readonly number[],
): void {
  for (let index = 0; index < filled.length; index += 1) {
    const cell = cells[filled[index] as number];
    if (typeof cell !== "string") continue;
    const inside = /^([^:=]{2,30})[:=]\s*(\S.*)$/.exec(cell.trim());
    if (inside !== null && isWord("title", plainWords(inside[1] ?? ""))) {
      facts.set(plainWords(inside[1] ?? ""), inside[2] ?? "");
      continue;
    }
    const label = plainWords(cell);
    const next = cells[filled[index + 1] ?? -1];
    if (isWord("title", label) && next !== undefined && next !== null) {
      const value = shownText(next);
      if (!isWord("title", plainWords(value))) facts.set(label, value);
    }
  }
}
