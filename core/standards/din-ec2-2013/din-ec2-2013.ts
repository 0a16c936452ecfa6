import { defineStandard } from "../shared/define-standard";
import * as detailing from "../shared/detailing.data";
import { STRAIGHT_SHAPE } from "../shared/straight-shape.data";
import * as data from "./din-ec2-2013.data";

/** DIN EN 1992-1-1 with the German annex: formers by use and by the concrete beside a bent-up bar; shapes as paths. */
export const DIN_EC2_2013 = defineStandard({
  id: "DIN-EC2:2013",
  title: "DIN EN 1992-1-1 with its national annex of 2013, with the bars of DIN 488",
  names: ["DIN-EC2", "DIN EN 1992-1-1", "DIN EN 1992-1-1/NA", "DIN EN 1992", "DIN 488"],
  bars: [data.BARS, data.LARGE_BARS],
  grades: data.GRADES,
  uses: ["main", "link", "bent-up", "bent-up c>50", "bent-up c>100", "welded clear", "welded near"],
  formers: [data.FORMERS, data.WELDED_FORMERS],
  endLegs: [data.END_LEGS],
  hooks: [data.HOOKS],
  shapes: [STRAIGHT_SHAPE],
  lengthRounding: data.LENGTH_ROUNDING,
  coldBending: data.COLD_BENDING,
  rebending: data.REBENDING,
  rebendingLimit: data.REBENDING_LIMIT,
  stockLength: data.STOCK_LENGTH,
  detailing: [detailing.EC2_LINK_SIZE, detailing.DIN_DETAILING],
  notHeld: [
    "shape codes: bars are written as paths",
    "welded bars under fatigue loads",
    "EN 13670 tolerances",
    "the annex's own rule for bending back",
  ],
});
