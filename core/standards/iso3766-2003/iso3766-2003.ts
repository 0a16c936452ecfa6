import { defineStandard } from "../shared/define-standard";
import { STRAIGHT_SHAPE } from "../shared/straight-shape.data";
import * as data from "./iso3766-2003.data";

/** ISO 3766:2003 with the masses of ISO 6935-2. It codes shapes and leaves bending to the national document. */
export const ISO3766_2003 = defineStandard({
  id: "ISO3766:2003",
  title:
    "ISO 3766:2003 Construction drawings, simplified representation of reinforcement, with ISO 6935-2 masses",
  names: ["ISO3766"],
  bars: [data.BARS],
  grades: data.GRADES,
  shapes: [STRAIGHT_SHAPE],
  lengthRounding: data.LENGTH_ROUNDING,
  stockLength: data.STOCK_LENGTH,
  testMandrels: [data.TEST_MANDRELS],
  notHeld: [
    "shape codes (00 11 12 13 15 21 25 26 31 33 41 44 46 67 77 99 preferred): recalled by number only, bars are written as paths",
    "formers, end legs and hooks: it has none; join it with the document that the yard bends by, as in ISO3766:2003+EC2:2004",
    "tolerances, temperature and re-bending limits",
  ],
});
