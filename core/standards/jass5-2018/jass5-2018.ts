import { defineStandard } from "../shared/define-standard";
import * as detailing from "../shared/detailing.data";
import { STRAIGHT_SHAPE } from "../shared/straight-shape.data";
import * as data from "./jass5-2018.data";

/** JASS 5:2018 with the bars of JIS G 3112: formers by grade; shapes as paths. */
export const JASS5_2018 = defineStandard({
  id: "JASS5:2018",
  title: "JASS 5:2018 Reinforced concrete work, with the bars of JIS G 3112",
  names: ["JASS5", "JISG3112"],
  bars: [data.BARS, data.LARGE_BARS],
  multiplesOfName: true,
  grades: data.GRADES,
  gradeUnsaid: data.GRADE_UNSAID,
  formers: [data.FORMERS],
  endLegs: [data.END_LEGS],
  hooks: [data.HOOKS, data.RIGHT_ANGLE_HOOKS],
  shapes: [STRAIGHT_SHAPE],
  lengthRounding: data.LENGTH_ROUNDING,
  tolerances: data.TOLERANCES,
  stockLength: data.STOCK_LENGTH,
  testMandrels: [data.TEST_MANDRELS],
  detailing: [detailing.JASS_DETAILING],
  notHeld: [
    "shape codes: bars are written as paths",
    "D51 bent",
    "temperature and re-bending limits",
    "coated bars",
  ],
});
