import { developedLength } from "../shapes/developed-length";
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

/** BAR.DEVELOPED: length on the centre line by exact geometry, unrounded, in the standard's unit. */
export const DEVELOPED = rowFunction({
  name: "DEVELOPED",
  description: "Developed length on the centre line by exact geometry, unrounded, in the standard's unit",
  args: [SHAPE_ARGUMENT, SIZE_ARGUMENT, DIMS_ARGUMENT, STANDARD_ARGUMENT, FORMER_ARGUMENT, USE_ARGUMENT],
  row(row) {
    const bar = readBar(row, PLACES);
    if (isRefusal(bar)) return bar;
    const developed = developedLength(bar.shape);
    return isRefusal(developed) ? developed : fromMillimetres(developed.length, bar.standard.unit);
  },
});
