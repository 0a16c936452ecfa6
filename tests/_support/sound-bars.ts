import type { Cell } from "../../core/schedule/sheet";
import type { Random } from "./random-schedule";

/** A bar as somebody drew it: its legs to the outside, whose bends are all right angles, and its end hooks. */
export interface SoundBar {
  readonly size: string;
  readonly diameter: number;
  readonly count: number;
  readonly shape: Cell;
  /** mm, as they stand in the columns of the list */
  readonly dims: readonly (number | null)[];
  /** mm, of all legs to the outside */
  readonly legs: readonly number[];
  /** mm, what both hooks of a link add */
  readonly hooks: number;
  readonly kind: "straight" | "L" | "U" | "link";
  readonly remark?: string;
}

type Shapes = Readonly<Record<SoundBar["kind"], Cell>>;

type Words = Readonly<
  Record<
    | "member"
    | "mark"
    | "size"
    | "members"
    | "each"
    | "total"
    | "shape"
    | "length"
    | "totalLength"
    | "unitMass"
    | "mass"
    | "subtotal"
    | "sum"
    | "summary"
    | "pieces"
    | "remark",
    string
  >
>;

/** How the lists of a country are written. */
export interface CountryHabit {
  readonly name: string;
  readonly sheet: string;
  readonly titles: readonly string[];
  readonly words: Words;
  readonly dims: readonly string[];
  readonly hasShape: boolean;
  readonly hasRemark?: boolean;
  readonly members: readonly string[];
  readonly counts?: readonly ("total" | "each and total" | "each" | "product in a cell")[];
  /** mm that the length may be of a bar: out to out, the centre line, with deductions */
  readonly lengths: readonly ((bar: SoundBar) => number)[];
  /** mm */
  readonly steps: readonly number[];
  readonly alwaysUp?: boolean;
  readonly massPlaces: readonly number[];
  /** metres in one unit of the total length */
  readonly metresIn?: number;
  /** kg in one unit of mass */
  readonly massUnit?: number;
  /** kg per metre */
  readonly tables: readonly ((diameter: number) => number)[];
  mark(index: number): Cell;
  length(mm: number): Cell;
  dim(mm: number): Cell;
  bar(random: Random, index: number): SoundBar;
}

/** kg/m to three decimals: EN 10080 Table 6, published; IS 1786 Table 1 has the same to two or three. */
export const EN: Readonly<Record<number, number>> = {
  ...{ 6: 0.222, 8: 0.395, 10: 0.617, 12: 0.888, 14: 1.21, 16: 1.58, 20: 2.47, 25: 3.85, 28: 4.83, 32: 6.31 },
};
/** kg/m: JIS G 3112 Table, from memory */
export const JIS: Readonly<Record<number, number>> = {
  10: 0.56,
  13: 0.995,
  16: 1.56,
  19: 2.25,
  22: 3.04,
  25: 3.98,
};
/** kg/m: CSA G30.18, from memory */
export const CSA: Readonly<Record<number, number>> = { 10: 0.785, 15: 1.57, 20: 2.355, 25: 3.925, 30: 5.495 };
/** lb/ft: ASTM A615 Table 1, from memory */
export const ASTM: Readonly<Record<number, number>> = {
  ...{ 3: 0.376, 4: 0.668, 5: 1.043, 6: 1.502, 7: 2.044, 8: 2.67, 9: 3.4 },
};
/** mm: ASTM A615 Table 1, from memory */
export const INCH_BARS: Readonly<Record<number, number>> = {
  3: 9.5,
  4: 12.7,
  5: 15.9,
  6: 19.1,
  7: 22.2,
  8: 25.4,
  9: 28.7,
};

export const fromTable = (table: Readonly<Record<number, number>>) => (diameter: number) =>
  table[diameter] ?? 0;
export const theoretical =
  (places: number) =>
  (diameter: number): number =>
    Number(((Math.PI / 4) * diameter ** 2 * 7850e-6).toFixed(places));
/** common practice in South Asia and the Gulf: d squared over 162 */
export const over162 = (diameter: number): number => Number(((diameter * diameter) / 162).toFixed(3));

const sumOf = ({ legs }: SoundBar): number => legs.reduce((so, leg) => so + leg, 0);
const bendsOf = ({ legs, kind }: SoundBar): number => (kind === "link" ? 3 : legs.length - 1);

/** Out to out, with nothing off: common practice in many countries. */
export const outToOut = (bar: SoundBar): number => sumOf(bar) + bar.hooks;
/** Along the centre line, each right angle on a roll of so many diameters: geometry. */
export const centreLine =
  (thin: number, thick: number, from: number) =>
  (bar: SoundBar): number => {
    const roll = bar.diameter < from ? thin : thick;
    const off = 2 * (roll / 2 + 1) - (Math.PI / 2) * (roll / 2 + 0.5);
    return sumOf(bar) + bar.hooks - bendsOf(bar) * off * bar.diameter;
  };
/** So many diameters off at each right angle: common practice. */
export const less =
  (diameters: number) =>
  (bar: SoundBar): number =>
    sumOf(bar) + bar.hooks - bendsOf(bar) * diameters * bar.diameter;

/** BS 8666:2005 Tables 2 and 3, published: 00, 11, 21 and 51 with r of Table 2. */
export function byBs8666({ kind, dims, diameter: d, legs }: SoundBar): number {
  const r = d <= 16 ? 2 * d : 3.5 * d;
  const [a = 0, b = 0, c = 0] = dims.map((dim) => dim ?? 0);
  if (kind === "straight") return legs[0] ?? 0;
  if (kind === "L") return a + b - 0.5 * r - d;
  if (kind === "U") return a + b + c - r - 2 * d;
  return 2 * (a + b + c) - 2.5 * r - 5 * d;
}

/** SANS 282:2011, from memory: 20, 37, 38 and 60 with 2 d for R, 3 d for Y. */
export function bySans282({ kind, dims, diameter: d, legs, size }: SoundBar): number {
  const r = size.startsWith("R") ? 2 * d : 3 * d;
  const [a = 0, b = 0, c = 0] = dims.map((dim) => dim ?? 0);
  if (kind === "straight") return legs[0] ?? 0;
  if (kind === "L") return a + b - 0.5 * r - d;
  if (kind === "U") return a + b + c - r - 2 * d;
  return 2 * (a + b) + 20 * d;
}

interface BarWays {
  readonly sizes: readonly number[];
  readonly linkSizes: readonly number[];
  sizeText(diameter: number, kind: SoundBar["kind"]): string;
  readonly shapes: Shapes;
  /** mm of which every leg is a multiple */
  readonly grid: number;
  /** diameters that the hooks of a link add, both together */
  readonly hookDiameters: number;
  /** where straight bars give their length among the dims too */
  readonly straightInDims?: boolean;
  /** the link's end stands as a dim of its own */
  readonly linkEnds?: boolean;
  /** mm, of a link's end */
  readonly leastHook?: number;
  readonly remarks?: Readonly<Partial<Record<SoundBar["kind"], readonly string[]>>>;
  readonly diameterOf?: Readonly<Record<number, number>>;
  /** mm */
  readonly longest?: number;
}

export function barIn(ways: BarWays) {
  return (random: Random, _index: number): SoundBar => {
    const { pick, whole } = random;
    const kind = pick(["straight", "straight", "L", "U", "link"] as const);
    const named = pick(kind === "link" ? ways.linkSizes : ways.sizes);
    const d = ways.diameterOf?.[named] ?? named;
    const on = (from: number, to: number): number => Math.round(whole(from, to) / ways.grid) * ways.grid;
    const end = (): number => Math.max(on(250, 900), Math.ceil((14 * d) / ways.grid) * ways.grid);
    const long = (): number => on(1200, Math.min(ways.longest ?? 9000, 11900) - 2000);
    const hook = Math.ceil((ways.leastHook ?? Math.max(11 * d, 120)) / ways.grid - 1e-9) * ways.grid;
    const legs =
      kind === "straight"
        ? [on(900, Math.min(ways.longest ?? 11900, 11900))]
        : kind === "L"
          ? [end(), long()]
          : kind === "U"
            ? [end(), long(), 0]
            : [on(250, 700), on(200, 450)];
    if (kind === "U") legs[2] = legs[0] ?? 0;
    const hooks = kind === "link" ? (ways.linkEnds === true ? 2 * hook : ways.hookDiameters * d) : 0;
    const dims: (number | null)[] =
      kind === "straight" && ways.straightInDims !== true
        ? []
        : kind === "link" && ways.linkEnds === true
          ? [...legs, hook, hook]
          : [...legs];
    const all = kind === "link" ? [legs[0] ?? 0, legs[1] ?? 0, legs[0] ?? 0, legs[1] ?? 0] : legs;
    const remark = ways.remarks?.[kind];
    return {
      size: ways.sizeText(named, kind),
      diameter: d,
      count: kind === "link" ? whole(8, 60) : whole(2, 40),
      shape: ways.shapes[kind],
      ...{ dims, legs: all, hooks, kind },
      ...(remark !== undefined && { remark: pick(remark) }),
    };
  };
}

export const metres = (places: number) => (mm: number) => Number((mm / 1000).toFixed(places));
export const plain = (mm: number): Cell => mm;
export const centimetres = (mm: number): Cell => Number((mm / 10).toFixed(1));
export const two = (index: number): Cell => String(index).padStart(2, "0");

export function feetInches(mm: number): string {
  const quarters = Math.round((mm / 25.4) * 4);
  const inches = (quarters % 48) / 4;
  const part = ["", " 1/4", " 1/2", " 3/4"][quarters % 4];
  return `${Math.floor(quarters / 48)}'-${Math.floor(inches)}${part}"`;
}

export const METRIC = {
  sizes: [10, 12, 16, 20, 25],
  linkSizes: [8, 10],
  grid: 10,
  hookDiameters: 20,
} as const;
export const NAMES = { straight: "00", L: "11", U: "21", link: "51" } as const;

export function numberOf(diameter: number): string {
  return Object.entries(INCH_BARS).find(([, mm]) => mm === diameter)?.[0] ?? "";
}
