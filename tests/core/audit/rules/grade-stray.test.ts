import { expect, it } from "vitest";
import rule from "../../../../core/audit/rules/grade-stray";
import { runAudit } from "../../../../core/audit/run-audit";
import { type Cell, sheetFromRows } from "../../../../core/schedule/sheet";
import { resolveStandard } from "../../../../core/standards/index";
import type { Standard } from "../../../../core/standards/port";
import { ruleCases } from "../rule-cases";

const bar = (grade: string) => ({ size: "16", shape: "00", A: 2000, length: 2000, grade });
const list = (...grades: string[]) => ({
  rows: [...Array.from({ length: 5 }, () => bar("B500B")), ...grades.map(bar)],
});

ruleCases(rule, {
  silent: [
    list("B500B"),
    // another grade that mills roll
    list("B500C"),
    // what two rows have is no slip of one
    list("B505B", "B505B"),
    // written otherwise than all that is known of the list
    list("X1000"),
    { rows: [bar("B500B"), bar("B505B")] },
  ],
  speaks: [
    {
      ...list("B505B"),
      says: [
        {
          cell: "N7",
          outcome: "unsure",
          message:
            'grade "B505B" stands in no other row and is none that is known; B500B may be meant: ask the designer',
        },
      ],
    },
  ],
});

const standard = resolveStandard("BS8666:2005") as Standard;
const told = (rows: Cell[][]): (string | null)[] =>
  runAudit({ sheets: [sheetFromRows("List", rows)], standard, rules: [rule] }).findings.map(
    ({ cell }) => cell,
  );

it("is found in a column that nobody knows, and beside the size in letters of another alphabet", () => {
  const column = (grade: string): Cell[][] => [
    ["Marca", "Ø [mm]", "Oțel", "Total buc.", "Lungime bară [m]"],
    ...[12, 14, 16, 20, 25].map((size, at): Cell[] => [at + 1, size, at < 4 ? "PC52" : "PC60", 10, 2.5]),
    [6, 10, grade, 92, 1.75],
  ];
  // PC52 and PC60 are grades of STAS 438 (from memory)
  expect(told(column("PC52"))).toEqual([]);
  expect(told(column("PC25"))).toEqual(["C7"]);
  const roman = (grade: string): Cell[][] =>
    column(grade).map((row) =>
      row.map((cell) => (cell === "PC52" ? "AIII" : cell === "PC60" ? "AII" : cell)),
    );
  // AI to AIV are the grades of the Iranian standard (from memory)
  expect(told(roman("AIV"))).toEqual([]);
  expect(told(roman("AV"))).toEqual(["C7"]);
  const joined = (grade: string): Cell[][] => [
    ["Поз.", "Найменування", "Кільк.", "Маса од., кг"],
    ...[2000, 2500, 3000, 3500, 4000].map((length, at): Cell[] => [
      at + 1,
      `Ø10 А500С L=${length}`,
      10,
      length * 0.000617,
    ]),
    [6, `Ø10 ${grade} L=4500`, 10, 2.78],
  ];
  expect(told(joined("А240С"))).toEqual([]);
  expect(told(joined("А450С"))).toEqual(["B7"]);
});

// ДСТУ 3760 holds А240С, А400С, А500С and others, CNS 560 SD280W and SD420W (from memory)
it.each([
  ["a comma behind the grade", (grade: string) => `Ø16 ${grade}, L=2600`, "А500С", "А450С"],
  ["another country's", (grade: string) => grade, "SD420W", "SD480W"],
  // CSA G30.18 has 400W, and 300W is a steel of shapes and plates: from memory
  ["figures before the letter", (grade: string) => grade, "400W", "300W"],
  ["letters exchanged", (grade: string) => grade, "HRB400", "HBR400"],
])("a stray grade is found: %s", (_, cell, right, wrong) => {
  const told = (grade: string) => {
    const isOneCell = cell("") !== "";
    const heads = isOneCell
      ? ["Поз.", "Найменування", "Кільк.", "Маса од., кг"]
      : ["Mark", "Grade", "Number of bars"];
    const rows: Cell[][] = [[...heads, ...(isOneCell ? [] : ["Size", "Length mm"])]];
    for (const one of [right, right, right, right, right, right, grade])
      rows.push([String(rows.length), cell(one), 4, ...(isOneCell ? [4.1] : [16, 2600])]);
    return runAudit({ sheets: [sheetFromRows("S", rows)], standard, rules: [rule] }).findings.map(
      ({ message }) => message,
    );
  };
  expect(told(right)).toEqual([]);
  expect(told(wrong)).toHaveLength(1);
  expect(told(wrong)[0]).toContain(`grade "${wrong}" stands in no other row`);
});
