import { type Finding, rowsBehind } from "./finding";
import { isOpen } from "./kept-elsewhere";
import type { RuleContext } from "./rule-context";

const UNKNOWN_SIZE = "SIZE101";

/** Where nobody chose the document a size of several rows that is rolled somewhere is the list's own and no slip: a note. */
export function withOwnSizes(findings: readonly Finding[], context: RuleContext): readonly Finding[] {
  if (!isOpen(context)) return findings;
  const rows = new Map<string, number>();
  for (const finding of findings)
    if (isOfSize(finding))
      rows.set(finding.message, (rows.get(finding.message) ?? 0) + Math.max(1, rowsBehind(finding).length));
  if (rows.size === 0) return findings;
  return findings.map((finding) =>
    isOfSize(finding) && (rows.get(finding.message) ?? 0) > 1 ? { ...finding, severity: "note" } : finding,
  );
}

/** rolled somewhere: the rule is not sure of it */
const isOfSize = ({ code, outcome }: Finding): boolean => code === UNKNOWN_SIZE && outcome === "unsure";
