import { type Finding, rowsBehind } from "./finding";

/** Findings of the rows of a sheet's bars that keep them from being made, by sheet and the sheet's own row. */
export type HoldsOfRow = (sheet: string, row: number) => readonly string[];

type Judged = Pick<Finding, "name" | "severity" | "outcome">;

/** What nobody can make before it is answered, though it is asked and not told for certain. */
const ASKED_FIRST: ReadonlySet<string> = new Set(["unknown-size", "size-digits-swapped", "said-to-wait"]);

/**
 * True of a finding that keeps a bar from being made until somebody clears it: what may hurt somebody or cannot be
 * bent, for certain, and what has to be answered first. Every paper asks this.
 */
export function isHolding({ name, severity, outcome }: Judged): boolean {
  if (severity === "note") return false;
  if (ASKED_FIRST.has(name)) return true;
  // a dimension that nothing else gives: what only the drawing asks for is doubtful
  if (name === "dimension-missing") return severity === "off-standard";
  return outcome === "broken" && (severity === "unsafe" || severity === "unbendable");
}

/** Why each row is not to be made, what is unsafe first. */
export function holdsOf(
  findings: readonly (Judged & Pick<Finding, "sheet" | "row" | "rows" | "message" | "behind" | "also">)[],
): HoldsOfRow {
  const byRow = new Map<string, { readonly why: string; readonly isUnsafe: boolean }[]>();
  for (const finding of findings) {
    if (!isHolding(finding)) continue;
    const { sheet, behind = [], message, severity, also } = finding;
    const own = behind.length > 0 ? behind : rowsBehind(finding).map((row) => ({ row, message }));
    const told = also === undefined ? own : [...own, also];
    for (const { row, message: why } of told) {
      const key = JSON.stringify([sheet, row]);
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
