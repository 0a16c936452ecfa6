import type { StandardTables } from "../shared/standard-tables";
import * as data from "./bs8666-2020.data";
import { SHAPES } from "./shapes.data";

/** BS 8666:2020, scheduling, dimensioning, cutting and bending of steel reinforcement. */
export const BS8666_2020: StandardTables = {
  id: "BS8666:2020",
  title: "BS 8666:2020 Scheduling, dimensioning, cutting and bending of steel reinforcement for concrete",
  unit: "mm",
  names: ["BS8666"],
  replaces: ["BS4466"],
  bars: [data.BARS],
  sizesInMillimetres: true,
  grades: data.GRADES,
  gradeUnsaid: null,
  uses: ["main", "link"],
  formers: [data.FORMERS, data.FORMER_RULE],
  formulaRadii: data.FORMULA_RADII,
  endLegs: [data.END_LEGS, data.END_LEG_RULE],
  hooks: [data.HOOKS],
  shapes: SHAPES,
  lengthRounding: data.LENGTH_ROUNDING,
  dimensionStep: data.DIMENSION_STEP,
  straightBetweenBends: data.STRAIGHT_BETWEEN_BENDS,
  manyBends: data.MANY_BENDS,
  tolerances: data.TOLERANCES,
  coldBending: data.COLD_BENDING,
  rebending: data.REBENDING,
  supply: {
    straightSupplyRadius: data.STRAIGHT_SUPPLY_RADIUS,
    transportWidth: data.TRANSPORT_WIDTH,
    stockLength: data.STOCK_LENGTH,
    largestCurveFormer: data.LARGEST_CURVE_FORMER,
  },
  siteDeductions: null,
  testMandrels: [],
  notHeld: [
    "every table of the 2020 text: its values are those of 2005 until the text is read",
    "Table 3, deductions between two concrete faces",
    "Table 6, fabric",
    "the letter for dowels in Table 1",
  ],
};
