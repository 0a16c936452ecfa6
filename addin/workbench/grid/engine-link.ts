import type { FunctionEnvironment } from "../../../core/formulas";
import type { BlockSize, CellMessage, FunctionText, ResultPlace } from "./bar-functions";

/** What the page and its calculating worker say to each other, beside the grid's own traffic. */
export interface ToEngine {
  readonly kind: "environment";
  readonly environment: FunctionEnvironment;
}

export interface FormulaResult extends BlockSize {
  readonly place: ResultPlace;
  readonly messages: readonly CellMessage[];
}

export type FromEngine =
  | { readonly kind: "functions"; readonly functions: readonly FunctionText[] }
  | { readonly kind: "results"; readonly results: readonly FormulaResult[] }
  | { readonly kind: "environment-taken" };

/** The worker's first message: its end of a channel of our own. */
export interface LinkOffer {
  readonly barwrightLink: MessagePort;
}

export function isLinkOffer(data: unknown): data is LinkOffer {
  return typeof data === "object" && data !== null && "barwrightLink" in data;
}
