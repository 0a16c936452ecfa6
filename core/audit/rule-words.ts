import { MEASURED_CODES } from "./measured-codes";
import { RULES } from "./rules/index";

/** What a rule is called in a sentence, by its code. */
export function ruleWords(code: string): string {
  const rule = RULES.find((each) => each.code === code)?.name;
  const measured = Object.entries(MEASURED_CODES).find(([, one]) => one === code)?.[0];
  return (rule ?? measured)?.replaceAll("-", " ") ?? "no rule of this edition";
}
