import { expect, test } from "vitest";
import { blocksOf } from "../../../addin/functions/cells-of-excel";

const WHOLE_COLUMN = 1_048_576;
const column = (filled: number, value: unknown, height = WHOLE_COLUMN) =>
  Array.from({ length: height }, (_, row) => [row < filled ? value : ""]);

test("should end whole columns together, at the last row in which one is filled", () => {
  const [shapes, left, sizes] = blocksOf([column(9_990, "11"), null, column(10_000, "H16")]);
  expect([shapes?.length, left, sizes?.length]).toEqual([10_000, undefined, 10_000]);
  expect([shapes?.[9_989], shapes?.[9_990], sizes?.[9_999]]).toEqual([["11"], [null], ["H16"]]);
});

test("should keep a range of several rows one of several, however few are filled", () => {
  const [shapes, size] = blocksOf([column(1, "11"), [["H16"]]]);
  expect([shapes, size]).toEqual([[["11"], [null]], [["H16"]]]);
});

test("should leave ranges of unequal height unequal, so that they are refused", () => {
  const [shapes, sizes] = blocksOf([column(3, "11"), column(3, "H16", 20)]);
  expect([shapes?.length, sizes?.length]).toEqual([WHOLE_COLUMN, 20]);
});

test("should hand on a whole column beside a short table, its blank rows blank", () => {
  const table = [
    ["size", "supply per tonne"],
    ["", 100],
  ];
  const [sizes, masses, rates] = blocksOf([column(3, "H16"), column(2, 1.5), table]);
  expect([sizes?.length, masses?.length]).toEqual([WHOLE_COLUMN, WHOLE_COLUMN]);
  expect([sizes?.[2], sizes?.[3], sizes?.at(-1), masses?.[2]]).toEqual([["H16"], [null], [null], [null]]);
  expect(rates).toEqual([
    ["size", "supply per tonne"],
    [null, 100],
  ]);
});

test("should keep the width of blank rows", () => {
  expect(
    blocksOf([
      [
        ["", 5],
        ["", ""],
      ],
      null,
    ]),
  ).toEqual([
    [
      [null, 5],
      [null, null],
    ],
    undefined,
  ]);
});

// Office.js of 2026 in Chromium: a call whose last arguments are left out has its invocation in their place
test("should take what is no rows as left out", () => {
  const invocation = { _functionName: "DEVELOPED", _address: "Sheet1!A1" };
  expect(blocksOf([column(2, "11", 20), null, invocation])).toEqual([[["11"], ["11"]], undefined, undefined]);
});
