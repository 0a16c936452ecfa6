import { defineStandard } from "../shared/define-standard";
import * as detailing from "../shared/detailing.data";
import { STRAIGHT_SHAPE } from "../shared/straight-shape.data";
import * as data from "./ec2-2004.data";

/** EN 1992-1-1:2004 with the bars of EN 10080; shapes as paths. */
export const EC2_2004 = defineStandard({
  id: "EC2:2004",
  title: "EN 1992-1-1:2004 Eurocode 2, with the bars of EN 10080",
  names: ["EC2", "EN1992-1-1", "EUROCODE2", "BSEN1992-1-1", "EN1992", "EN13670"],
  bars: [data.BARS, data.NATIONAL_BARS],
  grades: data.GRADES,
  uses: ["main", "link", "welded clear", "welded near"],
  formers: [data.FORMERS, data.WELDED_FORMERS],
  endLegs: [data.END_LEGS],
  hooks: [data.HOOKS, data.MAIN_HOOKS],
  shapes: [STRAIGHT_SHAPE],
  lengthRounding: data.LENGTH_ROUNDING,
  coldBending: data.COLD_BENDING,
  rebending: data.REBENDING,
  stockLength: data.STOCK_LENGTH,
  testMandrels: [data.TEST_MANDRELS],
  detailing: [detailing.EC2_LINK_SIZE, detailing.EC2_DETAILING],
  notHeld: [
    "shape codes: it has none; bars are written as paths",
    "Eq. (8.1), the former that keeps the concrete in the bend whole: the designer's check",
    "EN 13670 tolerances",
  ],
});
