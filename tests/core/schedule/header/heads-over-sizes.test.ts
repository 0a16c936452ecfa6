import { describe, expect, it } from "vitest";
import { recogniseHeader } from "../../../../core/schedule/header/recognise-header";
import { readSchedule } from "../../../../core/schedule/read-schedule";
import { type Cell, sheetFromRows } from "../../../../core/schedule/sheet";
import { resolveStandard, type Standard } from "../../../../core/standards";

const HEADS: readonly Cell[] = ["Mark", "Size", "No.", "Length", "Sum of lengths by size (m)", null, null];
const down = [0, 1, 2, 3].map((column) => ({ top: 0, bottom: 1, left: column, right: column }));
const merges = [...down, { top: 0, bottom: 0, left: 4, right: 6 }];
const read = (sizes: readonly string[], standard: string) => {
  // m by hand: 10 x 3.6, 48 x 1.4, 36 x 5.9, 12 x 1.8, 6 x 2.8
  const amounts = [36, 67.2, 212.4, 21.6, 16.8];
  const bars = [3600, 1400, 5900, 1800, 2800].map((length, at): Cell[] => {
    const cells: Cell[] = [`0${at + 1}`, sizes[at % 3] ?? "", [10, 48, 36, 12, 6][at] ?? 0, length];
    return [...cells, ...[0, 1, 2].map((place) => (place === at % 3 ? (amounts[at] ?? 0) : null))];
  });
  const rows = [HEADS, [null, null, null, null, ...sizes], ...bars];
  return readSchedule({ ...sheetFromRows("List", rows), merges }, resolveStandard(standard) as Standard);
};

describe("heads that are merged with the row of the sizes below", () => {
  it.each([
    ["CSA-A23.1:2019", ["10M", "15M", "20M"], ["10M", "15M", "20M"]],
    ["BS8666:2005", ["H10", "H12", "H16"], ["10", "12", "16"]],
  ])("should make one header of both rows by %s", (standard, sizes, named) => {
    const { tables, bars } = read(sizes, standard);
    expect(tables.map(({ headerTop, headerBottom }) => [headerTop, headerBottom])).toEqual([[0, 1]]);
    expect(tables[0]?.bySize?.map(({ size }) => size)).toEqual(named);
    expect(bars.map(({ length }) => length)).toEqual([3600, 1400, 5900, 1800, 2800]);
  });
});

describe("a head in two languages", () => {
  it.each([
    ["Bauteil / Element", "member"],
    ["Elemento / Member", "member"],
    ["Antal emner / Members", "members"],
    ["Nb élém. / No. of members", "members"],
    ["pzas / elem", "each"],
    ["Nos / member", "each"],
  ])("should take %s for %s", (head, kind) => {
    expect(recogniseHeader(head)?.kind).toBe(kind);
  });

  it("should take no radius from words that nobody knows", () => {
    expect(recogniseHeader("Whatever dimensions E/r mm")).toBeNull();
  });
});
