import { describe, expect, it } from "vitest";
import { readSchedule } from "../../../core/schedule/read-schedule";
import { type Cell, sheetFromRows } from "../../../core/schedule/sheet";
import { resolveStandard, type Standard } from "../../../core/standards";
import { seededRandom } from "../../_support/random-schedule";

const standard = resolveStandard("BS8666:2005") as Standard;
/** kg/m, UK three-decimal table (tests/core/standards holds them against the printed table) */
const PER_METRE = { 8: 0.395, 10: 0.616, 12: 0.888, 16: 1.579, 20: 2.466, 25: 3.854 } as const;
const SIZES = Object.keys(PER_METRE).map(Number) as (keyof typeof PER_METRE)[];
const HEADS = [
  "Member",
  "Mark",
  "Type & size",
  "No. of mbrs",
  "No. in each",
  "Total",
  "Length",
  "Shape",
  "A",
];

type Sums = Map<keyof typeof PER_METRE, { count: number; metres: number; kg: number }>;

/** A sound list of straight bars of an invented job, and what each size makes. */
function listOf(seed: number, count: number): { rows: Cell[][]; sums: Sums } {
  const random = seededRandom(seed);
  const sums: Sums = new Map();
  const rows = Array.from({ length: count }, (_, index) => {
    const size = SIZES[Math.floor(random.next() * SIZES.length)] as keyof typeof PER_METRE;
    const [members, each] = [1 + Math.floor(random.next() * 4), 2 + Math.floor(random.next() * 40)];
    const length = 25 * (20 + Math.floor(random.next() * 300));
    const total = members * each;
    const before = sums.get(size) ?? { count: 0, metres: 0, kg: 0 };
    const metres = (total * length) / 1000;
    sums.set(size, {
      count: before.count + total,
      metres: before.metres + metres,
      kg: before.kg + metres * PER_METRE[size],
    });
    return [`Beam ${index}`, `${index + 1}`, `T${size}`, members, each, total, length, "00", length];
  });
  return { rows: [HEADS, ...rows], sums };
}

const round = (value: number, digits: number): number => Number(value.toFixed(digits));

/** The sums below the list: the size where sizes stand, the figure under one of the columns. */
function below(sums: Sums, column: number, figure: (of: { metres: number; kg: number }) => number): Cell[][] {
  return [...sums].map(([size, of]) =>
    HEADS.map((_, at) => (at === 2 ? `T${size}` : at === column ? figure(of) : null)),
  );
}

describe("sums by size under the columns of a list", () => {
  it.each(Array.from({ length: 12 }, (_, seed) => seed))("should be no bars, seed %d", (seed) => {
    const { rows, sums } = listOf(seed + 1, 14);
    const [column, figure] = [
      [6, ({ kg }: { kg: number }) => round(kg / 1000, 3)],
      [6, ({ metres }: { metres: number }) => round(metres, 2)],
      [8, ({ kg }: { kg: number }) => round(kg, 1)],
    ][seed % 3] as [number, (of: { metres: number; kg: number }) => number];
    const reading = readSchedule(sheetFromRows("S", [...rows, [], ...below(sums, column, figure)]), standard);
    expect(reading.bars).toHaveLength(14);
    expect(reading.totals.map(({ kind }) => kind)).toEqual([...sums].map(() => "summary"));
  });

  it("should take in the line whose title makes it a sum", () => {
    const { rows, sums } = listOf(3, 14);
    const lines = below(sums, 6, ({ kg }) => round(kg / 1000, 3));
    (lines[0] as Cell[])[0] = "Mass (t)";
    const reading = readSchedule(sheetFromRows("S", [...rows, [], ...lines]), standard);
    expect(reading.bars).toHaveLength(14);
    expect(reading.summaries?.map((one) => one.rows.length)).toEqual([sums.size]);
  });

  it("should be bars still where count and length stand in them, and rows unread where the figures are no sums", () => {
    const { rows, sums } = listOf(5, 14);
    const other = below(sums, 6, ({ kg }) => round(kg / 1000, 3) * 7);
    const length = (last: Cell[][]) =>
      readSchedule(sheetFromRows("S", [...rows, ...last]), standard).bars.length;
    expect(length(other)).toBe(14);
    const { rowClasses } = readSchedule(sheetFromRows("S", [...rows, ...other]), standard);
    expect(rowClasses.slice(-sums.size)).toEqual(other.slice(-sums.size).map(() => "unread"));
    const whole = [...sums].map(([size, { count }]) => [null, null, `T${size}`, null, null, count, 3000]);
    expect(length(whole)).toBe(14 + sums.size);
  });
});

describe("a head of sums whose sizes the standard does not hold", () => {
  it("should be known behind a word of size by the diameters that are rolled", () => {
    const { rows } = listOf(7, 6);
    const head = ["Dia", 8, 10, 12, 14, 16, 18];
    const reading = readSchedule(
      sheetFromRows("S", [...rows, [], head, ["Tons", 0.1, 0.2, 0.3, 0.4, 0.5, 0.6]]),
      standard,
    );
    expect(reading.bars).toHaveLength(6);
    expect(reading.summaries?.[0]?.sizes.map(({ size }) => size)).toEqual([
      "8",
      "10",
      "12",
      "14",
      "16",
      "18",
    ]);
  });
});

it("takes a size beside a mass with a comma for a line of the sums, and for no head of them", () => {
  const heads = ["Rep.", "Ø", "Nombre", "Long. (m)", "Poids (kg)"];
  const sizes = ["HA8", "HA10", "HA12", "HA16", "HA20"];
  const bars = sizes.map((size, at): Cell[] => [at + 1, size, 10, "2,00", `${at + 8},5`]);
  const lines = sizes.map((size, at): Cell[] => [null, null, null, size, `${at + 8},5`]);
  const title: Cell[] = [null, null, null, "Récapitulatif"];
  const { summaries } = readSchedule(sheetFromRows("S", [heads, ...bars, [], title, ...lines]), standard);
  const read = summaries?.flatMap(({ rows }) => rows.map(({ label, cells }) => [label, cells[0]?.value]));
  expect(read).toEqual(sizes.map((size, at) => [size, at + 8.5]));
});

describe("sums by size under heads of their own", () => {
  const heads: Cell[] = ["Bar mark", "Type and size", "Total no.", "Length mm", "Shape code", "A", "B"];
  const bars: Cell[][] = [
    ["01", "H16", 58, 3450, "00", 3450],
    ["02", "H12", 30, 1100, "11", 400, 720],
    ["03", "H16", 24, 4200, "00", 4200],
    ["04", "H10", 40, 575, "00", 575],
    ["05", "H12", 44, 2600, "00", 2600],
    ["06", "H20", 12, 5000, "00", 5000],
  ];
  // by hand: 40 x 0.575 = 23; 30 x 1.1 + 44 x 2.6 = 147.4; 58 x 3.45 + 24 x 4.2 = 300.9; 12 x 5 = 60; kg/m of BS 4449
  const sums: Cell[][] = [
    ["H10", 40, 23, 14.2],
    ["H12", 74, 147.4, 130.9],
    ["H16", 82, 300.9, 475.4],
    ["H20", 12, 60, 148],
  ];
  const below = (lines: Cell[][]) => {
    const head: Cell[] = ["Size", "No. bars", "Length m", "Mass kg"];
    const rows = [heads, ...bars, [], ...[head, ...lines].map((line): Cell[] => [null, null, ...line])];
    return readSchedule(sheetFromRows("S", rows), standard);
  };

  it("should be no bars, though each has a size, a count and a length", () => {
    expect(below(sums).bars).toHaveLength(6);
    expect(below(sums).summaries?.map(({ rows }) => rows.length)).toEqual([4]);
  });

  it("should be none either where one line is wrong, which is told", () => {
    const wrong = sums.map((line) => (line[0] === "H16" ? ["H16", 82, 309, 475.4] : line));
    expect(below(wrong).bars).toHaveLength(6);
  });

  it("should be bars where two lines are other than the bars above make", () => {
    const others = sums.map(([size, count, metres, kg], at): Cell[] =>
      at < 2
        ? [size ?? null, Number(count) + 1, Number(metres) / 20, kg ?? null]
        : [size ?? null, count ?? null, 6, kg ?? null],
    );
    expect(below(others).bars).toHaveLength(10);
  });
});

it("holds a block of sums together that words beside it part", () => {
  const heads: Cell[] = ["Mark", "Size", "No. off", "Length", "Mass kg"];
  const sizes = ["N12", "N16", "N20", "N24"];
  const bars = sizes.map((size, at): Cell[] => [`A${at + 1}`, size, 10, 2000 + 500 * at, 100 * (at + 1)]);
  const lines = sizes.map((size, at): Cell[] => [size, (at + 1) / 10]);
  for (const at of [1, 2])
    lines[at]?.push(null, null, "All starters are to be capped before anybody works there.");
  const { summaries } = readSchedule(
    sheetFromRows("S", [heads, ...bars, [], ["SUMMARY (t)"], ...lines, ["TOTAL t", 1]]),
    standard,
  );
  expect(summaries?.map(({ rows }) => rows.map(({ label }) => label))).toEqual([sizes]);
});
