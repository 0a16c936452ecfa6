import { describe, expect, it } from "vitest";
import { runAudit } from "../../../core/audit/run-audit";
import { type Cell, type Sheet, sheetFromRows } from "../../../core/schedule/sheet";
import { resolveStandard } from "../../../core/standards/index";
import type { Standard } from "../../../core/standards/port";
import { BARS, HEADS } from "./plain-list";

const standard = resolveStandard("BS8666:2005") as Standard;
const check = (rows: readonly (readonly Cell[])[], sheet: Partial<Sheet> = {}) =>
  runAudit({
    sheets: [{ ...sheetFromRows("List", rows), ...sheet }],
    standard,
    isStandardAssumed: true,
  });
const loud = (rows: readonly (readonly Cell[])[], sheet: Partial<Sheet> = {}) =>
  check(rows, sheet)
    .findings.filter(({ severity }) => severity !== "note")
    .map(({ code, cell }) => `${code} ${cell}`);

describe("sums below a list", () => {
  it.each([
    ["sizes with their sign behind", ["12mm ø", 115.44, "kg"], ["16mm ø", 126.32, "kg"]],
    ["sizes before the word", ["", "H12 total", "", "", 115.44], ["", "H16 total", "", "", 126.32]],
    ["a word of another language", ["합계", "", "", "", 241.76], ["계", "", "", "", 241.76]],
  ])("should be no bars and no unread rows: %s", (_, ...sums) => {
    const report = check([HEADS, ...BARS, ...(sums as Cell[][])]);
    expect(report.rows).toMatchObject({ bars: 5, unread: 0 });
    expect(loud([HEADS, ...BARS, ...(sums as Cell[][])])).toEqual([]);
  });

  it("should be no unread rows where their words stand under the shape", () => {
    const heads = ["Pos", "Stück", "Ø", "Einzellänge (m)", "Biegeform", "Ø10", "Ø12", "Ø16"];
    const bars = [
      [1, 10, 12, 2, "gerade", null, 20, null],
      [2, 20, 12, 3, "gerade", null, 60, null],
      [3, 20, 16, 2, "gerade", null, null, 40],
      [4, 10, 10, 4, "gerade", 40, null, null],
      [5, 10, 10, 5, "gerade", 50, null, null],
    ];
    const foot = [
      [null, null, null, null, "Länge je Ø", 90, 80, 40],
      [null, null, null, null, "Gesamtgewicht kg", 189.7],
    ];
    expect(check([heads, ...bars, ...foot]).rows).toMatchObject({ bars: 5, unread: 0 });
  });
});

describe("rows of a list that are no bars", () => {
  it("should be notes where a bar is no more, in any language that is held", () => {
    for (const word of ["DELETED REV B", "gestrichen", "anulado", "аннулировано"]) {
      const rows = [["Member", ...HEADS], ...BARS.map((bar) => ["B1", ...bar]), [word, "06"]];
      expect(check(rows).rows, word).toMatchObject({ bars: 5, unread: 0 });
    }
  });

  it("should be notes where concrete is ordered by the same list", () => {
    const heads = ["Поз.", "Наименование", "Ø", "Кол.", "Длина, мм"];
    const bars = BARS.map(([mark, , count, length]) => [mark, "стержень", 12, count, length]);
    const rows = [heads, ...bars, [null, "Бетон В25, м³", null, 0.9]] as Cell[][];
    expect(check(rows).rows).toMatchObject({ bars: 5, unread: 0 });
  });
});

describe("a column that says what of a length is lap", () => {
  const rows = (lap: string): Cell[][] => [
    ["Bar mark", "Size", "Total no.", "Length (m)", lap],
    ["01", "H12", 10, 23.52, 0.52],
    ["02", "H12", 10, 2, "-"],
    ["03", "H12", 10, 3, "-"],
  ];
  it.each(["Lap (m)", "Lewatan (m)", "Нахлёст (м)"])("should name the lap of a long bar: %s", (lap) => {
    expect(loud(rows(lap))).toEqual([]);
    const [first] = check(rows(lap)).sheets[0]?.reading.bars ?? [];
    expect(first?.lap).toBeCloseTo(520, 6);
  });
  it("should be asked for where the column is another", () => {
    expect(loud(rows("Zone (m)"))).toContain("SUPPLY101 D2");
  });
});

describe("stored results that the file does not vouch for", () => {
  const doubted = { isDoubted: (_row: number, column: number) => column === 4 };
  it("should be believed where the rows' own products agree with them", () => {
    expect(loud([HEADS, ...BARS], doubted)).toEqual([]);
  });
  it("should be told where they do not", () => {
    const stale = BARS.map((bar) => [...bar.slice(0, 4), 1]);
    expect(loud([HEADS, ...stale], doubted)).toContain("READ106 E2");
  });
});

describe("a list that names no standard and shows no shape codes", () => {
  it("should be told as a note that its lengths keep a step of their own", () => {
    const own = [1020, 1530, 2010, 2540, 3080].map((length, at) => [`0${at}`, "H16", 10, length]);
    const found = check([HEADS, ...own]).findings.filter(({ code }) => code === "LEN107");
    expect(found.map(({ severity }) => severity)).toEqual(["note"]);
  });
  it("should be weighed as it weighs itself where its bar types are of another standard", () => {
    // KS D 3504 and JIS G 3112 print 0.560, 0.995 and 1.56 kg/m for D10, D13 and D16
    const bars = [
      ["1", "HD16", 72, 2200, 1.56],
      ["2", "HD16", 72, 2200, 1.56],
      ["3", "D10", 224, 1900, 0.56],
      ["4", "D10", 98, 450, 0.56],
      ["5", "D10", 180, 600, 0.56],
    ].map(([mark, size, count, length, per]) => [
      mark,
      size,
      count,
      length,
      Math.round((Number(count) * Number(length) * Number(per)) / 100) / 10,
    ]);
    expect(loud([HEADS, ...bars] as Cell[][])).toEqual([]);
  });
});

describe("headings under a column of serial numbers", () => {
  const heads = ["Item", "No. pcs", "Size", "Length", "Mark", "Wt lbs"];
  /** lb by hand with 1.502 and 2.670 lb/ft (ASTM A615): 144 x 6.5 x 1.502 = 1406 */
  const rows: Cell[][] = [
    ["FOOTING F1 - 8 EA"],
    [1, 144, "#6", `6'-6"`, null, 1406],
    [2, 96, "#6", `8'-0"`, null, 1154],
    ["GRADE BEAM GB1 - 3 EA"],
    [3, 12, "#8", `20'-0"`, null, 641],
    [4, 12, "#8", `22'-0"`, null, 705],
    [],
    [null, null, null, "TOTAL LBS", null, 3906],
  ];
  it("should name the members, and leave counts that the last sum takes as they stand", () => {
    const bars = check([heads, ...rows]).sheets[0]?.reading.bars ?? [];
    expect(bars.map(({ member, total }) => [member, total])).toEqual([
      ["FOOTING F1", 144],
      ["FOOTING F1", 96],
      ["GRADE BEAM GB1", 12],
      ["GRADE BEAM GB1", 12],
    ]);
  });
});

describe("a heading that speaks of what a bar is cut into", () => {
  it("should be no mark", () => {
    const heads = ["Description", "Bar size", "Total pcs", "Cut length (m)", "Cuts/bar", "Bars"];
    const bars = [
      ["F1 bottom", "H12", 168, 1.35, 4, 42],
      ["F2 bottom", "H12", 80, 1.65, 3, 27],
      ["WF long.", "H10", 24, 6, 1, 24],
    ];
    const [table] = check([heads, ...bars]).sheets[0]?.reading.tables ?? [];
    expect([...(table?.columns.keys() ?? [])].sort()).toEqual(["length", "member", "size", "total"]);
  });
});

describe("the number of members in the member's own cell", () => {
  const headed = (rows: Cell[][]): Cell[][] => [
    ["Member", "Bar mark", "Size", "Length mm", "No. in each", "Total no."],
    ...rows,
  ];
  it("should be held against the number of all bars", () => {
    const rows = headed([
      ["Móng M1 (SL: 10)", "1", "H12", 1600, 10, 100],
      [null, "2", "H12", 1800, 9, 90],
      ["Cột C1 (SL: 8)", "3", "H16", 4300, 6, 48],
      [null, "4", "H16", 1000, 28, 208],
    ]);
    const [sheet] = check(rows).sheets;
    expect(sheet?.reading.bars.map(({ members }) => members)).toEqual([10, 10, 8, 8]);
    // 28 x 8 = 224
    expect(loud(rows).filter((one) => one.startsWith("SUM"))).toEqual(["SUM101 F5"]);
  });
});

describe("a remark that stands apart from the table", () => {
  it("should leave the heading beside it a heading", () => {
    const rows: Cell[][] = [HEADS, ["Footing F1 (8 nos)", "", "", "", "", "", "hooks 8 cm each"], ...BARS];
    expect(check(rows).rows).toMatchObject({ bars: 5, unread: 0 });
    expect(check(rows).sheets[0]?.reading.bars[0]?.member).toBe("Footing F1");
  });
});

describe("sums of bands of sizes", () => {
  it("should be read without what the band above takes in", () => {
    const sums = (thin: number): Cell[][] => [
      ["", ""],
      ["Steel Ø<=10", 61.7],
      ["Steel Ø<=18", thin],
      ["Steel Ø>18", 246.6],
    ];
    // 10 x 10 m x 0.617, 241.76 kg of 12 and 16 mm, 10 x 10 m x 2.466 (BS 4449 table of masses)
    const list: Cell[][] = [HEADS, ...BARS, ["06", "H10", 10, 10000, 61.7], ["07", "H20", 10, 10000, 246.6]];
    expect(loud([...list, ...sums(241.76)])).toEqual([]);
    expect(loud([...list, ...sums(214.76)])).toEqual(["SUM111 B11"]);
  });
});

describe("rows of words", () => {
  it("should be a note where a mark is said to be not used, though it stands under the shape", () => {
    const heads = ["Mark", "Size", "Total no.", "Shape", "Length mm"];
    const rows: Cell[][] = [
      heads,
      ["01", "H12", 10, "00", 2000],
      ["02", null, null, "NOT USED", null],
      ["03", "H16", 20, "00", 2000],
      ["04", "H16", 10, "00", 4000],
    ];
    expect(check(rows).rows).toMatchObject({ bars: 3, unread: 0 });
  });

  it("should be a title where its first word is that of a title above, with words alone beside it", () => {
    const rows = [
      ["STAHLLISTE (Stabstahl)", null, null, "Blatt 1 von 2"],
      HEADS,
      ...BARS.slice(0, 3),
      ["STAHLLISTE Wand W4", null, null, "Blatt 2 von 2"],
      HEADS,
      ...BARS.slice(3),
    ];
    expect(check(rows).rows).toMatchObject({ bars: 5, unread: 0 });
  });
});
