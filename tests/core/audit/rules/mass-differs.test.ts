import { expect, it } from "vitest";
import rule from "../../../../core/audit/rules/mass-differs";
import { runAudit } from "../../../../core/audit/run-audit";
import { type Cell, sheetFromRows } from "../../../../core/schedule/sheet";
import { resolveStandard } from "../../../../core/standards/index";
import type { Standard } from "../../../../core/standards/port";
import { ruleCases } from "../rule-cases";

// UK three-decimal table (midlandrapid.co.uk): 1.579 kg/m for 16 mm. 10 x 2 m x 1.579 = 31.58 kg; 1 % of it is 0.3158
ruleCases(rule, {
  silent: [
    // the number of bars is blank: nothing to compare the mass of all with
    { rows: [{ size: "H16", shape: "00", A: 2000, length: 2000, total: null, mass: 35 }] },
    // by the 0.617 kg/m of EN 10080 26.53 kg, written 27; by 0.616 it would be 26.49
    {
      rows: [{ size: "H10", shape: "00", A: 4300, length: 4300, members: 1, each: 10, total: 10, mass: 27 }],
    },
    {
      rows: [
        { size: "H16", shape: "00", A: 2000, length: 2000, members: 1, each: 10, total: 10, mass: 31.58 },
      ],
    },
    {
      rows: [
        { size: "H16", shape: "00", A: 2000, length: 2000, members: 1, each: 10, total: 10, mass: 31.89 },
      ],
    },
    // d squared over 162
    {
      rows: [
        { size: "H16", shape: "00", A: 2000, length: 2000, members: 1, each: 10, total: 10, mass: 31.6 },
      ],
    },
    // of one bar
    {
      rows: [
        { size: "H16", shape: "00", A: 2000, length: 2000, members: 1, each: 10, total: 10, mass: 3.158 },
      ],
    },
    // a light row to whole kilograms: 0.4 x 1 x 0.395 x 4 = 0.632
    { rows: [{ size: "H8", shape: "00", A: 400, length: 400, members: 1, each: 4, total: 4, mass: 1 }] },
  ],
  speaks: [
    {
      // 1.579 kg/m: 31.58, 47.37, 63.16, 78.95 and 94.74 kg of ten bars; the last row has one bar's
      rows: [2, 3, 4, 5, 6, 7].map((metres) => ({
        ...{ size: "H16", shape: "00", A: 1000 * metres, length: 1000 * metres },
        ...{ members: 1, each: 10, total: 10, mass: metres < 7 ? 15.79 * metres : 11.053 },
      })),
      says: [
        {
          cell: "N7",
          outcome: "unsure",
          message:
            "mass 11.05 kg is that of one bar, while other rows of the sheet have that of all: 10 are 110.53 kg",
          after: { N7: 110.53 },
        },
      ],
    },
    {
      rows: [
        { size: "H16", shape: "00", A: 2000, length: 2000, members: 1, each: 10, total: 10, mass: 31.9 },
      ],
      says: [
        {
          cell: "N2",
          outcome: "unsure",
          message: "mass 31.9 kg is not 10 x 2000 mm x 1.579 kg/m = 31.58 kg",
          after: { N2: 31.58 },
        },
      ],
    },
    {
      // a point is misplaced, and nothing says of which figure: 10 x 2 m x 1.579 is a tenth of the mass
      rows: [{ size: "H16", length: 2000, members: 1, each: 10, total: 10, mass: 315.8 }],
      says: [
        {
          cell: "N2",
          outcome: "unsure",
          message: "mass 315.8 kg is not 10 x 2000 mm x 1.579 kg/m = 31.58 kg",
        },
      ],
    },
  ],
});

it("is silent on so many times a mass of one bar that is right as it is rounded", () => {
  const heads = ["Mark", "Size", "Total no.", "Length mm", "Mass of one bar kg", "Mass kg"];
  const standard = resolveStandard("BS8666:2005") as Standard;
  const told = (mass: number): (string | null)[] => {
    // 0.4 m x 0.222 kg/m = 0.0888 kg, written 0.09; 152 x 0.09 = 13.68
    const rows: Cell[][] = [heads, ["15", "H6", 152, 400, 0.09, mass]];
    const { findings } = runAudit({ sheets: [sheetFromRows("List", rows)], standard, rules: [rule] });
    return findings.map(({ cell }) => cell);
  };
  expect(told(13.68)).toEqual([]);
  expect(told(14.68)).toEqual(["F2"]);
});
