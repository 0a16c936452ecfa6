import { describe, expect, it } from "vitest";
import { exampleSheets } from "../../../core/audit/example-sheet";
import { RULES } from "../../../core/audit/rules/index";
import { runAudit } from "../../../core/audit/run-audit";
import { findingsOf, settingsOf, standardNamed } from "./rule-cases";

describe("the examples of the rules' pages", () => {
  for (const rule of RULES) {
    it.each(rule.docs.failing)(`should make ${rule.name} speak: %j`, (example) => {
      expect(findingsOf(rule, example).map(({ name }) => name)).toContain(rule.name);
    });

    it.each(rule.docs.passing)(`should leave ${rule.name} silent: %j`, (example) => {
      expect(findingsOf(rule, example).map(({ message }) => message)).toEqual([]);
    });

    it.each(rule.docs.passing)(
      `should leave every rule silent but for notes beside ${rule.name}: %j`,
      (example) => {
        const report = runAudit({
          sheets: exampleSheets(example),
          standard: standardNamed(example.standard),
          settings: settingsOf(example),
        });
        const loud = report.findings.filter(({ severity }) => severity !== "note");
        expect(loud.map(({ name, cell, message }) => `${name} ${cell}: ${message}`)).toEqual([]);
      },
    );
  }
});
