import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type AuditSettings, auditSettings, DEFAULT_SETTINGS } from "../../../core/audit/audit-settings";
import { decidedWords } from "../../../core/audit/decided-words";
import { settingsFromText, settingsToText } from "../../../core/audit/settings-text";

const name = fc.string({ minLength: 1, maxLength: 30 });
const decided = { reason: fc.string({ maxLength: 20 }), by: fc.string({ maxLength: 20 }), date: fc.string() };
const limit = fc.option(fc.record({ value: fc.integer({ min: 1, max: 20_000 }), ...decided }), { nil: null });
const settings: fc.Arbitrary<AuditSettings> = fc.record({
  rulesOff: fc.array(fc.record({ code: name, ...decided })),
  limits: fc.record({
    handLift: limit,
    hoist: limit,
    stockLength: limit,
    transportWidth: limit,
    accessWidth: limit,
  }),
  waivers: fc.array(
    fc.record({
      code: name,
      sheet: name,
      key: fc.option(name, { nil: null }),
      ...decided,
      reason: name,
    }),
  ),
  readings: fc.array(
    fc.record({
      sheet: name,
      columns: fc.array(fc.record({ column: name, kind: fc.constantFrom("length", "A", "ignored") })),
      confirmed: fc.array(name),
    }),
  ) as fc.Arbitrary<AuditSettings["readings"]>,
});

describe("settingsFromText", () => {
  it("should give back what was written", () => {
    fc.assert(
      fc.property(settings, (written) => {
        expect(settingsFromText(settingsToText(written))).toEqual(written);
      }),
    );
  });

  it("should never throw, and tell of every text that is no settings", () => {
    fc.assert(
      fc.property(fc.oneof(fc.string(), fc.json()), (text) => {
        const { problem, ...read } = settingsFromText(text);
        expect(auditSettings.parse(read)).toEqual(read);
        if (problem !== undefined) expect(problem).not.toBe("");
        else expect(text.trim() === "" || typeof JSON.parse(text) === "object").toBe(true);
      }),
    );
  });

  it("should keep every part that can be read, and say what stands in for the rest", () => {
    const read = settingsFromText('{"rulesOff":["SUM101"],"limits":{"hoist":-2,"handLift":20}}');
    expect(read.rulesOff).toEqual([{ code: "SUM101", reason: "", by: "", date: "" }]);
    expect(read.limits).toEqual(DEFAULT_SETTINGS.limits);
    expect(read.problem).toMatch(/^limits\.hoist\.value: .*, so no limit is changed$/);
  });
});

describe("settings that workbooks kept before a name and a date were asked for", () => {
  it("should be read: silences are waivers, rules and limits have no name", () => {
    const read = settingsFromText(
      JSON.stringify({
        silences: [{ code: "LEN102", sheet: "S", key: null, reason: "agreed" }],
        waivers: [
          { code: "SUM101", sheet: "S", key: "B1", reason: "seen", by: "A. Detailer", date: "2031-03-02" },
        ],
        rulesOff: ["LEN103"],
        limits: { hoist: 900 },
      }),
    );
    expect(read.problem).toBeUndefined();
    expect(read.waivers.map(({ code, by }) => [code, by])).toEqual([
      ["LEN102", ""],
      ["SUM101", "A. Detailer"],
    ]);
    expect(decidedWords(read.waivers[0]!)).toBe("no name given, no date given: agreed");
    expect(decidedWords(read.rulesOff[0]!)).toBe("no name given, no date given: no reason given");
    expect(read.limits.hoist).toEqual({ value: 900, reason: "", by: "", date: "" });
  });

  it("should not be lost where the list is no list", () => {
    expect(settingsFromText('{"silences":7}').problem).toContain("waivers");
  });
});

describe("settingsToText", () => {
  it("should keep nothing where nothing was decided", () => {
    expect(settingsToText(DEFAULT_SETTINGS)).toBeNull();
    expect(settingsToText(settingsFromText('{"limits":{"hoist":900}}'))).toBe(
      '{"limits":{"hoist":{"value":900}}}',
    );
  });
});
