import { BS4466_SHAPES } from "../shared/bs4466-shapes.data";
import { defineStandard } from "../shared/define-standard";
import * as detailing from "../shared/detailing.data";
import { shapesOf } from "../shared/shape-row";
import { STRAIGHT_SHAPE } from "../shared/straight-shape.data";
import * as data from "./sans282-2011.data";

/** What pages print for the other document is no source for this one. */
const recalled = BS4466_SHAPES.filter(({ code }) => data.SHARED_CODES.includes(code)).map(
  ({ formulaConflict: _, ...row }) => row,
);

/** SANS 282:2011 with the bars of SANS 920. */
export const SANS282_2011 = defineStandard({
  id: "SANS282:2011",
  title: "SANS 282:2011 Bending dimensions and scheduling, with the bars of SANS 920",
  names: ["SANS282"],
  bars: [data.BARS],
  grades: data.GRADES,
  formers: [data.MILD_STEEL_FORMERS, data.FORMERS],
  endLegs: [data.END_LEGS],
  hooks: [data.HOOKS],
  shapes: [STRAIGHT_SHAPE, ...shapesOf([...recalled, ...data.LINK_SHAPES], data.SHAPE_SOURCES)],
  shapesInPart: true,
  lengthRounding: data.LENGTH_ROUNDING,
  tolerances: data.TOLERANCES,
  straightSupplyRadius: data.CRITICAL_RADII,
  transportWidth: data.TRANSPORT_WIDTH,
  stockLength: data.STOCK_LENGTH,
  detailing: [detailing.BS8110_DETAILING],
  notHeld: [
    "annex A as printed: its codes are recalled, those of 45 48 49 60 62 72 73 74 75 83 by their formulas alone",
    "codes 81 and 86",
    "a hook of 135 degrees: that of links is recalled of the design code, that of other bars derived",
    "codes 32 to 35: edition 6 has them no more (rms-sa.co.za and sarcea.co.za say so)",
    "the bends of mild steel as printed",
    "temperature and re-bending limits",
    "coated bars",
  ],
});
