import fc from "fast-check";
import { expect, test } from "vitest";
import { changesWhenTyped } from "../../../addin/excel/text-as-typed";
import { typedText } from "../../_support/office-host/typed-text";

const inSchedules = fc.string({
  unit: fc.constantFrom(..."0123456789-/.,()%+=@' eEHNBTadfjmnorsuyFMARCH#ø"),
  minLength: 1,
  maxLength: 8,
});

test("should be true for every text of which the host makes something else", () => {
  fc.assert(
    fc.property(inSchedules, (text) => {
      const { value } = typedText(text);
      const isFormula = /^[=+@-]/.test(text);
      if (value !== text || isFormula) expect(changesWhenTyped(text), `${text} becomes ${value}`).toBe(true);
    }),
    { numRuns: 2_000 },
  );
});

test.each(["H16", "B1", "T20-150", "Slab", "link", "C"])(
  "should leave %s, which nothing happens to",
  (text) => {
    expect(changesWhenTyped(text)).toBe(false);
  },
);

test.each(["01", "1E2", "1-2", "2/3", "MAR1", "sept 4", "TRUE", "=A1", "+44", "(250)", "1,250", "16%"])(
  "should catch %s",
  (text) => expect(changesWhenTyped(text)).toBe(true),
);
