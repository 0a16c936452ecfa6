import { describe, expect, it } from "vitest";
import { exampleSettings } from "../../../core/audit/example-settings";
import { exampleSheets } from "../../../core/audit/example-sheet";
import type { Finding, Outcome, Severity } from "../../../core/audit/finding";
import type { Example, Rule } from "../../../core/audit/rule";
import { runAudit } from "../../../core/audit/run-audit";
import type { Sheet } from "../../../core/schedule/sheet";
import { resolveStandard } from "../../../core/standards/index";
import type { Standard } from "../../../core/standards/port";
import { isRefusal } from "../../../core/units/refusal";
import { editedSheet } from "./edited-sheet";

export interface ExpectedFinding {
  /** null for a sheet-wide finding */
  readonly cell: string | null;
  readonly message: string;
  /** `broken` unless said */
  readonly outcome?: Outcome;
  /** the rule's own unless said */
  readonly severity?: Severity;
  /** what the fix writes, by cell; no fix unless said */
  readonly after?: Readonly<Record<string, string | number | null>>;
}

export interface SpeaksCase extends Example {
  readonly says: readonly ExpectedFinding[];
  /** The fix is no cure by itself, and why. */
  readonly notCuredBecause?: string;
}

/**
 * Two lists for a rule: schedules on which it is silent, and schedules on which it speaks, with
 * outcome, message, place and the value after the fix. The rule is run again on the fixed rows.
 */
export function ruleCases(
  rule: Rule,
  cases: { silent: readonly Example[]; speaks: readonly SpeaksCase[] },
): void {
  describe(rule.name, () => {
    it.each(cases.silent.map((example) => [JSON.stringify(example), example] as const))(
      "should be silent on %s",
      (_, example) => {
        expect(findingsOf(rule, example).map(({ cell, message }) => `${cell}: ${message}`)).toEqual([]);
      },
    );

    it.each(
      cases.speaks.map((example) => [JSON.stringify({ ...example, says: undefined }), example] as const),
    )("should speak on %s", (_, example) => {
      const found = findingsOf(rule, example);
      expect(found.map(seen)).toEqual(example.says.map((expected) => wanted(rule, expected)));
      if (example.notCuredBecause !== undefined) return;
      for (const { fix } of found) {
        if (fix === null) continue;
        const fixed = exampleSheets(example).map((sheet) => editedSheet(sheet, fix.edits));
        const cells = new Set(fix.edits.map(({ cell }) => cell));
        const again = auditOf(rule, example, fixed).filter(({ cell }) => cell !== null && cells.has(cell));
        expect(again.map(({ message }) => message)).toEqual([]);
      }
    });
  });
}

/** What one rule alone finds in an example. */
export function findingsOf(rule: Rule, example: Example): readonly Finding[] {
  return auditOf(rule, example, exampleSheets(example));
}

function auditOf(rule: Rule, example: Example, sheets: readonly Sheet[]): readonly Finding[] {
  return runAudit({
    sheets,
    standard: standardNamed(example.standard),
    settings: settingsOf(example),
    rules: [rule],
  }).findings;
}

export function settingsOf(example: Example) {
  return exampleSettings(example);
}

export function standardNamed(id: string | undefined): Standard {
  const standard = resolveStandard(id ?? "BS8666:2005");
  if (isRefusal(standard)) throw new Error(`no standard ${id}`);
  return standard;
}

function seen({ cell, message, outcome, severity, fix }: Finding) {
  const after = fix === null ? {} : Object.fromEntries(fix.edits.map((edit) => [edit.cell, edit.to]));
  return { cell, message, outcome, severity, after };
}

function wanted(
  rule: Rule,
  { cell, message, outcome = "broken", severity = rule.severity, after = {} }: ExpectedFinding,
) {
  return { cell, message, outcome, severity, after };
}
