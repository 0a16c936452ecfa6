import { isWord, plainWords } from "../cells/row-words";
import type { Cell } from "../sheet";
import { LEAST_SIZES } from "./header-blocks";

/** "kg/m", beside it a figure under each size: it says what those are, and is no word of the column that it stands in. */
export function isRowOfRates(cells: readonly Cell[]): boolean {
  const filled = cells.filter((cell) => cell !== null && cell !== undefined && cell !== "");
  const [first, ...rest] = filled;
  if (typeof first !== "string" || rest.length < LEAST_SIZES) return false;
  return isWord("per-metre", plainWords(first)) && rest.every((cell) => typeof cell === "number");
}
