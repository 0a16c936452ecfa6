import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type AuditSettings, auditSettings, DEFAULT_SETTINGS } from "../../../core/audit/audit-settings";
import { settingsFromText, settingsToText } from "../../../core/audit/settings-text";

const name = fc.string({ minLength: 1, maxLength: 30 });
const limit = fc.option(fc.integer({ min: 1, max: 20_000 }), { nil: null });
const settings: fc.Arbitrary<AuditSettings> = fc.record({
  rulesOff: fc.array(name),
  limits: fc.record({
    handLift: limit,
    hoist: limit,
    stockLength: limit,
    transportWidth: limit,
    accessWidth: limit,
  }),
  silences: fc.array(
    fc.record({ code: name, sheet: name, key: fc.option(name, { nil: null }), reason: name }),
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
    expect(read.rulesOff).toEqual(["SUM101"]);
    expect(read.limits).toEqual(DEFAULT_SETTINGS.limits);
    expect(read.problem).toMatch(/^limits\.hoist: .*, so no limit is changed$/);
  });
});

describe("settingsToText", () => {
  it("should keep nothing where nothing was decided", () => {
    expect(settingsToText(DEFAULT_SETTINGS)).toBeNull();
    expect(settingsToText(settingsFromText('{"limits":{"hoist":900}}'))).toBe('{"limits":{"hoist":900}}');
  });
});
