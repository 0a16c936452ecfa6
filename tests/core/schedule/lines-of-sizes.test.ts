import { describe, expect, it } from "vitest";
import { readSchedule } from "../../../core/schedule/read-schedule";
import { mayListSizes } from "../../../core/schedule/rows/lines-of-sizes";
import { type Cell, sheetFromRows } from "../../../core/schedule/sheet";
import { resolveStandard, type Standard } from "../../../core/standards";

const standard = resolveStandard("BS8666:2005") as Standard;
const read = (rows: Cell[][]) => readSchedule(sheetFromRows("List", rows), standard);

/** kg/m as trade tables print them, to two or three digits (common practice) */
const KG = { 8: 0.395, 10: 0.617, 12: 0.888, 14: 1.21, 16: 1.58, 20: 2.47 } as const;
type Size = keyof typeof KG;
const SIZES = [8, 10, 12, 14, 16, 20] as const;
/** invented bars: size, how many, metres */
const BARS: readonly (readonly [Size, number, number])[] = [
  [8, 40, 1.2],
  [10, 30, 2.4],
  [12, 24, 3.6],
  [14, 12, 5.2],
  [16, 10, 6.1],
  [20, 8, 7.3],
  [12, 16, 2.2],
  [14, 18, 3.1],
  [8, 44, 1.6],
  [10, 22, 4.5],
];
const round = (value: number): number => Number(value.toFixed(1));
const metres = (size: Size, bars = BARS): number =>
  round(bars.filter(([own]) => own === size).reduce((sum, [, count, length]) => sum + count * length, 0));
const masses = (bars = BARS): number[] => SIZES.map((size) => round(KG[size] * metres(size, bars)));

describe("sums by size that lie across the columns of a list", () => {
  it.each([
    ["\u00d8", []],
    ["Durchmesser", ["Summe"]],
    ["Diam.", [null, "kg"]],
  ])("should be no bars behind %s, though each cell is what its column asks", (words, behind) => {
    const bars = BARS.map(([size, count, length], at): Cell[] => [
      ...[at + 1, count, size, length, "gerade", round(KG[size] * count * length)],
    ]);
    const reading = read([
      ["Pos", "Stk", "\u00d8", "L\u00e4nge", "Form", "Gewicht"],
      [null, null, "mm", "m", null, "kg"],
      ...bars,
      [],
      ["Zusammenzug"],
      [words, ...SIZES, ...behind],
      ["kg/m", ...SIZES.map((size) => KG[size])],
      ["kg", ...masses()],
    ]);
    expect(reading.bars.map(({ row }) => row)).toEqual(BARS.map((_, at) => at + 2));
    expect(reading.summaries?.at(-1)?.sizes.map(({ size }) => size)).toEqual(SIZES.map(String));
    expect(reading.summaries?.at(-1)?.rows).toHaveLength(2);
  });

  it("should prove nothing of the columns they stand under: a length under unknown words is found", () => {
    const reading = read([
      ["Mc", "\u00d8 mm", "No.", "Medida vista", "Long. total", "Nota"],
      [null, null, null, null, "m", null],
      ...BARS.map(([size, count, length], at): Cell[] => [
        ...[at + 1, size, count, length, round(count * length), "losa"],
      ]),
      [],
      ["\u00d8 mm", ...SIZES],
      ["kg/m", ...SIZES.map((size) => KG[size])],
      ["L (m)", ...SIZES.map((size) => metres(size))],
      ["kg", ...masses()],
    ]);
    expect(reading.tables[0]?.columns.get("length")).toMatchObject({
      column: 3,
      unit: "m",
      by: "arithmetic",
    });
    expect(reading.bars.map(({ length }) => length)).toEqual(BARS.map(([, , length]) => length * 1000));
  });

  it("should end where the bars of a list without marks go on", () => {
    const of = (bars: typeof BARS): Cell[][] => [
      ...bars.map(([size, count, length]): Cell[] => [
        ...[null, size, count, length, "21", round(KG[size] * count * length)],
      ]),
      [],
      ["\u015arednica", ...SIZES],
      ["kg", ...masses(bars)],
      [],
    ];
    const heads = [
      "Element",
      "\u015arednica",
      "Liczba sztuk",
      "D\u0142ugo\u015b\u0107 [m]",
      "Kszta\u0142t",
      "Masa [kg]",
    ];
    const reading = read([heads, ...of(BARS.slice(0, 5)), ["S\u0142upy"], ...of(BARS.slice(5))]);
    expect(reading.bars.map(({ size }) => size?.diameter)).toEqual(BARS.map(([size]) => size));
  });
});

it("should leave a bar whose figures are all sizes a bar", () => {
  const reading = read([
    ["Mark", "Size", "Total no.", "Length m", "Shape"],
    ["A", 8, 10, 12, "straight"],
    ["B", 10, 12, 16, "straight"],
    ["C", 12, 20, 25, "straight"],
    ["D", 10, 40, 2.4, "straight"],
  ]);
  expect(reading.bars.map(({ mark }) => mark)).toEqual(["A", "B", "C", "D"]);
});

describe("mayListSizes", () => {
  it.each<[Cell[], boolean]>([
    [["\u00d8", 8, 10, 12], true],
    [[null, "Dia", 8, null, 10, 12, "Total"], true],
    // marks have digits, and lengths are no more than counts
    [["A1", 8, 10, 12, 4000], false],
    [["Beam", 24, 12, 4000, 21], false],
    [["\u00d8", 8, 10], false],
    // ten bars of 8 mm and 12 m
    [["A", 8, 10, 12, "straight"], false],
  ])("should take %j as %s", (cells, expected) => {
    expect(mayListSizes(cells)).toBe(expected);
  });
});
