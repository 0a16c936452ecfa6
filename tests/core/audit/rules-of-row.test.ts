import { describe, expect, it } from "vitest";
import type { Rule } from "../../../core/audit/rule";
import { isRowRule } from "../../../core/audit/rule";
import { RULES } from "../../../core/audit/rules/index";
import { runAudit } from "../../../core/audit/run-audit";
import { sheetFromRows } from "../../../core/schedule/sheet";
import { resolveStandard } from "../../../core/standards/index";
import { isRefusal } from "../../../core/units/refusal";
import { seededSchedule } from "../../bench/seeded-schedule";
import { CORPUS } from "../../corpus/corpus";
import { sheetOf } from "../../corpus/corpus-schedule";

/** The same rules, each asked of every bar. */
const ASKED_OF_ALL: readonly Rule[] = RULES.map((rule) => {
  if (!isRowRule(rule)) return rule;
  const { needs: _, ofKind: _kind, ofWords: _words, ...asked } = rule;
  return asked;
});

describe("the rules that are asked of a bar", () => {
  it("should be named by what they need, and some rules need nothing", () => {
    const needs = RULES.filter(isRowRule).map((rule) => rule.needs);
    expect(needs.filter((need) => need !== undefined).length).toBeGreaterThan(20);
    expect(needs.filter((need) => need === undefined).length).toBeGreaterThan(20);
  });

  it.each(CORPUS.map((schedule) => [schedule.name, schedule] as const))(
    "find in %s what all rules find",
    (_, schedule) => {
      const standard = standardNamed(schedule.standard);
      const sheets = [sheetOf(schedule)];
      expect(runAudit({ sheets, standard }).findings).toEqual(
        runAudit({ sheets, standard, rules: ASKED_OF_ALL }).findings,
      );
    },
  );

  it("find among planted mistakes what all rules find", () => {
    const standard = standardNamed("BS8666:2005");
    const sheets = [sheetFromRows("Schedule", seededSchedule(2000).matrix)];
    const { byRow } = runAudit({ sheets, standard });
    expect(byRow.length).toBeGreaterThan(100);
    expect(byRow).toEqual(runAudit({ sheets, standard, rules: ASKED_OF_ALL }).byRow);
  });
});

function standardNamed(id: string) {
  const standard = resolveStandard(id);
  if (isRefusal(standard)) throw new Error(`no standard ${id}`);
  return standard;
}
