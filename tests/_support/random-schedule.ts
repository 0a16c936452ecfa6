import type { Cell } from "../../core/schedule/sheet";

/** What a column of a random sheet holds in truth. */
export interface TrueColumn {
  readonly role: string;
  readonly unit: string | null;
}

/** A schedule without header words, its columns in any order, and what they are. */
export interface RandomSchedule {
  readonly rows: Cell[][];
  readonly truth: readonly TrueColumn[];
  /** the surest identity that it holds */
  readonly redundancy: "mass" | "total length" | "legs" | "counts" | "none";
  readonly counts: string;
  readonly isOneMember: boolean;
  readonly mistakes: number;
}

interface Bar {
  readonly size: number;
  readonly code: string;
  readonly legs: readonly (number | null)[];
  readonly length: number;
  readonly members: number;
  readonly each: number;
  readonly spacing: number;
  readonly run: number;
}

interface Column extends TrueColumn {
  value(bar: Bar, index: number): Cell;
}

const METRIC_SIZES = [
  [8, 10, 12, 16, 20],
  [10, 12, 16, 20, 25, 32],
  [6, 8, 10, 12, 14, 16, 20, 25, 28, 32],
  [12, 16],
];
const INCH_SIZES = [3, 4, 5, 6, 7, 8, 9, 10, 11];
/** kg/m, ASTM A615 Table 1, from memory */
const INCH_MASSES: Readonly<Record<number, number>> = {
  3: 0.56,
  4: 0.994,
  5: 1.552,
  6: 2.235,
  7: 3.042,
  8: 3.973,
  9: 5.06,
  10: 6.404,
  11: 7.907,
};
const MASS_UNITS: Readonly<Record<string, number>> = { kg: 1, t: 1000, lb: 0.45359237 };
const QUANTITIES = ["size", "members", "each", "total", "length", "mass", "totalLength", "bySize"];

/** Random numbers of a seed: a linear congruence, the same on every machine. */
export function seededRandom(seed: number) {
  let state = seed >>> 0;
  const next = (): number => {
    state = (state * 1664525 + 1013904223) >>> 0;
    return state / 4294967296;
  };
  return {
    next,
    pick: <T>(list: readonly T[]): T => list[Math.floor(next() * list.length)] as T,
    whole: (from: number, to: number): number => from + Math.floor(next() * (to - from + 1)),
  };
}

export type Random = ReturnType<typeof seededRandom>;

function rounded(value: number, places: number): number {
  return Math.round(value * 10 ** places) / 10 ** places;
}

function choices({ next, pick, whole }: Random) {
  const unit = pick(["mm", "mm", "mm", "cm", "m", "m", "feet"]);
  const inFeet = unit === "feet";
  const massUnit = inFeet ? "lb" : pick(["kg", "kg", "kg", "t", "lb"]);
  return {
    bars: pick([6, 12, 25, 60, 150]),
    unit,
    step: inFeet ? 25 : pick([1, 5, 10, 25, 50]),
    counts: pick(["t", "t", "met", "met", "me", "et"]),
    hasTotal: next() < 0.4 && !inFeet,
    hasMass: next() < 0.6,
    hasBySize: next() < 0.25 && !inFeet,
    hasUnitMass: next() < 0.25 && !inFeet,
    legs: next() < 0.5 ? whole(2, 6) : 0,
    hasShape: next() < 0.7,
    hasRun: next() < 0.15,
    hasTextMark: next() < 0.6,
    hasSerial: next() < 0.3,
    hasGrade: next() < 0.2,
    hasSizeText: next() < 0.6,
    hasMember: next() < 0.3,
    mistakes: pick([0, 0, 0.05, 0.1, 0.2]),
    massPlaces: massUnit === "t" ? 3 : pick([0, 1, 1, 2, 2, 3]),
    massUnit,
    waste: next() < 0.08 ? pick([1.03, 1.05]) : 1,
    isOneMember: next() < 0.12,
    isSorted: next() < 0.3,
    isStraight: next() < 0.15,
    isForm: next() < 0.5,
    sizes: inFeet ? INCH_SIZES : pick(METRIC_SIZES),
    prefix: pick(["H", "T", "N", "\u00d8", "R"]),
    legUnit: unit === "m" ? pick(["mm", "m", "cm"]) : unit,
  };
}

type Choices = ReturnType<typeof choices>;

function barsOf(random: Random, chosen: Choices): Bar[] {
  const { pick, whole } = random;
  const bars: Bar[] = [];
  let members = 1;
  let left = 0;
  for (let index = 0; index < chosen.bars; index += 1) {
    if (left === 0) {
      members = chosen.isOneMember ? 1 : whole(1, 12);
      left = whole(4, 9);
    }
    left -= 1;
    const code = chosen.isStraight ? "00" : pick(["00", "00", "11", "21", "51", "13"]);
    const size = pick(chosen.sizes);
    const spacing = pick([100, 125, 150, 200, 250]);
    const run = whole(20, 120) * 100;
    const counted = pick([2, 4, 6, 8, 10, 12, 15, 18, 20, 24, 30, 36, 45]);
    const each = chosen.hasRun ? Math.floor(run / spacing) + 1 : counted;
    bars.push({ size, code, ...lengthOf(random, chosen, code, size), members, each, spacing, run });
  }
  if (chosen.isSorted) bars.sort((one, other) => one.size - other.size);
  return bars;
}

function lengthOf({ whole }: Random, chosen: Choices, code: string, size: number) {
  const { step } = chosen;
  const legs: (number | null)[] =
    code === "00"
      ? [whole(20, 460) * Math.max(step, 25)]
      : code === "11"
        ? [whole(30, 240) * 10, whole(15, 90) * 10]
        : code === "51"
          ? [whole(30, 90) * 10, whole(20, 60) * 10, whole(10, 16) * 10]
          : [whole(20, 90) * 10, whole(30, 240) * 10, whole(20, 90) * 10];
  const sum = legs.reduce<number>((so, leg) => so + (leg ?? 0), 0);
  const closed = 2 * ((legs[0] ?? 0) + (legs[1] ?? 0)) + 20 * size;
  const exact = code === "51" ? closed : code === "00" ? sum : sum - 3 * size;
  const length = Math.max(step, Math.ceil(exact / step) * step);
  while (legs.length < chosen.legs) legs.push(null);
  if (code === "00" && chosen.legs > 0) legs[0] = length;
  return { legs, length };
}

function feetInches(mm: number): string {
  const inches = Math.round((mm / 25.4) * 2) / 2;
  const half = inches % 1 === 0 ? "" : " 1/2";
  return `${Math.floor(inches / 12)}'-${Math.floor(inches % 12)}${half}"`;
}

function written(mm: number, chosen: Choices): Cell {
  if (chosen.unit === "feet") return feetInches(mm);
  if (chosen.unit === "mm") return mm;
  return chosen.unit === "cm" ? mm / 10 : rounded(mm / 1000, chosen.step >= 10 ? 2 : 3);
}

/** mm of the length as it is written: whole centimetres where metres keep two places. */
function asWritten(mm: number, chosen: Choices): number {
  if (chosen.unit === "feet") return (Math.round((mm / 25.4) * 2) / 2) * 25.4;
  return chosen.unit === "m" ? rounded(mm / 1000, chosen.step >= 10 ? 2 : 3) * 1000 : mm;
}

function kgPerMetre(size: number, chosen: Choices): number {
  return chosen.unit === "feet" ? (INCH_MASSES[size] ?? 0) : (Math.PI / 4) * size ** 2 * 7850e-6;
}

function groupsOf(random: Random, chosen: Choices): Column[][] {
  const { pick } = random;
  const c = chosen;
  const total = (bar: Bar): number => bar.members * bar.each;
  const metres = (bar: Bar): number => (total(bar) * asWritten(bar.length, c)) / 1000;
  const kilograms = (bar: Bar): number => metres(bar) * kgPerMetre(bar.size, c);
  const unit = c.unit === "feet" ? "in" : c.unit;
  const sizeText = c.unit === "feet" ? "#" : c.prefix;
  const groups: Column[][] = [];
  const add = (role: string, of: string | null, value: Column["value"]): void => {
    groups.push([{ role, unit: of, value }]);
  };
  add("size", null, (bar) => (c.hasSizeText ? `${sizeText}${bar.size}` : bar.size));
  if (c.counts.includes("m")) add("members", null, (bar) => bar.members);
  if (c.counts.includes("e")) add("each", null, (bar) => bar.each);
  if (c.counts.includes("t")) add("total", null, total);
  add("length", unit, (bar) => written(bar.length, c));
  if (c.hasTotal) add("totalLength", "m", (bar) => rounded(metres(bar), 2));
  if (c.hasMass) {
    add("mass", c.massUnit, (bar) =>
      rounded((kilograms(bar) * c.waste) / (MASS_UNITS[c.massUnit] ?? 1), c.massPlaces),
    );
  }
  if (c.hasUnitMass) add("unitMass", null, (bar) => rounded(kgPerMetre(bar.size, c), 3));
  if (c.hasBySize) {
    const value = (size: number) => (bar: Bar) => (bar.size === size ? rounded(metres(bar), 2) : null);
    groups.push(c.sizes.map((size) => ({ role: "bySize", unit: "m", value: value(size) })));
  }
  if (c.legs > 0) groups.push(legColumns(c));
  if (c.legs > 0 && c.hasShape) add("shape", null, ({ code }) => code);
  if (c.hasRun) {
    add("spacing", null, ({ spacing }) => spacing);
    add("run", null, ({ run }) => run);
  }
  add("mark", null, (_, index) =>
    c.hasTextMark ? `${pick(["B", "C"])}${String(index + 1).padStart(2, "0")}` : index + 1,
  );
  if (c.hasSerial) add("serial", null, (_, index) => index + 1);
  if (c.hasGrade) add("grade", null, () => pick([400, 500]));
  if (c.hasMember) add("member", null, (_, index) => (index % 5 === 0 ? `Wall ${index}` : null));
  return groups;
}

function legColumns(chosen: Choices): Column[] {
  const unit = chosen.unit === "feet" ? "in" : chosen.legUnit;
  const value = (place: number) => (bar: Bar) => {
    const leg = bar.legs[place];
    if (leg === null || leg === undefined) return null;
    if (chosen.unit === "feet") return feetInches(leg);
    return chosen.legUnit === "mm" ? leg : chosen.legUnit === "cm" ? leg / 10 : rounded(leg / 1000, 3);
  };
  return Array.from({ length: chosen.legs }, (_, place) => ({ role: "leg", unit, value: value(place) }));
}

/** A random schedule: columns in any order, 6 to 150 rows, any unit and rounding, up to a fifth of the rows wrong. */
export function randomSchedule(random: Random): RandomSchedule {
  const chosen = choices(random);
  const bars = barsOf(random, chosen);
  const groups = groupsOf(random, chosen);
  if (!chosen.isForm) shuffle(groups, random);
  const columns = groups.flat();
  const rows = bars.map((bar, index) => columns.map((column) => column.value(bar, index)));
  const mistakes = plantMistakes(rows, columns, chosen, random);
  const redundancy = chosen.hasMass
    ? "mass"
    : chosen.hasTotal || chosen.hasBySize
      ? "total length"
      : chosen.legs > 0
        ? "legs"
        : chosen.counts === "met"
          ? "counts"
          : "none";
  const truth = columns.map(({ role, unit }) => ({ role, unit }));
  return { rows, truth, redundancy, counts: chosen.counts, isOneMember: chosen.isOneMember, mistakes };
}

function shuffle<T>(list: T[], { whole }: Random): void {
  for (let index = list.length - 1; index > 0; index -= 1) {
    const other = whole(0, index);
    [list[index], list[other]] = [list[other] as T, list[index] as T];
  }
}

function plantMistakes(rows: Cell[][], columns: readonly Column[], chosen: Choices, random: Random): number {
  const { next, pick } = random;
  const open = columns
    .map(({ role }, index) => (QUANTITIES.includes(role) ? index : -1))
    .filter((one) => one >= 0);
  let planted = 0;
  for (const row of rows) {
    if (next() >= chosen.mistakes) continue;
    const at = pick(open);
    const value = row[at];
    if (typeof value !== "number") continue;
    planted += 1;
    const { role } = columns[at] as Column;
    if (role === "size") row[at] = pick(chosen.sizes);
    else if (role === "length" || role === "mass")
      row[at] = rounded(value * pick([10, 0.1, 1.3, 0.75, 1.09]), 3);
    else row[at] = value + pick([1, 2, 9, -1]);
  }
  return planted;
}
