import { bs8666Tables } from "../shared/bs8666";
import { defineStandard } from "../shared/define-standard";
import * as detailing from "../shared/detailing.data";
import { SOURCES } from "./bs8666-2005.data";

/** BS 8666:2005, scheduling, dimensioning, cutting and bending of steel reinforcement. */
export const BS8666_2005 = defineStandard({
  ...bs8666Tables(SOURCES),
  id: "BS8666:2005",
  title: "BS 8666:2005 Scheduling, dimensioning, cutting and bending of steel reinforcement for concrete",
  names: ["BS8666"],
  detailing: [detailing.EC2_LINK_SIZE, detailing.EC2_DETAILING],
  notHeld: [
    "Table 1 in full: further type letters",
    "Table 4, fabric",
    "Table 7, frequency of inspection",
    "deductions between two concrete faces (the BS 8110-1 figures are recalled, not used)",
  ],
});
