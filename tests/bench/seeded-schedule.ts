import type { Cell } from "../../core/schedule/sheet";

export interface SeededSchedule {
  /** header row and bar rows, 19 columns wide */
  readonly matrix: Cell[][];
  /** rows with a planted mistake */
  readonly planted: number;
}

/** BS 8666:2005 Table 2 and the UK mass table, typed here so that the bench leans on nothing it measures. */
const SIZES = [
  { d: 8, r: 16, end: 115, link: 115, mass: 0.395 },
  { d: 10, r: 20, end: 120, link: 130, mass: 0.616 },
  { d: 12, r: 24, end: 125, link: 160, mass: 0.888 },
  { d: 16, r: 32, end: 130, link: 210, mass: 1.579 },
  { d: 20, r: 70, end: 190, link: 290, mass: 2.466 },
  { d: 25, r: 87, end: 240, link: 365, mass: 3.854 },
] as const;

type Size = (typeof SIZES)[number];

const HEADER = [
  "Member",
  "Bar mark",
  "Type and size",
  "No. of members",
  "No. of bars in each",
  "Total no.",
  "Length of each bar mm",
  "Shape code",
  "A mm",
  "B mm",
  "C mm",
  "D mm",
  "E/R mm",
  "Rev letter",
  "Grade",
  "Former mm",
  "Mass kg",
  "Pour",
  "Remarks",
];
const SHAPES = ["00", "11", "12", "13", "21", "26", "31", "41", "44", "51"] as const;
const MARKS_IN_A_MEMBER = 25;
const ONE_IN = 20;

/** A schedule of distinct rows, ten shapes mixed, with a mistake in one row of so many; the same for the same seed. */
export function seededSchedule(rowCount: number, seed = 8666, oneIn = ONE_IN): SeededSchedule {
  const random = mulberry32(seed);
  const matrix: Cell[][] = [HEADER];
  const seen = new Set<string>();
  let planted = 0;
  while (matrix.length <= rowCount) {
    const index = matrix.length - 1;
    const row = barRow(index, random);
    if (row === null) continue;
    const bar = row.slice(2).join("|");
    if (seen.has(bar)) continue;
    seen.add(bar);
    if (index % oneIn === oneIn - 1) {
      plant(row, planted);
      planted += 1;
    }
    matrix.push(row);
  }
  return { matrix, planted };
}

function barRow(index: number, random: () => number): Cell[] | null {
  const size = SIZES[Math.floor(random() * SIZES.length)] as Size;
  const shape = SHAPES[index % SHAPES.length] as (typeof SHAPES)[number];
  const { dims, length } = bent(shape, size, random);
  const rounded = Math.ceil(length / 25 - 1e-9) * 25;
  if (rounded > 12000 || (rounded / 1000) * size.mass > 24) return null;
  const members = 1 + Math.floor(random() * 8);
  const each = 1 + Math.floor(random() * 40);
  const mass = Math.round(members * each * rounded * size.mass) / 1000;
  const member = `M${String(Math.floor(index / MARKS_IN_A_MEMBER) + 1).padStart(5, "0")}`;
  const mark = String((index % MARKS_IN_A_MEMBER) + 1).padStart(2, "0");
  const [a = null, b = null, c = null, d = null, e = null] = dims;
  const former = size.d <= 16 ? 4 * size.d : 7 * size.d;
  const pour = `P${1 + (index % 9)}`;
  const left: Cell[] = [member, mark, `H${size.d}`, members, each, members * each, rounded, shape];
  return [...left, a, b, c, d, e, "A", "B500B", former, mass, pour, index % 3 === 0 ? "T1" : null];
}

/** Dims within the printed limits and the printed formula's length. */
function bent(
  shape: (typeof SHAPES)[number],
  { d, r, end, link }: Size,
  random: () => number,
): { dims: (number | null)[]; length: number } {
  const between = (least: number, most: number) =>
    5 * Math.round((least + random() * Math.max(0, most - least)) / 5 + 0.49);
  const gap = 2 * (r + d) + 4 * d;
  const leg = () => between(Math.max(end, 6 * d) + 5, 2000);
  const middle = () => between(gap + 5, 1600);
  const [a, b, c] = [leg(), middle(), leg()];
  switch (shape) {
    case "00": {
      const straight = between(500, 6000);
      return { dims: [straight], length: straight };
    }
    case "11":
      return { dims: [a, c], length: a + c - 0.5 * r - d };
    case "12": {
      const radius = between(r + 10, 200);
      const [long, other] = [a + radius + 6 * d, c + radius + 6 * d].map((side) => 5 * Math.ceil(side / 5));
      const length = (long ?? 0) + (other ?? 0) - 0.43 * radius - 1.2 * d;
      return { dims: [long ?? 0, other ?? 0, null, null, radius], length };
    }
    case "13": {
      const width = between(2 * (r + d) + 5, 390);
      const least = Math.max(end, width / 2 + 5 * d);
      const [left, right] = [between(least + 5, 1500), between(least + 5, 1500)];
      return { dims: [left, width, right], length: left + 0.57 * width + right - 1.6 * d };
    }
    case "21":
      return { dims: [a, b, c], length: a + b + c - r - 2 * d };
    case "26": {
      const slope = between(gap + 200, 900);
      const offset = between(3 * d, slope * 0.5);
      return { dims: [a, slope, c, offset], length: a + slope + c };
    }
    case "31": {
      const side = middle();
      return { dims: [a, b, side, c], length: a + b + side + c - 1.5 * r - 3 * d };
    }
    case "41":
    case "44": {
      const [side, top] = [middle(), middle()];
      return { dims: [a, b, side, top, c], length: a + b + side + top + c - 2 * r - 4 * d };
    }
    case "51": {
      const least = Math.max(gap, link);
      const [long, wide] = [between(least + 5, 900), between(least + 5, 700)];
      const tail = 5 * Math.ceil(link / 5);
      return { dims: [long, wide, tail], length: 2 * (long + wide + tail) - 2.5 * r - 5 * d };
    }
  }
}

const MISTAKES: readonly ((row: Cell[]) => void)[] = [
  (row) => add(row, 5, 1),
  (row) => add(row, 6, 75),
  (row) => add(row, 15, -6),
  (row) => add(row, 16, 40),
  (row) => set(row, 7, "97"),
  (row) => set(row, 8, null),
  (row) => add(row, 8, 2),
  (row) => set(row, 2, "H13"),
];

function plant(row: Cell[], place: number): void {
  MISTAKES[place % MISTAKES.length]?.(row);
}

function add(row: Cell[], column: number, by: number): void {
  row[column] = Number(row[column]) + by;
}

function set(row: Cell[], column: number, to: Cell): void {
  row[column] = to;
}

/** A small seeded generator of numbers from 0 to 1; mulberry32, public domain. */
function mulberry32(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  };
}
