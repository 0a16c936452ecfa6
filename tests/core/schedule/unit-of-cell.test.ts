import { describe, expect, it } from "vitest";
import { readSchedule } from "../../../core/schedule/read-schedule";
import { type Cell, sheetFromRows } from "../../../core/schedule/sheet";
import { isInTotal, weighRows } from "../../../core/totals/row-mass";
import { standardNamed } from "../shapes/resolved";

const standard = standardNamed("BS8666:2005");
const HEADER = ["Bar mark", "Type and size", "Total no.", "Length", "Shape code", "A", "B"];

function problemsOfLast(rows: readonly (readonly Cell[])[]) {
  const bars = rows.map((cells, index) => [String(index + 1), "H16", 2, ...cells]);
  return readSchedule(sheetFromRows("S", [HEADER, ...bars]), standard).bars.at(-1)?.problems;
}

describe("a length in another unit than its column", () => {
  it.each([0.875, "0.875"])("should be shown as typed where %j m stands among millimetres", (length) => {
    const plain = [875, "11", 500, 400];
    expect(problemsOfLast([plain, plain, plain, [length, "11", 500, 400]])).toEqual([
      {
        field: "length",
        column: 3,
        typed: length,
        outcome: "guessed",
        guess: "unit-of-cell",
        reason: "0.875 was taken in m, unlike its column: 875 mm",
        proposal: 875,
      },
    ]);
  });

  it("should be shown as typed where 875 mm stand among metres", () => {
    const plain = [0.875, "11", 0.5, 0.4];
    expect(problemsOfLast([plain, plain, plain, [875, "11", 0.5, 0.4]])).toMatchObject([
      { typed: 875, reason: "875 was taken in mm, unlike its column: 875 mm", proposal: 875 },
    ]);
  });
});

// what is wanted is worked out by hand: count x length x the published kg/m, H12 0.888, H10 0.616 (BS 4449 masses)
describe("a length in another unit than its column, with no dimension beside it", () => {
  const HEADS = (length: string) => ["Bar mark", "Size", "Total no.", length, "Mass kg"];
  const CASES: readonly [string, string, readonly Cell[], readonly Cell[], number | null, number | null][] = [
    ["mm among m", "Length m", [3.55, 1.275, 6, 3], ["H12", 10, 3200, null], null, null],
    ["cm among m", "Length m", [3.55, 1.275, 6, 3], ["H12", 10, 320, null], null, null],
    ["m among cm", "Length cm", [355, 127.5, 600, 300], ["H12", 10, 3.2, null], null, null],
    ["m among cm, as text", "Length cm", [355, 127.5, 600, 300], ["H12", 10, "11.75", null], null, null],
    ["m among mm", "Length mm", [3550, 1275, 6000, 3000], ["H12", 10, 3.2, null], null, null],
    // 40 x 2.05 m x 0.616 = 50.51 kg: the typed mass is weighed, and no bar of 205 m is cut
    ["cm among m, by its mass", "Length m", [3.55, 1.275, 6, 3], ["H10", 40, 205, 50.5], null, 50.5],
    // nothing but the length speaks: a run of bars may be as long
    ["a long run", "Length m", [3.55, 1.275, 6, 3], ["H10", 40, 42.5, null], 42_500, 1047.2],
    ["short bars in cm", "Length cm", [355, 127.5, 600, 300], ["H12", 10, 12, null], 120, 1.0656],
  ];
  it.each(CASES)("%s", (_, head, lengths, last, length, mass) => {
    const rows = [...lengths.map((one) => ["H12", 10, one, null] as const), last];
    const sheet = sheetFromRows("S", [HEADS(head), ...rows.map((cells, at) => [String(at + 1), ...cells])]);
    const reading = readSchedule(sheet, standard);
    expect(reading.bars.at(-1)?.length).toBe(length);
    const weighed = weighRows(sheet, reading, standard).at(-1)!;
    expect(isInTotal(weighed) ? weighed.mass : null).toBe(mass);
  });
});

describe("a length in another unit than its column, beside the length of all bars of its row", () => {
  const rows = [3.55, 1.275, 6, 3].map((length, at) => [String(at + 1), "H12", 10, length, length * 10]);
  const sheet = sheetFromRows("S", [
    ["Bar mark", "Size", "Total no.", "Length m", "Total length m"],
    ...rows,
    // 525 cm for 5.25 m: 9 x 5.25 m = 47.25 m
    ["5", "H16", 9, 525, 47.25],
  ]);
  const reading = readSchedule(sheet, standard);

  it("should be asked with what that makes of it, and be used for no bar", () => {
    expect(reading.bars.at(-1)?.length).toBeNull();
    expect(reading.bars.at(-1)?.problems).toMatchObject([{ typed: 525, asks: true, proposal: 5250 }]);
  });

  it("should leave the row weighed by the length of all", () => {
    // 47.25 m x 1.579 kg/m (16 mm, BS 4449:2005 table 7, from memory) = 74.61 kg
    const weighed = weighRows(sheet, reading, standard).at(-1)!;
    expect(isInTotal(weighed) ? [weighed.mass.toFixed(1), weighed.from] : null).toEqual([
      "74.6",
      "typed total length",
    ]);
  });
});
