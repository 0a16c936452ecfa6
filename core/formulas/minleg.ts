import { fromMillimetres } from "../units/convert-length";
import { isRefusal } from "../units/refusal";
import {
  gradeOfSize,
  readSize,
  readStandard,
  readUse,
  SIZE_ARGUMENT,
  STANDARD_ARGUMENT,
  USE_ARGUMENT,
} from "./bar-arguments";
import { rowFunction } from "./lift";

/** BAR.MINLEG: least end leg beyond a bend, as an outside dimension, in the standard's unit. */
export const MINLEG = rowFunction({
  name: "MINLEG",
  description: "Least end leg beyond a bend, as an outside dimension, in the standard's unit",
  args: [SIZE_ARGUMENT, STANDARD_ARGUMENT, USE_ARGUMENT],
  row(row) {
    const standard = readStandard(row.cell(1), row);
    if (isRefusal(standard)) return standard;
    const size = readSize(row.cell(0), standard);
    if (isRefusal(size)) return size;
    const use = readUse(row.cell(2), standard);
    if (isRefusal(use)) return use;
    const leg = standard.endLeg(size.diameter, use ?? "main", gradeOfSize(size, standard));
    return isRefusal(leg) ? leg : fromMillimetres(leg.value.outside, standard.unit);
  },
});
