import { describe, expect, it } from "vitest";
import { defineRule, type RowReport } from "../../../core/audit/rule";
import { defineRefusal, isRefusalOf, refusalText } from "../../../core/units/refusal";

const tooLong = defineRefusal("too-long", "value", "{length} is over {most}: ask for {1200,900} or less");
const other = defineRefusal("other", "value", "nothing of {this}");

const rule = defineRule({
  code: "TEST101",
  name: "test",
  severity: "note",
  docs: { summary: "", why: "", failing: [], passing: [] },
  messages: { long: "{length} is over {most}", plain: "no length is given" },
  fixes: { shorten: { label: "make it {most}", safety: "needs-review" } },
  checkRow(_facts, _context, report) {
    report({ messageId: "plain", at: "length" });
    report({ messageId: "long", at: "length", values: { length: { mm: 9 }, most: 8, beside: 1 } });
    // @ts-expect-error the words name the most
    report({ messageId: "long", at: "length", values: { length: 9 } });
    // @ts-expect-error the words name two values
    report({ messageId: "long", at: "length" });
    // @ts-expect-error no such message
    report({ messageId: "short", at: "length", values: { length: 9, most: 8 } });
    // @ts-expect-error no such fix
    report({ messageId: "plain", at: "length", fix: { id: "lengthen", edits: [] } });
  },
});

describe("a payload typed by its code", () => {
  it("should ask for a value of each place that the words of a refusal have", () => {
    expect(refusalText(tooLong({ length: 9, most: 8 }))).toBe("9 is over 8: ask for {1200,900} or less");
    // @ts-expect-error the words name the most
    expect(refusalText(tooLong({ length: 9 }))).toContain("{most}");
    // @ts-expect-error a value that no word names
    expect(refusalText(tooLong({ length: 9, most: 8, least: 1 }))).not.toContain("1 ");
  });

  it("should let the values of a refusal be read by name once its code is known", () => {
    const refusal = tooLong({ length: 9, most: 8 });
    expect(isRefusalOf(refusal, other)).toBe(false);
    if (!isRefusalOf(refusal, tooLong)) throw new Error("another code");
    const { most } = refusal.values;
    expect(most).toBe(8);
  });

  it("should ask for a value of each place that the message of a finding has", () => {
    const said: RowReport[] = [];
    if (!("checkRow" in rule)) throw new Error("a rule for rows");
    rule.checkRow({} as never, {} as never, (found) => said.push(found));
    expect(said.map(({ messageId }) => messageId)).toEqual([
      "plain",
      "long",
      "long",
      "long",
      "short",
      "plain",
    ]);
  });
});
