import { describe, expect, test } from "vitest";
import { formulaWords } from "../../../addin/workbench/formula-words";
import { WORKSHEET_FUNCTIONS } from "../../../core/formulas";

const NAMES = [...WORKSHEET_FUNCTIONS.keys()].map((name) => `BAR.${name}`);

describe("formulaWords", () => {
  test("should offer what a misspelt name is near to", () => {
    expect(formulaWords('=BAR.CUTLENGHT("21",16,A1:C1)', NAMES)).toMatch(
      /^there is no function BAR\.CUTLENGHT: .*BAR\.CUTLENGTH/,
    );
    expect(formulaWords("=2*BAR.XYZ(1)", NAMES)).toMatch(/there are .*BAR\.MASS/);
  });

  test("should say what parts arguments", () => {
    expect(formulaWords('=BAR.MASS("H16";"ACI318:2019")', NAMES)).toMatch(/comma/);
    expect(formulaWords('=BAR.MASS({"H16";"H20"},";")', NAMES)).toBeNull();
  });

  test("should say nothing of formulas that it cannot speak for", () => {
    expect(formulaWords("=SUM(A1;A2)", NAMES)).toBeNull();
    expect(formulaWords('=bar.mass("H16")', NAMES)).toBeNull();
  });
});
