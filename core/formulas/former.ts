import type { FormerQuestion } from "../standards/port";
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

/** BAR.FORMER: least former diameter for fabrication, in the standard's unit. */
export const FORMER = rowFunction({
  name: "FORMER",
  description: "Minimum former diameter for bending, in the standard's unit",
  args: [
    SIZE_ARGUMENT,
    STANDARD_ARGUMENT,
    USE_ARGUMENT,
    { name: "coating", description: "none, galvanized or epoxy", optional: true, lifts: "column" },
    {
      name: "grade",
      description: "Grade by name or letter; the size's own letter where it is left out",
      optional: true,
      lifts: "column",
    },
  ],
  row(row) {
    const standard = readStandard(row.cell(1), row);
    if (isRefusal(standard)) return standard;
    const size = readSize(row.cell(0), standard);
    if (isRefusal(size)) return size;
    const use = readUse(row.cell(2), standard);
    if (isRefusal(use)) return use;
    const coating = row.cell(3);
    const grade = row.cell(4) === null ? gradeOfSize(size, standard) : String(row.cell(4));
    const question: FormerQuestion = {
      diameter: size.diameter,
      use: use ?? "main",
      ...(coating === null ? {} : { coating: String(coating) }),
      ...(grade === undefined ? {} : { grade }),
    };
    const former = standard.former(question);
    return isRefusal(former) ? former : fromMillimetres(former.value, standard.unit);
  },
});
