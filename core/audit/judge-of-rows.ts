import type { BarFacts } from "../bar/bar-facts";
import type { Finding } from "./finding";
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
  let row: BarFacts;
  let found: Finding[] | undefined;
  const report = (said: RowReport): void => {
    found ??= [];
    found.push(ofRowLeftOut(rowFinding(asked.rules[at] as RowRule, row, said), row));
  };
  return (bar) => {
    row = bar;
    found = undefined;
    asked = rulesOfRow.of(row);
    const { checks } = asked;
    for (at = 0; at < checks.length; at += 1) (checks[at] as RowRule["checkRow"])(row, context, report);
    return found;
  };
}

/** What is wrong with a bar that is not to be made is context: it is struck through, or its own words take it out. */
function ofRowLeftOut(finding: Finding, { row }: BarFacts): Finding {
  const isOut = row.struckThrough || (row.superseded === true && row.supersededBy == null);
  if (!isOut || finding.severity === "note") return finding;
  const why = row.struckThrough ? "struck through" : "superseded by its own remark";
  return { ...finding, severity: "note", message: `${finding.message} (the row is ${why})` };
}
