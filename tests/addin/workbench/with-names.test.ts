import { describe, expect, test } from "vitest";
import { withNames } from "../../../addin/workbench/grid/with-names";

const NAMES: Readonly<Record<string, string>> = {
  totalkg: "=Schedule!$O$20",
  marks: "Schedule!$B$6:$B$19",
  waste: "0.025",
  factor: "1+Waste",
  loop: "Loop+1",
  parts: "Schedule!$A$1:$A$3,Schedule!$C$1:$C$3",
};
const taken = (formula: string) =>
  withNames(formula, (name, sheet) => {
    const refersTo = NAMES[name.toLowerCase()];
    return refersTo === undefined || sheet === "Other" ? null : { name: name.toLowerCase(), refersTo };
  });

describe("a formula without its names", () => {
  test("should hold what each name stands for", () => {
    expect(taken("=TotalKg*(1+Waste)")).toEqual({
      formula: "=Schedule!$O$20*(1+0.025)",
      names: ["totalkg", "waste"],
    });
    expect(taken("=COUNTA(Marks)").formula).toBe("=COUNTA(Schedule!$B$6:$B$19)");
    expect(taken("=SUM(Parts)").formula).toBe("=SUM(Schedule!$A$1:$A$3,Schedule!$C$1:$C$3)");
  });

  test("should keep a sum behind a name together", () => {
    // 2 x (1 + 0.025) is 2.05; without brackets it would be 2.025
    expect(taken("=2*Factor")).toEqual({ formula: "=2*(1+0.025)", names: ["factor", "waste"] });
  });

  test("should keep what is no name of the workbook", () => {
    expect(taken('="TotalKg"&LET(a,1,a)').formula).toBe('="TotalKg"&LET(a,1,a)');
    expect(taken("=Other!TotalKg").formula).toBe("=Other!TotalKg");
    expect(taken("=Schedule!TotalKg").formula).toBe("=Schedule!$O$20");
    expect(taken("=Loop").formula).toBe("=(Loop+1)");
    expect(taken("=SUM(A1:B2)")).toEqual({ formula: "=SUM(A1:B2)", names: [] });
  });
});
