import type { StandardTables } from "../shared/standard-tables";
import { STRAIGHT_SHAPE } from "../shared/straight-shape.data";
import * as data from "./ec2-2004.data";

/** EN 1992-1-1:2004 with the bars of EN 10080; shapes as paths. */
export const EC2_2004: StandardTables = {
  id: "EC2:2004",
  title: "EN 1992-1-1:2004 Eurocode 2, with the bars of EN 10080",
  unit: "mm",
  names: ["EC2", "EN1992-1-1", "EUROCODE2", "BSEN1992-1-1"],
  bars: [data.BARS],
  sizesInMillimetres: true,
  grades: data.GRADES,
  gradeUnsaid: null,
  uses: ["main", "link", "welded clear", "welded near"],
  formers: [data.FORMERS, data.WELDED_FORMERS],
  formulaRadii: null,
  endLegs: [data.END_LEGS],
  hooks: [data.HOOKS],
  shapes: [STRAIGHT_SHAPE],
  lengthRounding: data.LENGTH_ROUNDING,
  dimensionStep: null,
  straightBetweenBends: null,
  manyBends: null,
  tolerances: null,
  coldBending: data.COLD_BENDING,
  rebending: data.REBENDING,
  supply: {
    straightSupplyRadius: null,
    transportWidth: null,
    stockLength: data.STOCK_LENGTH,
    largestCurveFormer: null,
  },
  siteDeductions: null,
  testMandrels: [data.TEST_MANDRELS],
  notHeld: [
    "shape codes: it has none; bars are written as paths",
    "Eq. (8.1), the former that keeps the concrete in the bend whole: the designer's check",
    "EN 13670 tolerances",
  ],
};
