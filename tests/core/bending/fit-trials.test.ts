import { describe, expect, it } from "vitest";
import { groupMechanics } from "../../../core/bending/calibrate";
import { CALIBRATION_PRIOR } from "../../../core/bending/calibration.data";
import { fitTrials } from "../../../core/bending/fit-trials";
import { bendFor, predictSpringback } from "../../../core/bending/predict-springback";
import golden from "./calibration.golden.json";

const groups = golden.groups.map(({ bendShare, legDegrees }) => ({ bendShare, legDegrees }));

/** The vectors print weights and predictions to 4 decimals, coefficients and the reading error to 6. */
describe("fitTrials against an independent implementation", () => {
  it("starts from the same prior", () => {
    const prior = CALIBRATION_PRIOR.value;
    expect(prior.mean).toEqual(golden.prior.mu);
    expect(prior.deviation).toEqual(golden.prior.sd);
    expect([prior.groupShare, prior.groupDegrees]).toEqual([golden.prior.u, golden.prior.v]);
    expect(prior.groupFactors).toEqual(golden.prior.k_grid);
  });

  it.each(golden.groups)("gives the mechanics of $diameter mm on $formerPerDiameter d", (group) => {
    const former = group.formerPerDiameter * group.diameter;
    const found = groupMechanics({ diameter: group.diameter, former, yield: group.yield, levers: null });
    expect(found.bendShare).toBeCloseTo(group.bendShare, 8);
    expect(found.legDegrees).toBeCloseTo(group.legDegrees, 8);
  });

  it.each(golden.cases)("gives the vectors of $name", (wanted) => {
    const fit = fitTrials(groups, wanted.rows);
    expect(fit.reading).toBeCloseTo(wanted.reading, 6);
    expect(fit.groupFactor).toBe(wanted.groupFactor);
    expect(fit.freedom).toBeCloseTo(wanted.freedom, 4);
    wanted.weights.forEach((weight, index) => {
      expect(fit.weights[index]).toBeCloseTo(weight, 4);
    });
    wanted.coefficients.forEach((coefficient, index) => {
      expect(fit.coefficients[index]).toBeCloseTo(coefficient, 6);
    });
    for (const prediction of wanted.predictions) {
      const tried = wanted.rows.filter((row) => row.group === prediction.group).map((row) => row.bentTo);
      const asked = {
        mechanics: groups[prediction.group] as (typeof groups)[0],
        index: prediction.group,
        tried,
      };
      const bentTo = bendFor(fit, asked, prediction.wanted);
      const found = predictSpringback(fit, asked, bentTo);
      expect(bentTo).toBeCloseTo(prediction.compensated, 4);
      expect(found.deviation).toBeCloseTo(prediction.deviation, 4);
      expect(found.half).toBeCloseTo(prediction.half, 4);
    }
  });
});

describe("fitTrials", () => {
  it("asks the same of a group outside the fit as of one in it without trials", () => {
    const rows = golden.cases[2]?.rows ?? [];
    const three = fitTrials(
      groups.slice(0, 3),
      rows.filter((row) => row.group < 3),
    );
    const four = fitTrials(
      groups,
      rows.filter((row) => row.group < 3),
    );
    const mechanics = groups[3] as (typeof groups)[0];
    const outside = predictSpringback(three, { mechanics, index: null, tried: [] }, 98);
    const inside = predictSpringback(four, { mechanics, index: 3, tried: [] }, 98);
    expect(outside.springback).toBeCloseTo(inside.springback, 9);
    expect(outside.deviation).toBeCloseTo(inside.deviation, 9);
  });

  it("weighs a lone blunder in another group little and leaves the others theirs", () => {
    const { weights } = fitTrials(groups, golden.cases[2]?.rows ?? []);
    expect(weights[5]).toBeLessThan(0.4);
    expect(Math.min(...weights.filter((_, index) => index !== 5))).toBeGreaterThan(0.9);
  });

  it("inverts its own prediction", () => {
    const fit = fitTrials(groups, golden.cases[2]?.rows ?? []);
    const asked = { mechanics: groups[0] as (typeof groups)[0], index: 0, tried: [90, 100, 135] };
    for (const wanted of [10, 30, 45, 90, 135, 180]) {
      const bentTo = bendFor(fit, asked, wanted);
      expect(bentTo - predictSpringback(fit, asked, bentTo).springback).toBeCloseTo(wanted, 4);
    }
  });
});
