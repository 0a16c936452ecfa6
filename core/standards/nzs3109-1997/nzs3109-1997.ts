import { defineStandard } from "../shared/define-standard";
import * as detailing from "../shared/detailing.data";
import { STRAIGHT_SHAPE } from "../shared/straight-shape.data";
import * as data from "./nzs3109-1997.data";

/** NZS 3109:1997 Table 3.1 with hooks of NZS 3101; shapes as paths. */
export const NZS3109_1997 = defineStandard({
  id: "NZS3109:1997",
  title: "NZS 3109:1997 Concrete construction, with the bars of AS/NZS 4671",
  names: ["NZS3109"],
  bars: [data.BARS],
  grades: data.GRADES,
  gradeUnsaid: data.GRADE_UNSAID,
  formers: [data.FORMERS],
  endLegs: [data.END_LEGS],
  hooks: [data.HOOKS],
  shapes: [STRAIGHT_SHAPE],
  lengthRounding: data.LENGTH_ROUNDING,
  coldBending: data.COLD_BENDING,
  rebending: data.REBENDING,
  rebendingLimit: data.REBENDING_LIMIT,
  stockLength: data.STOCK_LENGTH,
  detailing: [detailing.NZS_DETAILING],
  notHeld: [
    "shape codes: bars are written as paths",
    "stirrups and ties above 24 mm",
    "galvanized bars and mesh (NZS 3109, 3.3)",
    "tolerances",
  ],
});
