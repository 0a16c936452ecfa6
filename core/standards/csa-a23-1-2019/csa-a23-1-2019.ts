import { defineStandard } from "../shared/define-standard";
import * as detailing from "../shared/detailing.data";
import { STRAIGHT_SHAPE } from "../shared/straight-shape.data";
import * as data from "./csa-a23-1-2019.data";

/** CSA A23.1:2019 with metric bars of CSA G30.18; bend diameters recalled with little certainty; shapes as paths. */
export const CSA_A23_1_2019 = defineStandard({
  id: "CSA-A23.1:2019",
  title: "CSA A23.1:2019 Concrete materials and methods, with the bars of CSA G30.18",
  names: ["CSA-A23.1", "A23.1", "CSA-A23", "RSIC"],
  bars: [data.BARS, data.LARGE_BARS],
  sizesInMillimetres: false,
  grades: data.GRADES,
  gradeUnsaid: data.GRADE_UNSAID,
  formers: [data.FORMERS],
  endLegs: [data.END_LEGS],
  hooks: [data.HOOKS],
  shapes: [STRAIGHT_SHAPE],
  lengthRounding: data.LENGTH_ROUNDING,
  stockLength: data.STOCK_LENGTH,
  detailing: [detailing.CSA_DETAILING],
  notHeld: [
    "shape types: bars are written as paths",
    "stirrups above 15M",
    "coated bars",
    "tolerances, temperature and re-bending limits",
  ],
});
