import { isRefusal } from "../units/refusal";
import { COMPENSATION_ARGUMENTS, readCompensation } from "./compensation";
import { rowFunction } from "./lift";

/** BAR.COMPENSATED: degrees to bend to so that the released bar has the wanted angle; refused where trials do not bear it. */
export const COMPENSATED = rowFunction({
  name: "COMPENSATED",
  description: "Compensated angle: the angle to bend to so that the released bar has the wanted angle",
  args: COMPENSATION_ARGUMENTS,
  row(row, blocks) {
    const found = readCompensation(row, blocks);
    if (isRefusal(found)) return found;
    if (found.method === "plain") return found.plain;
    return found.fit.refusal ?? found.fit.angle;
  },
});
