import { describe, expect, it } from "vitest";
import { type Cell, sheetFromRows } from "../../../core/schedule";
import { readSchedule } from "../../../core/schedule/read-schedule";
import { plainBar } from "../../../core/schedule/rows/stored-bar";
import { resolveStandard, type Standard } from "../../../core/standards";
import { reckonTonnage, tonnageNotes } from "../../../core/totals";

const standard = resolveStandard("BS8666:2005") as Standard;
const HEADER = [
  "Member",
  "Bar mark",
  "Size",
  "Total no.",
  "Length mm",
  "Shape code",
  "A mm",
  "Pour",
  "Revision",
];

function read(rows: readonly (readonly Cell[])[], name = "Bars") {
  const sheet = sheetFromRows(name, [HEADER, ...rows]);
  return { sheet, reading: readSchedule(sheet, standard) };
}

const bar = (mark: string, size: string, pour: string | null, member: string | null = "B1"): Cell[] => [
  member,
  mark,
  size,
  10,
  2000,
  "00",
  2000,
  pour,
  null,
];

const COUNTED = ["Bar mark", "Size", "No. of members", "No. in each", "Total no.", "Length mm", "Shape", "A"];

describe("reckonTonnage", () => {
  it("groups by pour over several sheets, a pour of one name being one", () => {
    const { tonnage, groupedBy } = reckonTonnage(
      [read([bar("01", "H16", "P1")]), read([bar("02", "H16", "p1"), bar("03", "H20", null)], "More")],
      standard,
    );
    expect(groupedBy).toBe("pour");
    // 10 bars of 2 m at 1.579 and 2.466 kg/m (UK three-decimal table)
    expect(tonnage.pours.map(({ pour, total }) => [pour, total])).toEqual([
      ["P1", 0.06316],
      ["", 0.04932],
    ]);
  });

  it("doubts no bar whose total length is that of one member's bars, and one whose is neither", () => {
    const listed = (each: number, totalLength: number) => {
      const rows = [
        ["Bar mark", "Size", "No. of members", "No. in each", "Length mm", "Total length m"],
        ["01", "H16", 4, each, 2000, totalLength],
      ];
      const sheet = sheetFromRows("Bars", rows);
      return reckonTonnage([{ sheet, reading: readSchedule(sheet, standard) }], standard).doubted.length;
    };
    // 4 x 10 bars of 2 m: 80 m in all, 20 m a member
    expect([listed(10, 80), listed(10, 20), listed(10, 40)]).toEqual([0, 0, 1]);
  });

  it("doubts every total that is not members times each, and tells rows that are hidden", () => {
    const counts: [number, number, number][] = [
      ...[[2, 10, 20] as const, [2, 10, 22] as const, [3, 10, 33] as const, [1, 10, 11] as const],
      [2, 5, 12],
    ].map(([members = 0, each = 0, total = 0]) => [members, each, total]);
    const rows = counts.map((of, at): Cell[] => [String(at + 1), "H16", ...of, 2000, "00", 2000]);
    const sheet = { ...sheetFromRows("Bars", [COUNTED, ...rows]), isHiddenRow: (row: number) => row === 1 };
    const reckoned = reckonTonnage([{ sheet, reading: readSchedule(sheet, standard) }], standard);
    expect(reckoned.doubted.map(({ row }) => [row.cell, row.otherwise?.by])).toEqual(
      ["F3", "F4", "F5", "F6"].map((cell) => [cell, "members times each"]),
    );
    // 20 bars of 2 m at 1.579 kg/m (UK three-decimal table)
    expect(tonnageNotes(reckoned)).toContain("1 hidden row counted in the total (row 2): 63.2 kg");
  });

  it("doubts a row that repeats another", () => {
    const doubted = (rows: Cell[][]) => {
      const sheet = sheetFromRows("Bars", [COUNTED, ...rows]);
      const reckoned = reckonTonnage([{ sheet, reading: readSchedule(sheet, standard) }], standard);
      return reckoned.doubted.map(({ row }) => [row.cell, row.otherwise?.by]);
    };
    const list = Array.from({ length: 14 }, (_, at): Cell[] => [
      ...[String(at + 1), "H16", 2, 5, 10, 2000 + 50 * at, "00", 2000 + 50 * at],
    ]);
    expect(doubted(list)).toEqual([]);
    expect(doubted([...list, list[4] ?? []])).toEqual([["F16", "repeat"]]);
    const [repeated] = tonnageNotes(
      reckonTonnage(
        [[...list, list[4] ?? []]].map((rows) => {
          const sheet = sheetFromRows("Bars", [COUNTED, ...rows]);
          return { sheet, reading: readSchedule(sheet, standard) };
        }),
        standard,
      ),
    ).filter((note) => note.includes("repeats"));
    // 10 bars of 2.2 m at 1.579 kg/m (UK three-decimal table)
    expect(repeated).toContain("F16 34.7 kg, though the row repeats another");
  });

  it("groups by member where no bar names a pour, and by sheet where none names either", () => {
    const members = reckonTonnage(
      [read([bar("01", "H16", null, "B1"), bar("02", "H16", null, "B2")])],
      standard,
    );
    expect([members.groupedBy, members.tonnage.pours.map(({ pour }) => pour)]).toEqual([
      "member",
      ["B1", "B2"],
    ]);
    const header = HEADER.slice(1, 7);
    const rows = [header, bar("01", "H16", null).slice(1, 7)];
    const [one, two] = ["One", "Two"].map((name) => {
      const sheet = sheetFromRows(name, rows);
      const reading = readSchedule(sheet, standard);
      // a member may be taken from the sheet's own name
      return {
        sheet,
        reading: { ...reading, bars: reading.bars.map((each) => ({ ...plainBar(each), member: null })) },
      };
    });
    const sheets = reckonTonnage([one!, two!], standard);
    expect([sheets.groupedBy, sheets.tonnage.pours.map(({ pour }) => pour)]).toEqual([
      "sheet",
      ["One", "Two"],
    ]);
  });

  it("says both totals, and of which rows, where the lengths typed are not those that are weighed", () => {
    const long = [...bar("02", "H20", "P1")];
    // typed 2500, where A makes 2000
    long[4] = 2500;
    const reckoned = reckonTonnage([read([bar("01", "H16", "P1"), long])], standard);
    // ten of 2.0 m at 1.579 kg/m are 31.58 kg; ten of 2.0 m at 2.466 are 49.32, of 2.5 m 61.65
    expect(reckoned.asTyped).toEqual([
      { sheet: "Bars", cell: "E3", mass: expect.closeTo(49.32, 9), asTyped: expect.closeTo(61.65, 9) },
    ]);
    expect(tonnageNotes(reckoned)).toEqual([
      "1 row is weighed as its dimensions make it (E3): 0.081 t in all; by the lengths as typed, which are cut, ticketed and loaded, 0.093 t",
    ]);
  });

  it("leaves out and counts what is struck through, superseded or without a mass", () => {
    const { sheet, reading } = read([
      bar("01", "H16", "P1"),
      bar("02", "H16", "P1"),
      bar("03", "H17", "P1"),
      bar("04", "H16", "P1"),
    ]);
    const bars = reading.bars.map((each, index) => ({
      ...plainBar(each),
      ...(index === 1 && { struckThrough: true }),
      ...(index === 3 && { superseded: true }),
    }));
    const reckoned = reckonTonnage([{ sheet, reading: { ...reading, bars } }], standard);
    expect(reckoned.tonnage).toMatchObject({ rows: 1, total: 0.03158 });
    expect(reckoned.notInTotal.map(({ row, cell, why }) => [row, cell, why])).toEqual([
      [3, "B3", "struck through"],
      [4, "C4", 'size "H17" is no bar of BS8666:2005, so it has no mass'],
      [5, "B5", "superseded, as its own remark says"],
    ]);
    expect([...(reckoned.masses[0] ?? [])].map((row) => row?.mass ?? null)).toEqual([
      31.58,
      null,
      null,
      null,
    ]);
    expect(tonnageNotes(reckoned)).toEqual([
      "not in the total: 1 row (B3): struck through",
      'not in the total: 1 row (C4): size "H17" is no bar of BS8666:2005, so it has no mass',
      "not in the total: 1 row (B5): superseded, as its own remark says",
    ]);
  });

  it("says nothing where every bar is in the totals by its cut length", () => {
    expect(tonnageNotes(reckonTonnage([read([bar("01", "H16", "P1")])], standard))).toEqual([]);
  });
});
