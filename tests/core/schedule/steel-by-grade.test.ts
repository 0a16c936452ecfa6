import { expect, it } from "vitest";
import { runAudit } from "../../../core/audit/run-audit";
import { readSchedule } from "../../../core/schedule/read-schedule";
import { type Cell, sheetFromRows } from "../../../core/schedule/sheet";
import { heldStandard } from "../../_support/held-standard";

// rows are invented; kg by hand with 0.395, 0.617, 0.888 and 1.579 kg/m (UK three-decimal table, 10 mm by EN 10080)
const standard = heldStandard("BS8666:2005");
const read = (rows: readonly (readonly Cell[])[]) => readSchedule(sheetFromRows("S1", rows), standard);

const list = (heads: readonly string[]): Cell[][] => [
  [...heads],
  ["1", 12, 10, 2000, 17.8],
  ["2", 16, 10, 4000, 63.2],
  ["3", 10, 20, 3000, 37],
  ["4", 8, 40, 1000, 15.8],
  [],
];

it.each([
  [
    "Ukrainian",
    ["Поз.", "Діаметр", "Кількість", "Довжина, мм", "Маса, кг"],
    "Елемент",
    ["А240С ∅8", "А500С ∅10", "А500С ∅12", "А500С ∅16"],
    "Всього",
  ],
  [
    "Polish",
    ["Poz.", "Średnica", "Liczba", "Długość mm", "Masa kg"],
    "Element",
    ["A-I Ø8", "A-IIIN Ø10", "A-IIIN Ø12", "A-IIIN Ø16"],
    "Razem",
  ],
] as const)(
  "takes a %s table of steel by grade and size below the list for sums",
  (_, heads, element, sizes, all) => {
    const { bars, summaries } = read([
      ...list(heads),
      [element, ...sizes, all],
      ["B-1", "-", 37, 17.8, "-", 54.8],
      ["B-2", 15.8, "-", "-", 63.2, 79],
      [all, 15.8, 37, 17.8, 63.2, 133.8],
    ]);
    expect(bars.map(({ mark }) => mark)).toEqual(["1", "2", "3", "4"]);
    expect(summaries?.[0]?.sizes.map(({ size }) => size)).toEqual(["Ø8", "Ø10", "Ø12", "Ø16"]);
  },
);

it("holds sums against no bars where sizes begin anew with each grade", () => {
  const sheet = sheetFromRows("S1", [
    ...list(["Mark", "Size", "Total no", "Length mm", "Mass kg"]),
    ["Element", "A240 Ø6", "A240 Ø8", "A500 Ø8", "A500 Ø12"],
    ["B-1", 5, 37, 17.8, 3],
    ["B-2", 4, 12, 7.8, 2],
  ]);
  expect(readSchedule(sheet, standard).bars.length).toBe(4);
  const { findings } = runAudit({ sheets: [sheet], standard });
  expect(findings.filter(({ code }) => code.startsWith("SUM"))).toEqual([]);
});
