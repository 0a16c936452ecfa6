import { describe, expect, it } from "vitest";
import { RULES } from "../../../core/audit/rules/index";

/** Why a rule may offer a change: what it is arithmetic of, never a size, a leg or a count that the designer decides. */
const OFFERED: Readonly<Record<string, string>> = {
  BEND101: "the standard's least former; lengths and masses that follow are said and go along",
  DIM101: "the standard's step, down for links and up or down for others",
  LEN101: "the standard's step; total length and mass go along",
  LEN102: "the length of the dimensions; total length and mass go along",
  LEN106: "the same, where the printed length is not the shorter",
  MASS101: "count x length x unit mass",
  READ105: "a number stored as a number",
  SHAPE102: "the code with its nought",
  SHAPE104: "a figure that the code does not take, where the length follows without it",
  SUM101: "members x bars in each, where neither mass nor total length bears the total out",
  SUM102: "members x bars in each, once",
  SUM108: "count x length; the mass goes along",
  SUM109: "the one value with which the row's products hold",
  SUM110: "the value that two neighbours give",
  UNIT101: "the figure in its column's unit, where the rest of the row then agrees",
  UNIT102: "the same",
  UNIT103: "the same",
};

describe("the changes that rules offer", () => {
  const offering = RULES.filter(({ fixes }) => Object.keys(fixes ?? {}).length > 0);

  it("are those of arithmetic and of the standard's own steps", () => {
    expect(offering.map(({ code }) => code).sort()).toEqual(Object.keys(OFFERED).sort());
  });

  it("are safe only where no length, count or mass can change", () => {
    const safe = offering.filter(({ fixes }) =>
      Object.values(fixes ?? {}).some(({ safety }) => safety === "safe"),
    );
    expect(safe.map(({ code }) => code).sort()).toEqual(["READ105", "SHAPE102"]);
  });

  it("are never beside a question to the designer", () => {
    const asking = offering.filter(({ messages }) =>
      Object.values(messages).some((words) => words.includes("ask the designer")),
    );
    // of a coat that is not held the designer is asked; no change is offered with it
    expect(asking.map(({ code }) => code)).toEqual(["BEND101"]);
  });
});
