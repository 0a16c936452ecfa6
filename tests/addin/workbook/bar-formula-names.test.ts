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

  it("stores functions newer than the file format with their prefix, once, and nothing else", () => {
    // spelt as [MS-XLSX] 2.2.3 has them
    for (const [typed, stored] of [
      ["MAXIFS(G5:G9,C5:C9,A1)", "_xlfn.MAXIFS(G5:G9,C5:C9,A1)"],
      ["_xlfn.MAXIFS(G5:G9,C5:C9,A1)", "_xlfn.MAXIFS(G5:G9,C5:C9,A1)"],
      ['ifs(A1>1,textjoin(",",1,B:B))', '_xlfn.ifs(A1>1,_xlfn.textjoin(",",1,B:B))'],
      ["SORT(FILTER(A1:A9,B1:B9>0))", "_xlfn._xlws.SORT(_xlfn._xlws.FILTER(A1:A9,B1:B9>0))"],
      ["XLOOKUP(A1,BAR.MASS(A:A),C:C)", "_xlfn.XLOOKUP(A1,_xldudf_BAR_MASS(A:A),C:C)"],
      ['IF(A1="IFS(",SUMIFS(B:B,C:C,1),MYSORT(2))', 'IF(A1="IFS(",SUMIFS(B:B,C:C,1),MYSORT(2))'],
    ] as const)
      expect(storedFormula(typed)).toBe(stored);
  });

  it("knows a function's own name", () => {
    expect(["BAR.CUTLENGTH", "_xldudf_bar_cutlength", "SUM"].map(barFunctionName)).toEqual([
      "CUTLENGTH",
      "CUTLENGTH",
      null,
    ]);
  });
});
