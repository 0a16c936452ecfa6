import { describe, expect, it } from "vitest";
import { runAudit } from "../../../core/audit/run-audit";
import { barLength } from "../../../core/bar/bar-length";
import { readSchedule } from "../../../core/schedule/read-schedule";
import { sheetFromRows } from "../../../core/schedule/sheet";
import type { Standard } from "../../../core/standards/port";
import { resolveStandard } from "../../../core/standards/resolve-standard";
import { factsToWeigh } from "../../../core/totals/row-mass";
import { isRefusal, refusalText } from "../../../core/units/refusal";

const HEADS = ["Bar mark", "Size", "Total no.", "Length mm", "Shape code", "A mm"];
const MANY = [3000, 4500, 6000, 2400, 5100].map((length, at) => [
  `0${at + 1}`,
  "H16",
  4,
  length,
  "00",
  length,
]);

describe("a length in another unit than its column, with its dimension", () => {
  const standard = resolveStandard("BS8666:2005") as Standard;
  const sheet = sheetFromRows("List", [HEADS, ...MANY, ["06", "H16", 16, 12, "00", 12]]);
  const { byRow } = runAudit({ sheets: [sheet], standard });
  const slipped = factsToWeigh(sheet, readSchedule(sheet, standard), standard).bars[5]!;

  // 12 m typed among mm: what follows from A, 12 mm and 25 rounded up, is no bar either
  it.each(["to cut", "to weigh"] as const)(
    "should be no length %s until the cell is corrected",
    (purpose) => {
      const length = barLength(slipped, purpose);
      expect(isRefusal(length) ? refusalText(length) : length).toBe(
        "12 is unlike its column: in m it is 12000 mm; until the cell is corrected the bar has no length",
      );
    },
  );

  it("should be told as not used", () => {
    const told = byRow
      .filter(({ code }) => code === "UNIT102")
      .map(({ cell, message }) => `${cell} ${message}`);
    expect(told).toEqual([
      "D7 length 12 mm is unlike its column, and 12000 mm may be meant: correct the cell; until then it is not used",
    ]);
  });
});

describe("a code that takes no part of a dimension that is given", () => {
  const standard = resolveStandard("BS8666:2005") as Standard;
  const heads = [...HEADS, "B mm"];
  const rows = [
    ["01", "H16", 4, 3425, "00", 400, 3050],
    ["02", "H16", 4, 3425, "11", 400, 3100],
  ];
  const sheet = sheetFromRows("List", [heads, ...rows]);
  const { bars } = factsToWeigh(sheet, readSchedule(sheet, standard), standard);

  // BS 8666:2005 table 3, shape 11 of H16 (r = 32): 400 + 3050 - 16 - 32/2 = 3418 is cut as 3425; 00 takes A alone
  it("should weigh by the length that is written, for the code may be the slip", () => {
    expect(barLength(bars[0]!, "to weigh")).toEqual({ length: 3425, from: "schedule" });
  });

  it("should weigh by the dimensions where the code takes all of them", () => {
    expect(barLength(bars[1]!, "to weigh")).toEqual({ length: 3475, from: "computed" });
  });
});

describe("dimensions that disagree with the length beside them", () => {
  const standard = resolveStandard("BS8666:2005") as Standard;
  const heads = [...HEADS, "B mm", "Total length m", "Mass kg"];
  // BS 8666:2005 table 3, shape 11 of H20 (r = 70): 6900 + 350 - 35 - 20 = 7195, cut as 7200; 2.466 kg/m of BS 4449
  const rows = [
    ["01", "H20", 12, 7200, "11", 6900, 350, 86.4, 213.1],
    // one figure in cm
    ["02", "H20", 12, 7200, "11", 690, 350],
    // 6900 turned: metres and kg follow from 7200
    ["03", "H20", 12, 7200, "11", 9600, 350, null, 213.1],
    ["04", "H20", 12, 7200, "11", 9600, 350, 86.4],
    // metres and kg of 9900, which the dimensions make
    ["05", "H20", 12, 7200, "11", 9600, 350, 118.8, 293],
    ["06", "H20", 12, 7200, "11", 9600, 350],
  ];
  const sheet = sheetFromRows("List", [heads, ...rows]);
  const { bars } = factsToWeigh(sheet, readSchedule(sheet, standard), standard);

  it.each([
    [1, "one of them is in another unit", { length: 7200, from: "schedule" }],
    [2, "the mass follows from the length", { length: 7200, from: "schedule" }],
    [3, "the total length follows from the length", { length: 7200, from: "schedule" }],
    [4, "metres and mass follow from the dimensions", { length: 9900, from: "computed" }],
    [5, "nothing else stands in the row", { length: 9900, from: "computed" }],
  ])("should weigh bar %i, where %s", (at, _where, length) => {
    expect(barLength(bars[at]!, "to weigh")).toEqual(length);
  });
});
