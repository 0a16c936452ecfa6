import { describe, expect, it } from "vitest";
import rule from "../../../../core/audit/rules/amount-blank";
import { runAudit } from "../../../../core/audit/run-audit";
import { type Cell, sheetFromRows } from "../../../../core/schedule/sheet";
import { heldStandard } from "../../../_support/held-standard";
import { ruleCases } from "../rule-cases";

const bar = (
  length: number,
  each: number | null,
  more: Readonly<Record<string, number | string | null>> = {},
) => ({
  ...{ size: "H16", shape: "00", A: length, length, members: 1, each, total: each, ...more },
});

ruleCases(rule, {
  silent: [
    { rows: [bar(2000, 10), bar(3000, 12)] },
    // members and bars in each give it
    { rows: [bar(2000, 10), bar(3000, 12, { total: null })] },
    // taken out, and said to be
    { rows: [bar(2000, 10), bar(3000, 12), bar(4000, 0, { remark: "deleted, rev B" })] },
    // of one member half of the rows leave it blank: the total says as much
    {
      rows: [1, 2, 3, 4, 5, 6, 7, 8].map((at) =>
        bar(1000 * at, at < 6 ? at : null, { total: at, ...(at < 6 ? { members: 2, total: 2 * at } : {}) }),
      ),
    },
    // no row has any: the column was not read, and that is another finding
    { rows: [bar(2000, null), bar(3000, null)] },
  ],
  speaks: [
    {
      rows: [bar(2000, 10), bar(3000, 12), bar(4000, 0), bar(0, 5, { A: null })],
      says: [
        {
          cell: "F4",
          severity: "doubtful",
          message: "the number of bars is 0: the row adds nothing to any total",
        },
        { cell: "G5", severity: "doubtful", message: "the length is 0: the row adds nothing to any total" },
      ],
    },
    {
      // one member of 48: the other rows of one member write it
      rows: [...[1, 2, 3, 4, 5].map((at) => bar(1000 * at, 10)), bar(6000, null, { total: 48 })],
      says: [
        {
          cell: "E7",
          message: "the number in each is blank; 48 would follow from the total and the members",
          severity: "doubtful",
          after: { E7: 48 },
        },
      ],
    },
    {
      // 2 x 14: sums below that go by the column lack the row
      rows: [
        ...[1, 2, 3, 4].map((at) => bar(1000 * at, 10, { members: 2, each: 5 })),
        bar(5000, null, { members: 2, each: 14 }),
      ],
      says: [
        {
          cell: "F6",
          message: "the total number is blank; 28 would follow from members times bars in each",
          severity: "doubtful",
          after: { F6: 28 },
        },
      ],
    },
    {
      rows: [bar(2000, 10), bar(3000, 12), bar(4000, null)],
      says: [{ cell: "F4", message: "the number of bars is blank: the row stands in no total" }],
    },
    {
      // 48 m of 4 m bars
      rows: [
        bar(2000, 10, { totalLength: 20 }),
        bar(3000, 12, { totalLength: 36 }),
        bar(4000, null, { totalLength: 48 }),
      ],
      says: [
        {
          cell: "F4",
          message:
            "the number of bars is blank: the row stands in no total; 12 would follow from the total length",
          after: { F4: 12 },
        },
      ],
    },
    {
      // 75.84 kg of 4 m of H16 at 1.58 kg/m
      rows: [bar(2000, 10, { mass: 31.6 }), bar(3000, 12, { mass: 56.88 }), bar(4000, null, { mass: 75.84 })],
      says: [
        {
          cell: "F4",
          message: "the number of bars is blank: the row stands in no total; 12 would follow from the mass",
          after: { F4: 12 },
        },
      ],
    },
    {
      // 3 members and 24 in all
      rows: [
        ...Array.from({ length: 5 }, (_, at) => bar(2000 + 100 * at, 10)),
        bar(4000, null, { members: 3, total: 24 }),
      ],
      says: [
        {
          cell: "E7",
          severity: "doubtful",
          message: "the number in each is blank; 8 would follow from the total and the members",
          after: { E7: 8 },
        },
      ],
    },
    {
      rows: [bar(2000, 10), bar(3000, 12), bar(4000, 14, { size: null })],
      says: [{ cell: "C4", message: "the size is blank: the row stands in no total" }],
    },
    {
      // 24 in all, 8 in each
      rows: [
        ...Array.from({ length: 5 }, (_, at) => bar(2000 + 100 * at, 10)),
        bar(4000, 8, { members: null, total: 24 }),
      ],
      says: [
        {
          cell: "D7",
          severity: "doubtful",
          message: "the number of members is blank; 3 would follow from the total and the number in each",
          after: { D7: 3 },
        },
      ],
    },
  ],
});

type Rows = readonly (readonly Cell[])[];

function blanks(rows: Rows): readonly string[] {
  const { findings } = runAudit({
    sheets: [sheetFromRows("List", rows)],
    standard: heldStandard("EC2:2004"),
    rules: [rule],
  });
  return findings.map(({ cell, message }) => `${cell}: ${message}`);
}

describe("a number that one cell holds beside size and length", () => {
  // 9 x 10 x 1.40 = 126 m; 4 x 12 x 1.70 = 81.6; 22.5 / 1.25 = 18
  const list = (cell: string): Rows => [
    ["Ouvrage", "Barres", "Nb ouvr.", "Fa\u00e7on (c\u00f4tes m)", "Total ml", "kg", "Obs."],
    ["Semelle S1", "10 HA12 L=1,40", 9, "0,15+1,10+0,15", 126, 111.9],
    [null, "12 HA12 L=1,70", 4, "0,15+1,40+0,15", 81.6, 72.5],
    ["Poteau P1", "6 HA14 L=3,90", 9, "0,30+3,60", 210.6, 254.8],
    [null, "24 HA6 L=0,96", 9, "cadre 15x25", 207.36, 46],
    ["Longrine L1", "3 HA12 L=4,70", 6, "0,20+4,30+0,20", 84.6, 75.1],
    [null, "28 HA6 L=1,06", 6, "cadre 15x30", 178.08, 39.5],
    ["Escalier", cell, 1, "droite", 22.5, 13.9],
  ];

  it("should be told where it is missing before the size, and what follows from the metres", () => {
    expect(blanks(list("18 HA10 L=1,25"))).toEqual([]);
    expect(blanks(list("HA10 L=1,25"))).toEqual([
      "B8: the number of bars is not read in this cell: the row stands in no total; 18 would follow from the total length",
    ]);
  });
});

describe("members that headings say", () => {
  const list = (sets: number | null): Rows => [
    [
      "LOCATION",
      "SETS",
      "DESCRIPTION (per set)",
      "TOTAL PCS",
      "TOTAL LENGTH (m)",
      "UNIT WT. (kg/m)",
      "TOTAL WT. (kg)",
    ],
    ["FOOTING F-1", 8],
    [null, null, "11 - 16mm\u00d8 x 1.85m", 88, 162.8, 1.578, 256.9],
    ["FOOTING F-2", sets],
    [null, null, "14 - 20mm\u00d8 x 2.45m", 56, 137.2, 2.466, 338.34],
    ["COLUMN C-1", 12],
    [null, null, "8 - 20mm\u00d8 x 5.35m", 96, 513.6, 2.466, 1266.54],
    [null, null, "32 - 10mm\u00d8 x 1.56m", 384, 599.04, 0.616, 369.01],
    ["FTB-1", 6],
    [null, null, "4 - 16mm\u00d8 x 6.60m", 24, 158.4, 1.578, 249.96],
    [null, null, "30 - 10mm\u00d8 x 1.32m", 180, 237.6, 0.616, 146.36],
  ];

  it("should be told where one heading lacks them", () => {
    expect(blanks(list(4))).toEqual([]);
    expect(blanks(list(null))).toEqual([
      "B4: the number of members is blank in this heading, while 3 others have it",
    ]);
  });
});
