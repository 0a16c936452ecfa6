import { expect, it } from "vitest";
import rule from "../../../../core/audit/rules/size-stray";
import { runAudit } from "../../../../core/audit/run-audit";
import { sheetFromRows } from "../../../../core/schedule/sheet";
import { heldStandard } from "../../../_support/held-standard";
import { ruleCases } from "../rule-cases";

const bar = (mark: string, size: string, total: number, mass: number) => ({
  ...{ mark, size, shape: "00", A: 2000, length: 2000, members: 1, each: total, total, mass },
});
// kg by hand: number x 2 m x 0.395, 0.617, 0.888, 1.58 (EN 10080: 7850 kg/m3 on the nominal area)
const LIST = [
  ...[bar("1", "8", 10, 7.9), bar("2", "8", 20, 15.8), bar("3", "10", 10, 12.34), bar("4", "10", 5, 6.17)],
  ...[
    bar("5", "12", 10, 17.76),
    bar("6", "12", 20, 35.52),
    bar("7", "16", 10, 31.6),
    bar("8", "16", 20, 63.2),
  ],
];

ruleCases(rule, {
  silent: [
    { rows: LIST },
    // 14 mm is rolled in many countries: 10 x 2 x 1.21
    { rows: [...LIST, bar("9", "14", 10, 24.2)] },
    // a few bars tell no habit
    { rows: [bar("1", "8", 10, 7.9), bar("2", "14", 10, 31.6)] },
  ],
  speaks: [
    {
      // 10 x 2 x 1.58 is 31.6; of 14 mm it were 24.2
      rows: [...LIST, bar("9", "14", 10, 31.6)],
      says: [
        {
          cell: "C10",
          outcome: "unsure",
          message: "size 14 stands in no other row, and the mass of this one is that of 16",
        },
      ],
    },
  ],
});

// Canada's bar 15 is 16 mm thick, and no bar of a list of millimetres
it("a bare 15 among millimetres is rolled nowhere", () => {
  const heads = ["Mark", "Size", "Total no.", "Length mm", "Mass kg"];
  const rows = [...LIST, bar("9", "15", 10, 31.6)].map(({ mark, size, total, length, mass }) => [
    ...[mark, Number(size), total, length, mass],
  ]);
  const { findings } = runAudit({
    sheets: [sheetFromRows("List", [heads, ...rows])],
    standard: heldStandard("BS8666:2005"),
    isStandardAssumed: true,
    rules: [rule],
  });
  expect(findings.map(({ cell, message }) => `${cell}: ${message}`)).toEqual([
    "B10: size 15 is rolled nowhere that is known, and no other row has it",
  ]);
});

// the list goes by another document than the one in force, which nobody chose
it("a size that nobody rolls is told where the standard is assumed", () => {
  const heads = ["Mark", "Size", "Total no.", "Length mm", "Mass kg"];
  const rows = [...LIST, bar("9", "17", 10, 35.6)].map(({ mark, size, total, length, mass }) => [
    ...[mark, size, total, length, mass],
  ]);
  const { findings } = runAudit({
    sheets: [sheetFromRows("List", [heads, ...rows])],
    standard: heldStandard("BS8666:2005"),
    isStandardAssumed: true,
    rules: [rule],
  });
  expect(findings.map(({ cell, message }) => `${cell}: ${message}`)).toEqual([
    "B10: size 17 is rolled nowhere that is known, and no other row has it",
  ]);
});

// kg/ft of 8, 10, 12, 16 and 18 mm by hand: kg/m x 0.3048; 0.609 were nearly kg/m of 10 mm
it("mass per foot under masses per metre is of no other size where the mass of the bar is its own", () => {
  const perFoot = new Map(Object.entries({ 8: 0.12, 10: 0.188, 12: 0.271, 16: 0.481, 18: 0.609 }));
  const heads = ["Mark", "Size", "Total no.", "Length mm", "kg/m", "Mass kg"];
  const told = (last: number): string[] => {
    const rows = [...LIST, bar("9", "18", 10, last)].map(({ mark, size, total, length, mass }) => [
      ...[mark, size, total, length, perFoot.get(size) ?? null, mass],
    ]);
    const sheets = [sheetFromRows("List", [heads, ...rows])];
    const { findings } = runAudit({ sheets, standard: heldStandard("BS8666:2005"), rules: [rule] });
    return findings.map(({ cell }) => cell ?? "");
  };
  // 10 x 2 m x 1.998; of 10 mm 10 x 2 x 0.617
  expect(told(39.96)).toEqual([]);
  expect(told(12.34)).toEqual(["B10"]);
});

// kg/m of AS/NZS 4671: 0.888, 1.58, 2.47 and 3.55 of N24; 25 mm weigh pi / 4 x 0.025 x 0.025 x 7850 = 3.85, 8 % more
it("knows a size beside its own by the mass, where the other rows name their standard", () => {
  const heads = ["Mark", "Size", "Total no.", "Length mm", "Mass kg"];
  const told = (size: string, kg: number) => {
    const rows = [
      ["A", "N12", 10, 2000, 17.76],
      ["B", "N12", 20, 3000, 53.28],
      ["C", "N16", 10, 2000, 31.6],
      ["D", "N16", 20, 2000, 63.2],
      ["E", "N20", 10, 2000, 49.4],
      ["F", "N24", 10, 3000, 106.5],
      ["G", "N20", 10, 3000, 74.1],
      ["H", "N12", 10, 3000, 26.64],
      ["I", "N16", 10, 3000, 47.4],
      ["J", size, 10, 2000, kg],
    ];
    const { findings } = runAudit({
      sheets: [sheetFromRows("List", [heads, ...rows])],
      standard: heldStandard("BS8666:2005"),
      isStandardAssumed: true,
      rules: [rule],
    });
    return findings.map(({ cell, message }) => `${cell}: ${message}`);
  };
  expect(told("N25", 71)).toEqual([
    "B11: size N25 stands in no other row, and the mass of this one is that of N24",
  ]);
  expect(told("N25", 77)).toEqual([]);
  expect(told("N24", 71)).toEqual([]);
});
