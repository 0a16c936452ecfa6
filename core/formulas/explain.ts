import { derivation } from "../shapes/derivation";
import { isRefusal } from "../units/refusal";
import {
  DIMS_ARGUMENT,
  FORMER_ARGUMENT,
  readBar,
  SHAPE_ARGUMENT,
  SIZE_ARGUMENT,
  STANDARD_ARGUMENT,
  USE_ARGUMENT,
} from "./bar-arguments";
import { blockFunction } from "./lift";

const PLACES = { shape: 0, size: 1, dims: 2, standard: 3, former: 4, use: 5 };

/** BAR.EXPLAIN: the derivation of a bar's lengths, a row a line. */
export const EXPLAIN = blockFunction({
  name: "EXPLAIN",
  description:
    "Derivation of a bar's lengths, line by line: formula, numbers, source and how far it may be trusted",
  args: [SHAPE_ARGUMENT, SIZE_ARGUMENT, DIMS_ARGUMENT, STANDARD_ARGUMENT, FORMER_ARGUMENT, USE_ARGUMENT],
  block(row) {
    const bar = readBar(row, PLACES);
    return isRefusal(bar) ? bar : derivation(bar.shape).map((line) => [line]);
  },
});
