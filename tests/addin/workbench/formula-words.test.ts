import { describe, expect, test } from "vitest";
import { formulaWords } from "../../../addin/workbench/formula-words";

describe("formulaWords", () => {
  test("should offer what a misspelt name is near to", () => {
    expect(formulaWords('=BAR.CUTLENGHT("21",16,A1:C1)')).toMatch(
      /^there is no function BAR\.CUTLENGHT: .*BAR\.CUTLENGTH/,
    );
    expect(formulaWords("=2*BAR.XYZ(1)")).toMatch(/there are .*BAR\.MASS/);
  });

  test("should say what parts arguments", () => {
    expect(formulaWords('=BAR.MASS("H16";"ACI318:2019")')).toMatch(/comma/);
    expect(formulaWords('=BAR.MASS({"H16";"H20"},";")')).toBeNull();
  });

  test("should say nothing of formulas that it cannot speak for", () => {
    expect(formulaWords("=SUM(A1;A2)")).toBeNull();
    expect(formulaWords('=bar.mass("H16")')).toBeNull();
  });
});
