import { describe, expect, it } from "vitest";
import { runAudit } from "../../../core/audit/run-audit";
import { type Cell, sheetFromRows } from "../../../core/schedule/sheet";
import { heldStandard } from "../../_support/held-standard";

type Rows = readonly (readonly Cell[])[];

/** Bars read, and all that is told of them above a note. */
function told(rows: Rows): { readonly bars: number; readonly loud: readonly string[] } {
  const report = runAudit({ sheets: [sheetFromRows("List", rows)], standard: heldStandard("BS8666:2005") });
  const loud = report.findings.filter(({ code, severity }) => severity !== "note" && code !== "SIZE101");
  return { bars: report.rows.bars, loud: loud.map(({ cell, message }) => `${cell}: ${message}`) };
}

describe("a line of masses under columns by size that names its unit alone", () => {
  const HEAD = ["Pos", "No.", "Size", "Length m", "Shape", "Ø8", "Ø10", "Ø12"];
  /** metres by hand: 100 x 2 = 200, 50 x 3 = 150, 40 x 5 = 200, 20 x 5 = 100 */
  const BARS: Cell[][] = [
    ["1", 100, 8, 2, "00", 200, null, null],
    ["2", 50, 10, 3, "00", null, 150, null],
    ["3", 40, 12, 5, "00", null, null, 200],
    ["4", 20, 8, 5, "00", 100, null, null],
  ];
  const foot = (label: string, ...masses: readonly number[]): Cell[] => [
    ...[label, null, null, null, null],
    ...masses,
  ];
  // kg by hand with 0.395, 0.617 and 0.888 kg/m (EN 10080): 300, 150 and 200 m make 118.5, 92.55 and 177.6
  const FEET = [foot("Sum m", 300, 150, 200), foot("kg/m", 0.395, 0.617, 0.888)];

  it("should be worked out from the lines above it, and be what the total sums", () => {
    const kg = foot("kg", 118.5, 92.55, 177.6);
    expect(told([HEAD, ...BARS, ...FEET, kg, foot("Total kg", 388.65)]).loud).toEqual([]);
    expect(told([HEAD, ...BARS, ...FEET, kg, foot("Total kg", 488.65)]).loud).toEqual([
      "F9: the line gives 488.65, but the sums by size above it add up to 388.65",
    ]);
  });

  it("should be what a total of mass sums, and not the metres that come near it", () => {
    const kg = foot("Mass kg", 118.5, 92.55, 177.6);
    const list = (label: string, total: number) =>
      told([HEAD, ...BARS, ...FEET, kg, foot(label, total)]).loud;
    // 300 + 150 + 200 = 650 metres
    expect(list("Total mass (kg)", 650)).toEqual([
      "F9: the line gives 650, but the sums by size above it add up to 388.65",
    ]);
    expect(list("Total length (m)", 650)).toEqual([]);
    expect(list("Total", 650)).toEqual([]);
  });

  it("should be told of where one mass is wrong", () => {
    const kg = foot("KG", 118.5, 92.55, 277.6);
    expect(told([HEAD, ...BARS, ...FEET, kg, foot("Total kg", 388.65)]).loud).toEqual([
      "H8: the mass of 12 is given as 277.6, but the bars of the list make 177.6",
    ]);
  });
});

describe("sums by size below a list", () => {
  const HEAD = ["Item", "Bar mark", "Size", "Length mm", "No.", "Shape", "A", "Mass kg"];
  /** kg by hand with 0.395, 0.617, 0.888, 1.21 and 2.00 kg/m (EN 10080) */
  const bar = (mark: string, size: string, no: number, length: number, kg: number): Cell[] => [
    ...[1, mark, size, length, no, "00", length, kg],
  ];
  const BARS = [
    bar("1", "8", 100, 2000, 79),
    bar("2", "12", 50, 3000, 133.2),
    bar("3", "14", 40, 5000, 242),
    bar("4", "18", 20, 5000, 200),
  ];
  const lines = (...masses: readonly [number, number, number, number]): Cell[][] =>
    ["8", "12", "14", "18"].map((size, at) => [null, null, size, masses[at] as number]);

  it("should be no bars under a title alone, and be held against the list", () => {
    const list = (...masses: readonly [number, number, number, number]) =>
      told([HEAD, ...BARS, [], ["WEIGHTS BY SIZE"], ...lines(...masses), [null, null, "TOTAL", 654.2]]);
    expect(list(79, 133.2, 242, 200)).toEqual({ bars: 4, loud: [] });
    expect(list(79, 133.2, 142, 200)).toEqual({
      bars: 4,
      loud: ["D10: the mass of 14 is given as 142, but the bars of the list make 242"],
    });
  });

  it("should take in the line that has the title before it", () => {
    const list = (total: string) => {
      const lines = [
        ["Summary", "Ø8", "79.00"],
        [null, "Ø12", "133.20"],
        [null, "Ø14", "242.00"],
        [null, "Ø18", "200.00"],
        [null, "Total", total],
      ];
      return told([HEAD, ...BARS, [], ...lines.map((row) => [null, null, null, null, null, ...row])]);
    };
    expect(list("654.20")).toEqual({ bars: 4, loud: [] });
    // without the first line
    expect(list("575.20").loud).toEqual([
      "H11: the total is given as 575.2, but the sizes above or beside it add up to 654.2",
    ]);
  });

  it("should be known by the word before sizes that the standard in force has not", () => {
    const across = (...tonnes: readonly number[]) =>
      told([HEAD, ...BARS, [], [null, null, "Dia", 8, 12, 14, 18], [null, null, "Tons", ...tonnes]]);
    expect(across(0.079, 0.133, 0.242, 0.2)).toEqual({ bars: 4, loud: [] });
    expect(across(0.079, 0.133, 0.142, 0.2).loud).toEqual([
      "F8: the mass of 14 is given as 0.142, but the bars of the list make 0.242",
    ]);
  });
});

describe("sub-totals under columns by size", () => {
  const HEAD = ["Member", "Mark", "Size", "No. of mbrs", "No. in each", "Total", "Length mm", "Shape"];
  const SIZES = ["8", "10", "12"];
  /** kg by hand with 0.395, 0.617 and 0.888 kg/m (EN 10080): 20 x 2 m and 10 x 3 m of each */
  const KG = { "8": [15.8, 11.85], "10": [24.68, 18.51], "12": [35.52, 26.64] } as const;
  const row = (mark: string, size: keyof typeof KG, at: 0 | 1): Cell[] => [
    ...["B", mark, size, 1, at === 0 ? 20 : 10, at === 0 ? 20 : 10, at === 0 ? 2000 : 3000, "00"],
    ...SIZES.map((one) => (one === size ? (KG[size][at] as number) : null)),
  ];
  const sub = (...masses: readonly (number | null)[]): Cell[] => [
    ...[null, null, null, null, null, "Sub-total", null, null],
    ...masses,
  ];
  const list = (ofTen: number): Rows => [
    [...HEAD, ...SIZES],
    ...[row("1", "8", 0), row("2", "10", 0), row("3", "12", 0), sub(15.8, 24.68, 35.52), []],
    ...[row("4", "8", 0), row("5", "8", 1), row("6", "12", 1), sub(27.65, null, 26.64), []],
    ...[row("7", "10", 0), row("8", "10", 1), row("9", "12", 0), sub(null, ofTen, 35.52)],
  ];

  it("should add up as those of their label do, where two sums alone would not show it", () => {
    // 24.68 + 18.51
    expect(told(list(43.19)).loud).toEqual([]);
    expect(told(list(34.19)).loud).toEqual([
      "J15: the sum of 10 is given as 34.19, but the bars of the list make 43.19",
    ]);
  });
});

describe("lists side by side", () => {
  const HEAD = ["Mark", "Size", "No.", "Shape", "Length mm", "Mass kg"];
  const left: Cell[][] = [
    ["D1", "16", 4, "00", 6000, 37.92],
    ["D2", "12", 8, "00", 3000, 21.31],
    ["D3", "10", 20, "00", 1500, 18.51],
    ["D4", "12", 6, "00", 4000, 21.31],
  ];
  const right: Cell[][] = [
    ["K1", "16", 8, "00", 4000, 50.56],
    ["K2", "12", 12, "00", 3500, 37.3],
    ["K3", "10", 30, "00", 1600, 29.62],
    ["K1", "16", 8, "00", 4000, 50.56],
  ];

  it("should take what a row twice explains for a note in the list that has it", () => {
    // 37.92 + 21.31 + 18.51 + 21.31 = 99.05; 50.56 + 37.3 + 29.62 = 117.48
    const rows = [
      [...HEAD, null, ...HEAD],
      ...left.map((cells, at) => [...cells, null, ...(right[at] as Cell[])]),
      [],
      [null, null, null, null, "Total", 99.05, null, null, null, null, null, "Total", 117.48],
    ];
    expect(told(rows).loud).toEqual([
      "H5: mark K1 stands in row 2 too, the same bar and as many: is it entered twice?",
    ]);
  });
});
