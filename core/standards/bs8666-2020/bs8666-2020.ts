import { bs8666Tables } from "../shared/bs8666";
import { defineStandard } from "../shared/define-standard";
import * as detailing from "../shared/detailing.data";
import { shapesOf } from "../shared/shape-row";
import { CAUTION, NEW_SHAPE_SOURCE, NEW_SHAPES, SOURCES } from "./bs8666-2020.data";

const tables = bs8666Tables(SOURCES);
const ofThisEdition = shapesOf(NEW_SHAPES, {
  formula: NEW_SHAPE_SOURCE,
  course: NEW_SHAPE_SOURCE,
  limits: NEW_SHAPE_SOURCE,
});

/** BS 8666:2020: the tables of 2005 until its text is read, and the codes that it adds. */
export const BS8666_2020 = defineStandard({
  ...tables,
  id: "BS8666:2020",
  title: "BS 8666:2020 Scheduling, dimensioning, cutting and bending of steel reinforcement for concrete",
  caution: CAUTION,
  names: ["BS8666"],
  shapes: [...tables.shapes, ...ofThisEdition].sort((one, other) => one.code.localeCompare(other.code)),
  detailing: [detailing.EC2_LINK_SIZE, detailing.EC2_DETAILING],
  notHeld: [
    "every table of the 2020 text: its values are those of 2005 until the text is read",
    "Table 3, deductions between two concrete faces",
    "Table 6, fabric",
    "the letter for dowels in Table 1",
  ],
});
