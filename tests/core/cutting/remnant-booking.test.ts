import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  type CutRow,
  cuttingSupply,
  type RemnantBooking,
  remnantBooking,
  type SizePlan,
} from "../../../core/cutting";
import { planBySize } from "../../../core/cutting/plan-by-size";
import { type Cell, type Sheet, sheetFromRows } from "../../../core/schedule";
import { readShop, shopTemplate } from "../../../core/shop";
import { resolveStandard, type Standard } from "../../../core/standards";
import { isRefusal, refusalText } from "../../../core/units/refusal";

const standard = resolveStandard("BS8666:2005") as Standard;
const HEAD: Cell[] = ["size", "stock length mm", "bars held", "kind"];
const STOCK: Cell[] = [null, 12000, null, "stock"];
const LIMITS: Cell[][] = [
  ["limit", "value"],
  ["least remnant mm", 900],
];

function plansOf(shop: Sheet, rows: readonly [size: string, length: number, count: number][]) {
  const supply = cuttingSupply(readShop(shop, standard), standard);
  const cut = rows.map(
    ([size, length, count], index): CutRow => ({
      size,
      grade: null,
      mark: String(index),
      length,
      count,
      sheet: "Bars",
      cell: `E${index + 2}`,
    }),
  );
  const { groups } = planBySize(cut, supply);
  return { groups, leastRemnant: supply.leastRemnant };
}

function booked(shop: Sheet, groups: readonly SizePlan[], leastRemnant = 900): RemnantBooking {
  const booking = remnantBooking(shop, standard, groups, leastRemnant);
  if (isRefusal(booking)) throw new Error(refusalText(booking));
  return booking;
}

/** The sheet with the edits made, by addresses of A to Z. */
function edited(rows: readonly (readonly Cell[])[], { edits }: RemnantBooking): Cell[][] {
  const after = rows.map((row) => [...row]);
  for (const { cell, to } of edits) {
    const row = Number(cell.slice(1)) - 1;
    while (after.length <= row) after.push([]);
    after[row]![cell.charCodeAt(0) - 65] = to;
  }
  return after.map((row) => Array.from(row, (cell) => cell ?? null));
}

const shopOf = (rows: readonly (readonly Cell[])[]): Sheet => sheetFromRows("Shop", rows);
const onHand = (rows: readonly (readonly Cell[])[]) =>
  readShop(shopOf(rows), standard)
    .stock.filter(({ remnant, count }) => remnant && count !== 0)
    .map(({ size, length, count }) => [size, length, count]);

describe("remnantBooking", () => {
  it("should take off what is cut up and add the rests from the least remnant on", () => {
    const rows = [HEAD, STOCK, ["H16", 3900, 2, "remnant"], [], [], [], ...LIMITS];
    const { groups } = plansOf(shopOf(rows), [
      ["H16", 5000, 4],
      ["H16", 3800, 1],
      ["H16", 11200, 1],
    ]);
    const booking = booked(shopOf(rows), groups);
    // two bars of 12 m with 2 x 5000 leave 2000 each; 3800 from a 3900 leaves 100, 11200 leaves 800: scrap
    expect(booking.changes).toEqual([
      { row: 3, size: "H16", length: 3900, before: 2, after: 1, replaces: null },
      { row: 4, size: "H16", length: 2000, before: null, after: 2, replaces: null },
    ]);
    expect(booking.edits).toEqual([
      { cell: "C3", to: 1 },
      { cell: "A4", to: "H16" },
      { cell: "B4", to: 2000 },
      { cell: "C4", to: 2 },
      { cell: "D4", to: "remnant" },
    ]);
  });

  it("should round a rest down to whole millimetres", () => {
    const rows = [HEAD, STOCK, [], []];
    const { groups } = plansOf(shopOf(rows), [["H16", 4999.7, 2]]);
    // 12000 - 2 x 4999.7 = 2000.6
    expect(booked(shopOf(rows), groups).changes).toMatchObject([{ length: 2000, after: 1 }]);
  });

  it("should leave a used-up line with 0 bars, so that the lines under it are still read", () => {
    const rows = [HEAD, STOCK, ["H16", 3900, null, "remnant"], ["H16", 2500, 3, "remnant"], []];
    const { groups } = plansOf(shopOf(rows), [["H16", 3890, 1]]);
    const after = edited(rows, booked(shopOf(rows), groups));
    expect(after[2]).toEqual(["H16", 3900, 0, "remnant"]);
    expect(onHand(after)).toEqual([["H16", 2500, 3]]);
  });

  it("should add to a line of the same size and length", () => {
    const rows = [HEAD, STOCK, ["16", 2000, 1, "remnant"], []];
    const { groups } = plansOf(shopOf(rows), [["H16", 5000, 4]]);
    expect(booked(shopOf(rows), groups).edits).toEqual([{ cell: "C3", to: 3 }]);
  });

  it("should write over a line without bars only where nothing else stands in its row", () => {
    const wide = [...HEAD, "rack"];
    const rows = [wide, STOCK, ["H12", 3100, 0, "remnant", "bay 4"], ["H10", 2900, 0, "remnant"], []];
    const { groups } = plansOf(shopOf(rows), [["H16", 5000, 4]]);
    const { changes, edits } = booked(shopOf(rows), groups);
    expect(changes).toEqual([
      {
        row: 4,
        size: "H16",
        length: 2000,
        before: null,
        after: 2,
        replaces: { size: "H10", length: 2900 },
      },
    ]);
    expect(edits.map(({ cell }) => cell)).toEqual(["A4", "B4", "C4", "D4"]);
  });

  it("should keep a blank row before the next title, and go below everything for the rest", () => {
    const rows = [HEAD, STOCK, [], [], ["Limits of this yard"], ...LIMITS];
    const { groups } = plansOf(shopOf(rows), [
      ["H16", 5000, 2],
      ["H20", 4000, 2],
    ]);
    const booking = booked(shopOf(rows), groups);
    expect(booking.changes.map(({ row, length }) => [row, length])).toEqual([
      [3, 2000],
      [11, 4000],
    ]);
    expect(booking.headingRow).toBe(9);
    const after = edited(rows, booking);
    expect(after[3]).toEqual([]);
    expect(onHand(after)).toEqual([
      ["H16", 2000, 1],
      ["H20", 4000, 1],
    ]);
    // the next cut list goes on under that heading
    const more = plansOf(shopOf(after), [["H25", 5000, 2]]);
    const next = booked(shopOf(after), more.groups);
    expect([next.headingRow, next.changes[0]?.row]).toEqual([null, 12]);
  });

  it("should write nothing into a formula that shows nothing, and leave a trial log room to grow", () => {
    const rows = [
      HEAD,
      STOCK,
      ["", null],
      [],
      ["date", "machine", "size", "former", "bent to", "released"],
      [null, "M1", "H16", 64, 94, 90],
    ];
    const { groups } = plansOf(shopOf(rows), [["H16", 5000, 2]]);
    // six rows, then room for twenty trials
    expect(booked(shopOf(rows), groups).headingRow).toBe(27);
  });

  it("should refuse to cut up a remnant that the sheet gives no way to take off", () => {
    const rows = [
      ["size", "stock length", "kind"],
      [null, 12000, "stock"],
      ["H16", 3900, "remnant"],
    ];
    const { groups } = plansOf(shopOf(rows), [["H16", 3800, 1]]);
    const booking = remnantBooking(shopOf(rows), standard, groups, 900);
    expect(isRefusal(booking) && refusalText(booking)).toMatch(/row 3 .*no column "bars held"/);
  });

  it("should fill the Shop sheet that we propose", () => {
    const rows = shopTemplate().map(({ cells }) => [...cells]);
    const { groups } = plansOf(shopOf(rows), [
      ["H16", 5000, 2],
      ["H20", 4000, 2],
    ]);
    const booking = booked(shopOf(rows), groups, 1000);
    expect([booking.headingRow, booking.changes.length]).toEqual([null, 2]);
    expect(onHand(edited(rows, booking))).toHaveLength(2);
  });

  it("should give a second plan exactly the remnants that were on hand, less those cut up, and the rests", () => {
    const sizes = fc.constantFrom("H10", "H16", "H20");
    const line = fc.tuple(sizes, fc.integer({ min: 900, max: 9000 }), fc.integer({ min: 0, max: 4 }));
    const piece = fc.tuple(sizes, fc.integer({ min: 300, max: 11_500 }), fc.integer({ min: 1, max: 9 }));
    fc.assert(
      fc.property(
        fc.array(line, { maxLength: 5 }),
        fc.array(piece, { minLength: 1, maxLength: 6 }),
        fc.integer({ min: 0, max: 4 }),
        (lines, pieces, blanks) => {
          const rows: Cell[][] = [
            HEAD,
            STOCK,
            ...lines.map(([size, length, count]): Cell[] => [size, length, count, "remnant"]),
            ...Array.from({ length: blanks }, () => []),
            ...LIMITS,
          ];
          const { groups } = plansOf(shopOf(rows), pieces);
          // by plain counting: bars by size and length
          const expected = new Map<string, number>();
          const add = (size: string, length: number, bars: number) =>
            expected.set(`${size} ${length}`, (expected.get(`${size} ${length}`) ?? 0) + bars);
          for (const [size, length, count] of lines) add(size, length, count);
          for (const { size, plan } of groups) {
            for (const { stock, remnant, times, offcut } of plan.patterns) {
              if (remnant) add(size, stock, -times);
              if (offcut >= 900) add(size, offcut, times);
            }
          }
          const after = edited(rows, booked(shopOf(rows), groups));
          const supply = cuttingSupply(readShop(shopOf(after), standard), standard);
          const given = new Map<string, number>();
          for (const size of ["H10", "H16", "H20"]) {
            for (const { length, count, remnant } of supply.linesOf(size) ?? []) {
              const key = `${size} ${length}`;
              if (remnant && count !== 0) given.set(key, (given.get(key) ?? 0) + count!);
            }
          }
          for (const [key, bars] of expected) if (bars === 0) expected.delete(key);
          expect(Object.fromEntries(given)).toEqual(Object.fromEntries(expected));
        },
      ),
      { numRuns: 60, seed: 11 },
    );
  });
});
