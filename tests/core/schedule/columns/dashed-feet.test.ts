import { expect, it } from "vitest";
import { type Cell, sheetFromRows } from "../../../../core/schedule";
import { readSchedule } from "../../../../core/schedule/read-schedule";
import { heldStandard } from "../../../_support/held-standard";

const HEADER = ["Mark", "Size", "No.", "Length", "Type", "A", "B"];
const lengths = (standard: string, ...rows: Cell[][]): (number | null)[] =>
  readSchedule(sheetFromRows("List", [HEADER, ...rows]), heldStandard(standard)).bars.map(
    ({ length }) => length,
  );

// placing lists of the United States write feet, a dash and two figures of inches: common practice; 294, 456 and 202 in of 25.4 mm
it("should read feet and inches with a dash, whatever the standard in force", () => {
  const rows: Cell[][] = [
    ["A1", "#5", 44, "24-06", null, null, null],
    ["A2", "#5", 36, "38-00", null, null, null],
    ["A3", "#4", 12, "16-10", "2", "1-00", "14-10"],
  ];
  expect(lengths("BS8666:2005", ...rows)).toEqual([7467.6, 11582.4, 5130.8]);
  expect(lengths("ACI318:2019", ...rows)).toEqual([7467.6, 11582.4, 5130.8]);
});

// 294, 60 and 53 in, and legs of 18, 42 and 11 in, of 25.4 mm
it("should read them without a nought before the inches", () => {
  const rows: Cell[][] = [
    ["A1", "#5", 44, "24-6", null, null, null],
    ["A2", "#5", 36, "5-0", "2", "1-6", "3-6"],
    ["A3", "#4", 12, "4-5", "2", "0-11", "3-6"],
  ];
  const { bars } = readSchedule(sheetFromRows("List", [HEADER, ...rows]), heldStandard("BS8666:2005"));
  expect(bars.map(({ length, dims }) => [length, ...dims])).toEqual([
    [7467.6],
    [1524, 457.2, 1066.8],
    [1346.2, 279.4, 1066.8],
  ]);
});

it("should take no legs with a dash between them for feet and inches", () => {
  const rows: Cell[][] = [
    ["1", "16", 10, "25-480", null, null, null],
    ["2", "16", 10, "30-110", null, null, null],
    ["3", "12", 10, "60-10", null, null, null],
  ];
  expect(lengths("EC2:2004", ...rows)).toEqual([null, null, null]);
  expect(lengths("EC2:2004", ["1", "16", 10, "25-4"], ["2", "16", 10, "30-11"])).toEqual([null, null]);
});

// 16, 10 and 6 in of 25.4 mm
it("should read them in a column that holds sums of the list below", () => {
  const rows: Cell[][] = [
    ["A1", "#5", 44, "6-06", "L", "1-04", "5-02"],
    ["A2", "#5", 36, "4-08", "L", "0-10", "3-10"],
    ["A3", "#4", 12, "4-00", "L", "0-06", "3-06"],
    ["", null, null, "#4", null, 32, null],
    ["", null, null, "#5", null, 470, null],
  ];
  const { bars } = readSchedule(sheetFromRows("List", [HEADER, ...rows]), heldStandard("BS8666:2005"));
  expect(bars.map(({ dims }) => dims[0])).toEqual([406.4, 254, 152.4]);
});

// a foot is twelve inches: common practice
it("should say that inches reach a foot, and take them for no range of lengths", () => {
  const rows: Cell[][] = [
    ["A1", "#5", 44, "24-06", null, null, null],
    ["A2", "#5", 36, "38-00", null, null, null],
    ["A3", "#4", 12, "21-13", null, null, null],
    ["A4", "#4", 12, "16-11 1/2", null, null, null],
  ];
  const { bars } = readSchedule(sheetFromRows("List", [HEADER, ...rows]), heldStandard("BS8666:2005"));
  expect(bars.map(({ problems }) => (problems ?? []).map(({ reason }) => reason))).toEqual([
    [],
    [],
    ['length "21-13" has 13 in beside feet, where the inches stay below 12: write one or the other'],
    [],
  ]);
  expect(bars.map(({ varying }) => varying ?? null)).toEqual([null, null, null, null]);
});
