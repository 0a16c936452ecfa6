import type { BarFacts } from "./bar-facts";

/** figures of a list are rounded, and masses are by one table or another */
const FOLLOWS = 0.01;

/**
 * Whether the row bears out its written length against its dimensions: one dimension in another unit would make the
 * length, or the row's mass or total length follows from it. Then a dimension, or the code, is the slip.
 */
export function isLengthBorneOut(facts: BarFacts): boolean {
  const judged = facts.lengthJudgement;
  if (judged.kind === "slip") return judged.at !== "length";
  return judged.kind === "differs" && (massFollows(facts) || totalLengthFollows(facts));
}

function massFollows({ massRatio }: BarFacts): boolean {
  return massRatio !== null && Math.abs(massRatio - 1) <= FOLLOWS;
}

function totalLengthFollows({ row: { length, totalLength = null }, count }: BarFacts): boolean {
  if (length === null || totalLength === null || count === null) return false;
  return Math.abs(totalLength - count * length) <= FOLLOWS * totalLength;
}
