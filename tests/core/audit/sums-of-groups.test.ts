import { describe, expect, it } from "vitest";
import { checkBooks } from "../../../core/jobs";
import { type Cell, type Sheet, sheetFromRows } from "../../../core/schedule/sheet";
import { isRefusal } from "../../../core/units/refusal";

type Rows = readonly (readonly Cell[])[];

/** Sums that are told above a note, as cell and what the bars make. */
function sumsTold(rows: Rows): readonly string[] {
  const sheet = sheetFromRows("List", rows);
  const [checked] = checkBooks(
    [
      {
        name: "job",
        sheets: [{ name: "List", visibility: "visible" }],
        read: (): Sheet => sheet,
        setting: () => null,
      },
    ],
    { sheet: null, standard: null },
  );
  if (checked === undefined || isRefusal(checked)) throw new Error("the book was not read");
  return checked.report.findings
    .filter(({ code, severity }) => severity !== "note" && /^SUM1(?:03|11|13)/.test(code))
    .map(({ cell, message, outcome }) => `${outcome} ${cell}: ${message}`);
}

const groups = (sums: readonly number[]) => ({
  a: sums[0] ?? 0,
  b: sums[1] ?? 0,
  c: sums[2] ?? 0,
  d: sums[3] ?? 0,
});

describe("sums of groups that stand in no column of the bars", () => {
  // kg/m 0.888 and 1.58: 20 x 2 = 40 m, 35.52 kg; 10 x 3 = 30 m, 26.64; 20 x 5 = 100 m, 158
  const bar = (mark: number, size: string, count: number, metres: number, kg: number): Cell[] => [
    ...[mark, size, count, metres, count * metres, kg],
  ];
  const slab = (first: number): Cell[][] => [
    bar(first, "Ø12", 20, 2, 35.52),
    bar(first + 1, "Ø12", 10, 3, 26.64),
    bar(first + 2, "Ø16", 20, 5, 158),
  ];
  // 220.16 kg and 170 m a group
  const above = (sums: readonly number[]): Rows => {
    const { a, b, c, d } = groups(sums);
    return [
      ["Elemento", "Pos", "Ø", "Cant.", "Largo (m)", "Total (m)", "Peso (kg)", "Partida kg"],
      ["ZAPATAS", null, null, null, null, null, null, a],
      ...slab(1).map((row) => [null, ...row]),
      ["COLUMNAS", null, null, null, null, null, null, b],
      ...slab(4).map((row) => [null, ...row]),
      ["VIGAS", null, null, null, null, null, null, c],
      ...slab(7).map((row) => [null, ...row]),
      ["LOSA", null, null, null, null, null, null, d],
      ...slab(10).map((row) => [null, ...row]),
    ];
  };

  it("should be told where one is not what the bars below it make, before the group", () => {
    expect(sumsTold(above([220.16, 220.16, 220.16, 220.16]))).toEqual([]);
    expect(sumsTold(above([220.16, 220.16, 320.16, 220.16]))).toEqual([
      "broken H10: 320.16 is given for mass of a group, but its bars add up to 220.16, as those of 3 of 4 groups do to theirs",
    ]);
  });

  it.each([
    ["first", 0],
    ["last", 2],
  ])("should be told to the right of the %s bar of each group", (_, at) => {
    const rows = (sums: readonly number[]): Rows => [
      ["Bauteil", "Pos", "Ø", "Stück", "Länge (m)", "Gesamt (m)", "Gewicht (kg)", "Summe Bauteil t"],
      ...sums.flatMap((sum, group) =>
        slab(3 * group + 1).map((row, index) => [`B${group + 1}`, ...row, index === at ? sum : null]),
      ),
    ];
    expect(sumsTold(rows([0.22, 0.22, 0.22, 0.22]))).toEqual([]);
    expect(sumsTold(rows([0.22, 0.202, 0.22, 0.22]))).toEqual([
      `broken H${5 + at}: 0.202 is given for mass of a group, but its bars add up to 0.22, as those of 3 of 4 groups do to theirs`,
    ]);
  });

  it("should be told in a row of its own below the group, whatever words stand there", () => {
    const rows = (label: Cell, sums: readonly number[]): Rows => [
      ["Element", "Pos", "Ø", "Kogus", "Pikkus (m)", "Kokku (m)", "Mass (kg)"],
      ...sums.flatMap((sum, group) => [
        ...slab(3 * group + 1).map((row) => [`E${group + 1}`, ...row]),
        [null, null, null, null, null, label, sum],
      ]),
    ];
    for (const label of ["Σ", "∑", "ჯამი", "gr."]) {
      expect(sumsTold(rows(label, [220.16, 220.16, 220.16, 220.16]))).toEqual([]);
      const told = sumsTold(rows(label, [220.16, 210.26, 220.16, 220.16]));
      expect(told).toHaveLength(1);
      expect(told[0]).toContain("G9");
      expect(told[0]).toContain("220.16");
    }
  });

  it("should be told of metres and of numbers of bars", () => {
    // 170 m and 50 bars a group
    const rows = (sums: readonly number[]): Rows => [
      ["Member", "Mark", "Size", "Total no.", "Length m", "Total length m", "Mass kg", "of member"],
      ...sums.flatMap((sum, group) =>
        slab(3 * group + 1).map((row, index) => [`M${group + 1}`, ...row, index === 2 ? sum : null]),
      ),
    ];
    expect(sumsTold(rows([170, 170, 170, 170]))).toEqual([]);
    expect(sumsTold(rows([50, 50, 50, 50]))).toEqual([]);
    expect(sumsTold(rows([170, 170, 107, 170]))).toEqual([
      "broken H10: 107 is given for length of a group, but its bars add up to 170, as those of 3 of 4 groups do to theirs",
    ]);
    expect(sumsTold(rows([50, 50, 50, 40]))).toEqual([
      "broken H13: 40 is given for bars of a group, but its bars add up to 50, as those of 3 of 4 groups do to theirs",
    ]);
  });

  it("should be no sums where most come out otherwise: levels, prices, numbers of drawings", () => {
    expect(sumsTold(above([3.5, 220.16, 7, 10.5]))).toEqual([]);
    expect(sumsTold(above([101, 102, 103, 104]))).toEqual([]);
  });
});

describe("sums by classes of sizes", () => {
  // 26.64 of 12 mm, 158 of 16 mm, 24.7 x 4 = 98.8 of 20 mm, 20 x 2 x 0.395 = 15.8 of 8 mm
  const list = (bands: readonly (readonly [string, number])[]): Rows => [
    ["Member", "Mark", "Size", "Total no.", "Length m", "Mass kg"],
    ["B1", 1, 12, 10, 3, 26.64],
    ["B1", 2, 16, 20, 5, 158],
    ["B1", 3, 20, 10, 4, 98.8],
    ["B1", 4, 8, 20, 2, 15.8],
    [],
    ...bands.map(([band, kg]) => [null, band, null, null, null, kg]),
  ];

  it.each([
    ["CB240-T: D ≤ 10", "CB400-V: 10 < D ≤ 18", "CB400-V: D > 18"],
    ["Ø ≤ 10", "10 < Ø ≤ 18", "Ø > 18"],
    ["D<=10", "10<D<=18", "D>18"],
    ["≤ Ø10", "Ø12 - Ø18", "> Ø18"],
    ["A240 d6-d10", "A500C d12-d18", "A500C d20-d28"],
  ])("should be told under %s", (thin, middle, thick) => {
    expect(
      sumsTold(
        list([
          [thin, 15.8],
          [middle, 184.64],
          [thick, 98.8],
        ]),
      ),
    ).toEqual([]);
    // the bars of 12 mm are left out
    expect(
      sumsTold(
        list([
          [thin, 15.8],
          [middle, 158],
          [thick, 98.8],
        ]),
      ),
    ).toEqual([`broken F8: the mass of ${middle} is given as 158, but the bars of the list make 184.64`]);
  });
});
