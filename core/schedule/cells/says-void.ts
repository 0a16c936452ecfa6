import type { Cell } from "../sheet";
import { isWord, plainWords } from "./row-words";

const SHORTEST = 4;

/** "CANCELLED" in place of a size: the bar is none any more. */
export function saysVoid(cell: Cell | undefined): boolean {
  return (
    typeof cell === "string" &&
    cell.length >= SHORTEST &&
    !/\d/.test(cell) &&
    isWord("superseded", plainWords(cell))
  );
}
