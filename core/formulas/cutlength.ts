import { cutLength } from "../shapes/cut-length";
import { fromMillimetres } from "../units/convert-length";
import { isRefusal } from "../units/refusal";
import { BAR_ARGUMENTS, BAR_PLACES, readBar } from "./bar-arguments";
import { rowFunction } from "./lift";

/** BAR.CUTLENGTH: the length to schedule and cut, rounded as the standard says, in its unit. */
export const CUTLENGTH = rowFunction({
  name: "CUTLENGTH",
  description: "Length to schedule and cut: the standard's printed formula and rounding, else by geometry",
  args: BAR_ARGUMENTS,
  row(row) {
    const bar = readBar(row, BAR_PLACES);
    if (isRefusal(bar)) return bar;
    const cut = cutLength(bar.shape);
    return isRefusal(cut) ? cut : fromMillimetres(cut.length, bar.standard.unit);
  },
});
