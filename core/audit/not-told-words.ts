import { counted } from "../units/counted";
import { decidedWords } from "./decided-words";
import { type Finding, rowsBehind } from "./finding";
import { severityWords } from "./finding-words";
import { LIMIT_WORDS } from "./limit-words";
import type { NotTold } from "./not-told";
import { ruleWords } from "./rule-words";

/**
 * One decision because of which something is not told: what, by whom, when, why and of how many bars.
 *
 * @example notToldWords(report.waivers[0]) // waived: LEN102 length differs, S!E2, by A. Detailer, 2026-03-02: agreed (1 bar not told)
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

/** How much a decision keeps back: "12 bars not told, 2 of them unsafe". */
export function hiddenWords({
  bars,
  unsafe,
  findings,
}: Pick<NotTold, "bars" | "unsafe" | "findings">): string {
  if (findings.length === 0) return "nothing is hidden by it now";
  if (bars === 0) return counted(findings.length, "finding not told", "findings not told");
  const severe = unsafe === 0 ? "" : `, ${bars === 1 ? "unsafe" : `${unsafe} of them unsafe`}`;
  return `${counted(bars, "bar not told", "bars not told")}${severe}`;
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
  const bars = new Set(all.flatMap(({ findings }) => findings.flatMap(placesOfBars)));
  const severe = new Set(
    all.flatMap(({ findings }) =>
      findings.filter(({ severity }) => severity === "unsafe").flatMap(placesOfBars),
    ),
  );
  const unsafe = severe.size === 0 ? "" : ` (${severe.size} unsafe)`;
  return `not told of ${counted(bars.size, "bar", "bars")}${unsafe} by ${kinds.join(", ")}`;
}

function placesOfBars(finding: Finding): readonly string[] {
  return rowsBehind(finding).map((row) => `${row} ${finding.sheet}`);
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
