import type { StandardTables } from "../shared/standard-tables";
import * as data from "./bs8666-2005.data";
import { SHAPES } from "./shapes.data";

/** BS 8666:2005, scheduling, dimensioning, cutting and bending of steel reinforcement. */
export const BS8666_2005: StandardTables = {
  id: "BS8666:2005",
  title: "BS 8666:2005 Scheduling, dimensioning, cutting and bending of steel reinforcement for concrete",
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
    "Table 1 in full: further type letters",
    "Table 4, fabric",
    "Table 7, frequency of inspection",
    "deductions between two concrete faces (the BS 8110-1 figures are recalled, not used)",
  ],
};
