import { describe, expect, it } from "vitest";
import rule from "../../../../core/audit/rules/length-off-written-legs";
import { runAudit } from "../../../../core/audit/run-audit";
import { type Cell, sheetFromRows } from "../../../../core/schedule/sheet";
import { resolveStandard } from "../../../../core/standards/index";
import type { Standard } from "../../../../core/standards/port";
import { ruleCases } from "../rule-cases";

ruleCases(rule, {
  silent: [{ rows: [{ size: "H16", shape: "00", A: 2000, length: 2000, remark: "150+1850" }] }],
  speaks: [],
});

const standard = resolveStandard("BS8666:2005") as Standard;
function said(rows: readonly (readonly Cell[])[]): string[] {
  const report = runAudit({ sheets: [sheetFromRows("List", rows)], standard, rules: [rule] });
  return report.findings.map(({ cell, message }) => `${cell}: ${message}`);
}

/** cm; each length the sum of its legs by hand, 20+140+20 = 180 */
const BARS: Cell[][] = [
  ["N1", 10, 80, "20+140+20", 180, 144],
  ["N2", 10, 80, "20+140+20", 180, 144],
  ["N3", 12, 48, "30+155", 185, 88.8],
  ["N4", 12, 52, "25+190+25", 240, 124.8],
  ["N5", 16, 12, "reto", 344, 41.28],
  ["N6", 8, 276, "estribo 14x34 g=7", 110, 303.6],
];
const HEADS = ["Pos.", "Ø (mm)", "Qtde. total", "Dobras", "Comp. unit. (cm)", "Comp. total (m)"];

describe("legs that a row writes in one cell", () => {
  it("should be silent where each length is their sum, whatever their unit", () => {
    expect(said([HEADS, ...BARS])).toEqual([]);
    const metres = BARS.map((bar) => [...bar.slice(0, 4), Number(bar[4]) / 100, bar[5] ?? null]);
    expect(said([HEADS.map((head) => head.replace("(cm)", "(m)")), ...metres])).toEqual([]);
  });

  it("should tell the length that is not", () => {
    // 25+490+25 is 540
    expect(said([HEADS, ...BARS, ["N7", 16, 18, "25+490+25", 450, 81]])).toEqual([
      "E8: length 4500 mm is not the 5400 mm that 25+490+25 make, as in 4 of 5 rows",
    ]);
  });

  it("should be silent where most lengths are less, by what bends take off", () => {
    const less = BARS.map((bar) => [...bar.slice(0, 4), Number(bar[4]) - 5, bar[5] ?? null]);
    expect(said([HEADS, ...less, ["N7", 16, 18, "25+490+25", 450, 81]])).toEqual([]);
  });

  it("should leave texts with other numbers beside the legs alone", () => {
    const hooks = ["N7", 16, 18, "25+490, gancho 2x10", 535, 96.3];
    expect(said([HEADS, ...BARS, hooks])).toEqual([]);
  });
});
