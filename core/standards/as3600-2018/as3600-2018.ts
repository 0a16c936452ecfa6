import { defineStandard } from "../shared/define-standard";
import * as detailing from "../shared/detailing.data";
import { STRAIGHT_SHAPE } from "../shared/straight-shape.data";
import * as data from "./as3600-2018.data";

/** AS 3600:2018 with the bars of AS/NZS 4671: pins by use, grade, coating and re-bending; shapes as paths. */
export const AS3600_2018 = defineStandard({
  id: "AS3600:2018",
  title: "AS 3600:2018 Concrete structures, with the bars of AS/NZS 4671",
  names: ["AS3600"],
  bars: [data.BARS],
  grades: data.GRADES,
  gradeUnsaid: data.GRADE_UNSAID,
  uses: ["main", "link", "rebend"],
  formers: [data.GALVANIZED_FORMERS, data.EPOXY_FORMERS, data.FORMERS],
  endLegs: [data.END_LEGS],
  hooks: [data.HOOKS],
  shapes: [STRAIGHT_SHAPE],
  lengthRounding: data.LENGTH_ROUNDING,
  tolerances: data.TOLERANCES,
  rebending: data.REBENDING,
  stockLength: data.STOCK_LENGTH,
  detailing: [detailing.AS_DETAILING],
  notHeld: [
    "the rolling margin of about 2.5 % that price lists add to the nominal mass",
    "AS 1100.501 letter shapes: their drawings were not recovered, bars are written as paths",
    "bars 500SP, 600 and 750 of the 2019 edition of AS/NZS 4671",
    "plain and wire sizes for fitments below 10 mm",
    "a temperature limit for bending",
  ],
});
