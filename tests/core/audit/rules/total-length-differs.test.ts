import { expect, it } from "vitest";
import rule from "../../../../core/audit/rules/total-length-differs";
import { runAudit } from "../../../../core/audit/run-audit";
import { sheetFromRows } from "../../../../core/schedule/sheet";
import { heldStandard } from "../../../_support/held-standard";
import { ruleCases } from "../rule-cases";

const bar = (length: number, totalLength: number, total = 10) => ({
  ...{ size: "H16", length, members: 1, each: total, total, totalLength },
});

const ofSix = (length: number, each: number, totalLength: number) => ({
  ...{ size: "H16", length, members: 6, each, total: 6 * each, totalLength },
});

// 24 x 5.1 m = 122.4 m
ruleCases(rule, {
  silent: [
    { rows: [bar(2000, 20), bar(5100, 122.4, 24)] },
    // metres to one decimal
    { rows: [bar(1365, 27.3, 20), bar(1365, 13.7, 10)] },
    // the total length of one member's bars
    { rows: [{ size: "H16", length: 2000, members: 3, each: 10, total: 30, totalLength: 20 }] },
    // every row: the column means something else
    { rows: [bar(2000, 2), bar(3000, 3), bar(5100, 5.1)] },
  ],
  speaks: [
    {
      // 72 bars of 3.44 m are 247.68 m: the length lacks a nought, and the total is not to be changed
      rows: [bar(2000, 20), bar(3000, 30), bar(344, 247.68, 72)],
      says: [
        {
          cell: "G4",
          message:
            "the total length 247680 mm is 72 x 3440 mm and not 72 x 344 mm: the point of one of the two lengths is misplaced",
        },
      ],
    },
    {
      // sums of one member of six: 8 x 6.9 m = 55.2 m, 42 x 1.56 m = 65.52 m, 4 x 5.35 m = 21.4 m
      rows: [ofSix(6900, 8, 55.2), ofSix(1560, 42, 65.52), ofSix(5350, 4, 14.2)],
      says: [
        {
          cell: "N4",
          message: "total length 14200 mm is not 4 x 5350 mm = 21400 mm",
          after: { N4: 21.4 },
        },
      ],
    },
    {
      rows: [bar(2000, 20), bar(3000, 30), bar(5100, 124.4, 24)],
      says: [
        {
          cell: "N4",
          message: "total length 124400 mm is not 24 x 5100 mm = 122400 mm",
          after: { N4: 122.4 },
        },
      ],
    },
  ],
});

it("holds lengths under columns by size against members, bars in each and length, whichever word counts the bars", () => {
  // 4 x 51 x 4.65 m, 8 x 21 x 2.2, 4 x 150 x 0.52, 2 x 38 x 1.76, 4 x 42 x 10.9
  const told = (count: number): string[] => {
    const sheet = sheetFromRows("Metraj", [
      ["Poz", "Çap", "Benzer", "Adet", "Boy", "Toplam boy (m)"],
      [null, "mm", null, null, "m", "Ø8", "Ø10", "Ø12"],
      [1, 12, 4, 51, 4.65, null, null, 948.6],
      [2, 10, 8, 21, 2.2, null, 369.6],
      [3, 8, 4, 150, 0.52, 312],
      [4, 8, 2, 38, 1.76, 133.76],
      [5, 10, 4, count, 10.9, null, 1831.2],
      ["Toplam", null, null, null, null, 445.76, 2200.8, 948.6],
      ["kg/m", null, null, null, null, 0.395, 0.617, 0.888],
      ["Toplam (kg)", null, null, null, null, 176.08, 1357.89, 842.36],
    ]);
    const { findings } = runAudit({ sheets: [sheet], standard: heldStandard("BS8666:2005"), rules: [rule] });
    return findings.map(({ cell }) => cell ?? "");
  };
  expect(told(42)).toEqual([]);
  expect(told(24)).toEqual(["G7"]);
});
