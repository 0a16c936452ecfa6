import { derivation } from "../shapes/derivation";
import { isRefusal } from "../units/refusal";
import { BAR_ARGUMENTS, BAR_PLACES, readBar } from "./bar-arguments";
import { blockFunction } from "./lift";

/** BAR.EXPLAIN: the derivation of a bar's lengths, a row a line. */
export const EXPLAIN = blockFunction({
  name: "EXPLAIN",
  description:
    "Derivation of a bar's lengths, line by line: formula, numbers, source and how far it may be trusted",
  args: BAR_ARGUMENTS,
  block(row) {
    const bar = readBar(row, BAR_PLACES);
    return isRefusal(bar) ? bar : derivation(bar.shape).map((line) => [line]);
  },
});
