import { expect, test } from "vitest";
import { sheetFromRows } from "../../../core/schedule";
import { readSchedule } from "../../../core/schedule/read-schedule";
import { resolveStandard, type Standard } from "../../../core/standards";
import { MassesOfSheet } from "../../../core/totals/masses-of-sheet";
import type { RowWeight } from "../../../core/totals/row-mass";

const standard = resolveStandard("BS8666:2005") as Standard;
const sheet = sheetFromRows("Bars", [
  ["Bar mark", "Size", "Total no.", "Length mm", "Shape code", "A mm", "Pour"],
  ["01", "H16", 10, 2000, "00", 2000, "P1"],
  ["02", " h20 ", 4, 3000, "00", 3000, "P2"],
  ["03", "H12", 4, 3000, "00", 3000, null],
]);
const WEIGHTS: readonly (RowWeight | null)[] = [
  { mass: 31.58, from: "cut length", cutLength: 2000, count: 10, otherwise: null, asTyped: null },
  null,
  {
    mass: 0.1 + 0.2,
    from: "typed mass",
    cutLength: null,
    count: null,
    otherwise: { mass: 9, by: "total length" },
    asTyped: null,
  },
];

test("should give back each row as it was kept, with its names from the bar", () => {
  const { bars } = readSchedule(sheet, standard);
  const masses = new MassesOfSheet(sheet, bars);
  for (const [place, weight] of WEIGHTS.entries()) if (weight !== null) masses.keep(place, weight);
  expect([...masses]).toEqual([
    { ...WEIGHTS[0], pour: "P1", size: "H16", cell: "D2" },
    null,
    { ...WEIGHTS[2], pour: null, size: "H12", cell: "D4" },
  ]);
  expect([masses.massAt(0), masses.massAt(1), masses.massAt(3)]).toEqual([31.58, null, null]);
  expect([masses.at(1), masses.at(3)]).toEqual([null, null]);
  expect(masses.counted).toBe(2);
});
