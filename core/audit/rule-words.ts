import { RULES } from "./rules/index";

/** What a rule is called in a sentence, by its code. */
export function ruleWords(code: string): string {
  const rule = RULES.find((each) => each.code === code);
  return rule === undefined ? "no rule of this edition" : rule.name.replaceAll("-", " ");
}
