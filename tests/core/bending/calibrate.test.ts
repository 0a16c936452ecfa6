import { describe, expect, it } from "vitest";
import { calibrate, median } from "../../../core/bending/calibrate";
import type { Trial } from "../../../core/bending/trial";
import { refusalText } from "../../../core/units/refusal";

let row = 0;
function trial(bentTo: number, released: number, change: Partial<Trial> = {}): Trial {
  row += 1;
  return {
    row,
    machine: "M1",
    size: "H16",
    diameter: 16,
    former: 64,
    grade: "B500B",
    yield: 500,
    form: "bar",
    heat: null,
    date: null,
    bentTo,
    released,
    ...change,
  };
}
const texts = (trials: Trial[]) => calibrate(trials).problems.map((problem) => refusalText(problem.reason));

describe("calibrate", () => {
  it("makes a group of machine, size, former, grade and form", () => {
    const one = trial(90, 82);
    const others = [
      trial(90, 82, { machine: "m1 ".trim() }),
      trial(90, 82, { machine: "M2" }),
      trial(90, 82, { diameter: 20 }),
      trial(90, 82, { former: 100 }),
      trial(90, 82, { grade: "B500C" }),
      trial(90, 82, { form: "coil" }),
    ];
    const { groups } = calibrate([one, ...others]);
    expect(groups.map((group) => group.trials.length)).toEqual([2, 1, 1, 1, 1, 1]);
  });

  it("gives each group its median springback", () => {
    expect(calibrate([trial(90, 82), trial(90, 80), trial(92, 83)]).groups[0]?.plain).toBe(9);
    expect(median([4, 1, 3, 2])).toBe(2.5);
  });

  it("shows a trial that does not fit, and keeps it", () => {
    const good = [82, 81.5, 82, 82.5, 81.5, 82].map((released) => trial(90, released));
    const bad = trial(90, 70);
    const { groups, weights, problems } = calibrate([...good, bad]);
    expect(groups[0]?.trials).toContain(bad);
    expect(weights.find((one) => one.trial === bad)?.weight).toBeLessThan(0.4);
    const shown = problems.filter((problem) => problem.reason.code === "trial-does-not-fit");
    expect(shown.map((problem) => problem.row)).toEqual([bad.row]);
  });

  it("shows trials that contradict each other, with both rows", () => {
    const a = trial(90, 84);
    const b = trial(91, 78);
    const said = texts([a, b]).find((text) => text.includes("measure both"));
    expect(said).toContain(`rows ${a.row + 1} and ${b.row + 1}, bent to 91, came back by 6 and 13 degrees`);
  });

  it("shows a group of one trial, and one tried at one angle only", () => {
    expect(texts([trial(90, 82)])).toEqual([
      "16 mm on former 64, B500B, bar, machine M1 has one trial only: bend a second bar and write it down",
    ]);
    expect(texts([trial(90, 82), trial(98, 89)]).join()).toMatch(/all 2 trials of .* were bent to about 90/);
    expect(texts([trial(90, 82), trial(135, 125)])).toEqual([]);
  });

  it("lets a machine's own levers stand for the usual ones", () => {
    const long = calibrate([trial(90, 82)], { leversOf: () => 200 }).groups[0]?.mechanics.legDegrees ?? 0;
    const usual = calibrate([trial(90, 82)]).groups[0]?.mechanics.legDegrees ?? 0;
    expect(long).toBeCloseTo(2 * usual, 9);
  });

  it("is the prior with an empty log", () => {
    const { fit, problems } = calibrate([]);
    expect([...fit.coefficients]).toEqual([1.6, 1.9, 0.4]);
    expect(problems).toEqual([]);
  });
});
