import { defineStandard } from "../shared/define-standard";
import * as detailing from "../shared/detailing.data";
import { STRAIGHT_SHAPE } from "../shared/straight-shape.data";
import * as data from "./gb50204-2015.data";

/** GB 50204-2015 with the bars of GB/T 1499.2: formers by grade; shapes as paths. */
export const GB50204_2015 = defineStandard({
  id: "GB50204:2015",
  title: "GB 50204-2015 Acceptance of concrete structures, with the bars of GB/T 1499.2",
  names: ["GB50204", "GB50010", "22G101"],
  bars: [data.BARS],
  grades: data.GRADES,
  gradeUnsaid: data.GRADE_UNSAID,
  uses: ["main", "link", "frame corner"],
  formers: [data.FORMERS],
  endLegs: [data.END_LEGS, data.LINK_END_LEGS],
  hooks: [data.HOOKS, data.MORE_HOOKS],
  shapes: [STRAIGHT_SHAPE],
  lengthRounding: data.LENGTH_ROUNDING,
  stockLength: data.STOCK_LENGTH,
  detailing: [detailing.GB_DETAILING, detailing.GB_LINKS],
  notHeld: [
    "shape codes: bars are written as paths",
    "a link bend's least of the enclosed bar's diameter: ask for the bar inside",
    "tolerances, temperature and re-bending limits",
    "coated bars",
  ],
});
