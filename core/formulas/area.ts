import { isRefusal } from "../units/refusal";
import { SIZE_ARGUMENT, STANDARD_ARGUMENT } from "./bar-arguments";
import { rowFunction } from "./lift";
import { barOfRow } from "./size-of-table";

/** BAR.AREA: area of one bar as the standard's table prints it, mm2. */
export const AREA = rowFunction({
  name: "AREA",
  description: "Area of one bar as the standard's table prints it, mm2",
  args: [SIZE_ARGUMENT, STANDARD_ARGUMENT],
  row(row) {
    const bar = barOfRow(row);
    return isRefusal(bar) ? bar : bar.area;
  },
});
