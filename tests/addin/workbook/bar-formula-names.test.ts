import { describe, expect, it } from "vitest";
import {
  barFunctionName,
  hasBarFunction,
  storedFormula,
  typedFormula,
} from "../../../addin/workbook/bar-formula-names";

describe("BAR names in stored formulas", () => {
  it.each([
    "_xldudf_BAR_MASS(C3)",
    "_xldudf_bar_mass(C3)",
    "_xll.BAR.MASS(C3)",
    "BAR.MASS(C3)",
    "bar.mass(C3)",
    "[2]!_xldudf_BAR_MASS(C3)",
  ])("reads %s as typed", (stored) => {
    expect(typedFormula(stored)).toBe("BAR.MASS(C3)");
    expect(storedFormula(stored)).toBe("_xldudf_BAR_MASS(C3)");
    expect(hasBarFunction(stored)).toBe(true);
  });

  it("leaves texts, sheets and other functions alone", () => {
    const formula = `SUM('BAR.MASS'!A1,"BAR.MASS(1)",REBAR.MASS(2),_xlfn.UNIQUE(A:A))`;
    expect(typedFormula(formula)).toBe(formula);
    expect(storedFormula(formula)).toBe(formula);
    expect(hasBarFunction(formula)).toBe(false);
  });

  it("renames each call of a nested formula", () => {
    expect(storedFormula('IF(A1="BAR.X",BAR.MASS(BAR.DIAMETER(A1)),0)')).toBe(
      'IF(A1="BAR.X",_xldudf_BAR_MASS(_xldudf_BAR_DIAMETER(A1)),0)',
    );
  });

  it("knows a function's own name", () => {
    expect(["BAR.CUTLENGTH", "_xldudf_bar_cutlength", "SUM"].map(barFunctionName)).toEqual([
      "CUTLENGTH",
      "CUTLENGTH",
      null,
    ]);
  });
});
