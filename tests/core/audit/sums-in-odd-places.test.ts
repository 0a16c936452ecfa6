import { describe, expect, it } from "vitest";
import { type Cell, sheetFromRows } from "../../../core/schedule/sheet";
import { checkSheets } from "../../_support/check-sheets";

type Rows = readonly (readonly Cell[])[];

/** Sums of a book that are told above a note: sheet, cell and words; and the notes of sums by cell. */
function told(...lists: readonly Rows[]): {
  readonly loud: readonly string[];
  readonly notes: readonly string[];
} {
  const sheets = lists.map((rows, at) => sheetFromRows(`S${at + 1}`, rows));
  const checked = checkSheets(sheets);
  const sums = checked.report.findings.filter(({ code }) => /^SUM1(?:03|11|13)|^READ10[13]/.test(code));
  const words = (of: typeof sums) => of.map(({ sheet, cell, message }) => `${sheet}!${cell}: ${message}`);
  return {
    loud: words(sums.filter(({ severity }) => severity !== "note")),
    notes: words(sums.filter(({ severity }) => severity === "note")),
  };
}

const HEAD: Cell[] = [
  "Member",
  "Mark",
  "Size",
  "No. of members",
  "No. in each",
  "Total",
  "Length mm",
  "Mass kg",
];
/** kg by hand: 20 x 2 x 0.888 = 35.52, 10 x 3 x 0.888 = 26.64, 20 x 5 x 1.58 = 158, 10 x 4 x 2.47 = 98.8; all 318.96 */
const ROWS: Cell[][] = [
  ["B1", 1, "H12", 2, 10, 20, 2000, 35.52],
  ["B1", 2, "H12", 2, 5, 10, 3000, 26.64],
  ["B2", 3, "H16", 2, 10, 20, 5000, 158],
  ["B2", 4, "H20", 2, 5, 10, 4000, 98.8],
];
const line = (label: Cell, kg: number): Cell[] => [label, null, null, null, null, null, null, kg];

describe("sums that are carried from page to page", () => {
  const second = (label: string, brought: number): Rows => [
    HEAD,
    line(label, brought),
    ...ROWS.map((row, at) => [row[0] as Cell, at + 5, ...row.slice(2)]),
    line("TOTAL", 637.92),
  ];
  const first = (carried: number): Rows => [HEAD, ...ROWS, line("C/F", carried)];

  it.each(["B/F", "B/F sht 1", "Brought forward", "Übertrag von Blatt 1", "Report page 1"])(
    "should be told where %s is not what the page before carries",
    (label) => {
      expect(told(first(318.96), second(label, 318.96)).loud).toEqual([]);
      expect(told(first(318.96), second(label, 381.96)).loud).toEqual([
        "S2!H2: the line gives 381.96 for mass, but the bars above add up to 318.96",
      ]);
    },
  );

  it("should be told where what is carried is not what the page adds up to", () => {
    expect(told(first(381.96), second("B/F", 318.96)).loud).toEqual([
      "S1!H6: the line gives 381.96 for mass, but the bars above add up to 318.96",
    ]);
  });
});

describe("totals of sizes that stand one below another", () => {
  const beside = (head: readonly Cell[], lines: Rows): Rows =>
    [HEAD, ...ROWS].map((row, at) => [...row, null, ...(at === 0 ? head : (lines[at - 1] ?? []))]);

  it("should be told of the grade that each names", () => {
    const list = (ca60: number, ca50: number): Rows => [
      ...beside(
        ["Aço", "Ø", "kg"],
        [
          ["CA-60", "H12", 62.16],
          ["CA-50", "H16", 158],
          ["CA-50", "H20", 98.8],
          ["PESO TOTAL CA-50", null, ca50],
        ],
      ),
      [...Array<null>(9).fill(null), "PESO TOTAL CA-60", null, ca60],
    ];
    expect(told(list(62.16, 256.8)).loud).toEqual([]);
    expect(told(list(62.16, 356.8)).loud).toEqual([
      "S1!L5: the total is given as 356.8, but the sizes above or beside it add up to 256.8",
    ]);
  });

  it("should be a note where one of the sizes is told of already", () => {
    const list = (twelve: number, all: number): Rows => [
      HEAD,
      ...ROWS,
      [],
      ["Summary"],
      ["H12", twelve, "kg"],
      ["H16", 158, "kg"],
      ["H20", 98.8, "kg"],
      ["Total", all, "kg"],
    ];
    expect(told(list(62.16, 318.96)).loud).toEqual([]);
    const { loud, notes } = told(list(26.16, 318.96));
    expect(loud).toEqual(["S1!B8: the mass of H12 is given as 26.16, but the bars of the list make 62.16"]);
    expect(notes).toHaveLength(1);
    expect(notes[0]).toContain("S1!B11");
  });

  it("should be lines of sums where they fill as many columns as a bar, and their sum whatever word begins it", () => {
    const list = (eight: number, word: string): Rows => [
      ["ozn", "oblik [cm]", "Ø", "lg [m]", "n [kom]", "lgn [m]"],
      [1, "640", 14, 6.4, 24, 153.6],
      [2, "600", 14, 6, 24, 144],
      [3, "2x(40+30)+2x15", 10, 1.7, 90, 153],
      [4, "35 | 640 | 35", 16, 7.1, 10, 71],
      [5, "154", 8, 1.54, 100, 154],
      [],
      ["Rekapitulacija"],
      ["Ø", null, "lgn [m]", "kg/m'", "masa [kg]"],
      // 154 x 0.395, 153 x 0.617, 297.6 x 1.21, 71 x 1.58: 60.83 + 94.4 + 360.1 + 112.18 = 627.51
      [8, null, eight, 0.395, 60.83],
      [10, null, 153, 0.617, 94.4],
      [14, null, 297.6, 1.21, 360.1],
      [16, null, 71, 1.58, 112.18],
      [word, null, null, null, 627.51],
    ];
    for (const word of ["Ukupno", "Sve"]) expect(told(list(154, word)).loud).toEqual([]);
    expect(told(list(145, "Ukupno")).loud).toEqual([
      "S1!C10: the length of 8 is given as 145, but the bars of the list make 154",
    ]);
  });
});

describe("sums of what stands elsewhere", () => {
  it("should hold a block beside the second sheet against the bars of both", () => {
    const second = (twelve: number): Rows => {
      const lines = [
        ["H12", twelve],
        ["H16", 316],
        ["H20", 197.6],
      ];
      return [HEAD, ...ROWS].map((row, at) => [
        ...row,
        null,
        ...(at === 0 ? ["Size", "kg (2 pages)"] : (lines[at - 1] ?? [])),
      ]);
    };
    expect(told([HEAD, ...ROWS], second(124.32)).loud).toEqual([]);
    expect(told([HEAD, ...ROWS], second(142.32)).loud).toEqual([
      "S2!K2: the mass of H12 is given as 142.32, but the bars of the list make 124.32",
    ]);
  });

  it("should go by a mass that stands in a row which could not be read", () => {
    const list = (all: number): Rows => [
      ["Марка поз.", "Наименование", "Ед. изм.", "Кол.", "Масса", "Масса"],
      [null, null, null, null, "ед., кг", "общ., кг"],
      ["1", "Ø16 А500С, l=3450 мм", "шт.", 58, 5.45, 316.1],
      ["2", "Ø16 А500С, l=2100 мм", "шт.", 58, 3.32, 192.56],
      ["3", "Ø12 А500С, l=5900 мм", "шт.", 26, 5.24, 136.24],
      ["4", "Ø8 А240", "п.м", 86.4, 0.395, 34.13],
      ["5", "Ø12 А500С, l=1150 мм", "шт.", 116, 1.02, 118.32],
      ["6", "Ø16 А500С, l=2350 мм", "шт.", 59, 3.71, 218.89],
      ["7", "Ø12 А500С, l=2350 мм", "шт.", 59, 2.09, 123.31],
      // 316.1 + 192.56 + 136.24 + 34.13 + 118.32 + 218.89 + 123.31
      [null, "Итого", null, null, null, all],
    ];
    expect(told(list(1139.55)).loud.filter((words) => words.includes("the line gives"))).toEqual([]);
    expect(told(list(1193.55)).loud.filter((words) => words.includes("the line gives"))).toHaveLength(1);
  });

  it("should part Greek words: what begins as a total does is a member", () => {
    const list = (all: number): Rows => [
      ["Στοιχείο", "Α/Α", "Ø", "Τεμ.", "Μήκος (m)", "Συνολικό μήκος (m)", "Βάρος (kg)"],
      ["Πέδιλα", 1, 14, 72, 2.15, 154.8, 187.31],
      [null, 2, 16, 32, 1.8, 57.6, 91.01],
      ["Συνδετήριες δοκοί", 3, 16, 24, 5.6, 134.4, 212.35],
      ["Σενάζ", 4, 12, 16, 11.4, 182.4, 161.97],
      ["Σύνολο", null, null, null, null, null, all],
    ];
    // 187.31 + 91.01 + 212.35 + 161.97
    expect(told(list(652.64)).loud).toEqual([]);
    expect(told(list(625.64)).loud).toEqual([
      "S1!G6: the line gives 625.64 for mass, but the bars above add up to 652.64",
    ]);
  });
});

describe("lines under columns by size", () => {
  /** words that are not known, so that the arithmetic of the rows tells the columns */
  const list = (perMetre: number, mass: number, all: number): Rows => [
    ["Ref.", "Ø", "Desc.", "Iguais", "Por peça", "Unit.", "por diâmetro (m)"],
    [null, "mm", null, null, null, "m", 8, 12, 16, 20],
    ["1", 12, "0,20 + 1,50 + 0,20", 6, 11, 1.9, null, 125.4],
    ["2", 12, "0,20 + 1,30 + 0,20", 6, 11, 1.7, null, 112.2],
    ["3", 16, "0,30 + 1,70", 6, 6, 2, null, null, 72],
    ["4", 16, "reta", 6, 6, 3.75, null, null, 135],
    ["5", 8, "cintas", 6, 20, 1.06, 127.2],
    ["6", 20, "0,35 + 10,40", 2, 3, 10.75, null, null, null, 64.5],
    ["7", 20, "reta", 2, 2, 6.3, null, null, null, 25.2],
    ["8", 8, "cintas", 4, 34, 1.5, 204],
    ["9", 16, "0,30 + 5,35", 4, 3, 5.65, null, null, 67.8],
    // 127.2 + 204, 125.4 + 112.2, 72 + 135 + 67.8, 64.5 + 25.2
    [null, null, null, null, null, "Total (m)", 331.2, 237.6, 274.8, 89.7],
    [null, null, null, null, null, "kg/m", 0.395, 0.888, perMetre, 2.47],
    // by hand: 130.8, 211, 434.2, 221.6: 997.6
    [null, null, null, null, null, "Peso (kg)", 130.8, 211, mass, 221.6],
    [null, null, null, null, null, "PESO TOTAL (kg)", all],
  ];

  it("should be held against the bars of their sizes where only arithmetic tells the columns", () => {
    expect(told(list(1.58, 434.2, 997.6)).loud).toEqual([]);
    // 274.8 x 1.21 = 332.5, and all 895.9: both follow
    expect(told(list(1.21, 332.5, 895.9)).loud).toEqual([
      "S1!I13: the mass per metre of 16 is given as 1.21, but the bars of the list make 1.579",
    ]);
  });

  it("should be told once where the total is right and one mass above it is not", () => {
    const { loud, notes } = told(list(1.58, 43.42, 997.6));
    expect(loud).toEqual(["S1!I14: the mass of 16 is given as 43.42, but the bars of the list make 433.909"]);
    expect(notes.filter((words) => words.includes("G15"))).toHaveLength(1);
  });
});

describe("sums in another unit than their column", () => {
  const HEADS: Cell[] = ["Item", "Bar", "Total Nos", "Length ft", "Weight lbs"];
  /** lb by ASTM A615: #4 0.668 x 20 x 10 = 133.6, #5 1.043 x 30 x 12 = 375.48, #6 1.502 x 10 x 20 = 300.4; all 809.48 */
  const BARS: Cell[][] = [
    ["F1", "#4", 20, 10, 133.6],
    ["F2", "#5", 30, 12, 375.48],
    ["F3", "#6", 10, 20, 300.4],
  ];
  const foot = (label: string, mass: number): Cell[] => [label, null, null, null, mass];
  const lists = (kg: number): Rows => [HEADS, ...BARS, foot("G. TOTAL lbs", 809.48), foot("G. TOTAL kg", kg)];

  it("should be found with the unit explained behind it", () => {
    const said = foot("Total kg (1 kg = 2.2046 lbs)", 367.17);
    expect(told([HEADS, ...BARS, foot("Total lbs", 809.48), said]).loud).toEqual([]);
  });

  it("should be held against the same sum in the unit that the line says", () => {
    // 809.48 x 0.45359237 = 367.17
    expect(told(lists(367.17)).loud).toEqual([]);
    expect(told(lists(376.17)).loud).toEqual([
      "S1!E6: the line gives 376.17 for mass, but the bars above add up to 367.174",
    ]);
  });
});

describe("a total below sizes of which one is told of", () => {
  const HEADS: Cell[] = ["Mark", "Size", "No.", "Length mm", null, "Size", "kg"];
  /** kg by hand: 10 x 4 x 0.888 = 35.52, 20 x 5 x 1.579 = 157.9, 10 x 6 x 2.466 = 147.96 */
  const list = (h16: number, total: number): Rows => [
    HEADS,
    ["1", "H12", 10, 4000, null, "H12", 35.5],
    ["2", "H16", 20, 5000, null, "H16", h16],
    ["3", "H20", 10, 6000, null, "H20", 148],
    ["4", "H12", 0, 2000, null, "Total", total],
  ];

  it("should be a note where it comes out with that size put right", () => {
    expect(told(list(175.9, 341.4)).loud).toEqual([
      "S1!G3: the mass of H16 is given as 175.9, but the bars of the list make 157.9",
    ]);
  });

  it("should be told as well where it does not", () => {
    expect(told(list(175.9, 259.4)).loud).toContain(
      "S1!G5: the total is given as 259.4, but the sizes above or beside it add up to 359.4",
    );
  });
});

describe("legs that a few bars have", () => {
  it("should be no sums of groups, though two of three come out as one", () => {
    const heads: Cell[] = ["Mark", "Size", "No.", "Length m", "a m", "b m", "c m", "kg"];
    // 1.9 and 0.9 are legs, and sums of the lengths of nothing
    const rows: Rows = [
      heads,
      ["1", 12, 1, 1, 1, null, null, 0.888],
      ["2", 12, 1, 2.9, 1, 1, 0.9, 2.575],
      ["3", 12, 1, 1.9, 1.9, null, null, 1.687],
      ["4", 12, 1, 3.8, 1, 0.9, 1.9, 3.374],
      ["5", 12, 1, 3.2, 1, 1, 1.2, 2.842],
    ];
    expect(told(rows).loud).toEqual([]);
  });
});

describe("sums of classes of sizes right below the bars", () => {
  // kg by hand: 10 x 2 x 0.395 = 7.9, 10 x 3 x 0.617 = 18.51, 10 x 4 x 1.58 = 63.2
  const list = (thin: number): Rows => [
    ["Mark", "Shape", "Size", "No.", "Length mm", "Mass kg"],
    [1, "straight", 8, 10, 2000, 7.9],
    [2, "straight", 16, 10, 4000, 63.2],
    [3, "straight", 10, 10, 3000, 18.51],
    [null, "weight of steel Ø ≤ 10", null, null, null, thin],
    [null, "weight of steel Ø > 10", null, null, null, 63.2],
  ];

  it("should be read with the words before them, and sum the last bar too", () => {
    expect(told(list(26.41)).loud).toEqual([]);
    expect(told(list(46.41)).loud).toEqual([
      "S1!F5: the line gives 46.41 for mass, but the bars above add up to 26.41",
    ]);
  });
});
