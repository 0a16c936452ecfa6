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

  // a sketch of strokes, as some offices type it: 42|____714____|42 is 798 cm
  it("should be of legs that strokes draw", () => {
    const drawn = BARS.map((bar) => [
      ...bar.slice(0, 3),
      String(bar[3]).replace("+", "|____").replace("+", "____|"),
      ...bar.slice(4),
    ]);
    expect(
      said([HEADS, ...drawn, ["N7", 20, 4, "\u2014\u2014\u2014450\u2014\u2014\u2014", 450, 18]]),
    ).toEqual([]);
    expect(said([HEADS, ...drawn, ["N7", 16, 12, "____714____|42", 798, 95.76]])).toEqual([
      "E8: length 7980 mm is not the 7560 mm that 714 |42 make, as in 4 of 5 rows",
    ]);
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

  // 300 + 5960 + 300 less two bends of 2 x 20 is 6480; 300 + 1980 less one of 40 is 2240
  const CORNERS: Cell[][] = [
    ["1", 20, 10, "300\u2514 5960 \u2518300", 6480],
    ["2", 20, 10, "300\u2514 1980", 2240],
    ["3", 22, 15, "330\u2514 5960 \u2518330", 6532],
    ["4", 16, 16, "240\u2514 3860 \u2518240", 4276],
  ];
  const DRAWN = ["Pos.", "\u00d8 (mm)", "Qtde. total", "Dobras", "Comp. unit. (mm)"];

  it("should take off what the other rows do for each bend", () => {
    expect(said([DRAWN, ...CORNERS])).toEqual([]);
    // 300 + 5900 + 300 less 80 is 6420
    expect(said([DRAWN, ...CORNERS, ["5", 20, 8, "300\u2514 5900 \u2518300", 6240]])).toEqual([
      "E6: length 6240 mm is not the 6420 mm that 300\u2514 5900 \u2518300 make less 2 d a bend, as in 4 of 5 rows",
    ]);
  });

  it("should add a leg as often as it comes", () => {
    // 2 x 45 + 2 x 20 + 2 x 8 = 146
    const links = [1, 2, 3, 4].map((one) => [`L${one}`, 8, 30, "2x45+2x20+2x8", 146, 43.8]);
    expect(said([HEADS, ...links])).toEqual([]);
    // 2 x 55 + 2 x 20 + 2 x 3 = 156
    expect(said([HEADS, ...links, ["L5", 8, 30, "2x55+2x20+2x3", 166, 49.8]])).toEqual([
      "E6: length 1660 mm is not the 1560 mm that 2x55+2x20+2x3 make, as in 4 of 5 rows",
    ]);
  });

  it("should read legs with a stroke between them", () => {
    const bars = BARS.map((bar) => [
      ...bar.slice(0, 3),
      String(bar[3]).replaceAll("+", "/"),
      ...bar.slice(4),
    ]);
    expect(said([HEADS, ...bars, ["N7", 16, 18, "30/540/30", 660, 118.8]])).toEqual([
      "E8: length 6600 mm is not the 6000 mm that 30/540/30 make, as in 4 of 5 rows",
    ]);
  });

  it("should read legs that only spaces part", () => {
    const bars = BARS.map((bar) => [
      ...bar.slice(0, 3),
      String(bar[3]).replaceAll("+", "  "),
      ...bar.slice(4),
    ]);
    expect(said([HEADS, ...bars])).toEqual([]);
    // 3 + 165 is 168
    expect(said([HEADS, ...bars, ["N7", 20, 8, "3  165", 195, 15.6]])).toEqual([
      "E8: length 1950 mm is not the 1680 mm that 3  165 make, as in 4 of 5 rows",
    ]);
  });

  it("should take a number alone for a straight bar, which may have lost a leg", () => {
    expect(said([HEADS, ...BARS, ["N7", 16, 18, "450", 450, 81]])).toEqual([]);
    expect(said([HEADS, ...BARS, ["N7", 18, 10, "160", 200, 20]])).toEqual([
      "E8: length 2000 mm is not the 1600 mm that 160 make, as in 4 of 4 rows",
    ]);
    // a number of no bar's length is a shape
    expect(said([HEADS, ...BARS, ["N7", 16, 18, "11", 450, 81]])).toEqual([]);
  });
});
