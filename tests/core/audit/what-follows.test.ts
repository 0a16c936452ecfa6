import { describe, expect, it } from "vitest";
import { runAudit } from "../../../core/audit/run-audit";
import { type Cell, sheetFromRows } from "../../../core/schedule/sheet";
import { heldStandard } from "../../_support/held-standard";

const HEADER = [
  ...["Bar mark", "Type and size", "No. of mbrs", "No. in each", "Total no.", "Length of each bar mm"],
  ...["Shape code", "A", "Mass kg"],
];

type Rows = readonly (readonly Cell[])[];

/** Findings of sums, loud and quiet, of bars under the heading and the lines below them. */
function sums(bars: Rows, foot: Rows): string[] {
  const rows: Cell[][] = [[...HEADER], ...bars.map((row) => [...row]), ...foot.map((row) => [...row])];
  const { findings } = runAudit({
    sheets: [sheetFromRows("Schedule", rows)],
    standard: heldStandard("BS8666:2005"),
  });
  return findings
    .filter(({ code }) => code === "SUM103" || code === "SUM111")
    .map(({ severity, cell, message }) => `${severity} ${cell}: ${message}`);
}

const bar = (mark: string, size: string, each: number, length: number, kg: number, total = 2 * each) => [
  ...[mark, size, 2, each, total, length, "00", length, kg],
];
/** kg by hand: 20 x 2 x 0.888, 20 x 3 x 0.888, 40 x 2 x 1.58, 20 x 4 x 2.47 */
const SOUND: Rows = [
  bar("1", "H12", 10, 2000, 35.52),
  bar("2", "H12", 10, 3000, 53.28),
  bar("3", "H16", 20, 2000, 126.4),
  bar("4", "H20", 10, 4000, 197.6),
];
const SIZES = [null, "Size", "12", "16", "20"];
const METRES = [null, "Length m", 100, 80, 80];

describe("sums that follow from a row told of already", () => {
  // 2 x 10 is 20: the summary was made with it, 20 x 2 + 20 x 3 = 100 m
  const turned: Rows = [
    bar("1", "H12", 10, 2000, 35.52),
    bar("2", "H12", 10, 3000, 53.28, 21),
    ...SOUND.slice(2),
  ];

  it("should be notes that name the row where they come out once it is put right", () => {
    expect(sums(SOUND, [[], SIZES, METRES])).toEqual([]);
    expect(sums(turned, [[], SIZES, METRES])).toEqual([
      "note C8: the length of 12 is given as 100, but the bars of the list make 103; it comes out once row 3 is put right",
    ]);
  });

  it("should stay as loud where no row explains them", () => {
    expect(sums(turned, [[], SIZES, [null, "Length m", 97.5, 80, 80]])).toEqual([
      "off-standard C8: the length of 12 is given as 97.5, but the bars of the list make 103",
    ]);
    expect(sums(SOUND, [[], SIZES, [null, "Length m", 97, 80, 80]])).toEqual([
      "off-standard C8: the length of 12 is given as 97, but the bars of the list make 100",
    ]);
  });

  it("should stay as loud where only a slip by ten in a mass that nobody doubts would explain them", () => {
    const longer: Rows = [["1", "H12", 2, 10, 20, 2000, "00", 2025, 36], ...SOUND.slice(1)];
    // 413.28 kg in all, and nine times the 36 of the row whose length is told of
    expect(sums(longer, [["Total", null, null, null, null, null, null, null, 737.28]])).toEqual([
      "off-standard I6: the line gives 737.28 for mass, but the bars above add up to 413.28",
    ]);
  });

  it("should stay as loud where the row that is told of is left out, and no length is so short as to leave nothing", () => {
    const longer: Rows = [["1", "H12", 2, 10, 20, 2000, "00", 2025, 36], ...SOUND.slice(1)];
    // 413.28 kg in all less the 36 of the row whose length is told of
    expect(sums(longer, [["Total", null, null, null, null, null, null, null, 377.28]])).toEqual([
      "off-standard I6: the line gives 377.28 for mass, but the bars above add up to 413.28",
    ]);
  });

  it("should be told once where a wrong sum is carried on", () => {
    const total = (label: string, kg: number): Cell[] => [
      label,
      null,
      null,
      null,
      null,
      null,
      null,
      null,
      kg,
    ];
    // 35.52 + 53.28 = 88.8, given as 98.8; 126.4 + 197.6 = 324; 412.8 in all, given as 422.8
    const between = [...SOUND.slice(0, 2), total("Sub-total", 98.8), ...SOUND.slice(2)];
    expect(
      sums(between, [total("Sub-total", 324), [], SIZES, [null, "Mass kg", 98.8, 126.4, 197.6]]),
    ).toEqual([
      "off-standard I4: the line gives 98.8 for mass, but the bars above add up to 88.8",
      "note C10: the mass of 12 is given as 98.8, but the bars of the list make 88.8; it is off by as much as I4",
    ]);
  });
});
