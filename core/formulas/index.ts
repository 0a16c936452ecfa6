import { AREA } from "./area";
import { CHECK } from "./check";
import { COMPENSATED } from "./compensated";
import { CUTLENGTH } from "./cutlength";
import { CUTPLAN } from "./cutplan";
import { DEVELOPED } from "./developed";
import { DIAMETER } from "./diameter";
import { EXPLAIN } from "./explain";
import { FORMER } from "./former";
import { MARKS } from "./marks";
import { MASS } from "./mass";
import { MINLEG } from "./minleg";
import { ROWMASS } from "./rowmass";
import { TONNAGE } from "./tonnage";
import { TRIALFIT } from "./trialfit";
import type { WorksheetFunction } from "./worksheet-function";

export type { Block, FunctionArgument, FunctionEnvironment, WorksheetFunction } from "./worksheet-function";

const LIST: readonly WorksheetFunction[] = [
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
  CHECK,
];

/** The functions of namespace BAR by their upper-case names, in the order that pages list them. */
export const WORKSHEET_FUNCTIONS: ReadonlyMap<string, WorksheetFunction> = new Map(
  LIST.map((definition) => [definition.name, definition]),
);
