import { describe, expect, it } from "vitest";
import { runAudit } from "../../../core/audit/run-audit";
import { readSchedule } from "../../../core/schedule/read-schedule";
import { type Cell, sheetFromRows } from "../../../core/schedule/sheet";
import { heldStandard } from "../../_support/held-standard";

// all rows are invented; products are worked out by hand, kg/m of BS 4449:2005 table 7

const standard = heldStandard("BS8666:2005");
const read = (rows: readonly (readonly Cell[])[]) => readSchedule(sheetFromRows("S", rows), standard);
const told = (rows: readonly (readonly Cell[])[], code: string) =>
  runAudit({ sheets: [sheetFromRows("S", rows)], standard }).findings.filter((one) => one.code === code);

describe("short lists and odd heads", () => {
  it("should prove a list of five rows by all its bars, though one stands there twice", () => {
    // bars of one x members x length in m: 11 x 6 x 2.4 = 158.4
    const { bars, held } = read([
      ["Στοιχείο", "α/α", "Διάμετρος", "Τεμάχια", "Όμοια", "Μήκος", "Συνολικό μήκος", "Βάρος (kg)"],
      ["Π1", 1, "Ø12", 11, 6, 2.4, 158.4, 140.7],
      [null, 2, "Ø12", 11, 6, 2.4, 158.4, 140.7],
      [null, 3, "Ø16", 8, 6, 1.6, 76.8, 121.3],
      ["Σ1", 4, "Ø16", 4, 2, 6.8, 54.4, 86],
      [null, 5, "Ø10", 42, 2, 1.64, 137.76, 85],
    ]);
    expect(held).toBeNull();
    expect(
      bars.map(({ members, each, length, totalLength }) => [members, each, length, totalLength]),
    ).toEqual([
      [6, 11, 2400, 158_400],
      [6, 11, 2400, 158_400],
      [6, 8, 1600, 76_800],
      [2, 4, 6800, 54_400],
      [2, 42, 1640, 137_760],
    ]);
  });

  it("should take a number sign for a diameter over all sizes where one of them is no number of a bar", () => {
    const rows: Cell[][] = [
      ["Nr pręta", "Średnica [mm]", "Długość [cm]", "Ilość sztuk", "#8", "#10", "#12", "#16"],
      ["1", 12, 500, 4, null, null, 20, null],
      ["2", 8, 110, 30, 33, null, null, null],
      ["3", 16, 250, 6, null, null, null, 15],
      ["4", 10, 320, 10, null, 32, null, null],
      ["5", 12, 410, 2, null, null, 8.2, null],
      ["Długość ogółem wg średnic [m]", null, null, null, 33, 32, 28.2, 15],
    ];
    const { tables, rowClasses, bars } = read(rows);
    expect(tables[0]?.bySize?.map(({ size }) => size)).toEqual(["8", "10", "12", "16"]);
    expect(bars).toHaveLength(5);
    expect(rowClasses.at(-1)).toBe("total");
    expect(told(rows, "SIZE106")).toEqual([]);
  });

  it("should read one member's bars out of a joined text whose head says so, beside members and total", () => {
    const rows: Cell[][] = [
      ["Elemento", "Fierro (por elemento)", "N° elem.", "Total barras", "Peso (kg)"],
      ["Zapata", "11Ø12 L=210", 6, 66, 123.1],
      ["Zapata", "4Ø16 L=165", 6, 24, 62.6],
      ["Columna", "4Ø20 L=380", 6, 24, 224.9],
      ["Columna", "26Ø8 L=160", 6, 156, 98.6],
      ["Viga", "3Ø16 L=630", 4, 12, 119.4],
      ["Viga", "36Ø8 L=138", 4, 144, 78.5],
    ];
    const { bars } = read(rows);
    expect(
      bars.map(({ members, each, total, length }) => [members, each, total, length]).slice(0, 2),
    ).toEqual([
      [6, 11, 66, 2100],
      [6, 4, 24, 1650],
    ]);
    expect(told(rows, "READ101")).toEqual([]);
    // members x bars in each is then a product of the sheet's own: 6 x 26 = 156
    rows[4] = ["Columna", "26Ø8 L=160", 6, 165, 98.6];
    expect(told(rows, "SUM109").map(({ row }) => row)).toEqual([5]);
  });

  it("should split joined texts down to the last row of a long list", () => {
    const rows: Cell[][] = [["Bar mark", "Bars", "Total no", "Remarks"]];
    for (let row = 1; row <= 450; row += 1) rows.push([`${row}`, `H12 L=${1000 + row}`, 2]);
    expect(
      read(rows)
        .bars.map(({ length }) => length)
        .at(-1),
    ).toBe(1450);
  });

  it("should test masses by size on lists that name the size over the columns alone", () => {
    // kg/m 0.395, 0.888, 1.579: 10 x 2 m of 8 are 7.9 kg
    const rows: Cell[][] = [
      ["Element", "Length (m)", "Remarks", "Total no.", "Ø8", "Ø12", "Ø16"],
      ["Beam", 2, "ties", 10, 7.9, null, null],
      ["Beam", 6, "top", 4, null, 21.3, null],
      ["Beam", 6.5, "bottom", 3, null, null, 30.8],
      ["Wall", 3.1, "mesh", 40, 49, null, null],
      ["Wall", 4, "edge", 8, null, 28.4, null],
      ["Wall", 2.5, "posts", 12, null, null, 47.4],
    ];
    const { held, proofs, bars } = read(rows);
    expect(held).toBeNull();
    expect(bars).toHaveLength(6);
    const own = proofs?.[0]?.agreement.find(({ identity }) => identity === "bySize");
    expect([own?.kept, own?.tested]).toEqual([6, 6]);
  });

  it("should take a short word over running numbers for theirs, beside bars in each", () => {
    const rows: Cell[][] = [
      [
        "Sl.",
        "Member",
        "Dia (mm)",
        "Nos. per member",
        "No. of members",
        "Length (m)",
        "Total length (m)",
        "Wt (kg/rft)",
      ],
      ...[
        [1, "F1", 12, 14, 8, 2.3, 257.6, 0.271],
        [2, "F2", 12, 13, 8, 2.4, 249.6, 0.271],
        [3, "C1", 16, 19, 4, 2.6, 197.6, 0.481],
        [4, "C2", 16, 8, 8, 4.4, 281.6, 0.481],
        [5, "B1", 10, 25, 8, 1.6, 320, 0.188],
      ],
    ];
    const { tables, held, bars } = read(rows);
    expect(held).toBeNull();
    expect(tables[0]?.columns.get("unitMass")?.column).toBe(7);
    expect(tables[0]?.columns.has("total")).toBe(false);
    expect(bars.map(({ members, each }) => [members, each]).at(-1)).toEqual([8, 25]);
  });

  it("should take a point before three digits of millimetres for one between thousands", () => {
    const { bars } = read([
      ["Merk", "Ø", "Aantal", "Lengte", "Vorm"],
      [1, 12, 24, "3.450 mm", "recht"],
      [2, 16, 12, "6.200 mm", "recht"],
      [3, 8, 11, "1.25 m", "recht"],
    ]);
    expect(bars.map(({ length }) => length)).toEqual([3450, 6200, 1250]);
  });

  it("should read mark, count, size and length out of one text where no column counts the bars", () => {
    // kg/m 0.617, 0.888, 0.395, 1.579, 0.222
    const { bars, held } = read([
      ["POSIÇÃO E DESCRIÇÃO", "PESO (kg)"],
      ["N1 - 6 ø10 C=410", 15.2],
      ["N2 - 4 ø12 C=620", 22],
      ["N3 - 42 ø8 C=138", 22.9],
      ["N4 - 3 ø16 C=655", 31],
      ["N5 - 20 ø6 C=96", 4.3],
      ["N6 - 8 ø12 C=325", 23.1],
    ]);
    expect(held).toBeNull();
    expect(bars.map(({ size, total, length }) => [size?.diameter, total, length])).toEqual([
      [10, 6, 4100],
      [12, 4, 6200],
      [8, 42, 1380],
      [16, 3, 6550],
      [6, 20, 960],
      [12, 8, 3250],
    ]);
  });

  it("should know a straight bar by its word in further languages", () => {
    const rows: Cell[][] = [
      ["Διάμετρος", "Μορφή", "Τεμάχια", "Μήκος (m)"],
      ["Ø12", "ευθύγραμμη", 11, 2.4],
      ["Ø16", "ευθύγραμμη", 8, 1.6],
    ];
    expect(read(rows).bars.map(({ shape }) => shape)).toEqual(["00", "00"]);
    expect(told(rows, "READ101")).toEqual([]);
  });
});
