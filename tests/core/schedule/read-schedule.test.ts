import { describe, expect, it } from "vitest";
import type { BarRow, ScheduleReading } from "../../../core/schedule/bar-row";
import { readSchedule } from "../../../core/schedule/read-schedule";
import { type Cell, sheetFromRows } from "../../../core/schedule/sheet";
import { unreadRows } from "../../../core/schedule/unread-rows";
import type { Standard } from "../../../core/standards/port";
import { resolveStandard } from "../../../core/standards/resolve-standard";

const UK = resolveStandard("BS8666:2005") as Standard;

// the form of BS 8666:2005, Figure 1: two stacked header rows under a title block
const FORM: readonly (readonly Cell[])[] = [
  ["BAR SCHEDULE"],
  ["Site ref", "Quay 4", null, "Rev letter", "B"],
  [],
  [
    "Member",
    "Bar",
    "Type and",
    "No. of",
    "No. in",
    "Total",
    "Length of",
    "Shape",
    null,
    null,
    null,
    null,
    null,
    "Rev",
  ],
  [null, "mark", "size", "mbrs", "each", "no.", "each bar mm", "code", "A", "B", "C", "D", "E/R", "letter"],
  ["Beam 1", "01", "H16", 2, 4, 8, 1900, "21", 1000, 400, 500, null, null, null],
  [null, "02", "H16", "2 ", "4", "'8", "1 900", 21, 1000, "(400)", 500, null, null, null],
  [],
  ["Beam 2", "03", "H12", 1, 6, 6, 1150, 12, 500, 700, null, null, 60, "B"],
  ["Total", null, null, null, null, 22],
];

describe("readSchedule", () => {
  it("should find a two-row header under a title block and say what each column is", () => {
    const { tables } = read(FORM);
    expect(tables).toHaveLength(1);
    expect(tables[0]).toMatchObject({ headerTop: 3, headerBottom: 4 });
    expect([...(tables[0]?.columns.keys() ?? [])]).toEqual([
      ...["member", "mark", "size", "members", "each", "total", "length", "shape"],
      ...["A", "B", "C", "D", "E", "revision"],
    ]);
    expect(tables[0]?.columns.get("length")).toMatchObject({ unit: "mm", guess: null });
  });

  it("should class every row of the used range once", () => {
    const { rowClasses, rowReasons } = read(FORM);
    expect(rowClasses).toEqual([
      ...["note", "note", "blank", "heading", "heading"],
      ...["bar", "bar", "blank", "bar", "total"],
    ]);
    expect(rowReasons.map(({ code }) => code)).toEqual([
      ...["outside-of-tables", "outside-of-tables", "nothing-filled", "header", "header"],
      ...["size-count-length", "fields-of-a-bar", "nothing-filled", "size-count-length", "sum-word"],
    ]);
  });

  it("should carry the member down and read numbers written as text", () => {
    const [, second, third] = read(FORM).bars;
    expect(second).toMatchObject({
      member: "Beam 1",
      mark: "02",
      members: 2,
      each: 4,
      total: 8,
      length: 1900,
      shape: "21",
    });
    expect(second).toMatchObject({ dims: [1000, 400, 500], freeDims: "B", problems: null });
    expect(third).toMatchObject({ member: "Beam 2", revision: "B" });
  });

  it("should take E/R as the radius of a shape that has one", () => {
    expect(read(FORM).bars[2]).toMatchObject({ shape: "12", dims: [500, 700], radius: 60 });
  });

  it("should read columns in any order and type beside size", () => {
    const [bar] = read([
      ["Length (m)", "Shape code", "C", "B", "A", "Dia", "Type", "Bar mark", "Qty"],
      [1.9, 21, 500, 400, 1000, 16, "H", "7", 12],
      [1.9, 21, 500, 400, 1000, 20, "H", "8", 12],
    ]).bars;
    expect(bar).toMatchObject({ dims: [1000, 400, 500], mark: "7", total: 12, length: 1900 });
    expect(bar?.size).toMatchObject({ diameter: 16, prefix: "H" });
  });

  it("should turn a cell it cannot read into a problem of its row", () => {
    const { bars, rowClasses } = read([
      FORM[3] ?? [],
      FORM[4] ?? [],
      ["B", "01", "H16", 2, 4, 8, { error: "#REF!" }, "21", "see dwg 4", 400, 500],
    ]);
    expect(rowClasses[2]).toBe("bar");
    expect(bars[0]?.length).toBeNull();
    expect(problemsOf(bars[0])).toEqual([
      ["A", "unread", '"see dwg 4" is no length'],
      ["length", "unread", "the cell holds the error #REF!"],
    ]);
  });

  it("should say why a row is no bar", () => {
    const reading = read([
      ...FORM.slice(0, 6),
      [null, "09", null, null, null, null, null, null, null, null, null, null, null, "C"],
    ]);
    expect(reading.rowClasses[6]).toBe("unread");
    const reason = "a mark, but neither size, count, length nor shape beside it";
    expect(unreadRows(reading)).toEqual([{ row: 6, reason }]);
  });

  it("should name the words looked for and the nearest row where there is no header", () => {
    const { noHeader, bars } = read([["Groceries"], ["mark", "price"], ["a", 2]]);
    expect(bars).toHaveLength(0);
    expect(noHeader).toMatchObject({ nearestRow: 1 });
    expect(noHeader?.lookedFor).toContain("shape code");
  });

  it("should let the user's correction decide a column and its unit", () => {
    const rows = [
      ["Mark", "Size", "Qty", "Shape", "Zuschnitt", "A"],
      ["1", "H16", 4, "00", 3.2, 3200],
    ];
    const { bars, tables } = readSchedule(sheetFromRows("B1", rows), UK, {
      columns: [{ column: "E", kind: "length", unit: "m" }],
    });
    expect(bars[0]?.length).toBe(3200);
    expect(tables[0]?.columns.get("length")).toMatchObject({ corrected: true, unit: "m" });
  });

  it("should leave malformed stored corrections out and say so", () => {
    const stored = { columns: [{ column: "E", kind: "bananas" }] } as never;
    const reading = readSchedule(sheetFromRows("B1", FORM), UK, stored);
    expect(reading.bars).toHaveLength(3);
    expect(reading.guesses?.[0]).toMatchObject({ guess: "stored-corrections" });
  });
});

function read(rows: readonly (readonly Cell[])[]): ScheduleReading {
  return readSchedule(sheetFromRows("Sheet1", rows), UK);
}

function problemsOf(bar: BarRow | undefined): string[][] {
  return (bar?.problems ?? []).map(({ field, outcome, reason }) => [field, outcome, reason]);
}
