import type { AuditSettings } from "./audit-settings";
import { decidedWords } from "./decided-words";
import { LIMIT_WORDS } from "./limit-words";
import { ruleWords } from "./rule-words";

/** Every decision of a workbook's settings on what is told, one line each, whatever became of it. */
export function decisionWords({ waivers, rulesOff, limits }: AuditSettings): readonly string[] {
  return [
    ...waivers.map(
      ({ code, sheet, key, ...decided }) =>
        `waived: ${code} ${ruleWords(code)}, ${sheet}, ${key ?? "whole sheet"}, ${decidedWords(decided)}`,
    ),
    ...rulesOff.map(
      ({ code, ...decided }) => `rule turned off: ${code} ${ruleWords(code)}, ${decidedWords(decided)}`,
    ),
    ...LIMIT_WORDS.flatMap(({ name, words, unit }) => {
      const limit = limits[name];
      if (limit === null) return [];
      return [`limit changed: ${words.toLowerCase()} ${limit.value} ${unit}, ${decidedWords(limit)}`];
    }),
  ];
}
