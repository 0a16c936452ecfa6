import { cutLength } from "../shapes/cut-length";
import { fromMillimetres } from "../units/convert-length";
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
import { rowFunction } from "./lift";

const PLACES = { shape: 0, size: 1, dims: 2, standard: 3, former: 4, use: 5 };

/** BAR.CUTLENGTH: the length to schedule and cut, rounded as the standard says, in its unit. */
export const CUTLENGTH = rowFunction({
  name: "CUTLENGTH",
  description: "Length to schedule and cut: the standard's printed formula and rounding, else by geometry",
  args: [SHAPE_ARGUMENT, SIZE_ARGUMENT, DIMS_ARGUMENT, STANDARD_ARGUMENT, FORMER_ARGUMENT, USE_ARGUMENT],
  row(row) {
    const bar = readBar(row, PLACES);
    if (isRefusal(bar)) return bar;
    const cut = cutLength(bar.shape);
    return isRefusal(cut) ? cut : fromMillimetres(cut.length, bar.standard.unit);
  },
});
