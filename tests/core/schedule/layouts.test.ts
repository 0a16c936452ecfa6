import { describe, expect, it } from "vitest";
import { readSchedule } from "../../../core/schedule/read-schedule";
import { type Cell, sheetFromRows } from "../../../core/schedule/sheet";
import { uprightSheet } from "../../../core/schedule/turned-sheet";
import { heldStandard } from "../../_support/held-standard";

// all rows are invented; products are worked out by hand

const standard = heldStandard("BS8666:2005");
const read = (rows: readonly (readonly Cell[])[]) => readSchedule(sheetFromRows("S1", rows), standard);

describe("layouts of other offices", () => {
  it("should read a list without a header by the looks of its columns, members in headings", () => {
    const reading = read([
      ["Edge beam EB1 - 3 off"],
      ["1", "H20", 4, 7200, "B"],
      ["2", "H20", "2 no.", 4850, "T"],
      ["3", "H10", "34 @ 200", 1540, "link"],
      ["Wall W3 - 4 off"],
      ["4", "H12", "2 x 5", 3900, "EF"],
      ["5", "H16", 6, 2100, "trimmer"],
    ]);
    expect(reading.bars.map(({ members, each, length }) => [members, each, length])).toEqual([
      [3, 4, 7200],
      [3, 2, 4850],
      [3, 34, 1540],
      [4, 10, 3900],
      [4, 6, 2100],
    ]);
    expect(reading.guesses?.some(({ reason }) => reason.includes("no product of the rows confirms it"))).toBe(
      true,
    );
  });

  it("should go on with the list of the sheet before, its last member included", () => {
    const before = sheetFromRows("p1", [
      ["Mark", "Size", "No. in each", "Length (mm)", "Shape"],
      ["Wall - 4 off"],
      ["W1", "H16", 22, 3250, "00"],
      ["W2", "H16", 16, 2900, "00"],
    ]);
    const after = sheetFromRows("p2", [
      ["W3", "H12", 14, 2850, "00"],
      ["Cap - 6 off"],
      ["C1", "H25", 8, 2600, "00"],
    ]);
    const reading = readSchedule({ ...after, follows: before }, standard);
    expect(reading.bars.map(({ mark, members, each, length }) => [mark, members, each, length])).toEqual([
      ["W3", 4, 14, 2850],
      ["C1", 6, 8, 2600],
    ]);
    expect(reading.guesses?.map(({ guess }) => guess)).toContain("list-goes-on");
  });

  it("should split lengths from sizes where no header stands and a column of its own counts", () => {
    const reading = read([
      ["Abutment - 2 OFF"],
      ["A1", "H20 L=7200", "18 no."],
      ["A2", "H20 L=6400", "18 no."],
      ["A3", "H16 L=4150", "44 no."],
      ["A4", "H16 L=9000", "26 no."],
      ["A5", "H12 L=1380", "60 no."],
    ]);
    expect(
      reading.bars.map(({ size, members, each, length }) => [size?.diameter, members, each, length]),
    ).toEqual([
      [20, 2, 18, 7200],
      [20, 2, 18, 6400],
      [16, 2, 44, 4150],
      [16, 2, 26, 9000],
      [12, 2, 60, 1380],
    ]);
  });

  it("should let a head over the first of its columns hold for those beside it", () => {
    const reading = read([
      ["Mark", "Bar #", "No. of bars", "Length of Bar", null, "Weight (lbs)"],
      [null, null, null, "Ft", "In", null],
      ["1", "#6", 8, 14, 6, 174.2],
      ["2", "#5", 4, 14, 3, 59.5],
    ]);
    // 14 ft 6 in and 14 ft 3 in
    expect(reading.bars.map(({ length }) => length)).toEqual([4419.6, 4343.4]);
  });

  it("should give each of two tables side by side its own columns, where one word stands twice in the first", () => {
    const reading = read([
      [
        "Mark",
        "Bar",
        "No",
        "Length m",
        "Length mm",
        "Kg",
        null,
        null,
        "Mark",
        "Bar",
        "No",
        "Shape",
        "A",
        "Length",
      ],
      ["F1", "H16", 24, 3.2, null, 121.3, null, null, "C1", "H32", 8, "00", 4200, 4200],
      ["F2", "H16", 24, 2.8, null, 106.2, null, null, "C2", "H32", 8, "00", 2600, 2600],
      ["F3", "H12", 40, 1.85, null, 65.7, null, null, "C3", "H10", 60, "00", 1500, 1500],
    ]);
    expect(reading.tables).toHaveLength(2);
    expect(reading.bars.map(({ mark, length, mass }) => [mark, length, mass])).toEqual([
      ["F1", 3200, 121.3],
      ["C1", 4200, null],
      ["F2", 2800, 106.2],
      ["C2", 2600, null],
      ["F3", 1850, 65.7],
      ["C3", 1500, null],
    ]);
  });

  it("should take a row of units under the words, and steel grades over the sizes, for parts of the header", () => {
    const units = read([
      ["Mark", "Ø", "No.", "Length", "Ø8", "Ø10", "Ø12"],
      [null, "mm", "pcs", "m", "total m", "total m", "total m"],
      ["1", 12, 10, 2.5, null, null, 25],
    ]);
    expect(units.bars.map(({ length }) => length)).toEqual([2500]);
    const grades = read([
      ["Mark", "Size", "Total no", "Length (m)", "Lengths by size (m)", null, null, null],
      [null, null, null, null, "B240", null, "B500", null],
      [null, null, null, null, "Ø6", "Ø8", "Ø10", "Ø12"],
      ["1", 12, 10, 2.5, null, null, null, 25],
      ["2", 10, 20, 1.5, null, null, 30, null],
      ["3", 8, 30, 1.2, null, 36, null, null],
    ]);
    expect(grades.tables[0]?.bySize?.map(({ size }) => size)).toEqual(["6", "8", "10", "12"]);
    // each row's own total under its size
    expect(grades.tables[0]?.bySizeUnit).toBe("m");
    expect(grades.bars.map(({ totalLength, sizedAt }) => [totalLength, sizedAt])).toEqual([
      [25_000, 7],
      [30_000, 6],
      [36_000, 5],
    ]);
  });

  it("should refuse an amount under a size that no bars make, and name its cell", () => {
    const reading = read([
      ["Mark", "Size", "Total no", "Length (m)", "Lengths by size (m)", null, null],
      [null, null, null, null, "Ø8", "Ø10", "Ø12"],
      ["1", 12, 10, 2.5, null, null, 25],
      ["2", 10, 20, 1.5, null, 30, null],
      ["3", 8, 30, 1.2, 36, null, null],
      ["4", 8, 10, 1.2, 1e308, null, null],
    ]);
    expect(reading.bars.map(({ totalLength }) => totalLength)).toEqual([25_000, 30_000, 36_000, null]);
    expect(reading.bars[3]?.problems).toMatchObject([{ field: "totalLength", column: 4, outcome: "unread" }]);
  });

  it("should read a size beside its grade, and pass over abstracts and feet of the sheet", () => {
    const reading = read([
      ["Mark", "Diameter, class", "No.", "Length (mm)", "Mass (kg)"],
      ["1", "12 B500B", 10, 2500, 22.2],
      ["2", "B500A Ø16", 10, 3000, 47.4],
      [null],
      ["Ø12", 22.2, "kg"],
      ["B500A Φ16", 47.4, "kg"],
      ["10<Ø≤18", 69.6],
      ["checked by site", "yes"],
    ]);
    expect(reading.bars.map(({ size, grade }) => [size?.diameter, grade ?? size?.prefix])).toEqual([
      [12, "B500B"],
      [16, "B500A"],
    ]);
    expect(reading.rowClasses.slice(3)).not.toContain("unread");
    expect(reading.rowClasses.slice(3)).not.toContain("bar");
  });

  it("should turn lists one below the other whose bars stand in columns", () => {
    const list = (marks: readonly string[], lengths: readonly number[]) => [
      ["Bar mark", ...marks],
      ["Shape", ...marks.map(() => "A")],
      ["a", ...lengths],
      ["Cut length", ...lengths],
      ["No. in each", ...marks.map((_, at) => 4 + at)],
      ["No. of members", ...marks.map(() => 2)],
      ["Size", ...marks.map((_, at) => [12, 16, 12, 10][at] as number)],
    ];
    const rows = [
      ...list(["A1", "A2", "A3", "A4"], [5950, 4200, 1450, 1040]),
      [null],
      ...list(["S1", "S2"], [2780, 5700]),
    ];
    const reading = readSchedule(uprightSheet(sheetFromRows("S1", rows), standard), standard);
    expect(new Set(reading.bars.map(({ mark }) => mark))).toEqual(
      new Set(["A1", "A2", "A3", "A4", "S1", "S2"]),
    );
    expect(reading.bars.find(({ mark }) => mark === "S2")?.length).toBe(5700);
  });
});
