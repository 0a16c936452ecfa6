import { describe, expect, it } from "vitest";
import { refusedText } from "../../../core/cutting";
import { rowsToCut } from "../../../core/cutting/rows-to-cut";
import { type Cell, sheetFromRows } from "../../../core/schedule";
import { readSchedule } from "../../../core/schedule/read-schedule";
import { resolveStandard, type Standard } from "../../../core/standards";

const standard = resolveStandard("BS8666:2005") as Standard;
const HEADER = ["Member", "Bar mark", "Size", "Total no.", "Length mm", "Shape code", "A mm", "B mm", "C mm"];

function asked(...rows: Cell[][]) {
  const sheet = sheetFromRows("Bars", [HEADER, ...rows]);
  const { rows: cut, refused, notes } = rowsToCut(sheet, readSchedule(sheet, standard), standard);
  return { cut, refused: refused.map((row) => refusedText(row)), notes };
}

const GOOD: Cell[] = ["Slab", "01", "H16", 10, 2800, "21", 700, 1450, 700];

/** That row with cells altered: column, value, column, value. */
function but(...altered: Cell[]): Cell[] {
  const row = [...GOOD];
  for (let at = 0; at < altered.length; at += 2) row[altered[at] as number] = altered[at + 1] as Cell;
  return row;
}

describe("rowsToCut", () => {
  it("should take the typed length, with mark, count and cell", () => {
    expect(asked(GOOD).cut).toEqual([
      { size: "H16", grade: null, mark: "01", length: 2800, count: 10, sheet: "Bars", row: 2, cell: "E2" },
    ]);
  });

  it("should tell rows that are hidden and totals that their own counts contradict", () => {
    const heads = ["Bar mark", "Size", "No. of members", "No. in each", "Total no.", "Length mm"];
    const rows: Cell[][] = [
      ["01", "H16", 2, 10, 20, 2800],
      ["02", "H16", 2, 10, 22, 2600],
    ];
    const sheet = { ...sheetFromRows("Bars", [heads, ...rows]), isHiddenRow: (row: number) => row === 1 };
    expect(rowsToCut(sheet, readSchedule(sheet, standard), standard).notes).toEqual([
      "1 row in hidden rows, planned all the same: F2",
      "1 row planned by the total as typed, which is not members times each: E3",
    ]);
  });

  it("should take the shape's cut length where none is typed or a formula fails", () => {
    // shape 21: A + B + C - r - 2d with r = 32, d = 16 (BS 8666:2005, table 3): 2850 - 64 = 2786, up to 2800
    const blank = but(4, null);
    const failed = but(1, "02", 4, { error: "#N/A" });
    const { cut, refused, notes } = asked(blank, failed);
    expect(cut.map(({ length }) => length)).toEqual([2800, 2800]);
    expect([refused, notes.join()]).toEqual([[], expect.stringMatching(/1 row whose length cell .*E3/)]);
  });

  it.each<[string, Cell[], RegExp]>([
    [
      "a length that is none",
      but(4, "abc"),
      /^H16, mark 01, 10 bars, Bars!E2: "abc" is no length; correct the cell$/,
    ],
    ["a count with a fraction", but(3, 2.5), /^H16, mark 01, Bars!D2: "2.5" is no whole number/],
    ["a count below 0", but(3, -4), /^H16, mark 01, Bars!D2: "-4" is negative/],
    ["a count left blank", but(3, null), /^H16, mark 01, Bars!D2: no count/],
    ["a size that is not made", but(2, "H17"), /^H17, mark 01, 10 bars, Bars!C2: size "H17" is no bar/],
    ["a length that varies", but(4, "1200-1800"), /Bars!E2: .*varies/],
  ])("should refuse %s with its cell", (_name, bad, words) => {
    const { cut, refused } = asked(bad, but(1, "02"));
    expect(cut.map(({ mark }) => mark)).toEqual(["02"]);
    expect(refused).toEqual([expect.stringMatching(words)]);
  });

  it("should tell a count of 0, and refuse a length below nought", () => {
    const { cut, refused, notes } = asked(but(3, 0), ["Slab", "02", "H16", 4, -3000, "00", 3000]);
    expect(cut).toEqual([]);
    expect(notes).toEqual(["1 row with a count of 0, which asks for nothing: D2"]);
    expect(refused).toEqual([
      "H16, mark 02, 4 bars, Bars!E3: -3000 is below nought, and no length is: 3000 may be meant; correct the cell",
    ]);
  });
});
