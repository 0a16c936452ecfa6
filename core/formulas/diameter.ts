import { isRefusal } from "../units/refusal";
import { readSize, readStandard, SIZE_ARGUMENT, STANDARD_ARGUMENT } from "./bar-arguments";
import { rowFunction } from "./lift";

/** BAR.DIAMETER: nominal diameter of a size, mm in every standard. */
export const DIAMETER = rowFunction({
  name: "DIAMETER",
  description: "Nominal diameter of a bar size, always mm",
  args: [SIZE_ARGUMENT, STANDARD_ARGUMENT],
  row(row) {
    const standard = readStandard(row.cell(1), row);
    if (isRefusal(standard)) return standard;
    const size = readSize(row.cell(0), standard);
    return isRefusal(size) ? size : size.diameter;
  },
});
