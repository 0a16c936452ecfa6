import { describe, expect, it } from "vitest";
import { asksOf, holdsOf, whysInWords } from "../../../core/audit/holds";
import { severeBars } from "../../../core/jobs";

const finding = (
  name: string,
  severity: "unsafe" | "unbendable",
  outcome: "broken" | "unsure",
  message: string,
) => ({
  ...{ name, severity, outcome, message, sheet: "Bars", row: 4 },
});
const MACHINE = "leg C of 90 mm is too short for pin and back-rest: use another machine";
const HOOK = "link end C 90 mm is below the least 160 mm: ask the designer";
const BOTH = [
  finding("leg-too-short", "unbendable", "broken", MACHINE),
  finding("end-leg-short", "unsafe", "unsure", HOOK),
];

// who follows the first remedy alone bends 220 links with half a hook: a practitioner's trial
describe("a bar of which two things are told", () => {
  it("is held for both of them, on whatever is passed on", () => {
    expect(holdsOf(BOTH)("Bars", 4)).toEqual([MACHINE, `perhaps unsafe: ${HOOK}`]);
    const { notToMake, toAsk } = severeBars(BOTH, [{ sheet: "Bars", row: 4, mark: "09", size: "H16" }]);
    expect(notToMake.map(({ why }) => why)).toEqual([`${MACHINE}; also perhaps unsafe: ${HOOK}`]);
    expect(toAsk).toEqual([]);
  });

  it("is asked about where neither holds it", () => {
    expect(holdsOf(BOTH.slice(1))("Bars", 4)).toEqual([]);
    expect(asksOf(BOTH.slice(1))("Bars", 4)).toEqual([`perhaps unsafe: ${HOOK}`]);
  });

  it("has at most three reasons written out", () => {
    expect(whysInWords(["a", "b", "c", "d", "e"])).toBe("a; also b; also c; and 2 more");
    expect(whysInWords([])).toBeUndefined();
  });
});
