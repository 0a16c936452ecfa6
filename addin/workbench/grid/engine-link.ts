import type { FunctionEnvironment } from "../../../core/formulas";
import type { CellMessage, FunctionText, ResultBlock, ResultPlace } from "./bar-functions";

/**
 * What the page says to its calculating worker: its end of a channel of our own, and what formulas ask of the
 * workbook. It stands in line with the grid's own traffic, so that it holds for all that is sent after it.
 */
export type ToEngine =
  | { readonly barwrightLink: MessagePort }
  | { readonly barwrightEnvironment: FunctionEnvironment };

export interface FormulaResult extends ResultBlock {
  readonly place: ResultPlace;
  readonly messages: readonly CellMessage[];
}

export type FromEngine =
  | { readonly kind: "functions"; readonly functions: readonly FunctionText[] }
  | { readonly kind: "results"; readonly results: readonly FormulaResult[] }
  | { readonly kind: "environment-taken" };

export function isToEngine(data: unknown): data is ToEngine {
  const isObject = typeof data === "object" && data !== null;
  return isObject && ("barwrightLink" in data || "barwrightEnvironment" in data);
}
