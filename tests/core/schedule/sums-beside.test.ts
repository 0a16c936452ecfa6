import { describe, expect, it } from "vitest";
import { runAudit } from "../../../core/audit/run-audit";
import { readSchedule } from "../../../core/schedule/read-schedule";
import { type Cell, sheetFromRows } from "../../../core/schedule/sheet";
import { resolveStandard } from "../../../core/standards/index";
import type { Standard } from "../../../core/standards/port";

const standard = resolveStandard("BS8666:2005") as Standard;
const HEADS = ["Pos.", "Size", "Total no.", "Length mm", "Mass kg"];
/** kg by hand: 10 x 2 x 0.888, 20 x 3 x 0.888, 20 x 2 x 1.58, 10 x 4 x 2.47 (BS 4449 table of masses) */
const BARS: Cell[][] = [
  ["1", "12", 10, 2000, 17.76],
  ["2", "12", 20, 3000, 53.28],
  ["3", "16", 20, 2000, 63.2],
  ["4", "20", 10, 4000, 98.8],
];

/** A list with something beside it, an empty column between. */
function beside(...blocks: readonly (readonly Cell[])[]): Cell[][] {
  return [HEADS, ...BARS].map((cells, row) => [...cells, null, ...(blocks[row] ?? [])]);
}

const read = (rows: readonly (readonly Cell[])[]) => readSchedule(sheetFromRows("List", rows), standard);
const said = (rows: readonly (readonly Cell[])[], ...codes: string[]) =>
  runAudit({ sheets: [sheetFromRows("List", rows)], standard })
    .findings.filter(({ code }) => codes.includes(code))
    .map(({ cell, message }) => `${cell}: ${message}`);

describe("sums by size beside a list", () => {
  it("should leave the list whole, whatever rows they share with it", () => {
    const sums = beside(["By size"], ["12", 71.04], ["16", 63.2], ["20", 98.8], ["Total", 233.04]);
    const { bars, summaries } = read(sums);
    expect(bars.map(({ mark, total }) => [mark, total])).toEqual([
      ["1", 10],
      ["2", 20],
      ["3", 20],
      ["4", 10],
    ]);
    // three sizes and their total
    expect(summaries?.map(({ rows }) => rows.length)).toEqual([4]);
    expect(said(sums, "SUM111", "READ103", "SUM110")).toEqual([]);
  });

  it("should take a total for that of its grade, whichever column its number stands in", () => {
    const heads = ["Pos.", "A\u00c7O", "BIT", "QUANT", "COMPRIMENTO (cm)"];
    // m by hand: 20 x 2, 10 x 3, 30 x 2, 10 x 4; kg by NBR 7480: 0.154, 0.245, 0.617, 0.963
    const bars: Cell[][] = [
      ["1", "60B", 5, 20, 200],
      ["2", "50A", 6.3, 10, 300],
      ["3", "50A", 10, 30, 200],
      ["4", "50A", 12.5, 10, 400],
      ["5", "60B", 5, 10, 100],
      ["6", "50A", 10, 1, 100],
      ["7", "50A", 6.3, 1, 100],
    ];
    const sums = (of50: number): Cell[][] => [
      ["A\u00c7O", "BIT", "COMPR (m)", "PESO (kg)"],
      ["60B", 5, 50, 7.7],
      ["50A", 6.3, 31, 7.6],
      ["50A", 10, 61, 37.6],
      ["50A", 12.5, 40, 38.5],
      ["Peso total", "60B =", 7.7, "kg"],
      ["Peso total", "50A =", of50, "kg"],
    ];
    const list = (of50: number): Cell[][] =>
      [heads, ...bars].map((cells, row) => [...cells, null, ...(sums(of50)[row] ?? [])]);
    expect(said(list(83.7), "SUM111")).toEqual([]);
    expect(said(list(38.7), "SUM111")).toHaveLength(1);
  });

  it("should be known by a head that says sizes, whatever standard has them", () => {
    const heads = ["Mark", "Size", "No.", "Length mm", "Mass kg"];
    // 10 x 2 x 0.785, 20 x 3 x 1.57, 20 x 2 x 1.57, 10 x 4 x 2.355 (CSA G30.18)
    const bars: Cell[][] = [
      ["1", "10M", 10, 2000, 15.7],
      ["2", "15M", 20, 3000, 94.2],
      ["3", "15M", 20, 2000, 62.8],
      ["4", "20M", 10, 4000, 94.2],
    ];
    const list = (ofFifteen: number) => {
      const sums: Cell[][] = [
        ["Size", "kg/m", "Mass kg"],
        ["10M", 0.785, 15.7],
        ["15M", 1.57, ofFifteen],
        ["20M", 2.355, 94.2],
      ];
      return [heads, ...bars].map((cells, row) => [...cells, null, ...(sums[row] ?? [])]);
    };
    expect(said(list(157), "SUM111", "MASS103", "READ103")).toEqual([]);
    expect(said(list(117), "SUM111", "MASS103", "READ103")).toEqual([
      "I3: the mass of 15M is given as 117, but the bars of the list make 157",
    ]);
  });

  it("should be held against the bars of the whole list", () => {
    // the second row of 12 was left out
    const sums = beside(["By size"], ["12", 17.76], ["16", 63.2], ["20", 98.8]);
    expect(said(sums, "SUM111")).toEqual([
      "H2: the mass of 12 is given as 17.76, but the bars of the list make 71.04",
    ]);
  });

  it("should leave the list's header one row where theirs begins beside its second", () => {
    const sums = beside(["SUMMARY"], ["Size", "Weight (kg)"], ["12", 71.04], ["16", 63.2], ["20", 98.8]);
    expect(read(sums).bars).toHaveLength(4);
  });

  it("should take a list beside a list for bars", () => {
    const two = [HEADS, ...BARS].map((cells) => [...cells, null, ...cells]);
    expect(read(two).bars).toHaveLength(8);
  });
});

describe("a recap of sizes, pieces and masses below a list", () => {
  it("should be a block of sums, whatever stands beside it", () => {
    const { bars } = read([
      HEADS,
      ...BARS,
      [],
      ["Size", "Pcs", "kg"],
      ["12", 30, 71.04],
      ["16", 20, 63.2, null, "2 = end hook A on straight B"],
      ["20", 10, 98.8],
    ]);
    expect(bars).toHaveLength(4);
  });

  it("should be told by bands of sizes, in a unit of their own", () => {
    const bands = (over: number) => [
      HEADS,
      ...BARS,
      [],
      ["\u00d8 <= 12", "t", 0.071],
      ["12 < \u00d8 <= 16", "t", 0.063],
      ["\u00d8 > 16", "t", over],
    ];
    expect(said(bands(0.099), "SUM111")).toEqual([]);
    expect(said(bands(0.049), "SUM111")).toEqual([
      "C9: the mass of \u00d8 > 16 is given as 0.049, but the bars of the list make 0.099",
    ]);
  });
});

// CA-50 and CA-60 stand before the sizes as 50 and 60, and 50 is a size too (common practice in Brazil)
it("takes the sizes from the column that the head names so", () => {
  const rows = beside(["Steel", "Size mm", "Mass kg"], [50, 12, 71.04], [50, 16, 63.2], [60, 20, 98.8]);
  const { bars, summaries } = read(rows);
  expect(bars).toHaveLength(4);
  expect(summaries?.map((block) => block.rows.length)).toEqual([3]);
});

it("takes lines under words of sums for sums, though they hold as many cells as a bar of the list", () => {
  const rows: Cell[][] = [
    ["Mark", "Shape and legs", "Size", "Length m", "Number", "Lengths m"],
    ["1", "30 | 580", 14, 6.4, 24, 153.6],
    ["2", "600", 14, 6, 24, 144],
    ["3", "35 | 640", 16, 7.1, 10, 71],
    ["4", "650", 20, 6.5, 8, 52],
    [],
    ["Size", "Lengths m", "kg/m", "Mass kg"],
    [14, 297.6, 1.21, 360.1],
    [16, 71, 1.58, 112.18],
    [20, 52, 2.47, 128.44],
  ];
  const { bars, summaries } = read(rows);
  expect(bars.map(({ mark }) => mark)).toEqual(["1", "2", "3", "4"]);
  expect(summaries?.map((block) => block.rows.length)).toEqual([3]);
});

// No. 3 is 3/8 in of ASTM A615, and BS 8666 in force has none
it("knows sizes of another standard beside a list that calls its bars so", () => {
  const heads = ["Marca", "Diámetro", "Cant. total", "Longitud m", "Peso kg"];
  const bars: Cell[][] = [
    ["Zapata Z-1 \u2013 cantidad 14"],
    ["1", "No. 5", 112, 1.95, 338.96],
    ["2", "No. 3", 448, 1.08, 270.95],
    ["Columna C-1 \u2013 cantidad 4"],
    ["3", "No. 5", 16, 4.2, 104.29],
  ];
  const sums = [
    ["Barra", "kg"],
    ["No. 3", 270.95],
    ["No. 5", 443.25],
    ["Total", 714.2],
  ];
  const rows = [heads, ...bars].map((cells, row) => [
    ...Array.from({ length: 5 }, (_, column) => cells[column] ?? null),
    null,
    ...(sums[row] ?? []),
  ]);
  const { bars: found, rowClasses } = read(rows);
  expect(found.map(({ mark, member }) => [mark, member])).toEqual([
    ["1", "Zapata Z-1"],
    ["2", "Zapata Z-1"],
    ["3", "Columna C-1"],
  ]);
  expect(rowClasses).not.toContain("unread");
  expect(said(rows, "READ103")).toEqual([]);
});
