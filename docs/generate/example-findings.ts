import { exampleSettings } from "../../core/audit/example-settings";
import { exampleSheets } from "../../core/audit/example-sheet";
import type { Finding } from "../../core/audit/finding";
import type { Example, Rule } from "../../core/audit/rule";
import { runAudit } from "../../core/audit/run-audit";
import { resolveStandard } from "../../core/standards/index";
import { isRefusal } from "../../core/units/refusal";

/** What one rule alone finds in an example. */
export function findingsOfExample(rule: Rule, example: Example): readonly Finding[] {
  const standard = resolveStandard(example.standard ?? "BS8666:2005");
  if (isRefusal(standard)) throw new Error(`no standard ${example.standard}`);
  const settings = exampleSettings(example);
  return runAudit({ sheets: exampleSheets(example), standard, settings, rules: [rule] }).findings;
}
