import { describe, expect, it } from "vitest";
import rule from "../../../../core/audit/rules/count-off-run";
import { runAudit } from "../../../../core/audit/run-audit";
import { readSchedule } from "../../../../core/schedule/read-schedule";
import { type Cell, sheetFromRows } from "../../../../core/schedule/sheet";
import { resolveStandard } from "../../../../core/standards/index";
import type { Standard } from "../../../../core/standards/port";
import { reckonTonnage } from "../../../../core/totals/reckon-tonnage";
import { ruleCases } from "../rule-cases";

ruleCases(rule, {
  silent: [{ rows: [{ size: "H10", shape: "00", A: 2000, length: 2000, spacing: 150 }] }],
  speaks: [],
});

const HEADER = [
  "Bar mark",
  "Type and size",
  "Total no.",
  "Length of each bar mm",
  "Shape code",
  "A",
  "Laid along",
  "Spacing mm",
];
const RUNS = [3000, 4100, 2500, 6000, 5200, 3350, 4400];

/** count by the office's own way of rounding, over the column "Laid along" */
function said(counted: (gaps: number, index: number) => number): string[] {
  const rows: Cell[][] = [[...HEADER]];
  RUNS.forEach((run, index) => {
    const spacing = [150, 200][index % 2] ?? 150;
    rows.push([String(index + 1), "H10", counted(run / spacing, index), 2000, "00", 2000, run, spacing]);
  });
  const standard = resolveStandard("BS8666:2005") as Standard;
  const report = runAudit({ sheets: [sheetFromRows("Schedule", rows)], standard, rules: [rule] });
  // how many bars stand at a spacing the designer decides
  expect(report.findings.filter(({ fix }) => fix !== null)).toEqual([]);
  return report.findings.map(({ cell, message }) => `${cell}: ${message}`);
}

describe("counts over a run", () => {
  it("should be silent on whichever way an office rounds", () => {
    expect(said((gaps) => Math.floor(gaps) + 1)).toEqual([]);
    expect(said((gaps) => Math.ceil(gaps))).toEqual([]);
  });

  it("should name the row that leaves the way of the others", () => {
    // 2500 over 150 is 16.7 gaps: 17 bars by this office
    expect(said((gaps, index) => (index === 2 ? 19 : Math.floor(gaps) + 1))).toEqual([
      "C4: 19 bars at 150 over 2500 should be 17, as 6 of 7 rows count: ask the designer",
    ]);
  });

  it("should say nothing where the rows keep no way", () => {
    expect(said((_, index) => 5 + 3 * index)).toEqual([]);
  });
});

describe("counts over a run that two other cells give", () => {
  // run m, spacing mm, count: 2.8/0.2 + 1 = 15, 2.4/0.2 + 1 = 13, 3.3/0.15 + 1 = 23, 6/0.15 + 1 = 41
  const list = (count: number): Cell[][] => [
    ["Mark", "Size", "Placing", "Laid along (m)", "Number of bars", "Length (m)", "Remarks"],
    ...[
      ["1", "H16", "@200", 2.8, 15, 3.5],
      ["2", "H16", "@200", "2,40 m", 13, 3.1],
      ["3", "H10", "@150", 3.3, 23, 1.9],
      ["4", "H10", "@150", 6, 41, 1.9],
      ["5", "H12", null, null, 4, 7.7],
      ["6", "H12", "@200", 7.4, count, 3.75],
      ["7", "H12", "@200", 6.2, 32, 1.2],
    ],
  ];
  const standard = resolveStandard("BS8666:2005") as Standard;

  it("should read a sign before the spacing, whichever column it stands in", () => {
    const told = (rows: Cell[][]) =>
      runAudit({ sheets: [sheetFromRows("S", rows)], standard, rules: [rule] }).findings.map(
        ({ cell }) => cell,
      );
    // 7.4/0.2 + 1 = 38
    expect(told(list(38))).toEqual([]);
    expect(told(list(83))).toEqual(["E7"]);
    expect(
      told(list(83).map((row, at) => (at === 0 ? [...row.slice(0, 2), "Spacing", ...row.slice(3)] : row))),
    ).toEqual(["E7"]);
  });

  it("should doubt the mass of a row whose count is far from what they give", () => {
    const sheet = sheetFromRows("S", list(83));
    const { doubted } = reckonTonnage([{ sheet, reading: readSchedule(sheet, standard) }], standard);
    // 38 bars of 3.75 m at 0.888 kg/m (BS 4449:2005, table 7)
    expect(doubted.map(({ row }) => [row.otherwise?.by, row.otherwise?.mass.toFixed(1)])).toEqual([
      ["run and spacing", "126.5"],
    ]);
  });
});

describe("counts over a run that words give", () => {
  const heads = ["Bar mark", "Type and size", "Total no.", "Length of each bar mm", "Remarks"];
  const told = (rows: readonly (readonly Cell[])[]): string[] => {
    const standard = resolveStandard("BS8666:2005") as Standard;
    const report = runAudit({ sheets: [sheetFromRows("List", [heads, ...rows])], standard, rules: [rule] });
    return report.findings.map(({ cell, message }) => `${cell}: ${message}`);
  };

  it.each([
    // 3600/200 + 1 = 19, 2600/200 + 1 = 14, 4250/250 + 1 = 18
    ["metres over millimetres", "at 200 c/c over 3.6 m", "at 200 c/c over 2.6 m", "at 250 c/c over 4.25 m"],
    ["centimetres of another language", "c/20 em 360", "c/20 em 260", "c/25 em 425"],
    ["a space at the thousand", "@ 200 over 3 600, B1", "@ 200 over 2 600, T2", "@ 250 over 4 250"],
    ["the run before the spacing", "360 c/20", "L=260 c/20", "425 c/25"],
    [
      "a size before the spacing",
      "\u00d810/20 alt, 3.60 m",
      "\u00d810/20, 2.60 m",
      "\u00d810/25 uzun, 4.25 m",
    ],
    ["the run before the size", "3.60 m, \u00d810/20", "2.60 m, \u00d810/20", "4.25 m, \u00d810/25"],
    ["the sum itself", "3.60/0.20+1", "2.60/0.20+1", "4.25/0.25+1"],
    ["a clear span", "Etriye Ø8/20, Lnet=360 cm", "Ø8/20, Lnet=260 cm", "Ø8/25, dağıtım boyu 425 cm"],
    [
      "the spacing before its word",
      "200 crs over 3600",
      "3600 x 700, 200 crs over 2600",
      "250 c/c over 4250",
    ],
    ["a run after in", "@200 in 3600", "@200 in 2600", "@250 in 4250"],
    ["a letter before the spacing", "s200 L=3600", "s200 L=2600", "s250 L=4250"],
    ["decimal commas", "/20, πλάτος 3,60", "/20, μήκος 2,60", "/25, ύψος 4,25"],
  ])("should name the row that leaves the way of the others: %s", (_, one, two, three) => {
    const row = (mark: string, count: number, remark: string) => [mark, "H10", count, 2000, remark];
    expect(told([row("01", 19, one), row("02", 14, two), row("03", 18, three)])).toEqual([]);
    const [found, another] = told([row("01", 19, one), row("02", 14, two), row("03", 10, three)]);
    expect(found).toMatch(/^C4: 10 bars .* should be 18, as 2 of 3 rows count: ask the designer$/);
    expect(another).toBeUndefined();
  });

  it("should count the bars of each of the members that the words multiply by", () => {
    // 1200/200 + 1 = 7 of 5 pads, 1600/200 + 1 = 9 of 5, 9900/300 + 1 = 34
    const pads = [
      ["1", "H16", 35, 2170, "Pad F1, 5 x 7, 200 crs over 1200"],
      ["2", "H16", 45, 1770, "Pad F1, 5 x 9, 200 crs over 1600"],
    ];
    expect(told([...pads, ["3", "H12", 34, 950, "300 crs over 9900"]])).toEqual([]);
    expect(told([...pads, ["3", "H12", 43, 950, "300 crs over 9900"]])).toEqual([
      "C4: 43 bars at 300 over 9900 should be 34, as 2 of 3 rows count: ask the designer",
    ]);
  });

  it("should read feet and inches, and the bars of several members", () => {
    // 20 ft at 6 in are 41, of three beams 123; 24 ft at 12 in are 25; 40 ft at 12 in are 41
    const rows = [
      ["1", "#4", 123, 2565, `@ 6" OVER 20'-0", 3 BMS`],
      ["2", "#4", 25, 12000, `@ 12" O.C. OVER 24'-0"`],
    ];
    expect(told([...rows, ["3", "#4", 41, 7467, `@ 12" O.C. OVER 40'-0"`]])).toEqual([]);
    expect(told([...rows, ["3", "#4", 14, 7467, `@ 12" O.C. OVER 40'-0"`]])).toHaveLength(1);
    const inFeet = [
      ["1", "#5", 24, 12000, `@ 12" O.C. IN 23'-0"`],
      ["2", "#5", 47, 12000, `@ 6" O.C. IN 23'-0"`],
    ];
    expect(told([...inFeet, ["3", "#5", 41, 7163, `@ 12" O.C. IN 40'-0"`]])).toEqual([]);
    expect(told([...inFeet, ["3", "#5", 14, 7163, `@ 12" O.C. IN 40'-0"`]])).toHaveLength(1);
  });

  it("should tell two figures exchanged where one other row alone shows the way", () => {
    // 4500/150 + 1 = 31, 3300/150 + 1 = 23
    const one = ["1", "H8", 23, 1460, "Ø8/15, Lnet=330 cm"];
    expect(told([one, ["2", "H8", 31, 1460, "Ø8/15, Lnet=450 cm"]])).toEqual([]);
    expect(told([one, ["2", "H8", 13, 1460, "Ø8/15, Lnet=450 cm"]])).toHaveLength(1);
    // any other number may be meant, as by a row of two stretches
    expect(told([one, ["2", "H8", 16, 1460, "Ø8/15, Lnet=450 cm"]])).toEqual([]);
  });

  it("should take no run from a text of several spacings", () => {
    const rows = [
      ["1", "H10", 32, 1560, "2@50, 6@100, rest @200 outer ties"],
      ["2", "H10", 30, 1320, "1@50, 5@100, rest @200"],
      ["3", "H10", 20, 1320, "1@50, 5@100, rest @200"],
    ];
    expect(told(rows)).toEqual([]);
  });

  it("should say nothing of a spacing without its run", () => {
    expect(
      told([
        ["1", "H10", 7, 2000, "@150 T1"],
        ["2", "H10", 9, 2000, "@ 200, lap 600"],
      ]),
    ).toEqual([]);
  });
});

describe("counts over runs and spacings in columns of two units", () => {
  it("should be held against each other in feet and inches", () => {
    const standard = resolveStandard("BS8666:2005") as Standard;
    const heads = ["Ref", "Bar", "Spac. in.", "Run ft", "Pcs", "Length mm"];
    // 54 ft at 18 in are 36 gaps and 37 bars
    const pairs: [number, number, number][] = [
      [18, 54, 37],
      [16, 320, 241],
      [12, 48, 49],
      [12, 12, 13],
      [6, 20, 41],
    ];
    const row = ([spacing, run, count]: readonly [number, number, number], at: number): Cell[] => [
      ...[`W${at}`, "#4", spacing, run, count, 2000 + 100 * at],
    ];
    const told = (rows: readonly (readonly [number, number, number])[]): (string | null)[] =>
      runAudit({
        sheets: [sheetFromRows("List", [heads, ...rows.map(row)])],
        standard,
        rules: [rule],
      }).findings.map(({ cell }) => cell);
    expect(told(pairs)).toEqual([]);
    expect(told([...pairs, [12, 48, 94]])).toEqual(["E7"]);
  });
});

// runs as drawings write them: 5'-6" at 6" are 11 gaps and 12 bars
it("should read runs in feet and inches under a head that nobody knows", () => {
  const standard = resolveStandard("BS8666:2005") as Standard;
  const heads = ["Mark", "Size", "Each", "Length mm", "Spc", "Run"];
  const bars: [string, string, number][] = [
    ['6"', "5'-6\"", 12],
    ['12"', "23'-0\"", 24],
    ['12"', "11'-0\"", 12],
    ['18"', "39'-0\"", 27],
    ['12"', "30'-0\"", 31],
  ];
  const told = (...rows: readonly (readonly [string, string, number])[]): (string | null)[] =>
    runAudit({
      sheets: [
        sheetFromRows("List", [
          heads,
          ...rows.map(([spacing, run, count], at) => [`W${at}`, "#4", count, 2000, spacing, run]),
        ]),
      ],
      standard,
      rules: [rule],
    }).findings.map(({ cell }) => cell);
  expect(told(...bars)).toEqual([]);
  expect(told(...bars, ['12"', "39'-0\"", 30])).toEqual(["C7"]);
});

describe("counts over a spacing and a run that stand in two cells", () => {
  const standard = resolveStandard("BS8666:2005") as Standard;
  // mm, m and the bars by gaps + 1
  const PAIRS = [
    [200, 2.8, 15],
    [150, 3.3, 23],
    [250, 3.2, 14],
    [200, 7.5, 39],
    [300, 2.8, 11],
    [150, 6, 41],
  ] as const;
  const told = (heads: readonly Cell[], rowOf: (pair: (typeof PAIRS)[number], count: number) => Cell[]) => {
    const rows = PAIRS.map((pair, at) => [
      `W${at + 1}`,
      "H10",
      2000 + 100 * at,
      ...rowOf(pair, at === 3 ? 93 : pair[2]),
    ]);
    return runAudit({
      sheets: [sheetFromRows("List", [["Bar mark", "Size", "Length mm", ...heads], ...rows])],
      ...{ standard, rules: [rule] },
    }).findings.map(({ message }) => message);
  };
  const WRONG = /^93 bars .* should be 39, as 5 of 6 rows count/;

  it.each<[string, readonly Cell[], (pair: (typeof PAIRS)[number], count: number) => Cell[]]>([
    ["a sign before it", ["Pcs", "Distr.", "Laid over"], ([at, run], count) => [count, `@${at}`, run]],
    ["a name with it", ["Pcs", "What", "Laid over"], ([at, run], count) => [count, `E Ø10@${at / 10}`, run]],
    [
      "a run named behind",
      ["Pcs", "Spacing mm c/c", "Remarks"],
      ([at, run], count) => [count, at, `${run} m run`],
    ],
  ])("should be held against each other: %s", (_, heads, rowOf) => {
    expect(told(heads, rowOf)).toEqual([expect.stringMatching(WRONG)]);
    expect(told(heads, (pair) => rowOf(pair, pair[2]))).toEqual([]);
  });
});

describe("counts of lists in which few rows say a run", () => {
  const standard = resolveStandard("BS8666:2005") as Standard;
  const heads = ["Bar mark", "Type and size", "Total no.", "Length of each bar mm", "Remarks"];
  const told = (...rows: readonly (readonly [number, string])[]): string[] => {
    const bars = rows.map(([count, remark], at) => [String(at + 1), "H10", count, 2000 + 100 * at, remark]);
    const others = [6, 9, 4].map((count, at) => [String(at + 11), "H16", count, 4000, ""]);
    const sheet = sheetFromRows("List", [heads, ...bars, ...others]);
    return runAudit({ sheets: [sheet], standard, rules: [rule] }).findings.map(({ message }) => message);
  };

  // by hand: 5850/150 + 1 = 40, 5800/200 + 1 = 30, 4.80/0.20 + 1 = 25, 3.60/0.15 + 1 = 25, 4500/150 + 1 = 31
  it.each([
    ["China, a figure of tens", "布筋范围5850 @150", 40, 30],
    ["Britain, the spacing behind the size", "T10-200 B2, run 5800", 30, 20],
    ["Spain, figures exchanged", "c/20 en 4,80 m", 25, 52],
    ["France, half as many", "HA10 e=15 sur 4,35 m", 30, 15],
    ["Italy, figures exchanged", "Ø10 a 15 cm su 3,60 m", 25, 52],
    ["Norway, a figure of tens", "Ø10 k/k 150 på 4500", 31, 21],
    ["Poland, figures exchanged", "co 15 cm na 3,6 m", 25, 52],
    ["Japan, a figure of tens", "D10@150 区間 4.5m", 31, 41],
  ])("should tell a slip of the one row that says a run: %s", (_, remark, right, wrong) => {
    expect(told([right, remark])).toEqual([]);
    const [found, another] = told([wrong, remark]);
    expect(found).toMatch(new RegExp(`^${wrong} bars at .*: ${right} would follow; ask the designer$`));
    expect(another).toBeUndefined();
  });

  it("should take end bars, faces, layers and other numbers for what they are", () => {
    for (const count of [39, 41, 80, 120, 37, 46]) expect(told([count, "@150 over 5850"])).toEqual([]);
    // legs of a sketch are no run
    expect(told([30, "400 / 3600"])).toEqual([]);
  });

  it("should not take two legs for a run where another text of the row says it", () => {
    const row = (mark: string, count: number, legs: string, where: string): Cell[] => [
      ...[mark, "H12", count, 3080, legs, where],
    ];
    const list = (count: number) => [
      ["Mark", "Size", "Number of bars", "Length mm", "Legs out to out", "Where"],
      ...[row("1", 61, "9000", "@ 150 over 9000"), row("2", 61, "9000", "other way @ 150 over 9000")],
      row("3", count, "400 / 2700", "@ 150 over 4200 verticals"),
    ];
    const cells = (count: number) =>
      runAudit({ sheets: [sheetFromRows("S", list(count))], standard, rules: [rule] }).findings.map(
        ({ cell }) => cell,
      );
    // 4200/150 + 1
    expect(cells(29)).toEqual([]);
    expect(cells(19)).toEqual(["C4"]);
  });
});

describe("counts over runs that no heading names", () => {
  const standard = resolveStandard("BS8666:2005") as Standard;
  const told = (rows: Cell[][]) =>
    runAudit({ sheets: [sheetFromRows("S", rows)], standard, rules: [rule] }).findings.map(
      ({ cell }) => cell,
    );

  it("should hold two columns of numbers against each other", () => {
    // cm: 120/15 + 1 = 9, 60/20 + 1 = 4, 540/20 + 1 = 28, 270/15 + 1 = 19, 400/20 + 1 = 21, 600/20 + 1 = 31
    const list = (count: number): Cell[][] => [
      ["Mark", "Size", "Q1", "Q2", "Number of bars", "Length mm"],
      ...[
        ["1", "H12", 120, 15, 9, 1650],
        ["2", "H16", null, null, 4, 1450],
        ["3", "H8", 60, 20, 4, 960],
        ["4", "H8", 540, 20, 28, 1160],
        ["5", "H8", 270, 15, 19, 960],
        ["6", "H8", 400, 20, 21, 1160],
        ["7", "H8", 600, 20, count, 1500],
      ],
    ];
    expect(told(list(31))).toEqual([]);
    expect(told(list(13))).toEqual(["E8"]);
  });

  it("should spread the bars of one way over the straight of the other", () => {
    // gaps rounded up, and one: 2300/150 17, 1700/150 13, 2000/125 17, 2900/150 21, 6000/200 31, 8000/200 41
    const list = (count: number): Cell[][] => [
      ["Member", "Mark", "Size", "Spacing mm", "Number of bars", "Shape", "A", "B", "C", "Length mm"],
      ...[
        ["F1", "1", "H16", 150, 17, "21", 320, 2300, 320, 2850],
        ["F1", "2", "H16", 150, 17, "21", 320, 2300, 320, 2850],
        ["F2", "3", "H12", 150, 13, "21", 250, 1700, 250, 2125],
        ["F2", "4", "H12", 150, 13, "21", 250, 1700, 250, 2125],
        ["F3", "5", "H16", 125, 17, "21", 350, 2900, 350, 3500],
        ["F3", "6", "H16", 150, count, "21", 350, 2000, 350, 2600],
        ["S1", "9", "H10", 200, 31, "00", 8000, null, null, 8000],
        ["S1", "10", "H10", 200, 41, "00", 6000, null, null, 6000],
        // links of one place go across nothing
        ["C1", "7", "H8", 150, 12, "11", 370, 400, null, 750],
        ["C1", "8", "H8", 150, 12, "11", 210, 200, null, 380],
      ],
    ];
    expect(told(list(21))).toEqual([]);
    expect(told(list(12))).toEqual(["E7"]);
  });
});
