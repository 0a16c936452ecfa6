import * as steel from "../shared/indian-steel.data";
import type { StandardTables } from "../shared/standard-tables";
import { STRAIGHT_SHAPE } from "../shared/straight-shape.data";
import * as data from "./is2502-1963.data";

/** IS 2502:1963 with the bars of IS 1786 and link hooks of IS 456 and IS 13920; shapes as paths. */
export const IS2502_1963: StandardTables = {
  id: "IS2502:1963",
  title: "IS 2502:1963 Bending and fixing of bars, with the bars of IS 1786",
  unit: "mm",
  names: ["IS2502"],
  bars: [steel.BARS],
  sizesInMillimetres: true,
  grades: steel.GRADES,
  gradeUnsaid: null,
  uses: ["main", "link"],
  formers: [steel.FORMERS],
  formulaRadii: null,
  endLegs: [steel.END_LEGS, steel.LINK_END_LEGS],
  hooks: [steel.HOOKS, steel.LINK_HOOKS],
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
    stockLength: steel.STOCK_LENGTH,
    largestCurveFormer: null,
  },
  siteDeductions: null,
  testMandrels: [steel.TEST_MANDRELS, steel.TEST_MANDRELS_RECALLED],
  notHeld: [
    "the shape tables and their length formulas (l + 2H, bent-up bars, links): recalled only, bars are written as paths",
    "bending tolerances",
    "coated bars",
    "temperature and re-bending limits",
  ],
};
