import { describe, expect, it } from "vitest";
import { type Cell, sheetFromRows } from "../../../core/schedule/sheet";
import { checkSheets } from "../../_support/check-sheets";

type Rows = readonly (readonly Cell[])[];

function check(lists: Readonly<Record<string, Rows>>) {
  const sheets = Object.entries(lists).map(([name, rows]) => sheetFromRows(name, rows));
  return checkSheets(sheets);
}

const loud = (lists: Readonly<Record<string, Rows>>): string[] =>
  check(lists)
    .report.findings.filter(({ severity }) => severity !== "note")
    .map(({ code, sheet, cell }) => `${code} ${sheet}!${cell}`);

const HEAD: Cell[] = ["Member", "Mark", "Size", "Total no.", "Length mm", "Shape code", "A", "B", "C"];
const BARS: Rows = [
  ["Footing F2", "01", "H16", 504, 2450, "21", 250, 2000, 250],
  ["Footing F2", "02", "H16", 504, 2450, "21", 250, 2000, 250],
  ["Column C2", "03", "H20", 288, 4400, "11", 400, 4050, null],
  ["Beam B4", "05", "H25", 88, 6900, "00", 6900, null, null],
];

// formulas of BS 8666:2005 table 3, and kg per metre of BS 4449
const LEGEND: Rows = [
  ["Shape code", "Length"],
  ["00", "A"],
  ["11", "A + B - 0.5r - d"],
  ["21", "A + B + C - r - 2d"],
  ["C of code 51 not less than 115 (H8), 130 (H10)"],
  ["H10", "0.617 kg/m"],
  ["H16", "1.58 kg/m"],
];

describe("a sheet that explains the lists of its book", () => {
  it("is no list", () => {
    const alone = check({ List: [HEAD, ...BARS] });
    const beside = check({ List: [HEAD, ...BARS], Legend: LEGEND });
    expect(beside.tonnage.tonnage.total).toBe(alone.tonnage.tonnage.total);
    expect(beside.tonnage.notInTotal).toEqual([]);
    expect(loud({ List: [HEAD, ...BARS], Legend: LEGEND })).toEqual(loud({ List: [HEAD, ...BARS] }));
    expect(beside.schedules.map(({ sheet }) => sheet.name)).toEqual(["List"]);
  });

  it("gives its stock length to lists that say none", () => {
    const long: Rows = [HEAD, ...BARS, ["Beam B4", "06", "H25", 4, 13_800, "00", 13_800, null, null]];
    const notes: Rows = [["Notes"], ["Stock length 12 m"], ["Cover 40 mm"]];
    expect(loud({ List: long })).toEqual([]);
    expect(loud({ List: long, Notes: notes })).toEqual(["SUPPLY101 List!E6"]);
    // what the list itself says stands before
    expect(loud({ List: [["Stock length 14 m"], ...long], Notes: notes })).toEqual([]);
  });
});

// D25 of JIS G 3112 is 3.98 kg/m: 16 x 8.3 x 3.98 = 528.5; D16 1.56: 60 x 2.1 x 1.56 = 196.6; D13 0.995; D10 0.56
describe("masses per metre on another sheet", () => {
  const list: Rows = [
    ["Mark", "Size", "Cut length (mm)", "Total number", "Mass (kg)"],
    ["1", "D16", 2100, 60, 196.6],
    ["2", "D10", 2120, 204, 242.2],
    ["3", "D25", 8300, 16, 528.5],
    ["4", "D13", 2120, 152, 320.6],
  ];
  const sums = (perMetre: number): Rows => [
    ["Summary"],
    ["Size", "Length (m)", "kg/m", "Mass (kg)"],
    ["D10", 432.48, 0.56, 242.2],
    ["D13", 322.24, 0.995, 320.6],
    ["D16", 126, 1.56, 196.6],
    ["D25", 132.8, perMetre, 528.5],
  ];

  it("may be those that the rows are weighed at", () => {
    expect(loud({ List: list, Sums: sums(3.98) })).toEqual([]);
    expect(loud({ List: list, Sums: sums(2.98) })).toEqual(["SUM111 Sums!C6"]);
  });
});

// by hand: 530.04 x 0.245 = 129.9, 452.56 x 0.617 = 279.2, 381.48 x 0.963 = 367.4, 75.12 x 1.578 = 118.5
it("a mass that a summary does not make of its own length and mass per metre is told", () => {
  const heads = ["Elemento", "N", "\u00d8 (mm)", "Quant.", "Comprimento (cm)", "Total (cm)"];
  const bars: Rows = [
    ["Viga V1", "N1", 16, 12, 626, 7512],
    ["Viga V1", "N2", "12,5", 60, "635,8", 38148],
    ["Viga V1", "N3", 10, 100, "452,56", 45256],
    ["Viga V1", "N5", "6,3", 156, 138, 21528],
    // a digit of the total length is lost, and its mass with it
    ["Viga V1", "N8", "6,3", 267, 118, 3150],
  ];
  const summary = (ofTen: number): Rows => [
    [],
    [null, "RESUMO DO A\u00c7O"],
    [null, "A\u00c7O \u00d8 (mm)", "COMP. TOTAL (m)", "kg/m", "PESO (kg)"],
    [null, "6,3", "530,04", "0,245", 130],
    [null, 10, "452,56", "0,617", ofTen],
    [null, "12,5", "381,48", "0,963", 367],
    [null, 16, "75,12", "1,578", 119],
  ];
  const sums = (ofTen: number) =>
    loud({ "1": [heads, ...bars, ...summary(ofTen)] }).filter((one) => one.includes("E11"));
  expect(sums(279)).toEqual([]);
  expect(sums(309)).toEqual(["SUM111 1!E11"]);
});

// 14 x 8 = 112, as 8 x 8 and 28 x 8 of the same columns
describe("totals of members that no column counts", () => {
  const list = (total: number): Rows => [
    ["Members: F1 x 8, C1 x 8, B1 x 4"],
    ["Member", "Mark", "Size", "Length mm", "No. in each", "Total"],
    ["Footing F1", "1", 12, 1800, 11, 88],
    [null, "2", 12, 2200, 9, 72],
    ["Column C1", "3", 20, 4250, 8, 64],
    [null, "4", 8, 1400, 28, 224],
    [null, "5", 8, 450, 14, total],
    ["Beam B1", "6", 20, 7750, 2, 8],
    [null, "7", 20, 7150, 3, 12],
  ];

  it("agree with each other, and the one that does not is told", () => {
    expect(loud({ List: list(112) })).toEqual([]);
    expect(loud({ List: list(1120) })).toEqual(["SUM109 List!F7"]);
    // where two do not they count otherwise
    expect(
      loud({ List: list(1120).map((cells) => (cells[1] === "7" ? [...cells.slice(0, 5), 15] : cells)) }),
    ).toEqual([]);
  });
});

// 13 mm is rolled in Asia (JIS G 3112), and where nobody chose the standard several rows of it are no slip
it("a size of another country in several rows is a note", () => {
  const of13 = (mark: string): Cell[] => ["Slab S1", mark, "H13", 72, 6150, "00", 6150, null, null];
  const sizes = (...marks: readonly string[]) =>
    check({ List: [HEAD, ...BARS, ...marks.map(of13)] })
      .report.findings.filter(({ code }) => code === "SIZE101")
      .map(({ severity }) => severity);
  expect(sizes("07", "08")).toEqual(["note"]);
});
