import { defineStandard } from "../shared/define-standard";
import * as detailing from "../shared/detailing.data";
import { shapesOf } from "../shared/shape-row";
import { STRAIGHT_SHAPE } from "../shared/straight-shape.data";
import { BAR_TYPES, TYPE_SOURCES } from "./aci315-types.data";
import * as data from "./aci318-2019.data";

/** ACI 318-19 with ASTM A615 and A706 bars, in inches; shapes by the types of ACI 315 that are recalled, and as paths. */
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
  hooks: [data.HOOKS, data.LINK_HOOKS],
  shapes: [STRAIGHT_SHAPE, ...shapesOf(BAR_TYPES, TYPE_SOURCES)],
  shapesInPart: true,
  lengthRounding: data.LENGTH_ROUNDING,
  tolerances: data.TOLERANCES,
  rebending: data.REBENDING,
  stockLength: data.STOCK_LENGTH,
  detailing: [detailing.ACI_LAPS, detailing.ACI_DETAILING],
  notHeld: [
    "the drawings of the ACI 315 bar types: types 1, 2, 17, S1, S2, T1, T2, T5 and T9 are recalled",
    "types 3 to 6 and 22, whose dimensioning is special, 7 to 16 and 18 to 26, S3 to S6, S11, T3, T4, T6 to T8, and rings and spirals by O: not recalled well enough, write the bar as a path",
    "the numbers of the later list (101 to 405)",
    "stirrups above #8, and #20 bent",
    "welded wire reinforcement",
    "finished diameters of ACI 315 for #9 to #18",
    "a temperature limit for bending",
  ],
});
