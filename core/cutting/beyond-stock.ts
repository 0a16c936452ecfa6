import type { BarFacts } from "../bar/bar-facts";
import { barLength } from "../bar/bar-length";
import { isFromCoil } from "../bar/is-from-coil";
import { isRefusal, refusalText } from "../units/refusal";
import { pieceRefusal } from "./cutting-question";
import type { CuttingSupply } from "./cutting-supply";

/** Why no stock of the yard gives a bar's length, as its cut list says; null where one does, or the bar comes off a coil. */
export type BeyondStock = (facts: BarFacts) => string | null;

/** Asks every bar of a book of the same stock as its cut list does. */
export function beyondStock(supply: CuttingSupply): BeyondStock {
  const lines = new Map<string, ReturnType<CuttingSupply["linesOf"]>>();
  return (facts) => {
    const { sizeName } = facts;
    if (!lines.has(sizeName)) lines.set(sizeName, supply.linesOf(sizeName));
    const stock = lines.get(sizeName) ?? null;
    const length = barLength(facts, "to cut");
    if (stock === null || isRefusal(length) || isFromCoil(facts)) return null;
    const piece = { length: length.length, count: 1 };
    const refused = pieceRefusal(piece, { stock, endCrop: supply.endCrop }, supply.unit);
    return refused === null ? null : refusalText(refused, supply.unit);
  };
}
