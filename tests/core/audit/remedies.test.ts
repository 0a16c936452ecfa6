import { describe, expect, it } from "vitest";
import { RULES } from "../../../core/audit/rules/index";
import { findingsOf } from "./rule-cases";

/** What somebody can do: each begins with one of these, or there is a change to make. */
const REMEDY =
  /\b(ask the (designer|maker)|use another machine|make a trial|correct (it|the|them)|strike the row through|lift it with|write |waive |look at|turn the rule on|get (one|the)|move |bend it|name |say |enter |look up|check )/i;

describe("what is unsafe or cannot be made", () => {
  it.each(RULES.map((rule) => [rule.name, rule] as const))("says what to do about it: %s", (_, rule) => {
    const grave = rule.docs.failing
      .flatMap((example) => findingsOf(rule, example))
      .filter(({ severity }) => severity === "unsafe" || severity === "unbendable");
    const mute = grave.filter(({ fix, message }) => fix === null && !REMEDY.test(message));
    expect(mute.map(({ message }) => message)).toEqual([]);
  });
});
