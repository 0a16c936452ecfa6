import type { StandardTables } from "../shared/standard-tables";
import { STRAIGHT_SHAPE } from "../shared/straight-shape.data";
import * as data from "./sans282-2011.data";

/** SANS 282:2011 with the bars of SANS 920. */
export const SANS282_2011: StandardTables = {
  id: "SANS282:2011",
  title: "SANS 282:2011 Bending dimensions and scheduling, with the bars of SANS 920",
  unit: "mm",
  names: ["SANS282"],
  bars: [data.BARS],
  sizesInMillimetres: true,
  grades: data.GRADES,
  gradeUnsaid: null,
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
  tolerances: null,
  coldBending: null,
  rebending: null,
  supply: {
    straightSupplyRadius: null,
    transportWidth: data.TRANSPORT_WIDTH,
    stockLength: data.STOCK_LENGTH,
    largestCurveFormer: null,
  },
  siteDeductions: null,
  testMandrels: [],
  notHeld: ["a hook of 135 degrees", "tolerances, temperature and re-bending limits", "coated bars"],
};
