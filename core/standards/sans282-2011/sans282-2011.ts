import { defineStandard } from "../shared/define-standard";
import * as detailing from "../shared/detailing.data";
import { STRAIGHT_SHAPE } from "../shared/straight-shape.data";
import * as data from "./sans282-2011.data";

/** SANS 282:2011 with the bars of SANS 920. */
export const SANS282_2011 = defineStandard({
  id: "SANS282:2011",
  title: "SANS 282:2011 Bending dimensions and scheduling, with the bars of SANS 920",
  names: ["SANS282"],
  bars: [data.BARS],
  grades: data.GRADES,
  formers: [data.FORMERS],
  endLegs: [data.END_LEGS],
  hooks: [data.HOOKS],
  shapes: [STRAIGHT_SHAPE],
  lengthRounding: data.LENGTH_ROUNDING,
  transportWidth: data.TRANSPORT_WIDTH,
  stockLength: data.STOCK_LENGTH,
  detailing: [detailing.BS8110_DETAILING],
  notHeld: [
    "shape codes (20 37 38 39 41 43 45 48 49 51 52 53 54 55 60 62 65 72 73 74 75 81 83 85 86 99): their drawings were not recovered, bars are written as paths",
    "a hook of 135 degrees",
    "tolerances, temperature and re-bending limits",
    "coated bars",
  ],
});
