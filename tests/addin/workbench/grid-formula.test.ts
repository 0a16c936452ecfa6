import { describe, expect, test } from "vitest";
import { gridFormula } from "../../../addin/workbench/book/grid-formula";

describe("gridFormula", () => {
  test.each([
    ["_xldudf_BAR_MASS(C3)", "BAR.MASS(C3)"],
    ["_xlfn.XLOOKUP(A1,B:B,C:C)", "XLOOKUP(A1,B:B,C:C)"],
    ["_xlfn._xlws.FILTER(A1:A9,B1:B9>0)", "FILTER(A1:A9,B1:B9>0)"],
    ['IF(A1="_xlfn.XLOOKUP(",1,SUM(B1:B2))', 'IF(A1="_xlfn.XLOOKUP(",1,SUM(B1:B2))'],
    ["CEILING(A2+B2,25)", "CEILING(A2+B2,25)"],
  ])("should show %s as a user types it", (stored, typed) => {
    expect(gridFormula(stored)).toBe(typed);
  });
});
