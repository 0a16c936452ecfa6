import { type Finding, rowsBehind } from "./finding";
import { severityWords } from "./finding-words";

/** Findings of the rows of a sheet's bars that keep them from being made, by sheet and the sheet's own row. */
export type HoldsOfRow = (sheet: string, row: number) => readonly string[];

type Judged = Pick<Finding, "name" | "severity" | "outcome">;

/** Under which the cut list's refusal of a row stands among the findings of its sheet. */
export const IN_NO_PLAN = "in-no-plan";
/** What nobody can make before it is answered, though it is asked and not told for certain. */
const ASKED_FIRST: ReadonlySet<string> = new Set([
  "unknown-size",
  "size-digits-swapped",
  "said-to-wait",
  IN_NO_PLAN,
]);

/**
 * True of a finding that keeps a bar from being made until somebody clears it: what may hurt somebody or cannot be
 * bent, for certain, and what has to be answered first. Every paper asks this.
 */
export function isHolding({ name, severity, outcome }: Judged): boolean {
  if (severity === "note") return false;
  if (ASKED_FIRST.has(name)) return true;
  // a dimension that nothing else gives: what only the drawing asks for is doubtful
  if (name === "dimension-missing") return severity === "off-standard";
  return outcome === "broken" && isSevere({ severity });
}

/** True of what may hurt somebody or cannot be bent, certain or not. */
export function isSevere({ severity }: Pick<Finding, "severity">): boolean {
  return severity === "unsafe" || severity === "unbendable";
}

/** True of a finding by which whole lists may be counted twice: every sum and every paper says so. */
export function isOfTotals({ name, row }: Pick<Finding, "name" | "row">): boolean {
  return name === "same-bar-in-two-lists" && row === null;
}

/** True of a finding that may keep a bar from being made: to be asked about before it is. Papers name it, without a hold. */
export function isAsking(finding: Judged): boolean {
  return isSevere(finding) && !isHolding(finding);
}

type OfRows = Judged & Pick<Finding, "sheet" | "row" | "rows" | "message" | "behind" | "also">;

/** Why each row is not to be made, what is unsafe first, and what else is to be asked about it. */
export function holdsOf(findings: readonly OfRows[]): HoldsOfRow {
  const holds = whysOf(findings.filter(isHolding));
  const asks = asksOf(findings);
  return (sheet, row) => {
    const held = holds(sheet, row);
    return held.length === 0 ? held : [...held, ...asks(sheet, row)];
  };
}

const MOST_WHYS = 3;

/** All reasons of a row in a clause: who follows the remedy of the first alone makes the others. Undefined for none. */
export function whysInWords(whys: readonly string[]): string | undefined {
  if (whys.length === 0) return undefined;
  const more = whys.length > MOST_WHYS ? `; and ${whys.length - MOST_WHYS} more` : "";
  return whys.slice(0, MOST_WHYS).join("; also ") + more;
}

/** What is to be asked about each row before it is made, each with its weight. */
export function asksOf(findings: readonly OfRows[]): HoldsOfRow {
  return whysOf(findings.filter(isAsking), (finding) => `${severityWords(finding)}: `);
}

function whysOf(findings: readonly OfRows[], lead: (finding: OfRows) => string = () => ""): HoldsOfRow {
  const byRow = new Map<string, { readonly why: string; readonly isUnsafe: boolean }[]>();
  for (const finding of findings) {
    const { sheet, behind = [], message, severity, also } = finding;
    const own = behind.length > 0 ? behind : rowsBehind(finding).map((row) => ({ row, message }));
    const told = also === undefined ? own : [...own, also];
    for (const { row, message: words } of told) {
      const key = JSON.stringify([sheet, row]);
      const why = lead(finding) + words;
      const one = { why, isUnsafe: severity === "unsafe" };
      const known = byRow.get(key);
      if (known === undefined) byRow.set(key, [one]);
      else known.push(one);
    }
  }
  return (sheet, row) => {
    const all = byRow.get(JSON.stringify([sheet, row])) ?? [];
    return [...all].sort((a, b) => Number(b.isUnsafe) - Number(a.isUnsafe)).map(({ why }) => why);
  };
}
