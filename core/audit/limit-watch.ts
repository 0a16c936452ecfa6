import type { BarFacts } from "../bar/bar-facts";
import { type Finding, SEVERITIES } from "./finding";
import { type ChangedLimit, type ChangedLimits, type Limits, limitsInForce } from "./limits";
import { rowFinding } from "./make-finding";
import { isRowRule, type RowRule, type Rule } from "./rule";
import type { RuleContext } from "./rule-context";

/** A limit changed in the workbook, with the limits as they would be without that change. */
export interface WatchedLimit {
  readonly name: keyof Limits;
  readonly changed: ChangedLimit;
  readonly without: RuleContext;
  /** those that ask for it */
  readonly rules: readonly RowRule[];
}

export interface HiddenByLimit {
  readonly name: keyof Limits;
  readonly finding: Finding;
}

const NAMES: readonly (keyof Limits)[] = [
  "handLift",
  "hoist",
  "stockLength",
  "transportWidth",
  "accessWidth",
];

/** The limits that the workbook changes. */
export function watchedLimits(
  changed: ChangedLimits,
  context: RuleContext,
  rules: readonly Rule[],
): readonly WatchedLimit[] {
  return NAMES.flatMap((name) => {
    const limit = changed[name];
    if (limit === null) return [];
    const limits = limitsInForce({ ...changed, [name]: null }, context.standard, context.shop?.shop ?? null);
    return [{ name, changed: limit, without: { ...context, limits }, rules: rulesAsking(name, rules) }];
  });
}

export function rulesAsking(name: keyof Limits, rules: readonly Rule[]): readonly RowRule[] {
  return rules.filter(isRowRule).filter(({ limits }) => limits?.includes(name) === true);
}

/** What of a bar is found without each changed limit, and with it not, or less severely. */
export function hiddenByLimits(
  watched: readonly WatchedLimit[],
  row: BarFacts,
  found: readonly Finding[],
): readonly HiddenByLimit[] | undefined {
  if (watched.length === 0) return undefined;
  const hidden = watched.flatMap(({ name, without, rules }) =>
    notAmong(found, findingsUnder(rules, row, without)).map((finding) => ({ name, finding })),
  );
  return hidden.length === 0 ? undefined : hidden;
}

/** What rules find of a bar under other limits. */
export function findingsUnder(rules: readonly RowRule[], row: BarFacts, context: RuleContext): Finding[] {
  const found: Finding[] = [];
  for (const rule of rules) rule.checkRow(row, context, (said) => found.push(rowFinding(rule, row, said)));
  return found;
}

/** Those of which `told` holds none of the same rule that is as severe. */
export function notAmong(told: readonly Finding[], findings: readonly Finding[]): readonly Finding[] {
  return findings.filter(
    ({ code, severity }) =>
      !told.some(
        (other) => other.code === code && SEVERITIES.indexOf(other.severity) <= SEVERITIES.indexOf(severity),
      ),
  );
}
