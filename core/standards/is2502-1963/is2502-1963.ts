import { defineStandard } from "../shared/define-standard";
import * as detailing from "../shared/detailing.data";
import * as steel from "../shared/indian-steel.data";
import { STRAIGHT_SHAPE } from "../shared/straight-shape.data";
import * as data from "./is2502-1963.data";

/** IS 2502:1963 with the bars of IS 1786 and link hooks of IS 456 and IS 13920; shapes as paths. */
export const IS2502_1963 = defineStandard({
  id: "IS2502:1963",
  title: "IS 2502:1963 Bending and fixing of bars, with the bars of IS 1786",
  names: ["IS2502"],
  bars: [steel.BARS],
  grades: steel.GRADES,
  formers: [steel.ANCHORAGE_FORMERS, steel.USUAL_FORMERS],
  endLegs: [steel.END_LEGS, steel.LINK_END_LEGS],
  hooks: [steel.HOOKS, steel.LINK_HOOKS, steel.SEISMIC_LINK_HOOKS],
  shapes: [STRAIGHT_SHAPE],
  lengthRounding: data.LENGTH_ROUNDING,
  tolerances: data.TOLERANCES,
  stockLength: steel.STOCK_LENGTH,
  testMandrels: [steel.TEST_MANDRELS, steel.TEST_MANDRELS_RECALLED],
  detailing: [detailing.IS_LAPS, detailing.IS_LINKS, detailing.IS_DETAILING],
  notHeld: [
    "formers for links and for the grades of IS 1786: 4d is taken up to 20 mm as yards do, none above it",
    "the shape tables and their length formulas (l + 2H, bent-up bars, links): recalled only, bars are written as paths",
    "bending tolerances",
    "coated bars",
    "temperature and re-bending limits",
  ],
});
