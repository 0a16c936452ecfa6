import { expect, it } from "vitest";
import { exampleSettings } from "../../../core/audit/example-settings";
import { exampleSheets } from "../../../core/audit/example-sheet";
import { type LimitsInForce, NO_CHANGED_LIMITS } from "../../../core/audit/limits";
import { isRowRule, type RowRule } from "../../../core/audit/rule";
import { RULES } from "../../../core/audit/rules/index";
import { runAudit } from "../../../core/audit/run-audit";
import { standardNamed } from "./rule-cases";

/** The names of limits that a rule asks for on its own examples. */
function asked(rule: RowRule): string[] {
  const names = new Set<string>();
  const spied: RowRule = {
    ...rule,
    checkRow(facts, context, report) {
      const limits = new Proxy(context.limits, {
        get(target, name: keyof LimitsInForce) {
          const own = name.replace(/Of$/, "");
          // what the Shop sheet alone says is changed there
          if (own in NO_CHANGED_LIMITS) names.add(own);
          return target[name];
        },
      });
      rule.checkRow(facts, { ...context, limits }, report);
    },
  };
  for (const example of [...rule.docs.failing, ...rule.docs.passing]) {
    runAudit({
      sheets: exampleSheets(example),
      standard: standardNamed(example.standard),
      settings: exampleSettings(example),
      rules: [spied],
    });
  }
  return [...names].sort();
}

it("should name with every rule the limits that it asks for, or what a change hides is not found", () => {
  const rules = RULES.filter(isRowRule);
  const seen = rules.map((rule) => [rule.code, asked(rule)]).filter(([, names]) => names?.length);
  const named = rules.map(({ code, limits }) => [code, [...(limits ?? [])].sort()]);
  expect(seen).toEqual(named.filter(([, names]) => names?.length));
});
