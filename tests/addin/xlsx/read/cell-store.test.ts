import { expect, test } from "vitest";
import { CellStore } from "../../../../addin/xlsx/read/cell-store";
import type { Cell } from "../../../../core/schedule/sheet";

/** Values at the borders of how they are kept. */
const VALUES: readonly Cell[] = [
  0,
  -0,
  1,
  -1,
  0.1,
  -1234.5678,
  2 ** 31 - 1,
  2 ** 31,
  -(2 ** 31),
  -(2 ** 31) - 1,
  Number.MAX_SAFE_INTEGER,
  Number.MIN_VALUE,
  1e308,
  "H16",
  "",
  true,
  false,
  null,
];

test("should give back each value as it was kept, whatever stands between", () => {
  const store = new CellStore();
  const rows = 2_000;
  for (let row = 0; row < rows; row += 1) {
    store.startRow(row * 2);
    for (const [column, value] of VALUES.entries()) store.add(column, column, value);
    store.add(VALUES.length, 0, row / 7);
    store.endRow();
  }
  for (const row of [0, 1, 909, 1820, rows - 1]) {
    const kept = VALUES.map((_, column) => store.cell(store.find(row * 2, column)));
    expect(kept.map((value, place) => Object.is(value, VALUES[place]))).toEqual(VALUES.map(() => true));
    expect(store.cell(store.find(row * 2, VALUES.length))).toBe(row / 7);
    expect(store.style(store.find(row * 2, 4))).toBe(4);
    expect(store.find(row * 2 + 1, 0)).toBe(-1);
  }
});

test("should keep values with their cells where a row's cells come out of order", () => {
  const store = new CellStore();
  store.startRow(5);
  store.add(3, 7, 2.5);
  store.add(1, 8, 12);
  store.add(2, 9, { error: "#REF!" });
  store.endRow();
  const cells = [...store.cellsOfRow(5)].map(({ column, index }) => [
    column,
    store.cell(index),
    store.style(index),
  ]);
  expect(cells).toEqual([
    [1, 12, 8],
    [2, { error: "#REF!" }, 9],
    [3, 2.5, 7],
  ]);
  expect(store.bounds()).toEqual({ top: 5, bottom: 5, left: 1, right: 3 });
});
