import { FUNCTIONS_AT_HAND } from "./at-hand";
import { CHECK } from "./check";
import type { WorksheetFunction } from "./worksheet-function";

export type { Block, FunctionArgument, FunctionEnvironment, WorksheetFunction } from "./worksheet-function";

/** The functions of namespace BAR by their upper-case names, in the order that pages list them. */
export const WORKSHEET_FUNCTIONS: ReadonlyMap<string, WorksheetFunction> = new Map([
  ...FUNCTIONS_AT_HAND,
  [CHECK.name, CHECK],
]);
