import { describe, expect, it } from "vitest";
import { readSchedule } from "../../../core/schedule/read-schedule";
import { type Cell, sheetFromRows } from "../../../core/schedule/sheet";
import { resolveStandard, type Standard } from "../../../core/standards";

const standard = resolveStandard("BS8666:2005") as Standard;
const LIST: readonly (readonly Cell[])[] = [
  ["Bar mark", "Size", "Total no", "Length", "Shape code", "A"],
  ["01", "H12", 10, 4000, "00", 4000],
  ["02", "H16", 20, 3000, "00", 3000],
];
const classes = (rows: readonly (readonly Cell[])[]) =>
  readSchedule(sheetFromRows("Quay", rows), standard).rowClasses;

describe("rows under no heads that look like bars", () => {
  it("should be told as unread, with count and size in one cell", () => {
    const rows = [["B1", "42-N16", 5800, "base"], ["B2", "36-N16", 7200, "base"], [], ...LIST];
    expect(classes(rows).slice(0, 2)).toEqual(["unread", "unread"]);
    expect(classes([["x", "8/H12", 9.4], ["y", "4 no. H16", "9.40 m"], [], ...LIST]).slice(0, 2)).toEqual([
      "unread",
      "unread",
    ]);
  });

  it("should be told where marks stand beside sizes, or a size stands again", () => {
    const marked = [["B1", "H16", 42, 5800], ["B2", "H20", 36, 7200], ...LIST];
    expect(classes(marked).slice(0, 2)).toEqual(["unread", "unread"]);
    const again = [["base", "H16", 42, 5800], ["wall", "H16", 36, 7200], ...LIST];
    expect(classes(again).slice(0, 2)).toEqual(["unread", "unread"]);
  });

  it("should stay notes where they sum each size once, or one alone speaks of a bar", () => {
    const sums = [["H12", 40, 35.5], ["H16", 60, 94.7], [], ...LIST];
    expect(classes(sums).slice(0, 2)).toEqual(["note", "note"]);
    expect(classes([["spare", "2-H16", 300], [], ...LIST])[0]).toBe("note");
  });
});

describe("a list whose heads name where the bars go and how they are cut", () => {
  it("should be read with a second table below under heads of its own", () => {
    // lengths and legs of the invented job; 0.888 x 12 = 1.579 x 16 are not asked here
    const rows = [
      ["Mark", "Bars", "Cut", "Where", "kg"],
      ["B1", "42-H16", 5800, "base", 385],
      ["B5", "30-H20", 4850, "wall", 359],
      [],
      ["BENDS"],
      ["Mark", "Bars", "Cut", "Shape", "A", "B", "Where", "kg"],
      ["B3", "42-H16", 3550, "L", 400, 3150, "base", 236],
    ];
    const { bars } = readSchedule(sheetFromRows("Quay", rows), standard);
    expect(bars.map(({ mark, total, length }) => [mark, total, length])).toEqual([
      ["B1", 42, 5800],
      ["B5", 30, 4850],
      ["B3", 42, 3550],
    ]);
  });

  it("should read a length under each with its unit", () => {
    const rows = [
      ["Where", "Bars", "Each (m)", "Total m"],
      ["footing", "8/H12", 9.4, 75.2],
      ["corners", "24/H12", 1.2, 28.8],
      ["ties", "72/H10", 1.28, 92.16],
    ];
    const { bars } = readSchedule(sheetFromRows("Quay", rows), standard);
    expect(bars.map(({ total, length }) => [total, length])).toEqual([
      [8, 9400],
      [24, 1200],
      [72, 1280],
    ]);
  });
});
