import { describe, expect, it } from "vitest";
import { TRIALFIT } from "../../../core/formulas/trialfit";
import type { Block } from "../../../core/formulas/worksheet-function";

const environment = { defaultStandard: "BS8666:2005" };
const HEADER = ["size", "former", "bent to", "released"];
const answer = (log: Block | undefined, method = "fit", size = "H12") =>
  TRIALFIT.call([[[90]], [[size]], undefined, undefined, undefined, log, [[method]]], environment);

describe("BAR.TRIALFIT", () => {
  it("gives a header and one row: angle, interval, trials and what they rest on", () => {
    const [header, row] = answer([HEADER, ["H12", 48, 90, 81], ["H12", 48, 99, 90], ["H12", 48, 99, 89.5]]);
    expect(header).toEqual(["compensated angle", "released low", "released high", "trials", "rests on"]);
    expect(row?.[3]).toBe(3);
    expect((row?.[1] as number) + (row?.[2] as number)).toBeCloseTo(180, 9);
    expect(row?.[4]).toMatch(/^3 trials of 12 mm on former 48, of 3 in the log; plain rule bends to 99/);
    expect(row?.[4]).not.toMatch(/guess/);
  });

  it("shows a guess, called so, where there is no trial", () => {
    const [, row] = answer(undefined);
    expect(row?.[0]).toBeGreaterThan(90);
    expect(row?.[3]).toBe(0);
    expect(row?.[4]).toMatch(/^a guess: make a trial bend first.*mechanics alone, no trial$/);
    expect(answer([HEADER, ["H16", 64, 90, 82]], "plain")[1]?.[4]).toMatch(
      /^a guess: make a trial bend first/,
    );
  });

  it("puts the plain rule first where it is asked for, and the fit beside it", () => {
    const [, row] = answer([HEADER, ["H12", 48, 90, 80]], "plain");
    expect(row?.[0]).toBe(100);
    expect(row?.[4]).toMatch(/^plain rule; fit bends to 9\d(\.\d)?;/);
  });

  it("tells the rows that it could not use, and trials that do not fit", () => {
    const log: Block = [
      HEADER,
      ["H12", 48, 90, 81],
      ["H12", 48, 99, 90],
      ["H12", 48, 5, 4],
      ["H12", 0, 90, 81],
    ];
    expect(answer(log)[1]?.[4]).toMatch(/2 rows of the log not used; trial in row 4: bent to 5 is below 10/);
  });

  it("takes one angle only", () => {
    expect(TRIALFIT.call([[[90], [45]], [["H12"]]], environment)[0]?.[0]).toMatchObject({ error: "#VALUE!" });
  });
});
