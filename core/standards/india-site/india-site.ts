import { defineStandard } from "../shared/define-standard";
import * as detailing from "../shared/detailing.data";
import * as steel from "../shared/indian-steel.data";
import { STRAIGHT_SHAPE } from "../shared/straight-shape.data";
import * as data from "./india-site.data";

/** Site deductions in place of geometry, kept apart from IS 2502; formers and bars are those of the Indian standards. */
export const INDIA_SITE = defineStandard({
  id: "INDIA-SITE",
  title: "Indian site practice: bend deductions 1d, 2d, 3d, with the bars of IS 1786",
  names: ["INDIA-SITE"],
  bars: [steel.BARS],
  grades: steel.GRADES,
  formers: [steel.ANCHORAGE_FORMERS, steel.USUAL_FORMERS],
  endLegs: [steel.END_LEGS, steel.LINK_END_LEGS],
  hooks: [steel.HOOKS, steel.LINK_HOOKS, steel.SEISMIC_LINK_HOOKS, data.SITE_HOOKS],
  shapes: [STRAIGHT_SHAPE],
  lengthRounding: data.LENGTH_ROUNDING,
  stockLength: steel.STOCK_LENGTH,
  siteDeductions: data.SITE_DEDUCTIONS,
  testMandrels: [steel.TEST_MANDRELS, steel.TEST_MANDRELS_RECALLED],
  detailing: [detailing.IS_LAPS, detailing.IS_LINKS, detailing.IS_DETAILING],
  notHeld: ["angles other than 45, 90, 135 and 180 degrees", "tolerances: the practice has none of its own"],
});
