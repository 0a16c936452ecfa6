import { describe, expect, it } from "vitest";
import { readSchedule } from "../../../core/schedule/read-schedule";
import { type Cell, sheetFromRows } from "../../../core/schedule/sheet";
import { resolveStandard } from "../../../core/standards/index";
import type { Standard } from "../../../core/standards/port";

const HEADS = ["Mark", "Location", "No. off", "Length mm"];
const diametersOf = (standard: string, rows: readonly (readonly Cell[])[]) =>
  readSchedule(sheetFromRows("List", rows), resolveStandard(standard) as Standard).bars.map(
    ({ size, member }) => [size?.diameter ?? null, member],
  );

describe("a heading that names the size of the bars below", () => {
  it("should give it to bars of a table without a column for sizes, and no member", () => {
    expect(
      diametersOf("BS8666:2005", [
        ["R10 BARS"],
        HEADS,
        ["1", "Slab", 10, 2000],
        ["2", "Slab", 12, 2400],
        [],
        ["H16 BARS"],
        HEADS,
        ["3", "Wall", 8, 3000],
      ]),
    ).toEqual([
      [10, "Slab"],
      [10, "Slab"],
      [16, "Wall"],
    ]);
  });

  it("should be read with what else stands in it", () => {
    // ASTM A615: #4 is half an inch
    expect(
      diametersOf("ACI318:2019", [
        ["#4 BARS  (0.668 LB/FT)"],
        HEADS,
        ["1", "Slab", 10, 2000],
        ["2", "Slab", 9, 1000],
      ]),
    ).toEqual([
      [12.7, "Slab"],
      [12.7, "Slab"],
    ]);
  });

  it("should be none where it names a member, several sizes or a size that rows name themselves", () => {
    const bars = [
      ["1", "Slab", 10, 2000],
      ["2", "Slab", 9, 1000],
    ];
    const of = (heading: string) =>
      diametersOf("BS8666:2005", [HEADS, [heading], ...bars]).map(([size]) => size);
    expect(of("Beam B16")).toEqual([null, null]);
    expect(of("H12 and H16 bars")).toEqual([null, null]);
    const withSizes = [
      ["Mark", "Size", "No. off", "Length mm"],
      ["H12 BARS"],
      ["1", "H20", 10, 2000],
      ["2", null, 9, 1000],
    ];
    expect(diametersOf("BS8666:2005", withSizes).map(([size]) => size)).toEqual([20, null]);
  });
});

describe("a heading of several members over a bare count", () => {
  /** Bars of 2 to 6 m of 12 mm under a heading, kg/m 0.888 by hand, and a line below them. */
  const list = (count: string, foot: readonly Cell[] | null) =>
    readSchedule(
      sheetFromRows("List", [
        ["Beam B1 (6 nos)"],
        ["Mark", "Size", count, "Length mm", "Mass kg"],
        ...[2000, 3000, 4000, 5000, 6000].map((length, at) => [
          ...[`${at + 1}`, "H12", 10, length],
          Math.round(length * 0.888) / 100,
        ]),
        ...(foot === null ? [] : [foot]),
      ]),
      resolveStandard("BS8666:2005") as Standard,
    ).bars.map(({ members, each, total }) => [members, each, total]);
  const alike = (counts: readonly (number | null)[]) => [1, 2, 3, 4, 5].map(() => counts);

  it("should leave the count open where nothing tells whose it is", () => {
    expect(list("Qty", null)).toEqual(alike([6, null, null]));
  });

  it("should take it for one member's where a sum is so many times the rows, for all where it is theirs", () => {
    // 17.76 + 26.64 + 35.52 + 44.4 + 53.28 = 177.6 kg, six times that 1065.6
    expect(list("Qty", ["Total", null, null, null, 1065.6])).toEqual(alike([6, 10, null]));
    expect(list("Qty", ["Total", null, null, null, 177.6])).toEqual(alike([6, null, 10]));
  });

  it("should take it as its head says", () => {
    expect(list("Total no.", null)).toEqual(alike([6, null, 10]));
    expect(list("No. in each", null)).toEqual(alike([6, 10, null]));
  });

  it("should keep the letter of a member's name that is a diameter elsewhere", () => {
    const { bars } = readSchedule(
      sheetFromRows("List", [
        ["Mark", "Size", "Total no.", "Length mm"],
        ["\u0424\u0443\u043d\u0434\u0430\u043c\u0435\u043d\u0442 \u0424\u043c-1 (\u0448\u0442. 2)"],
        ["1", "\u044412", 10, 2000],
      ]),
      resolveStandard("BS8666:2005") as Standard,
    );
    expect(bars.map(({ member, size }) => [member, size?.diameter])).toEqual([
      ["\u0424\u0443\u043d\u0434\u0430\u043c\u0435\u043d\u0442 \u0424\u043c-1", 12],
    ]);
  });
});
