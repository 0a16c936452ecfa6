import { developedLength } from "../shapes/developed-length";
import { fromMillimetres } from "../units/convert-length";
import { isRefusal } from "../units/refusal";
import { BAR_ARGUMENTS, BAR_PLACES, readBar } from "./bar-arguments";
import { rowFunction } from "./lift";

/** BAR.DEVELOPED: length on the centre line by exact geometry, unrounded, in the standard's unit. */
export const DEVELOPED = rowFunction({
  name: "DEVELOPED",
  description: "Developed length on the centre line by exact geometry, unrounded, in the standard's unit",
  args: BAR_ARGUMENTS,
  row(row) {
    const bar = readBar(row, BAR_PLACES);
    if (isRefusal(bar)) return bar;
    const developed = developedLength(bar.shape);
    return isRefusal(developed) ? developed : fromMillimetres(developed.length, bar.standard.unit);
  },
});
