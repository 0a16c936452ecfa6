import type { Severity } from "../../../core/audit/finding";
import { findingRank } from "../../../core/audit/finding-rank";
import type { FindingView } from "../engine/audit-view";

/** How the user wants the list. */
export interface Arrangement {
  readonly group: "severity" | "row" | "member";
  /** code of the one rule to list; null lists all */
  readonly rule: string | null;
  /** the one member to list; null lists all */
  readonly member: string | null;
  /** the one pour to list; null lists all */
  readonly pour: string | null;
  /** to be found in a finding's place, words or remedy */
  readonly text: string;
}

export const AS_CHECKED: Arrangement = {
  group: "severity",
  rule: null,
  member: null,
  pour: null,
  text: "",
};

/** A line of the list: a finding, or what stands for several. */
export type ListLine =
  | { readonly kind: "finding"; readonly key: string; readonly finding: FindingView }
  /** one rule in many rows, which stands once until it is unfolded */
  | {
      readonly kind: "alike";
      readonly key: string;
      readonly findings: readonly FindingView[];
      readonly isUnfolded: boolean;
    }
  | { readonly kind: "member"; readonly key: string; readonly name: string; readonly count: number };

/** Findings of one rule and severity that stand one by one, however the list is ordered. */
const FEW = 3;

/** The findings to list, in the order asked for. */
export function listedFindings(
  findings: readonly FindingView[],
  shown: ReadonlySet<Severity>,
  arrangement: Arrangement,
): readonly FindingView[] {
  const words = arrangement.text.trim().toLowerCase();
  const listed = findings.filter(
    (finding) => shown.has(finding.severity) && isWanted(finding, arrangement, words),
  );
  // sorting is stable, and the findings come in the order of their rows
  if (arrangement.group === "severity") listed.sort((a, b) => findingRank(a) - findingRank(b));
  return listed;
}

/** The lines of the list: rules that speak in many rows stand once, members have headings. */
export function listLines(
  listed: readonly FindingView[],
  { group }: Arrangement,
  unfolded: ReadonlySet<string>,
): readonly ListLine[] {
  if (group === "severity") return linesByRule(listed, unfolded);
  if (group === "row") return listed.map(lineOf);
  const members = new Map<string, FindingView[]>();
  for (const finding of listed) push(members, finding.member ?? "no one member", finding);
  return [...members].flatMap(([name, group]) => [
    { kind: "member", key: `member ${name}`, name, count: group.length } as const,
    ...group.map(lineOf),
  ]);
}

function linesByRule(listed: readonly FindingView[], unfolded: ReadonlySet<string>): ListLine[] {
  const kinds = new Map<string, FindingView[]>();
  for (const finding of listed) push(kinds, alikeKey(finding), finding);
  return [...kinds].flatMap(([key, alike]): ListLine[] => {
    if (alike.length <= FEW) return alike.map(lineOf);
    const isUnfolded = unfolded.has(key);
    return [{ kind: "alike", key, findings: alike, isUnfolded }, ...(isUnfolded ? alike.map(lineOf) : [])];
  });
}

/** Findings that stand once in the list: of one rule, as sure and as severe. */
export const alikeKey = ({ code, severity, outcome }: FindingView): string =>
  `${code} ${severity} ${outcome}`;

const lineOf = (finding: FindingView): ListLine => ({ kind: "finding", key: finding.key, finding });

function push(groups: Map<string, FindingView[]>, key: string, finding: FindingView): void {
  const group = groups.get(key);
  if (group === undefined) groups.set(key, [finding]);
  else group.push(finding);
}

function isWanted(finding: FindingView, { rule, member, pour }: Arrangement, words: string): boolean {
  if (rule !== null && finding.code !== rule) return false;
  if (member !== null && finding.member !== member) return false;
  if (pour !== null && finding.pour !== pour) return false;
  if (words === "") return true;
  const place = finding.cell ?? (finding.row === null ? "" : `row ${finding.row}`);
  return [place, finding.member, finding.code, finding.rule, finding.message, finding.fix?.label]
    .join(" ")
    .toLowerCase()
    .includes(words);
}
