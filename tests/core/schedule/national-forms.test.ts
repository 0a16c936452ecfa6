import { describe, expect, it } from "vitest";
import type { ScheduleReading } from "../../../core/schedule/bar-row";
import { readSchedule } from "../../../core/schedule/read-schedule";
import { type Cell, sheetFromRows } from "../../../core/schedule/sheet";
import type { Standard } from "../../../core/standards/port";
import { resolveStandard } from "../../../core/standards/resolve-standard";

// the column orders by country are common practice; jobs and numbers are invented
describe("schedules in the habits of several countries", () => {
  it("should read an Indian list with lengths by size, descriptions and headings in one column", () => {
    const reading = read("IS2502:1963", [
      ["BAR BENDING SCHEDULE FOR FOOTING"],
      [
        ...["S.No", "Description", "Bar Mark", "Dia of bar (mm)", "Shape of bar", "No. of members"],
        ...["No. of bars per member", "Total no. of bars", "Cutting length (m)", "Length in m"],
        ...[null, null, null, null, "Total weight (kg)", "Remarks"],
      ],
      [null, null, null, null, null, null, null, null, null, 8, 10, 12, 16, 20],
      [1, "Footing F1"],
      [null, "Main bar along X", "a1", 12, null, 4, 9, 36, 1.72, null, null, 61.92, null, null, 54.98],
      [2, "Column C1"],
      [null, "Ties", "b2", 8, null, 4, 22, 88, 1.18, 103.84, null, null, null, null, 41, "135 hooks"],
      [null, "Total length (m)", null, null, null, null, null, null, null, 103.84, 0, 61.92, 0, 0],
      [null, "Weight (kg)", null, null, null, null, null, null, null, 41.02, 0, 54.98, 0, 0, 96],
      ["Note: All bars Fe500D"],
    ]);
    expect(reading.rowClasses.join(" ")).toBe(
      "note heading heading heading bar heading bar total total note",
    );
    expect(lines(reading)).toEqual([
      "Footing F1 a1 12 x36 1720 Main bar along X",
      "Column C1 b2 8 x88 1180 135 hooks",
    ]);
    expect(reading.tables[0]?.bySize?.map(({ size }) => size)).toEqual(["8", "10", "12", "16", "20"]);
    expect(reading.bars[0]?.grade).toBe("Fe 500D");
  });

  it("should read a US placing list with bend types and feet and inches", () => {
    const reading = read("ACI318:2019", [
      ["PLACING LIST"],
      ["Item", "Qty", "Size", "Length", "Mark", "Type", "A", "B", "C", "G", "Grade"],
      ["Heavy bending"],
      [1, 24, "#5", "6'-4\"", "5A1", "2", "0'-8\"", "5'-0\"", "0'-8\"", null, 60],
      [2, "12", "#4", "20-00", null, "STR", null, null, null, null, 60],
      [3, 100, "#4", "4'-6", "4T1", "T1", "0-4½", "1-2", "0-10", "0-4½", 60],
      ["Total", 136],
    ]);
    expect(lines(reading)).toEqual([" 5A1 #5 x24 1930.4", "  #4 x12 6096", " 4T1 #4 x100 1371.6"]);
    expect(reading.bars.map(({ shape, grade }) => [shape, grade])).toEqual([
      ["2", "60"],
      ["00", "60"],
      ["T1", "60"],
    ]);
    expect(reading.rowClasses.at(-1)).toBe("total");
  });

  it("should read a German list with decimal commas and total lengths by size", () => {
    const reading = read("DIN-EC2:2013", [
      ["Stahlliste", "", "Plan-Nr.", "B-204"],
      [
        ...["Pos.", "Anzahl", "Ø", "Einzellänge [m]", "Gesamtlänge je Durchmesser [m]"],
        ...[null, null, null, "Biegerolle", "Bemerkung"],
      ],
      [null, null, "[mm]", null, "Ø 8", "Ø 10", "Ø 12", "Ø 16"],
      ["1", "12", "16", "3,45", null, null, null, "41,40", "112", "obere Lage"],
      ["2", 34, 8, "1,20", "40,80", null, null, null, 32],
      ["Summe", null, null, null, "40,80", 0, 0, "41,40"],
    ]);
    expect(lines(reading)).toEqual([" 1 16 x12 3450 obere Lage", " 2 8 x34 1200"]);
    expect(reading.bars.map(({ former }) => former)).toEqual([112, 32]);
    expect(reading.totals[0]?.cells.map(({ value }) => value)).toEqual([40.8, 0, 0, 41.4]);
  });

  it("should read a French list", () => {
    const reading = read("EC2:2004", [
      ["Nomenclature des aciers, poutre P1"],
      [
        ...["Repère", "Diamètre", "Nombre d'éléments", "Nombre par élément", "Nombre total"],
        ...["Longueur développée (m)", "Façonnage", "Masse (kg)", "Observations"],
      ],
      ["1", "HA16", 2, 4, 8, "3,45", null, "43,6", "lit 1"],
      ["Total", null, null, null, 8, null, null, "43,6"],
    ]);
    expect(lines(reading)).toEqual([" 1 16 x8 3450 lit 1"]);
    expect(reading.bars[0]).toMatchObject({ members: 2, each: 4, mass: 43.6 });
  });

  it("should read a Chinese list with sketches", () => {
    const reading = read("GB50204:2015", [
      ["编号", "简图", "直径(mm)", "长度(mm)", "根数", "总长(m)", "重量(kg)", "备注"],
      ["1", null, "Φ16", 3450, 12, 41.4, 65.4, "上部"],
      ["2", null, "C8", 1200, 34, 40.8, 16.1],
      ["合计", null, null, null, 46, null, 81.5],
    ]);
    expect(lines(reading)).toEqual([" 1 16 x12 3450 上部", " 2 8 x34 1200"]);
    expect(reading.bars.map(({ totalLength }) => totalLength)).toEqual([41_400, 40_800]);
    expect(reading.rowClasses.at(-1)).toBe("total");
  });

  it("should read an Australian list with radius beside F", () => {
    const reading = read("AS3600:2018", [
      ["Mark", "No. off", "Size", "Shape", "A", "B", "C", "D", "E", "F/R", "Length", "Mass", "Comments"],
      ["A1", 12, "N16", "L", 300, 1200, null, null, null, null, 1500, 28.4, "T1"],
      ["A2", 6, "R10", "00", 2000, null, null, null, null, null, 2000, 7.4],
    ]);
    expect(lines(reading)).toEqual([" A1 N16 x12 1500 T1", " A2 N10 x6 2000"]);
  });

  it("should take the count beside members and a total for the number in each", () => {
    const reading = read("BS8666:2005", [
      ["Bar", "Dia", "No. of members", "No. of bars", "Total", "Length", "Cutting length (mm)", "Code"],
      ["1", 16, 2, 6, 12, 9, 1900, "00"],
      ["2", 16, 2, 4, 8, 9, 2100, "00"],
    ]);
    expect(
      reading.bars.map(({ mark, members, each, total, length }) => [mark, members, each, total, length]),
    ).toEqual([
      ["1", 2, 6, 12, 1900],
      ["2", 2, 4, 8, 2100],
    ]);
  });

  it("should ask whose count stands beside members where no column says", () => {
    const rows = [
      ["Mark", "Dia", "No. of members", "No. of bars", "Cutting length (mm)", "Code"],
      ["1", 16, 2, 6, 1900, "00"],
      ["2", 16, 1, 4, 2100, "00"],
    ];
    const asked = read("BS8666:2005", rows);
    expect(asked.bars.map(({ total }) => total)).toEqual([null, 4]);
    expect(asked.bars[0]?.problems?.[0]).toMatchObject({ guess: "count-of-member", asks: true, proposal: 6 });
    const sheet = sheetFromRows("Sheet1", rows);
    const standard = resolveStandard("BS8666:2005") as Standard;
    expect(readSchedule(sheet, standard, { confirmed: ["count-of-member"] }).bars[0]?.total).toBe(6);
    const corrected = readSchedule(sheet, standard, { columns: [{ column: "No. of bars", kind: "each" }] });
    expect(corrected.bars[0]).toMatchObject({ members: 2, each: 6 });
  });

  it("should read a cutting list of lengths and counts alone", () => {
    const reading = read("BS8666:2005", [
      ["length", "count"],
      [1200, 4],
      [900, "6"],
    ]);
    expect(reading.bars.map(({ length, total }) => [length, total])).toEqual([
      [1200, 4],
      [900, 6],
    ]);
  });

  it("should take title blocks between the pages for notes and column numbers for a heading", () => {
    const header = [
      "Member",
      "Bar mark",
      "Type and size",
      "No. of mbrs",
      "No. in each",
      "Total no.",
      "Length",
      "Shape",
    ];
    const bar = (mark: string): Cell[] => ["Beam 1", mark, "H16", 1, 4, 4, 1900, "00"];
    const reading = read("BS8666:2005", [
      header,
      [1, 2, 3, 4, 5, 6, 7, 8],
      bar("1"),
      ["Sheet", 2, "of", 4],
      ["Prepared by", "n.n.", "Date", 46_000],
      header,
      bar("2"),
      ["Total weight = 24 kg"],
      ["This schedule complies with the standard"],
    ]);
    expect(reading.rowClasses.join(" ")).toBe("heading heading bar note note heading bar total note");
    expect(reading.bars.map(({ member, mark }) => [member, mark])).toEqual([
      ["Beam 1", "1"],
      ["Beam 1", "2"],
    ]);
  });
});

function read(standard: string, rows: readonly (readonly Cell[])[]): ScheduleReading {
  return readSchedule(sheetFromRows("Sheet1", rows), resolveStandard(standard) as Standard);
}

function lines({ bars }: ScheduleReading): string[] {
  return bars.map(({ member, mark, size, total, length, remark }) =>
    `${member ?? ""} ${mark ?? ""} ${size?.bar?.size ?? "?"} x${total} ${length} ${remark ?? ""}`.trimEnd(),
  );
}
