import { hiddenRowsWords } from "../../../core/audit/not-told-words";
import type { DecisionAhead } from "../../../core/audit/what-it-would-hide";
import { whatItWouldHide } from "../../../core/audit/what-it-would-hide";
import { counted } from "../../../core/units/counted";
import type { KeptCheck } from "./kept-check";

/** What a decision would keep from being told, in a sentence; said before it is taken. */
export function aheadWords({ audit }: KeptCheck, decision: DecisionAhead): string {
  const { refusal, findings, unsafe, hidden } = whatItWouldHide(audit, decision);
  if (refusal !== null) return refusal;
  if (findings === 0) return "Nothing stops being told by it now.";
  const what = hidden.length === 0 ? counted(findings, "finding") : hiddenRowsWords(hidden);
  const severe = unsafe === 0 ? "none of them unsafe" : `${counted(unsafe, "row")} unsafe`;
  return `${what} will no longer be told of, ${severe}; the papers say so with reason, name and date.`;
}
