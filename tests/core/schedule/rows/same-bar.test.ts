import { expect, test } from "vitest";
import { readSchedule } from "../../../../core/schedule/read-schedule";
import { isSameBar } from "../../../../core/schedule/rows/same-bar";
import { plainBar } from "../../../../core/schedule/rows/stored-bar";
import { sheetFromRows } from "../../../../core/schedule/sheet";
import { seededSchedule } from "../../../bench/seeded-schedule";
import { standardNamed } from "../../shapes/resolved";

const standard = standardNamed("BS8666:2005");
const { matrix } = seededSchedule(12);
const [bar] = readSchedule(sheetFromRows("S", matrix), standard).bars;
const [again] = readSchedule(sheetFromRows("S", matrix), standard).bars;

test("bars of two readings of the same cells are the same", () => {
  expect(bar?.mark).toBe(String(matrix[1]?.[1]));
  expect(isSameBar(bar!, again!)).toBe(true);
  expect(isSameBar(bar!, plainBar(again!))).toBe(true);
});

test("a bar differs by any field but its table", () => {
  const own = plainBar(bar!);
  const other = (value: unknown) => (typeof value === "boolean" ? !value : [{ another: "value" }]);
  const alike = Object.entries(own)
    .filter(([field, value]) => isSameBar(bar!, { ...own, [field]: other(value) }))
    .map(([field]) => field);
  expect(alike).toEqual(["table"]);
});
