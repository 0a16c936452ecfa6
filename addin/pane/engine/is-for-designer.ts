import type { FindingView } from "./audit-view";

/** What only the designer can answer. */
export function isForDesigner({ fix, message }: Pick<FindingView, "fix" | "message">): boolean {
  return /ask the designer/i.test(`${message} ${fix?.label ?? ""}`);
}
