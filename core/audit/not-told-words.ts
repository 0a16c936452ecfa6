import { counted } from "../units/counted";
import { decidedWords } from "./decided-words";
import type { Finding } from "./finding";
import { severityWords } from "./finding-words";
import { LIMIT_WORDS } from "./limit-words";
import { barsInRows, type HiddenRow, type NotTold } from "./not-told";
import { ruleWords } from "./rule-words";

/**
 * One decision because of which something is not told: what, by whom, when, why and of how many rows and bars.
 *
 * @example notToldWords(report.waivers[0]) // waived: LEN102 length differs, S!E2, by A. Detailer, 2026-03-02: agreed (1 row of 20 bars not told)
 */
export function notToldWords(notTold: NotTold): string {
  return `${whatWords(notTold)}, ${decidedWords(notTold)} (${hiddenWords(notTold)})`;
}

/**
 * One finding that is not told, for the paper of the one bar.
 *
 * @example withheldWords(finding, notTold) // unsafe: former 50 mm is below ... (waived by A. Detailer, 2026-03-02: seen)
 */
export function withheldWords(finding: Finding, notTold: NotTold): string {
  return `${severityWords(finding)}: ${finding.message} (${HOW[notTold.because.kind]} ${decidedWords(notTold)})`;
}

const HOW: Readonly<Record<NotTold["because"]["kind"], string>> = {
  waiver: "waived",
  "rule off": "rule turned off",
  limit: "limit changed",
};

/** How much a decision keeps back: "3 rows of 304 bars not told, 1 of the rows unsafe". */
export function hiddenWords({ findings, hidden }: Pick<NotTold, "findings" | "hidden">): string {
  if (findings.length === 0) return "nothing is hidden by it now";
  if (hidden.length === 0) return counted(findings.length, "finding not told", "findings not told");
  return `${hiddenRowsWords(hidden)} not told${severeWords(hidden)}`;
}

/** "3 rows of 304 bars"; where the bars of one are not known "3 rows of bars" */
export function hiddenRowsWords(hidden: readonly HiddenRow[]): string {
  const bars = barsInRows(hidden);
  return `${counted(hidden.length, "row")} of ${bars === null ? "bars" : counted(bars, "bar")}`;
}

function severeWords(hidden: readonly HiddenRow[]): string {
  const unsafe = hidden.filter(({ isUnsafe }) => isUnsafe).length;
  if (unsafe === 0) return "";
  return `, ${hidden.length === 1 ? "unsafe" : `${unsafe} of the rows unsafe`}`;
}

/** A line for each decision that keeps something back, to stand wherever its bars are cut, weighed or measured. */
export function notToldLines(all: readonly NotTold[]): string[] {
  return all.filter(({ findings }) => findings.length > 0).map((each) => `not told: ${notToldWords(each)}`);
}

/** All decisions in one clause; null where there is none. */
export function notToldSummary(all: readonly NotTold[]): string | null {
  if (all.length === 0) return null;
  const kinds = [
    countedKind(all, "waiver", "waiver", "waivers"),
    countedKind(all, "rule off", "rule off", "rules off"),
    countedKind(all, "limit", "changed limit", "changed limits"),
  ].filter((words) => words !== null);
  const rows = new Map<string, HiddenRow>();
  for (const each of all.flatMap(({ hidden }) => hidden)) {
    const key = `${each.row} ${each.sheet}`;
    if (each.isUnsafe || !rows.has(key)) rows.set(key, each);
  }
  const unsafe = [...rows.values()].filter(({ isUnsafe }) => isUnsafe);
  const severe = unsafe.length === 0 ? "" : ` (unsafe: ${hiddenRowsWords(unsafe)})`;
  return `not told of ${hiddenRowsWords([...rows.values()])}${severe} by ${kinds.join(", ")}`;
}

/** Decisions that a line names one by one; the others are counted. */
const MOST_NAMED = 3;
const LONGEST_REASON = 80;

/** The same with who decided, when and why, for a line that goes to others without its list; null where there is none. */
export function notToldLine(all: readonly NotTold[]): string | null {
  const summary = notToldSummary(all);
  if (summary === null) return null;
  const byWords = new Map<string, NotTold[]>();
  for (const each of all) {
    const words = decidedWords(each);
    byWords.set(words, [...(byWords.get(words) ?? []), each]);
  }
  // what keeps back the most unsafe rows is named first
  const unsafeOf = (of: readonly NotTold[]) => of.reduce((sum, { unsafe }) => sum + unsafe, 0);
  const named = [...byWords].sort(([, a], [, b]) => unsafeOf(b) - unsafeOf(a));
  const told = named.slice(0, MOST_NAMED).map(([words, of]) => `${rulesWords(of)} ${shortened(words)}`);
  const rest = named.slice(MOST_NAMED).reduce((sum, [, of]) => sum + of.length, 0);
  const others = rest === 0 ? [] : [`and ${counted(rest, "other decision")}`];
  return `${summary}: ${[...told, ...others].join("; ")}`;
}

function rulesWords(of: readonly NotTold[]): string {
  return [...new Set(of.map(({ rule }) => rule))].join(", ");
}

function shortened(words: string): string {
  return words.length <= LONGEST_REASON ? words : `${words.slice(0, LONGEST_REASON).trimEnd()}...`;
}

function countedKind(
  all: readonly NotTold[],
  kind: NotTold["because"]["kind"],
  one: string,
  many: string,
): string | null {
  const count = all.filter(({ because }) => because.kind === kind).length;
  return count === 0 ? null : counted(count, one, many);
}

function whatWords({ because, rule, sheet, row, findings }: NotTold): string {
  const named = `${rule} ${ruleWords(rule)}`;
  if (because.kind === "rule off") return `rule turned off: ${named}`;
  if (because.kind === "waiver") {
    const cell = findings[0]?.cell ?? (row === null ? null : `row ${row}`);
    return `waived: ${named}, ${cell === null ? sheet : `${sheet}!${cell}`}`;
  }
  const limit = LIMIT_WORDS.find(({ name }) => name === because.limit);
  return `limit changed: ${limit?.words.toLowerCase()} ${because.value} ${limit?.unit}`;
}
