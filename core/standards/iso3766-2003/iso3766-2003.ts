import { BS8666_SHAPES } from "../shared/bs8666-shapes.data";
import { defineStandard } from "../shared/define-standard";
import { shapesOf } from "../shared/shape-row";
import * as data from "./iso3766-2003.data";

/** Its shapes are laid by geometry: no length formula of its own is recalled. */
const recalled = BS8666_SHAPES.filter(({ code }) => data.PREFERRED_CODES.includes(code)).map(
  ({ formulaConflict: _, minimisedFormula: _shorter, formulaWhen: _when, formulaNote: _note, ...row }) => ({
    ...row,
    formula: null,
    limits: [],
  }),
);

/** ISO 3766:2003 with the masses of ISO 6935-2. It codes shapes and leaves bending to the national document. */
export const ISO3766_2003 = defineStandard({
  id: "ISO3766:2003",
  title:
    "ISO 3766:2003 Construction drawings, simplified representation of reinforcement, with ISO 6935-2 masses",
  names: ["ISO3766"],
  bars: [data.BARS],
  anyTypeLetters: true,
  grades: data.GRADES,
  shapes: shapesOf(recalled, data.SHAPE_SOURCES),
  shapesInPart: true,
  lengthRounding: data.LENGTH_ROUNDING,
  stockLength: data.STOCK_LENGTH,
  testMandrels: [data.TEST_MANDRELS],
  notHeld: [
    "the list of preferred shapes as printed: its codes are recalled, without length formulas and limits",
    "formers, end legs and hooks: it has none; join it with the document that the yard bends by, as in ISO3766:2003+EC2:2004",
    "tolerances, temperature and re-bending limits",
  ],
});
