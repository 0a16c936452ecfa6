import { describe, expect, it } from "vitest";
import type { ScheduleReading } from "../../../../core/schedule/bar-row";
import { explainReading } from "../../../../core/schedule/explain-reading";
import type { ReadOptions } from "../../../../core/schedule/read-options";
import { readSchedule } from "../../../../core/schedule/read-schedule";
import { type Cell, sheetFromRows } from "../../../../core/schedule/sheet";
import { standardNamed } from "../../shapes/resolved";

const standard = standardNamed("BS8666:2005");

/**
 * Size, number of bars, length in m, with the mass by hand: number x length x kg/m of BS 4449:2005 table 7
 * (10: 0.617, 12: 0.888, 16: 1.579, 20: 2.466).
 */
const BARS: readonly (readonly [number, number, number, number])[] = [
  [12, 10, 4.5, 39.96],
  [16, 20, 3.2, 101.056],
  [12, 8, 5.1, 36.2304],
  [20, 12, 6.15, 181.9908],
  [16, 24, 2.85, 108.0036],
  [10, 40, 1.9, 46.892],
  [12, 16, 4.05, 57.5424],
];

function table(
  head: readonly string[],
  lengthOf: (metres: number) => Cell,
  massOf: ((kilograms: number) => Cell) | null,
  options?: ReadOptions,
): ScheduleReading {
  const rows = BARS.map(([size, count, metres, mass], index) => [
    String(index + 1),
    size,
    count,
    lengthOf(metres),
    "00",
    massOf === null ? null : massOf(mass),
  ]);
  return readSchedule(sheetFromRows("Sheet1", [head, ...rows]), standard, options);
}

const HEAD = ["Bar mark", "Size", "Total no.", "Length", "Shape code", "Mass"];
const inCentimetres = (metres: number): number => Math.round(metres * 100);
const inMillimetres = (metres: number): number => Math.round(metres * 1000);
const codes = ({ guesses }: ScheduleReading) => guesses?.map(({ guess }) => guess);

describe("columns settled by words and arithmetic", () => {
  it("should say nothing where the two agree", () => {
    const reading = table(HEAD, inMillimetres, (mass) => mass);
    expect(codes(reading)).toEqual([]);
    expect(reading.held).toBeNull();
    expect(reading.proofs[0]?.isConfirmed).toBe(true);
    const length = explainReading({ left: 0, cell: () => null }, reading).columns.find(
      ({ kind }) => kind === "length",
    );
    expect(length).toMatchObject({ column: "D", unit: "mm", by: "words", kept: 7, tested: 7 });
  });

  it("should fill the unit that the header leaves open, and say so once", () => {
    const reading = table(HEAD, inCentimetres, (mass) => mass);
    expect(reading.bars[0]?.length).toBe(4500);
    expect(codes(reading)).toEqual(["unit-by-arithmetic"]);
    expect(reading.guesses?.[0]?.reason).toBe(
      'column "Length" was taken as cm and not as mm: 7 of 7 rows then agree with the mass column (0 of 7 otherwise)',
    );
    expect(reading.tables[0]?.columns.get("length")).toMatchObject({
      by: "arithmetic",
      unitBy: { code: "arithmetic" },
    });
  });

  it("should fill the unit of masses that only the standard in force gives", () => {
    const KG_PER_LB = 0.45359237;
    const inPounds = (mass: number): number => Math.round((mass / KG_PER_LB) * 10) / 10;
    const reading = table(HEAD, inMillimetres, inPounds);
    expect(codes(reading)).toEqual(["unit-by-arithmetic"]);
    expect(reading.tables[0]?.columns.get("mass")?.unit).toBe("lb");
    // a unit that the words say is contradicted
    const said = HEAD.map((word) => (word === "Mass" ? "Mass (kg)" : word));
    expect(codes(table(said, inMillimetres, inPounds))).toEqual(["words-contradicted"]);
  });

  it("should give total lengths the unit that the lengths have, whatever column their mass stands in", () => {
    const rows = BARS.map(([size, count, metres, mass], index) => [
      ...[String(index + 1), size, count, metres, Math.round(count * metres * 100) / 100, mass],
    ]);
    const heads = ["Bar mark", "Size", "Total no.", "Length", "Total length", "kg"];
    const reading = readSchedule(sheetFromRows("S", [heads, ...rows]), standard);
    expect(reading.held).toBeNull();
    expect(reading.bars[0]?.totalLength).toBe(45_000);
    expect(reading.guesses?.filter(({ asks }) => asks)).toEqual([]);
  });

  it("should contradict a written unit that the masses refute, and offer the other way", () => {
    const head = HEAD.map((word) =>
      word === "Length" ? "Length (mm)" : word === "Mass" ? "Mass (kg)" : word,
    );
    const reading = table(head, inCentimetres, (mass) => mass);
    expect(reading.bars[3]?.length).toBe(6150);
    expect(reading.guesses).toMatchObject([
      { guess: "words-contradicted", asks: true, column: 3, otherwise: { kind: "length", unit: "mm" } },
    ]);
  });

  it("should ask nothing where as many rows agree as the words have it", () => {
    // number in each, members and their product, all under one head, as lists in Japanese have it
    const rows = BARS.map(([size, count, metres, mass], index) => [
      ...[String(index + 1), size, count / 2, 2, count, inMillimetres(metres), mass],
    ]);
    const reading = readSchedule(
      sheetFromRows("S", [
        ["\u756a\u53f7", "\u5f84", "\u672c\u6570", null, null, "\u5207\u65ad\u9577", "\u8cea\u91cf"],
        [null, null, "1\u7b87\u6240", "\u7b87\u6240\u6570", "\u8a08", "(mm)", "(kg)"],
        ...rows,
      ]),
      standard,
    );
    expect(reading.bars.map(({ total }) => total)).toEqual(BARS.map(([, count]) => count));
    expect(reading.guesses?.filter(({ asks }) => asks)).toEqual([]);
  });

  it("should leave a column as its user corrected it", () => {
    const head = HEAD.map((word) =>
      word === "Length" ? "Length (mm)" : word === "Mass" ? "Mass (kg)" : word,
    );
    const columns = [{ column: "Length (mm)", kind: "length", unit: "mm" } as const];
    const reading = table(head, inCentimetres, (mass) => mass, { columns });
    expect(reading.bars[3]?.length).toBe(615);
    expect(reading.tables[0]?.columns.get("length")).toMatchObject({ by: "user", unitBy: { code: "user" } });
  });

  it("should find a column of lengths over which no known word stands", () => {
    const head = HEAD.map((word) => (word === "Length" ? "Xyzzy" : word));
    const reading = table(head, inMillimetres, (mass) => mass);
    expect(reading.bars[1]?.length).toBe(3200);
    expect(codes(reading)).toEqual(["column-by-arithmetic"]);
  });

  it("should hold totals where no reading agrees, until the user confirms", () => {
    const wild = [1.7, 0.3, 12.1, 5.9, 0.9, 3.3, 7.7];
    let at = 0;
    const massOf = (mass: number): number => mass * (wild[at++ % wild.length] as number);
    const reading = table(HEAD, inMillimetres, massOf);
    expect(reading.held?.why).toBe("nothing-agrees");
    expect(codes(reading)).toEqual(["totals-held"]);
    at = 0;
    const confirmed = table(HEAD, inMillimetres, massOf, { confirmed: ["totals-held"] });
    expect(confirmed.held).toBeNull();
  });

  it("should tell the columns of a list whose header is in no known language", () => {
    const reading = table(["aa", "bb", "cc", "dd", "ee", "ff"], inCentimetres, (mass) => mass);
    expect(reading.rowClasses).toEqual(["heading", ...BARS.map(() => "bar")]);
    expect(reading.bars.map(({ size, total, length }) => [size?.diameter, total, length])).toEqual(
      BARS.map(([size, count, metres]) => [size, count, inMillimetres(metres)]),
    );
    expect(reading.guesses?.map(({ guess, asks }) => [guess, asks])).toEqual([
      ["column-by-arithmetic", false],
    ]);
    expect(reading.noHeader).toBeNull();
  });

  it("should tell the columns of a list without any header", () => {
    const rows = BARS.map(([size, count, metres, mass]) => [size, count, inMillimetres(metres), mass]);
    const reading = readSchedule(sheetFromRows("Sheet1", rows), standard);
    expect(reading.bars.map(({ total, length }) => [total, length])).toEqual(
      BARS.map(([, count, metres]) => [count, inMillimetres(metres)]),
    );
  });

  it("should take no other list of numbers for bars", () => {
    // a till roll: number, price and amount keep a product, but no mass of steel
    const rows = BARS.map((_, at) => [`item ${at}`, 3 + at, 12.5 + at, (3 + at) * (12.5 + at), 20]);
    const reading = readSchedule(
      sheetFromRows("Sheet1", [["aa", "bb", "cc", "dd", "ee"], ...rows]),
      standard,
    );
    expect(reading.bars).toEqual([]);
    expect(reading.noHeader?.isTransposed).toBe(false);
  });

  it("should note once that nothing confirms", () => {
    const reading = table(HEAD, inMillimetres, null);
    expect(codes(reading)).toEqual(["nothing-confirms"]);
    expect(reading.held).toBeNull();
  });
});

// masses by hand, number x length x lb/ft of ASTM A615 table 1 (#4 0.668, #5 1.043, #6 1.502, #8 2.670)
describe("a list of inch sizes under a standard of millimetres", () => {
  const bars: Cell[][] = [
    ["6A1", 6, 34, "18-06", 945],
    ["5A2", 5, 42, "12-06", 548],
    ["8A3", 8, 16, "17-03", 737],
    ["4A4", 4, 38, "6-09", 171],
    ["6A5", 6, 12, "33-06", 604],
    ["6B1", 6, 30, "18-06", 834],
    ["8B2", 8, 20, "17-03", 921],
    ["5B3", 5, 44, "11-06", 528],
    // two slips: a #5 under 6, and a length of 12-06
    ["5B4", 6, 168, "34-06", 6045],
    ["6B5", 6, 84, "21-06", 1577],
  ];
  const heldIn = (rows: readonly Cell[][]) =>
    readSchedule(
      sheetFromRows("Bars", [["MARK", "SIZE", "NO. REQD", "LENGTH FT-IN", "WEIGHT LB"], ...rows]),
      standard,
    ).held?.why;

  it("should not take ten times the mass of 6 mm for ten members", () => {
    expect(heldIn(bars)).toBeUndefined();
  });

  it("should still ask for members that the amounts hold and nothing says", () => {
    const times = (at: number): number => (at < 5 ? 2 : 3);
    const rows = bars
      .slice(0, 8)
      .map(([mark, size, count, length, mass], at): Cell[] => [
        mark as Cell,
        size as Cell,
        count as Cell,
        length as Cell,
        Number(mass) * times(at),
      ]);
    expect(heldIn(rows)).toBe("members-unsaid");
  });
});

// by hand: total length = number x length; kg = total length x kg/ft (16: 0.482, 20: 0.753, 12: 0.271)
it("should not call it a contradiction where words give the length to two columns", () => {
  const reading = readSchedule(
    sheetFromRows("BBS", [
      [
        "Sl.",
        "Dia (mm)",
        "Cutting size (ft-in)",
        "Length (ft-in)",
        "Total rod",
        "Total length (rft)",
        "Weight (kg)",
      ],
      [1, 16, `0'-9" + 7'-0" + 0'-9"`, `8'-6"`, 60, 510, 245.82],
      [2, 16, `0'-9" + 6'-0" + 0'-9"`, `7'-6"`, 68, 510, 245.82],
      [3, 20, `1'-0" + 8'-6" + 1'-0"`, `10'-6"`, 108, 1134, 853.9],
      [4, 20, `1'-0" + 7'-6" + 1'-0"`, `9'-6"`, 120, 1140, 858.42],
      [5, 12, `0'-9" + 14'-6" + 0'-9"`, `16'-0"`, 15, 240, 65.04],
      [6, 20, `5'-0"`, `5'-0"`, 28, 140, 105.42],
    ]),
    standard,
  );
  expect(reading.guesses).toMatchObject([
    { guess: "column-by-arithmetic", asks: false, column: 3 },
    { guess: "column-by-arithmetic", asks: false, column: 2 },
  ]);
  expect(reading.guesses?.[0]?.reason).toContain('column "Length (ft-in)"');
  expect(reading.bars.map(({ length }) => Math.round((length ?? 0) / 3.048))).toEqual([
    850, 750, 1050, 950, 1600, 500,
  ]);
});
