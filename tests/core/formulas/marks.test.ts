import { describe, expect, it } from "vitest";
import { MARKS } from "../../../core/formulas/marks";
import type { Block } from "../../../core/formulas/worksheet-function";
import type { Cell } from "../../../core/schedule/sheet";

const environment = { defaultStandard: "BS8666:2005" };
function marks(
  shape: Cell,
  size: Cell,
  dims?: readonly Cell[],
  standard?: string,
  former?: Cell,
  trials?: Block,
): Block {
  const cell = (value: Cell | undefined) => (value === undefined ? undefined : [[value]]);
  const blocks = [
    cell(shape),
    cell(size),
    dims === undefined ? undefined : [dims],
    cell(standard),
    cell(former),
    undefined,
    trials,
  ];
  return MARKS.call(blocks, environment);
}

describe("BAR.MARKS", () => {
  it("marks a U by hand sums", () => {
    // code 21, A 1000, B 400, (C), 16 mm on 64: straights 952, 304; arc 1.5708 x 40 = 62.832
    // BS formula 1000 + 400 + 500 - r - 2d = 1836, up to 1850
    const rows = marks("21", "H16", [1000, 400, 500]);
    expect(rows[0]).toEqual([
      "bend",
      "turn",
      "start",
      "middle",
      "end",
      "stop from held end",
      "stop from swinging end",
      "compensated angle",
    ]);
    expect(rows[1]?.slice(0, 4)).toEqual([1, 90, 952, expect.closeTo(983.416, 3)]);
    expect(rows[1]?.slice(4)).toEqual([expect.closeTo(1014.832, 3), 952, 898, null]);
    expect(rows[2]?.[2]).toBeCloseTo(1014.832 + 304, 3);
    expect(rows[2]?.[6]).toBeCloseTo(1850 - 1318.832, 3);
    // 304 + r + d
    expect(rows[2]?.[5]).toBe("352 from outside face of bend 1");
  });

  it("puts what is over into the free leg, wherever that stands", () => {
    // 16 mm on 64: straights 552 and 352, arc 62.832, developed 966.832; cut 975, up to the next 25 as BS 8666 rounds
    const first = marks("(600) +90 400", "H16");
    expect(first[1]?.[2]).toBeCloseTo(552 + 975 - 966.832, 3);
    expect(marks("600 +90 400", "H16")[1]?.[2]).toBeCloseTo(552, 9);
  });

  it("answers in inches under a standard of inches", () => {
    // No. 5, 0.625 in, on its least former of 3.75 in: 12 - 1.875 - 0.625
    expect(marks("12 +90 40", "#5", undefined, "ACI318:2019")[1]?.[2]).toBeCloseTo(9.5, 9);
  });

  it("gives each bend its own compensated angle, blank where the trials do not bear it", () => {
    const log: Block = [
      ["size", "former", "bent to", "released"],
      ["H16", 64, 90, 82],
      ["H16", 64, 98, 90],
      ["H16", 64, 53, 46],
      ["H16", 64, 98, 89.5],
    ];
    const rows = marks("500 +90 1200 -45 300", "H16", undefined, undefined, undefined, log);
    const [, right, half] = rows.map((row) => row[7] as number);
    expect((right as number) - 90).toBeGreaterThan((half as number) - 45);
    expect(rows[2]?.[1]).toBe(-45);
    expect(marks("500 +90 1200 +180 300", "H16", undefined, undefined, undefined, log)[2]?.[7]).not.toBe(0);
    expect(marks("500 +90 1200 -45 300", "H16").map((row) => row[7])).toEqual([
      "compensated angle",
      null,
      null,
    ]);
  });

  it.each([
    ["bends that overlap", "300 +90 80 +90 300", "H16", /overlap/],
    ["a negative leg", "-300 +90 400", "H16", /./],
    ["a straight bar", "00", "H16", /straight|A is blank/],
  ])("refuses %s", (_, shape, size, text) => {
    expect(marks(shape, size)[0]?.[0]).toMatchObject({
      error: "#VALUE!",
      message: expect.stringMatching(text),
    });
  });

  it("refuses a bar that is curved over its whole length", () => {
    expect(marks("67", "H16", [2000, 400, 600, 3000])[0]?.[0]).toMatchObject({ error: "#VALUE!" });
  });
});
