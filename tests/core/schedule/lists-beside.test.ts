import { describe, expect, it } from "vitest";
import { readSchedule } from "../../../core/schedule/read-schedule";
import { type Cell, sheetFromRows } from "../../../core/schedule/sheet";
import { heldStandard } from "../../_support/held-standard";

// rows are invented; metres are worked out by hand
const standard = heldStandard("BS8666:2005");
const read = (rows: readonly (readonly Cell[])[]) => readSchedule(sheetFromRows("S1", rows), standard);

const beside = (heads: readonly string[], times: (name: string, members: number) => string): Cell[][] => [
  [...heads, null, ...heads],
  [times("V1", 2), null, null, null, null, null, times("P1", 3)],
  ["1", 10, 8, 500, 4000, null, "7", 10, 30, 400, 12000],
  ["2", 16, 4, 600, 2400, null, "8", 16, 12, 350, 4200],
  ["3", 8, 60, 150, 9000, null, times("P2", 10)],
  [times("V2", 1), null, null, null, null, null, "9", 12, 20, 300, 6000],
  ["4", 12, 6, 700, 4200, null, "10", 8, 90, 120, 10800],
];
// m of both lists: 8: 90 + 108, 10: 40 + 120, 12: 42 + 60, 16: 24 + 42
const SUMS = [198, 160, 102, 66];
const SIZES = [8, 10, 12, 16];

const LANGUAGES = [
  ["Spanish", ["Pos", "Ø mm", "Cant.", "Largo (cm)", "Largo total (cm)"], ["Ø mm", "Largo total (m)"]],
  [
    "French",
    ["Repère", "Ø mm", "Nombre", "Longueur (cm)", "Longueur totale (cm)"],
    ["Ø mm", "Longueur totale (m)"],
  ],
] as const;

describe.each(LANGUAGES)("two %s lists side by side over one summary by size", (_, heads, sums) => {
  const list = beside(heads, (name, members) => `${name} (x${members})`);
  it("should be counted for all members where the summary adds up both as they stand", () => {
    const summary = SIZES.map((size, at): Cell[] => [size, SUMS[at] ?? 0]);
    const { bars } = read([...list, [], [...sums], ...summary]);
    expect(bars.map(({ each, total }) => [each, total])).toEqual(
      [8, 30, 4, 12, 60, 20, 6, 90].map((total) => [null, total]),
    );
  });
  it("should be counted for each member where the summary adds up both so many times", () => {
    // 8: 2 x 90 + 10 x 108, 10: 2 x 40 + 3 x 120, 12: 42 + 10 x 60, 16: 2 x 24 + 3 x 42
    const summary = [1260, 440, 642, 174].map((sum, at): Cell[] => [SIZES[at] ?? 0, sum]);
    const { bars } = read([...list, [], [...sums], ...summary]);
    expect(bars.map(({ each }) => each)).toEqual([8, 30, 4, 12, 60, 20, 6, 90]);
  });
});

// "Xyz" stands for a word of no language held; kg by hand, number x length x 0.994 (#4) or 0.560 (#3)
describe.each(["Clave", "Xyz"])("two lists beside each other that both begin with %s", (first) => {
  const rows: Cell[][] = [
    [first, "Var.", "Pzas", "a cm", "b cm", "Long. m", "kg/m", "kg"],
    ["Z-1", "#4", 60, null, null, 1.7, 0.994, 101.4],
    ["Z-2", "#4", 50, null, null, 1.4, 0.994, 69.6],
    ["E-1", "#3", 96, 35, 35, 1.6, 0.56, 86],
    ["E-2", "#3", 40, 20, 35, 1.3, 0.56, 29.1],
  ];
  const beside: Cell[][] = [
    [first, "Var.", "Tramo m", "Sep. cm", "Pzas", "Long. m", "kg/m", "kg"],
    ["L-1", "#3", 9.6, 20, 49, 5.3, 0.56, 145.4],
    ["L-2", "#3", 5.2, 20, 27, 9.8, 0.56, 148.2],
    ["M-1", "#4", 9.6, 15, 65, 2.1, 0.994, 135.7],
    ["M-2", "#4", 3, 20, 16, 6.2, 0.994, 98.6],
  ];
  it("are two, though few of their columns are the same", () => {
    const { bars, tables } = read(rows.map((row, at) => [...row, null, null, ...(beside[at] ?? [])]));
    expect(tables.map(({ left }) => left)).toEqual([0, 10]);
    expect(bars.map(({ total, length }) => [total, length])).toEqual([
      [60, 1700],
      [49, 5300],
      [50, 1400],
      [27, 9800],
      [96, 1600],
      [65, 2100],
      [40, 1300],
      [16, 6200],
    ]);
  });

  it("are one where no empty column parts them", () => {
    expect(read(rows.map((row) => [...row, row[0] ?? null])).tables).toHaveLength(1);
  });
});
