import { SEVERITIES, type Severity } from "../../../core/audit/finding";
import type { FindingView } from "../engine/audit-view";

/** How the user wants the list. */
export interface Arrangement {
  readonly group: "severity" | "rule" | "member";
  readonly sort: "row" | "severity";
  /** code of the one rule to list; null lists all */
  readonly rule: string | null;
  /** the one member to list; null lists all */
  readonly member: string | null;
  /** to be found in a finding's place, words or remedy */
  readonly text: string;
}

export const AS_CHECKED: Arrangement = {
  group: "severity",
  sort: "row",
  rule: null,
  member: null,
  text: "",
};

export interface FindingGroup {
  /** stands for the group as long as the list is grouped so */
  readonly key: string;
  readonly severity: Severity | null;
  readonly findings: readonly FindingView[];
}

/** The findings that are to be shown, by group; the worst group first, members in the sheet's order. */
export function arrangeFindings(
  findings: readonly FindingView[],
  shown: ReadonlySet<Severity>,
  arrangement: Arrangement,
): readonly FindingGroup[] {
  const words = arrangement.text.trim().toLowerCase();
  const groups = new Map<string, FindingView[]>();
  for (const finding of findings) {
    if (!shown.has(finding.severity) || !isWanted(finding, arrangement, words)) continue;
    const key = groupOf(finding, arrangement.group);
    const group = groups.get(key);
    if (group === undefined) groups.set(key, [finding]);
    else group.push(finding);
  }
  // sorting is stable, and the findings come in the order of their rows
  if (arrangement.sort === "severity") for (const group of groups.values()) group.sort(bySeverity);
  const all = [...groups].map(([key, group]) => ({
    key,
    severity: arrangement.group === "severity" ? (group[0]?.severity ?? null) : null,
    findings: group,
  }));
  if (arrangement.group === "member" && arrangement.sort === "row") return all;
  return all.sort((a, b) => worst(a) - worst(b));
}

function isWanted(finding: FindingView, { rule, member }: Arrangement, words: string): boolean {
  if (rule !== null && finding.code !== rule) return false;
  if (member !== null && finding.member !== member) return false;
  if (words === "") return true;
  const place = finding.cell ?? (finding.row === null ? "" : `row ${finding.row}`);
  return [place, finding.member, finding.code, finding.rule, finding.message, finding.fix?.label]
    .join(" ")
    .toLowerCase()
    .includes(words);
}

function groupOf(finding: FindingView, group: Arrangement["group"]): string {
  if (group === "severity") return finding.severity;
  if (group === "rule") return `${finding.code} ${finding.rule}`;
  return finding.member ?? "no one member";
}

const rank = ({ severity }: FindingView): number => SEVERITIES.indexOf(severity);
const bySeverity = (a: FindingView, b: FindingView): number => rank(a) - rank(b);
const worst = ({ findings }: FindingGroup): number => Math.min(...findings.map(rank));
