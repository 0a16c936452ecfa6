import type { StandardTables } from "../shared/standard-tables";
import { STRAIGHT_SHAPE } from "../shared/straight-shape.data";
import * as data from "./jass5-2018.data";

/** JASS 5:2018 with the bars of JIS G 3112: formers by grade; shapes as paths. */
export const JASS5_2018: StandardTables = {
  id: "JASS5:2018",
  title: "JASS 5:2018 Reinforced concrete work, with the bars of JIS G 3112",
  unit: "mm",
  names: ["JASS5"],
  bars: [data.BARS, data.LARGE_BARS],
  sizesInMillimetres: true,
  multiplesOfName: true,
  grades: data.GRADES,
  gradeUnsaid: data.GRADE_UNSAID,
  uses: ["main", "link"],
  formers: [data.FORMERS],
  formulaRadii: null,
  endLegs: [data.END_LEGS],
  hooks: [data.HOOKS],
  shapes: [STRAIGHT_SHAPE],
  lengthRounding: data.LENGTH_ROUNDING,
  dimensionStep: null,
  straightBetweenBends: null,
  manyBends: null,
  tolerances: data.TOLERANCES,
  coldBending: null,
  rebending: null,
  supply: {
    straightSupplyRadius: null,
    transportWidth: null,
    stockLength: data.STOCK_LENGTH,
    largestCurveFormer: null,
  },
  siteDeductions: null,
  testMandrels: [data.TEST_MANDRELS],
  notHeld: [
    "shape codes: bars are written as paths",
    "D51 bent",
    "bending tolerances, temperature and re-bending limits",
    "coated bars",
  ],
};
