import { type Finding, SEVERITIES } from "./finding";

/** The place of a finding in a list, the worst first: by severity, and what is certain before what is perhaps so. */
export function findingRank({ severity, outcome }: Pick<Finding, "severity" | "outcome">): number {
  return 2 * SEVERITIES.indexOf(severity) + (outcome === "broken" ? 0 : 1);
}
