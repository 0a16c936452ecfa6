import { describe, expect, it } from "vitest";
import type { ScheduleReading } from "../../../core/schedule/bar-row";
import { recogniseHeader } from "../../../core/schedule/header/recognise-header";
import { readSchedule } from "../../../core/schedule/read-schedule";
import { type Cell, sheetFromRows } from "../../../core/schedule/sheet";
import type { Standard } from "../../../core/standards/port";
import { resolveStandard } from "../../../core/standards/resolve-standard";

// column orders and words by country are common practice; jobs and numbers are invented
describe("header words", () => {
  it.each([
    ["Repère / Mark", "mark", null],
    ["Dia. / Size", "size", null],
    ["Nuance / Ø", "size", null],
    ["Type & Dia", "size", null],
    ["Type/size", "size", null],
    ["رقم السيخ\nBar Mark", "mark", null],
    ["Length (m)\nالطول", "length", "m"],
    ["No. req'd", "total", null],
    ["Bars / mbr", "each", null],
    ["Nº por pieza", "each", null],
    ["Nº piezas", "members", null],
    ["Liczba w 1 elemencie", "each", null],
    ["Długość [m]", "length", "m"],
    ["Çap (mm)", "size", "mm"],
    ["Birim ağırlık (kg/m)", "unitMass", null],
    ["강종", "grade", null],
    ["単位重量", "unitMass", null],
    ["C.UNIT (cm)", "length", "cm"],
    ["PESO + 10 % (kg)", "mass", "kg"],
    ["Масса, кг", "mass", "kg"],
    ["Weight (kg/m)", "unitMass", null],
    // a unit of mass tells where the word is nobody's
    ["Маса заг., кг", "mass", "kg"],
    ["Nº/EL.", "each", null],
    ["Nº EL.", "members", null],
  ])("should take %s for %s", (header, kind, unit) => {
    expect(recogniseHeader(header)).toMatchObject({ kind, unit });
  });

  it.each(["Location / Mark / Size", "H16-01", "A/B", "Zone 3"])(
    "should take %s for no one column",
    (text) => {
      expect(recogniseHeader(text)).toBeNull();
    },
  );
});

describe("lists as others write them", () => {
  it("should join a row of units to the header and take sums by size at the foot for totals", () => {
    const reading = read("DIN-EC2:2013", [
      ["Pos.", "Anzahl", "Ø", "Einzellänge", "Gesamtlänge", "Ø 8", "Ø 10", "Ø 12", "Bemerkung"],
      [null, "Stck", "mm", "m", "m", "m", "m", "m", null],
      [1, 48, 12, "5,45", "261,60", null, null, "261,60", "unten"],
      [2, 60, 8, "1,24", "74,40", "74,40", null, null, "Bügel"],
      [null, null, null, null, "Länge m", "74,40", "0,00", "261,60", null],
      [null, null, null, null, "kg/m", "0,395", "0,617", "0,888", null],
      [null, null, null, null, "Gewicht kg", "29,39", "0,00", "232,30", null],
      [null, null, null, null, "Gesamtgewicht kg", "261,69", null, null, null],
    ]);
    expect(reading.rowClasses.join(" ")).toBe("heading heading bar bar total total total total");
    expect(lines(reading)).toEqual([" 1 12 x48 5450 unten", " 2 8 x60 1240 Bügel"]);
  });

  it("should read a Polish list whose sizes stand behind their grade", () => {
    const reading = read("EC2:2004", [
      [
        "Nr pręta",
        "Średnica",
        "Długość",
        "Liczba w 1 elemencie",
        "Liczba elementów",
        "Liczba ogółem",
        "Długość ogólna [m]",
      ],
      [null, "[mm]", "[m]", "[szt.]", "[szt.]", "[szt.]", "St0S Ø6", "A-IIIN Ø8", "A-IIIN Ø12"],
      [1, 12, 6.34, 4, 3, 12, null, null, 76.08],
      [2, 6, 1.16, 32, 3, 96, 111.36, null, null],
      ["Długość ogólna wg średnic [m]", null, null, null, null, null, 111.36, 0, 76.08],
      ["Masa całkowita [kg]", null, null, null, null, null, 92.3],
    ]);
    expect(reading.rowClasses.join(" ")).toBe("heading heading bar bar total total");
    expect(reading.bars.map(({ members, each, total, length }) => [members, each, total, length])).toEqual([
      [3, 4, 12, 6340],
      [3, 32, 96, 1160],
    ]);
  });

  it("should settle a bare count beside members by the total lengths under the sizes", () => {
    const head = ["Poz No", "Çap (mm)", "Benzer", "Adet", "Boy (m)", "Φ8", "Φ12", "Φ16"];
    const each = read("EC2:2004", [
      head,
      ["P1", 16, 4, 8, 4.2, null, null, 134.4],
      ["P2", 8, 4, 28, 1.72, 192.64, null, null],
      ["GENEL TOPLAM (kg)", null, null, null, null, null, null, 288.4],
    ]);
    expect(
      each.bars.map(({ members, each: one, total, problems }) => [members, one, total, problems]),
    ).toEqual([
      [4, 8, null, null],
      [4, 28, null, null],
    ]);
    const all = read("EC2:2004", [
      head,
      ["P1", 16, 4, 32, 4.2, null, null, 134.4],
      ["P2", 8, 4, 112, 1.72, 192.64, null, null],
    ]);
    expect(all.bars.map(({ each: one, total, problems }) => [one, total, problems])).toEqual([
      [null, 32, null],
      [null, 112, null],
    ]);
  });

  it("should read a length in a column of feet and one of inches", () => {
    const reading = read("ACI318:2019", [
      ["MARK", "NO.", "SIZE", "LENGTH", null, "LOCATION"],
      [null, null, null, "FT", "IN", null],
      ["501", 120, 5, 11, 6, "BOT"],
      ["502", 60, 4, 39, 0, null],
      ["503", 44, 6, null, 9.5, null],
      ["504", 8, 6, 4, null, null],
      ["505", 8, 6, 4, "see", null],
    ]);
    // 11 ft 6 in = 138 in = 3505.2 mm; 39 ft = 11887.2; 9.5 in = 241.3; 4 ft = 1219.2
    expect(reading.bars.map(({ length }) => length)).toEqual([3505.2, 11887.2, 241.3, 1219.2, null]);
    expect(reading.bars[4]?.problems?.[0]).toMatchObject({ field: "length", column: 4, outcome: "unread" });
    expect(reading.bars.map(({ total }) => total)).toEqual([120, 60, 44, 8, 8]);
  });

  it("should take the first No. for a serial number where another column counts the bars", () => {
    const serial = read("BS8666:2005", [
      ["No.", "Bar mark", "Size", "Qty", "Length"],
      [1, "A1", "H16", 24, 3000],
      [2, "A2", "H12", 8, 2000],
    ]);
    expect(serial.bars.map(({ mark, total, each }) => [mark, total, each])).toEqual([
      ["A1", 24, null],
      ["A2", 8, null],
    ]);
    const counts = read("BS8666:2005", [
      ["Item", "Element", "Bar", "Dia (mm)", "Nr", "Length (m)"],
      [1, "Pad P1", "B1", 16, 13, 2.3],
      [2, "Pad P1", "B2", 16, 12, 2.1],
    ]);
    expect(counts.bars.map(({ total }) => total)).toEqual([13, 12]);
  });

  it("should carry a unit and its number down from a row of several cells", () => {
    const header = ["Mark", "Size", "No. per unit", "Length", "Shape", "A"];
    const reading = read("BS8666:2005", [
      header,
      ["S1-1", "H12", 9, 3600, "00"],
      [],
      ["Unit ST2", null, "No. of units:", 4],
      header,
      ["ST2-1", "H12", 5, 3300, "00"],
    ]);
    expect(reading.rowClasses.join(" ")).toBe("heading bar blank heading heading bar");
    expect(reading.bars[1]).toMatchObject({ member: "Unit ST2", members: 4, each: 5 });
  });

  it("should tell by its cells what a column of bar types holds", () => {
    const sizes = read("BS8666:2005", [
      ["Ref", "Bar type", "No.", "Len. (m)", "Total (kg)"],
      [1, "H16", 61, 7.4, 712.8],
      [2, "H12", 38, 12, 404.9],
    ]);
    expect(lines(sizes)).toEqual([" 1 16 x61 7400", " 2 12 x38 12000"]);
    const shapes = read("ACI318:2019", [
      ["PCS", "SIZE", "LGTH", "MARK", "TYPE"],
      [40, "#5", "20-00", "501", "STR"],
      [36, "#4", "8-06", "402", "STR"],
    ]);
    expect(shapes.bars.map(({ shape, grade }) => [shape, grade])).toEqual([
      ["00", null],
      ["00", null],
    ]);
  });

  it("should take members out of the title of a list whose sums are so many times one another", () => {
    const reading = read("DIN-EC2:2013", [
      ["STAHLLISTE  FERTIGTEILE"],
      ["Fertigteilstütze 40/40", null, null, "Anzahl Fertigteile: 6", null, "Plan B-221"],
      ["Pos.", "Stück", "Ø mm", "Einzellänge m", "Ø 8", "Ø 12", "Ø 20"],
      [1, 8, 20, 6.9, null, null, 55.2],
      [2, 42, 8, 1.56, 65.52, null, null],
      [3, 8, 12, 0.96, null, 7.68, null],
      [null, null, null, "Summe je Fertigteil [kg]", null, null, 226.4],
      [null, null, null, "x 6 Stück = [kg]", null, null, 1358.4],
    ]);
    expect(reading.bars.map(({ members, each }) => [members, each])).toEqual([
      [6, 8],
      [6, 42],
      [6, 8],
    ]);
  });

  it("should take no sums by size below a list for bars", () => {
    const list = [
      ["Pos.", "Stück", "Ø mm", "Einzellänge m", "Gesamtlänge m", "Masse kg", "Form", "Bemerkung"],
      [1, 8, 8, 5.9, 47.2, 18.64, "gerade", "unten"],
      [2, 12, 12, 0.41, 4.92, 4.37, "S-Haken", "oben"],
      [3, 4, 16, 1.5, 6, 9.47, "Winkel", "Anschluss"],
    ];
    const down = read("DIN-EC2:2013", [
      ...list,
      ["Summe", null, null, null, null, 32.48],
      [],
      ["Ø", "m", "kg/m", "kg"],
      [8, "47,20", "0,395", "18,6"],
      [12, "4,92", "0,888", "4,4"],
      [16, "6,00", "1,58", "9,5"],
    ]);
    expect(down.bars).toHaveLength(3);
    const across = read("DIN-EC2:2013", [
      ...list,
      [],
      ["Masse in kg", "8", "12", "16", "Summe"],
      ["kg/m", 0.395, 0.888, 1.58, null],
      [null, 18.6, 4.4, 9.5, 32.5],
    ]);
    expect(across.bars).toHaveLength(3);
  });

  it("should take a unit that only the rows tell where it was a guess, whatever else the words keep", () => {
    const reading = read("BS8666:2005", [
      ["Member", "Dia.", "כמות באלמנט", "Total", "Length", "Total length (m)", "Mass (kg)"],
      ["B1", 16, 3, 12, 610, 73.2, 115.6],
      [null, 16, 2, 8, 555, 44.4, 70.1],
      [null, 12, 2, 8, 210, 16.8, 14.9],
      [null, 8, 36, 144, 132, 190.08, 75.1],
      [null, 12, 2, 8, 555, 44.4, 39.4],
      ["B2", 20, 2, 12, 480, 57.6, 142],
      [null, 8, 28, 168, 152, 255.36, 100.9],
    ]);
    expect(reading.bars.map(({ length }) => length)).toEqual([6100, 5550, 2100, 1320, 5550, 4800, 1520]);
  });

  it("should join a third row of signs under the sizes of a header", () => {
    const reading = read("IS2502:1963", [
      [
        "Sl. No.",
        "Description",
        "Dia",
        "Nos.",
        null,
        null,
        "Cutting length",
        "Total length (m)",
        null,
        null,
        "Remarks",
      ],
      [null, null, "mm", "Member", "Per member", "Total", "m", 8, 12, 25, null],
      [null, null, null, null, null, null, null, "dia", "dia", "dia", null],
      [1, "Bottom main", 25, 1, 29, 29, 5.9, null, null, 171.1, "4200 mm run"],
      [2, "Side face", 12, 4, 8, 32, 4.876, null, 156.032, null, null],
      [3, "Ring", 8, 4, 11, 44, 2.88, 126.72, null, null, null],
    ]);
    expect(lines(reading).map((line) => line.replace(/ \d+ mm run/, ""))).toEqual([
      "Bottom main  25 x29 5900",
      "Side face  12 x32 4876",
      "Ring  8 x44 2880",
    ]);
  });

  it("should keep a bar whose member's name begins as a sum does", () => {
    const reading = read("BS8666:2005", [
      ["Στοιχείο", "Θέση", "Φ", "Τεμ.", "Μήκος (m)", "Βάρος (kg)"],
      ["Πέδιλα", "4", "Φ8", 24, 1.56, 14.8],
      ["Συνδ. δοκοί", "5", "Φ16", 22, 5.3, 184.2],
    ]);
    expect(reading.bars.map(({ mark }) => mark)).toEqual(["4", "5"]);
  });

  it("should take the count of a joined text for one member's beside a column of members", () => {
    const heads = ["EJE", "TIPO", "REFUERZO", "CANT. ELEM.", "PESO (kg)", "OBSERVACIONES"];
    const reading = read("ACI318:2019", [
      heads,
      ["V-201"],
      [null, "LS", "2#6 L=9.50", 3, 127.4],
      [null, "LI", "3#5 L=9.40", 3, 131.3],
      [null, "BAST", "2#5 L=2.35", 3, 21.9],
      [null, "BAST", "2#6 L=4.20", 3, 56.3],
      [null, "FLEJE", "64#3 L=1.54", 3, 165.6],
    ]);
    expect(reading.bars.map(({ members, each }) => [members, each])).toEqual([
      [3, 2],
      [3, 3],
      [3, 2],
      [3, 2],
      [3, 64],
    ]);
  });

  it("should keep a bar beside which a recap of grades has its sum", () => {
    const reading = read("GB50204:2015", [
      [
        "构件名称",
        "构件数",
        "编号",
        "简  图",
        "规格",
        "长度(mm)",
        "每件根数",
        "总根数",
        "重量(kg)",
        null,
        "级别",
        "直径",
        "重量(kg)",
      ],
      ["KL-1", 4, 1, "375+7150+375", "C25", 7900, 2, 8, 243.32, null, "HPB300", 6, 9.94],
      [null, null, 2, "375+2250", "C25", 2625, 4, 16, 161.7, null, "HPB300", 8, 154.87],
      [null, null, 3, "箍筋", "A8", 1690, 58, 232, 154.87, null, "HRB400", 8, 0],
      [null, null, 4, "拉筋", "A6", 373, 30, 120, 9.94, null, "HRB400", 25, 405.02],
      ["L-1", 8, 1, "210+3900+210", "C14", 4320, 2, 16, 83.64, null, "合计", null, 569.83],
    ]);
    expect(reading.bars.map(({ total }) => total)).toEqual([8, 16, 232, 120, 16]);
    expect([...(reading.tables[0]?.columns.keys() ?? [])]).toContain("shape");
    expect([...(reading.tables[0]?.columns.keys() ?? [])]).not.toContain("grade");
  });

  it("should take sizes with their counts and spacings in cm for a column of sizes", () => {
    const reading = read("BS8666:2005", [
      ["Poz", "Donatı", "Benzer adet", "Toplam adet", "Boy (m)", "Toplam boy (m)"],
      [1, "16Ø12", 6, 96, 2.3, 220.8],
      [2, "34Ø8/10/20", 4, 136, 1.56, 212.16],
      [3, "41Ø8/15", 2, 82, 5.4, 442.8],
      [4, "30Ø8/18", 2, 60, 6.3, 378],
      [5, "45Ø10", 3, 153, 1.7, 260.1],
      [6, "3Ø12", 3, 9, 7.15, 64.35],
    ]);
    expect(reading.bars.map(({ size, each, spacing }) => [size?.diameter, each, spacing])).toEqual([
      [12, 16, null],
      [8, 34, null],
      [8, 41, 150],
      [8, 30, 180],
      [10, 45, null],
      [12, 3, null],
    ]);
  });

  it("should part count, size and length joined with a unit behind each", () => {
    const heads = [
      "LOCATION",
      "SETS",
      "DESCRIPTION (per set)",
      "TOTAL PCS",
      "TOTAL LENGTH (m)",
      "UNIT WT. (kg/m)",
    ];
    const reading = read("BS8666:2005", [
      heads,
      ["FOOTING F-1", 8],
      [null, null, "11 - 16mmØ x 1.85m", 88, 162.8, 1.578],
      [null, null, "14 - 20mmØ x 2.45m", 112, 274.4, 2.466],
      ["FTB-1", 6],
      [null, null, "4 - 16mm x 6.60m", 24, 158.4, 1.578],
      [null, null, "2 - 16mmØ x 1900mm", 12, 22.8, 1.578],
      [null, null, "30 - 10mmØ x 1.32m", 180, 237.6, 0.616],
    ]);
    expect(reading.bars.map(({ total, length }) => [total, length])).toEqual([
      [88, 1850],
      [112, 2450],
      [24, 6600],
      [12, 1900],
      [180, 1320],
    ]);
  });

  it("should count members of a first row for the rows below, where the sums say so", () => {
    const reading = read("BS8666:2005", [
      ["ELEMENTO", "Nº EL.", "DENOM.", "Ø", "LARGO (cm)", "Nº/EL.", "Ø8", "Ø16", "Ø25"],
      ["Pilar P1", 8, "A", 25, 495, 4, null, null, 158.4],
      [null, null, "B", 16, 485, 4, null, 155.2, null],
      [null, null, "E", 8, 156, 23, 287.04, null, null],
      ["Viga", 4, "F", 16, 690, 3, null, 82.8, null],
      [null, null, "E", 8, 152, 23, 139.84, null, null],
    ]);
    expect(reading.bars.map(({ members, each, problems }) => [members, each, problems])).toEqual([
      [8, 4, null],
      [8, 4, null],
      [8, 23, null],
      [4, 3, null],
      [4, 23, null],
    ]);
  });

  it("should hold totals back where sums are some members' and nothing says how many", () => {
    const reading = read("BS8666:2005", [
      ["ELEMENTO", "POS", "Ø", "LARGO (cm)", "CANTIDAD", "Ø8", "Ø16", "Ø25"],
      ["Pilar P1", "A", 25, 495, 4, null, null, 158.4],
      [null, "B", 16, 485, 4, null, 155.2, null],
      [null, "E", 8, 156, 23, 287.04, null, null],
      [null, "T", 8, 54, 23, 99.36, null, null],
      ["Viga", "F", 16, 690, 3, null, 82.8, null],
      [null, "G", 16, 640, 3, null, 76.8, null],
      [null, "L", 8, 650, 4, 104, null, null],
      [null, "E", 8, 152, 23, 139.84, null, null],
      ["Losa", "S", 8, 740, 22, 162.8, null, null],
      [null, "T", 8, 225, 37, 83.25, null, null],
      [null, "U", 8, 410, 30, 123, null, null],
    ]);
    expect(reading.guesses?.find(({ guess }) => guess === "totals-held")?.reason).toMatch(
      /nothing on the sheet says how many members/,
    );
  });

  it("should tell by pounds whose bars are counted where lengths are feet and inches", () => {
    const reading = read("ACI318:2019", [
      ["ITEM", "NO. PCS", "SIZE", "LENGTH", "MARK", "WT LBS"],
      ["FOOTING F1  -  8 EA"],
      [1, 144, "#6", "6'-6\"", null, 1406],
      [2, 64, "#7", "5'-4\"", "7F01", 698],
      ["GRADE BEAM GB-1  -  3 EA"],
      [3, 12, "#8", "22'-2\"", "8G01", 710],
      [4, 12, "#8", "20'-0\"", null, 641],
      [5, 12, "#5", "20'-0\"", null, 250],
      [null, null, null, null, "TOTAL LBS", 3705],
    ]);
    expect(reading.bars.map(({ total, each }) => [total, each])).toEqual([
      [144, null],
      [64, null],
      [12, null],
      [12, null],
      [12, null],
    ]);
  });

  it("should keep page titles, wire and spacers out of members and bars", () => {
    const reading = read("BS8666:2005", [
      ["ref", "size", "qty", "length", "sc"],
      ["A1", 12, 30, 3000, 0],
      ["Schedule 9 page 2"],
      ["A2", 12, 30, 2000, 0],
      [null, "spacers 50mm", "2 bags"],
      [null, "something", "some"],
    ]);
    expect(reading.rowClasses.join(" ")).toBe("heading bar note bar note unread");
    expect(reading.bars.map(({ member }) => member)).toEqual([null, null]);
  });

  it.each([
    ["doors", ["Mark", "Size", "No.", "Length", "Type"], ["D01", "926x2040", 1, 2040, "FD30"]],
    [
      "sections",
      ["Mark", "Section", "No", "Length (mm)", "Mass (kg)"],
      ["B1", "203x203x46 UC", 2, 4500, 414],
    ],
  ])("should not take a list of %s for bars", (_what, header, row) => {
    const reading = read("BS8666:2005", [header, row, row, row]);
    expect(reading.bars).toEqual([]);
    expect(reading.noHeader?.nearestRow).toBe(0);
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
