import { describe, expect, it } from "vitest";
import { RULES } from "../../../core/audit/rules/index";
import { CAUTIONS } from "../../../core/tickets/cautions.data";

/** Every sentence that a rule or a ticket can say to whoever stands at the machine. */
const OF_RULES = RULES.flatMap((rule) => [
  ...Object.values(rule.messages),
  ...Object.values(rule.fixes ?? {}).map(({ label }) => label),
  rule.docs.summary,
  rule.docs.why,
]);
const SAID = [...OF_RULES, ...CAUTIONS.map(({ value }) => value.text)];
const naming = (words: RegExp) => SAID.filter((text) => words.test(text));

// common practice: the maker's manual decides what a machine may do, and work stops before it is asked
describe("words of safety", () => {
  it("name a second stroke only where the manual allows one", () => {
    const strokes = naming(/second stroke|squeeze/i);
    expect(strokes.length).toBeGreaterThan(0);
    expect(strokes.filter((text) => !text.includes("only if the machine's manual allows one"))).toEqual([]);
  });

  it("say stop before anything is warmed or looked at", () => {
    const warmed = naming(/\bwarm|\blens\b/i);
    expect(warmed.length).toBeGreaterThan(1);
    expect(warmed.filter((text) => !/\bstop/i.test(text))).toEqual([]);
    expect(naming(/\bwarm/i).filter((text) => text.search(/\bstop/i) > text.search(/\bwarm/i))).toEqual([]);
  });

  it("never have a bend made slowly or step by step", () => {
    expect(naming(/slowly|little by little|step by step|in steps of \d+ degrees/i)).toEqual([]);
  });

  it("give a distance from the tools only where a source gives it, and defer to the manual", () => {
    const near = CAUTIONS.filter(({ value }) => /hands?\b.*\bmm\b/i.test(value.text));
    expect(near.map(({ cite }) => cite.provenance)).toEqual(["published"]);
    expect(naming(/\bhands?\b.*(?:former|blade|pins)/i).filter((text) => !text.includes("manual"))).toEqual(
      [],
    );
  });

  it("have what is colder than the standard lets be bent stopped first", () => {
    const cold = naming(/without leave|needs leave/).filter((text) => text.includes("{"));
    expect(cold.filter((text) => !text.includes("stop, and ask the designer"))).toEqual([]);
  });
});
