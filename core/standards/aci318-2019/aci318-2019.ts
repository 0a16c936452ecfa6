import { defineStandard } from "../shared/define-standard";
import * as detailing from "../shared/detailing.data";
import { STRAIGHT_SHAPE } from "../shared/straight-shape.data";
import * as data from "./aci318-2019.data";

/** ACI 318-19 with ASTM A615 and A706 bars, in inches; shapes as paths. */
export const ACI318_2019 = defineStandard({
  id: "ACI318:2019",
  title: "ACI 318-19 Building code requirements for structural concrete, with the bars of ASTM A615 and A706",
  unit: "in",
  names: ["ACI318", "ACI315", "CRSI"],
  bars: [data.BARS, data.LARGEST_BAR],
  sizesInMillimetres: false,
  grades: data.GRADES,
  formers: [
    data.GALVANIZED_FORMERS,
    data.GALVANIZED_FORMERS_RECALLED,
    data.EPOXY_FORMERS,
    data.FORMERS,
    data.LINK_FORMERS,
  ],
  endLegs: [data.END_LEGS, data.LINK_END_LEGS],
  hooks: [data.HOOKS, data.LINK_HOOKS, data.LINK_HOOKS_135],
  shapes: [STRAIGHT_SHAPE],
  lengthRounding: data.LENGTH_ROUNDING,
  tolerances: data.TOLERANCES,
  rebending: data.REBENDING,
  stockLength: data.STOCK_LENGTH,
  detailing: [detailing.ACI_LAPS, detailing.ACI_DETAILING],
  notHeld: [
    "ACI 315 bar types: their drawings were not recovered, bars are written as paths",
    "stirrups above #8, and #20 bent",
    "welded wire reinforcement",
    "finished diameters of ACI 315 for #9 to #18",
    "a temperature limit for bending",
  ],
});
