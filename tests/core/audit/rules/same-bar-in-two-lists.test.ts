import { describe, expect, it } from "vitest";
import rule from "../../../../core/audit/rules/same-bar-in-two-lists";
import { runAudit } from "../../../../core/audit/run-audit";
import { type Cell, sheetFromRows } from "../../../../core/schedule/sheet";
import { heldStandard } from "../../../_support/held-standard";
import { ruleCases } from "../rule-cases";

// starters listed with foundation and column: common practice
ruleCases(rule, {
  silent: [
    {
      sheets: {
        Foundation: [{ member: "C1", mark: "S1", size: "H20", shape: "11", A: 1500, B: 300, length: 1750 }],
        Column: [{ member: "C2", mark: "S1", size: "H20", shape: "11", A: 1500, B: 300, length: 1750 }],
      },
    },
    {
      rows: [
        { member: "C1", mark: "S1", size: "H20", shape: "11", A: 1500, B: 300, length: 1750 },
        { member: "C1", mark: "S1", size: "H20", shape: "11", A: 1500, B: 300, length: 1750 },
      ],
    },
  ],
  speaks: [
    {
      sheets: {
        Foundation: [{ member: "C1", mark: "S1", size: "H20", shape: "11", A: 1500, B: 300, length: 1750 }],
        Column: [{ member: "C1", mark: "S1", size: "H20", shape: "11", A: 1500, B: 300, length: 1750 }],
      },
      says: [
        { cell: "B2", message: "mark S1 of C1 stands in sheet Foundation, row 2 too: is it counted twice?" },
      ],
    },
  ],
});

/** Pages of a list without a column of members: rows of mark, length and number. */
function told(...pages: readonly (readonly (readonly [string, number, number])[])[]): string[] {
  const sheets = pages.map((bars, at) => {
    const rows: Cell[][] = [["Mark", "Size", "Number of bars", "Length mm"]];
    for (const [mark, length, total] of bars) rows.push([mark, "H16", total, length]);
    return sheetFromRows(`Page ${at + 1}`, rows);
  });
  const { findings } = runAudit({ sheets, standard: heldStandard("BS8666:2005"), rules: [rule] });
  return findings.map(({ sheet, cell, outcome, message }) => `${sheet} ${cell} ${outcome}: ${message}`);
}

// the last row of a page copied to the next one: common practice
describe("marks that run on from page to page", () => {
  type Bar = readonly [string, number, number];
  const PAGE = ["1", "2", "3", "4", "5"].map((mark, at): Bar => [mark, 2000 + 100 * at, 10 + at]);
  const NEXT = ["6", "7", "8", "9"].map((mark, at): Bar => [mark, 3000 + 100 * at, 20 + at]);
  const REPEATED: Bar = ["5", 2400, 14];

  it("should be told where one is entered on both", () => {
    const says =
      "unsure: mark 5 stands in sheet Page 1, row 6 too, the same bar and as many, while the other marks run on: is it entered twice?";
    expect(told(PAGE, NEXT)).toEqual([]);
    expect(told(PAGE, [REPEATED, ...NEXT])).toEqual([`Page 2 A2 ${says}`]);
    expect(told(PAGE, [...NEXT, REPEATED])).toEqual([`Page 2 A6 ${says}`]);
    const third = NEXT.map(([mark, length, total]): Bar => [`${mark}0`, length, total]);
    expect(told(PAGE, NEXT, [...third, REPEATED])).toEqual([`Page 3 A6 ${says}`]);
  });

  it("should be silent where another number, or marks that start again, say that it is meant", () => {
    expect(told(PAGE, [["5", 2400, 15], ...NEXT])).toEqual([]);
    expect(told(PAGE, [["5", 2500, 14], ...NEXT])).toEqual([]);
    expect(told(PAGE, [...PAGE.slice(0, 3), ...NEXT])).toEqual([]);
    // a page of few rows tells no habit
    expect(told(PAGE, [REPEATED, ["6", 3000, 20]])).toEqual([]);
  });
});
