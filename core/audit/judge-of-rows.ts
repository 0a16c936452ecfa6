import type { BarFacts } from "../bar/bar-facts";
import type { Finding } from "./finding";
import { type SaidOfBar, withFixThatHolds } from "./fix-that-holds";
import { rowFinding } from "./make-finding";
import type { RowReport, RowRule } from "./rule";
import type { RuleContext } from "./rule-context";
import { type RulesOfBar, RulesOfRow } from "./rules-of-row";

const NO_RULES: RulesOfBar = { rules: [], checks: [] };

/** Judges one bar after another by the rules for rows; undefined where nothing is found. */
export function judgeOfRows(
  rules: readonly RowRule[],
  context: RuleContext,
): (row: BarFacts) => Finding[] | undefined {
  const rulesOfRow = new RulesOfRow(rules, context);
  let asked = NO_RULES;
  let at = 0;
  let found: SaidOfBar[] | undefined;
  const report = (said: RowReport): void => {
    found ??= [];
    found.push({ rule: asked.rules[at] as RowRule, report: said });
  };
  const judge = (bar: BarFacts): readonly SaidOfBar[] | undefined => {
    found = undefined;
    asked = rulesOfRow.of(bar);
    const { checks } = asked;
    for (at = 0; at < checks.length; at += 1) (checks[at] as RowRule["checkRow"])(bar, context, report);
    return found;
  };
  const judgeChanged = (bar: BarFacts): readonly SaidOfBar[] => judge(bar) ?? [];
  return (bar) => {
    const said = judge(bar);
    if (said === undefined) return undefined;
    const told = said.map((one) =>
      ofRowLeftOut(rowFinding(one.rule, bar, withFixThatHolds(one, bar, said, judgeChanged)), bar),
    );
    return told.length === 1 ? told : told.filter((one, place) => told.findIndex(isSame(one)) === place);
  };
}

/** A leg that a shape has twice, or a limit against two equal legs, is told once. */
const isSame =
  (one: Finding) =>
  ({ code, cell, message }: Finding): boolean =>
    code === one.code && cell === one.cell && message === one.message;

/** What is wrong with a bar that is not to be made is context: it is struck through, or its own words take it out. */
function ofRowLeftOut(finding: Finding, { row }: BarFacts): Finding {
  const isOut = row.struckThrough || (row.superseded === true && row.supersededBy == null);
  if (!isOut || finding.severity === "note") return finding;
  const why = row.struckThrough ? "struck through" : "superseded by its own remark";
  return { ...finding, severity: "note", message: `${finding.message} (the row is ${why})` };
}
