import type { DecisionAhead } from "../../../core/audit/what-it-would-hide";
import type { FindingView } from "../engine/audit-view";

/** A decision that is about to be taken. */
export type Decision =
  | Exclude<DecisionAhead, { kind: "waiver" }>
  | { readonly kind: "waiver"; readonly finding: FindingView };

/** By what a decision is told from others while it is looked ahead to. */
export function aboutOf(decision: Decision): string {
  if (decision.kind === "waiver") return decision.finding.key;
  return decision.kind === "limit" ? `limit ${decision.limit}` : `off ${decision.code}`;
}

export const placeOfFinding = ({ code, sheet, row }: FindingView) => ({ code, sheet, row });
