import { expect, test } from "vitest";
import { otherHeatWords } from "../../../core/tickets/other-heat";

const bend = (...heats: (string | null)[]) => ({
  compensated: {
    angle: 93.1,
    low: 89,
    high: 91,
    plain: 93,
    refusal: null,
    trials: heats.map((heat) => ({ date: null, machine: null, heat })),
    otherTrials: 0,
    doubtedTrials: 0,
  },
});
const of = (...heats: string[]) => heats.map((heat) => ({ heat, pieces: 4 }));

// common practice: springback goes with the strength of the heat, so the first bar of a new one is a trial
test("should have one bar of a heat bent first that no trial is of", () => {
  expect(otherHeatWords([bend("K4711", "K4711", null)], of("K4712"))).toBe(
    "the angles rest on trials of heat K4711, and these bars are of heat K4712: bend one bar of this heat first, measure it and log it",
  );
  expect(otherHeatWords([bend("K4711")], of("K4711", "K4712"))).toContain("these bars are of heat K4712");
});

test("should say so where the heat of the bars is not known", () => {
  expect(otherHeatWords([bend("K4711")], [])).toContain("the heat of these bars is not known");
});

test("should say nothing where trials and bars are of one heat, or no trial names one", () => {
  expect(otherHeatWords([bend("K4711")], of("K4711"))).toBeNull();
  expect(otherHeatWords([bend(null)], of("K4712"))).toBeNull();
  expect(
    otherHeatWords([{ compensated: { ...bend("K4711").compensated, angle: null } }], of("K2")),
  ).toBeNull();
});
