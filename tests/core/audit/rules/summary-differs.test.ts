import { describe, expect, it } from "vitest";
import rule from "../../../../core/audit/rules/summary-differs";
import { runAudit } from "../../../../core/audit/run-audit";
import { type Cell, sheetFromRows } from "../../../../core/schedule/sheet";
import { resolveStandard } from "../../../../core/standards/index";
import type { Standard } from "../../../../core/standards/port";
import { ruleCases } from "../rule-cases";

ruleCases(rule, {
  silent: [{ rows: [{ size: "H16", shape: "00", A: 1000, length: 1000, mass: 3.16 }] }],
  speaks: [],
});

const HEADER = [
  "Bar mark",
  "Type and size",
  "Total no.",
  "Length of each bar mm",
  "Shape code",
  "A",
  "Mass kg",
];
/** kg by hand: 10 x 2 x 0.888, 10 x 3 x 0.888, 20 x 2 x 1.58, 10 x 4 x 2.47 */
const BARS: readonly (readonly Cell[])[] = [
  ["1", "H12", 10, 2000, "00", 2000, 17.76],
  ["2", "H12", 10, 3000, "00", 3000, 26.64],
  ["3", "H16", 20, 2000, "00", 2000, 63.2],
  ["4", "H20", 10, 4000, "00", 4000, 98.8],
];

function said(summary: readonly (readonly Cell[])[]): string[] {
  const rows: Cell[][] = [[...HEADER], ...BARS.map((row) => [...row]), [], ...summary.map((row) => [...row])];
  const standard = resolveStandard("BS8666:2005") as Standard;
  const report = runAudit({ sheets: [sheetFromRows("Schedule", rows)], standard, rules: [rule] });
  return report.findings.map(({ cell, message }) => `${cell}: ${message}`);
}

describe("a summary by size", () => {
  it("should be silent where each size has the masses of its bars, in kg or in t", () => {
    const sizes = [null, "Size", "12", "16", "20"];
    expect(said([sizes, [null, "Mass kg", 44.4, 63.2, 98.8]])).toEqual([]);
    expect(said([sizes, [null, "Mass t", 0.0444, 0.0632, 0.0988]])).toEqual([]);
  });

  it("should name the size whose mass is not that of its bars", () => {
    // the second H12 row was left out
    expect(
      said([
        [null, "Size", "12", "16", "20"],
        [null, "Mass kg", 17.76, 63.2, 98.8],
      ]),
    ).toEqual(["C8: the mass of 12 is given as 17.76, but the bars of the list make 44.4"]);
  });

  it("should hold pounds and feet against the bars, as lists of inch sizes sum them", () => {
    const standard = resolveStandard("ACI318:2019") as Standard;
    const heads = ["Mark", "Size", "Total no.", "Length ft", "lb/ft", "Weight lb"];
    // lb/ft of ASTM A615: 0.376, 0.668, 1.043; 10 x 20 x 0.376 = 75.2 and so on
    const bars: Cell[][] = [
      ["1", "#3", 10, 20, 0.376, 75.2],
      ["2", "#4", 12, 15, 0.668, 120.2],
      ["3", "#4", 30, 20, 0.668, 400.8],
      ["4", "#5", 8, 30, 1.043, 250.3],
    ];
    const told = (fours: number, perFoot = 0.668): (string | null)[] =>
      runAudit({
        sheets: [
          sheetFromRows("List", [
            ...[heads, ...bars, []],
            ...[["Summary"], ["Size", "Total ft", "Weight lb", "lb/ft"]],
            ...[
              ["#3", 200, 75.2, 0.376],
              ["#4", 780, fours, perFoot],
              ["#5", 240, 250.3, 1.043],
            ],
          ]),
        ],
        ...{ standard, rules: [rule] },
      }).findings.map(({ cell }) => cell);
    expect(told(521)).toEqual([]);
    expect(told(421)).toEqual(["C10"]);
    expect(told(521, 0.686)).toEqual(["D10"]);
  });

  it("should name a total beside the sizes that is not theirs", () => {
    const sizes = [null, "Size", "12", "16", "20", "Total"];
    // 44.4 + 63.2 + 98.8
    expect(said([sizes, [null, "Mass kg", 44.4, 63.2, 98.8, 206.4]])).toEqual([]);
    expect(said([sizes, [null, "Mass kg", 44.4, 63.2, 98.8, 246.4]])).toEqual([
      "F8: the total is given as 246.4, but the sizes above or beside it add up to 206.4",
    ]);
  });

  // by hand: 44.4 + 63.2 + 98.8 = 206.4
  const stacked = (total: number, label = "Total"): Cell[][] => [
    ["Summary"],
    ["H12", 44.4, "kg"],
    ["H16", 63.2, "kg"],
    ["H20", 98.8, "kg"],
    [label, total, "kg"],
  ];

  it("should name a total that is not what the sizes above it add up to", () => {
    expect(said(stacked(206.4))).toEqual([]);
    expect(said(stacked(206))).toEqual([]);
    expect(said(stacked(306.4))).toEqual([
      "B11: the total is given as 306.4, but the sizes above or beside it add up to 206.4",
    ]);
    expect(said(stacked(216.72, "Total + 5 % waste"))).toEqual([]);
  });

  it("should say nothing of a line that agrees with the list nowhere", () => {
    expect(
      said([
        [null, "Size", "12", "16", "20"],
        [null, "Price", 900, 850, 800],
      ]),
    ).toEqual([]);
  });
});

/** m by hand: 10 x 2 + 10 x 3, 20 x 2, 10 x 4; kg with 0.888, 1.58 and 2.47 kg/m (EN 10080) */
const SIZED: readonly (readonly Cell[])[] = [
  ["Mark", "Size", "Number", "Length m", "Total length m", null, null],
  [null, null, null, null, "Ø12", "Ø16", "Ø20"],
  ["1", 12, 10, 2, 20, null, null],
  ["2", 12, 10, 3, 30, null, null],
  ["3", 16, 20, 2, null, 40, null],
  ["4", 20, 10, 4, null, null, 40],
  [null, null, null, "Total m", 50, 40, 40],
  [null, null, null, "kg/m", 0.888, 1.58, 2.47],
];

function saidUnder(...below: readonly (readonly Cell[])[]): string[] {
  const rows = [...SIZED, ...below].map((row) => [...row]) as Cell[][];
  const standard = resolveStandard("BS8666:2005") as Standard;
  const report = runAudit({ sheets: [sheetFromRows("Schedule", rows)], standard, rules: [rule] });
  return report.findings.map(({ cell, message }) => `${cell}: ${message}`);
}

describe("masses under columns by size", () => {
  it("should be metres times kg/m, and no product of a line with itself", () => {
    expect(saidUnder([null, null, null, "Sum of masses", 44.4, 63.2, 9.88])).toEqual([
      "G9: the mass of 20 is given as 9.88, but the bars of the list make 98.64",
    ]);
  });

  it("should add up along their line, and not with the same steel in another unit above them", () => {
    expect(
      saidUnder(
        [null, null, null, "lb", 97.9, 139.3, 217.8],
        [null, null, null, "kg", 44.4, 63.2, 98.8],
        [null, null, null, "Total kg", 206.4],
      ),
    ).toEqual([]);
  });

  it("should go by what is typed beside the bars where a count and the line above are wrong", () => {
    // 14 for 41: 41 x 2 m are 82 m, and 82 x 0.888 are 72.82 kg; the line above has 92 m
    const sized: Cell[][] = SIZED.map((row) => [...row]);
    sized[2] = ["1", 12, 14, 2, 82, null, null];
    sized[6] = [null, null, null, "Total m", 122, 40, 40];
    const masses = [null, null, null, "Sum of masses", 99.46, 63.2, 98.8];
    const standard = resolveStandard("BS8666:2005") as Standard;
    const sheets = [sheetFromRows("Schedule", [...sized, masses])];
    expect(runAudit({ sheets, standard, rules: [rule] }).findings.map(({ cell }) => cell)).toEqual(["E7"]);
  });
});
