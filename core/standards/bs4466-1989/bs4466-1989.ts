import { BS4466_SHAPES } from "../shared/bs4466-shapes.data";
import { BARS } from "../shared/bs8666-tables.data";
import { defineStandard } from "../shared/define-standard";
import * as detailing from "../shared/detailing.data";
import { shapesOf } from "../shared/shape-row";
import { STRAIGHT_SHAPE } from "../shared/straight-shape.data";
import * as data from "./bs4466-1989.data";

/** BS 4466:1989, scheduling, dimensioning, bending and cutting, which BS 8666 took the place of. */
export const BS4466_1989 = defineStandard({
  id: "BS4466:1989",
  title: "BS 4466:1989 Scheduling, dimensioning, bending and cutting of steel reinforcement for concrete",
  caution: data.CAUTION,
  names: ["BS4466"],
  bars: [BARS],
  grades: data.GRADES,
  gradeUnsaid: { main: "high yield 460", link: "high yield 460" },
  formers: [data.FORMERS],
  endLegs: [data.END_LEGS],
  hooks: [data.HOOKS],
  allowances: data.ALLOWANCES,
  shapes: [STRAIGHT_SHAPE, ...shapesOf(BS4466_SHAPES, data.SHAPE_SOURCES)],
  shapesInPart: true,
  lengthRounding: data.LENGTH_ROUNDING,
  dimensionStep: data.DIMENSION_STEP,
  tolerances: data.TOLERANCES,
  coldBending: data.COLD_BENDING,
  largestCurveFormer: data.CURVE_FORMER,
  stockLength: data.STOCK_LENGTH,
  detailing: [detailing.BS8110_DETAILING],
  notHeld: [
    "the drawings of every code: courses are recalled, those of 42 45 48 49 61 62 75 77 78 79 82 83 87 not well enough to be drawn",
    "codes 81 and 86",
    "a hook of 135 degrees: that of links is recalled of BS 8110, that of other bars derived",
    "radii above which a bar is supplied straight, width for transport",
    "fabric, coated bars",
  ],
});
