import { isSure } from "../standards/citation";
import type { Finding } from "./finding";

/** A finding's severity as it is told: "unsafe", or "perhaps unsafe" where it is not certain. A note is a note. */
export function severityWords({ severity, outcome }: Pick<Finding, "severity" | "outcome">): string {
  return outcome === "unsure" && severity !== "note" ? `perhaps ${severity}` : severity;
}

/** Why a finding is not certain, behind its message in brackets; empty where it is, and for a note. */
export function doubtWords({
  severity,
  outcome,
  cite,
}: Pick<Finding, "severity" | "outcome" | "cite">): string {
  if (outcome === "broken" || severity === "note") return "";
  if (cite === null || isSure(cite)) return " (could not be judged)";
  if (cite.conflict !== undefined) return " (perhaps: sources differ)";
  return ` (perhaps: ${cite.provenance === "memory" ? "the limit is from memory" : cite.provenance})`;
}

/** The same before the message, where that is all there is room for: "perhaps: " or "not judged: ". */
export function doubtLead(finding: Pick<Finding, "severity" | "outcome" | "cite">): string {
  const { outcome, cite } = finding;
  if (outcome === "broken") return "";
  return cite === null || isSure(cite) ? "not judged: " : "perhaps: ";
}
