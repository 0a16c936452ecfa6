import { describe, expect, it } from "vitest";
import type { ScheduleReading } from "../../../../core/schedule/bar-row";
import { readSchedule } from "../../../../core/schedule/read-schedule";
import { sheetFromRows } from "../../../../core/schedule/sheet";
import { standardNamed } from "../../shapes/resolved";

/**
 * Members, bars in each, size, length in m, and the mass of one member's bars by hand: number in each x length x kg/m
 * of BS 4449:2005 table 7 (10: 0.617, 12: 0.888, 16: 1.579, 20: 2.466).
 */
const BARS = [
  [3, 10, 12, 4.5, 39.96],
  [3, 20, 16, 3.2, 101.056],
  [3, 8, 12, 5.1, 36.2304],
  [8, 12, 20, 6.15, 181.9908],
  [8, 24, 16, 2.85, 108.0036],
  [2, 40, 10, 1.9, 46.892],
] as const;

function read(
  head: readonly string[],
  amountsOf: (members: number, mass: number) => readonly number[],
): ScheduleReading {
  const rows = BARS.map(([members, each, size, metres, mass], at) => [
    ...[String(at + 1), size, members, each, metres * 1000, "00"],
    ...amountsOf(members, mass),
  ]);
  return readSchedule(sheetFromRows("Pads", [head, ...rows]), standardNamed("BS8666:2005"));
}

const HEAD = ["Bar mark", "Size", "No. of members", "No. in each", "Length mm", "Shape code", "Mass kg"];
const counts = ({ bars }: ScheduleReading) => bars.map(({ members, each, total }) => [members, each, total]);
const codes = ({ guesses = [] }: ScheduleReading) =>
  guesses.map(({ guess }) => guess).filter((guess) => guess !== "member-from-sheet");
const AS_WORDED = BARS.map(([members, each]) => [members, each, null]);

describe("a mass of one member beside a number of members", () => {
  it("should leave the count to the header's members and bars in each, and say of the mass what it is", () => {
    const reading = read(HEAD, (_, mass) => [mass]);
    expect(counts(reading)).toEqual(AS_WORDED);
    expect(reading.held).toBeNull();
    expect(codes(reading)).toEqual(["amounts-of-member"]);
    expect(reading.guesses?.[0]).toMatchObject({
      reason:
        'column "Mass kg" was taken as that of one member: 6 of 6 rows agree with the bars in each, and 0 of 6 with those of all members; members times number in each are counted',
      asks: false,
      otherwise: { column: 3, kind: "total", unit: null },
    });
    expect(reading.bars.every(({ mass }) => mass === null)).toBe(true);
  });

  it("should say nothing where the mass is that of all members", () => {
    const reading = read(HEAD, (members, mass) => [members * mass]);
    expect(counts(reading)).toEqual(AS_WORDED);
    expect(codes(reading)).toEqual([]);
  });

  it("should hold the totals where the mass is of one member and nothing tells in which column", () => {
    // masses by size, of one member each: no column of them can be set aside alone
    const head = [...HEAD.slice(0, 6), "10", "12", "16", "20"];
    const bySize = BARS.map(([members, each, size, metres, mass], at) => [
      ...[String(at + 1), size, members, each, metres * 1000, "00"],
      ...[10, 12, 16, 20].map((one) => (one === size ? mass : null)),
    ]);
    const sheet = sheetFromRows("Pads", [head, ...bySize]);
    const reading = readSchedule(sheet, standardNamed("BS8666:2005"));
    expect(counts(reading)).toEqual(AS_WORDED);
    expect(reading.held).not.toBeNull();
  });
});
