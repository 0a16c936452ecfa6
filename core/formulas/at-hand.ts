import { AREA } from "./area";
import { COMPENSATED } from "./compensated";
import { COST } from "./cost";
import { CUTLENGTH } from "./cutlength";
import { CUTPLAN } from "./cutplan";
import { DEVELOPED } from "./developed";
import { DIAMETER } from "./diameter";
import { EXPLAIN } from "./explain";
import { FORMER } from "./former";
import { LAP } from "./lap";
import { MARKS } from "./marks";
import { MASS } from "./mass";
import { MINLEG } from "./minleg";
import { ROWMASS } from "./rowmass";
import { TONNAGE } from "./tonnage";
import { TRIALFIT } from "./trialfit";
import type { WorksheetFunction } from "./worksheet-function";

const AT_HAND: readonly WorksheetFunction[] = [
  DEVELOPED,
  CUTLENGTH,
  MASS,
  DIAMETER,
  AREA,
  FORMER,
  MINLEG,
  COMPENSATED,
  TRIALFIT,
  MARKS,
  ROWMASS,
  EXPLAIN,
  TONNAGE,
  CUTPLAN,
  LAP,
  COST,
];

/**
 * The functions of namespace BAR that answer from shapes, standards and trials alone, by their upper-case
 * names, in the order that pages list them. CHECK needs reader and rules too, so a place that must load
 * quickly takes it apart.
 */
export const FUNCTIONS_AT_HAND: ReadonlyMap<string, WorksheetFunction> = new Map(
  AT_HAND.map((definition) => [definition.name, definition]),
);
