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

it("should take no legs with a dash between them for feet and inches", () => {
  const rows: Cell[][] = [
    ["1", "16", 10, "25-480", null, null, null],
    ["2", "16", 10, "30-110", null, null, null],
    ["3", "12", 10, "60-10", null, null, null],
  ];
  expect(lengths("EC2:2004", ...rows)).toEqual([null, null, null]);
});
