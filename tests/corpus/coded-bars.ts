import type { BarKind, CorpusBar } from "./corpus-bar";
import { printedLength, printedRadius } from "./printed-length";
import { type Seeded, seeded } from "./seeded";

export interface CodedBarsQuestion {
  readonly seed: number;
  readonly count: number;
  /** name and number of each */
  readonly members: readonly (readonly [string, number])[];
  /** before the diameter: "H", "T", "Y" */
  readonly prefix: string;
  readonly shapes?: readonly string[];
  readonly diameters?: readonly number[];
  readonly firstMark?: number;
  readonly remarks?: readonly (string | null)[];
}

/**
 * BS 8666:2005 Table 2, least end projections P and P for links, typed from the reproduction of the
 * table at fendersteel.co.uk; mass per metre as UK tables print it.
 */
const SIZES: Readonly<
  Record<number, { readonly end: number; readonly link: number; readonly mass: number }>
> = {
  8: { end: 115, link: 115, mass: 0.395 },
  10: { end: 120, link: 130, mass: 0.616 },
  12: { end: 125, link: 160, mass: 0.888 },
  16: { end: 130, link: 210, mass: 1.579 },
  20: { end: 190, link: 290, mass: 2.466 },
  25: { end: 240, link: 365, mass: 3.854 },
  32: { end: 305, link: 465, mass: 6.313 },
};
const SHAPES = ["00", "11", "21", "26", "51", "31", "13", "41", "44", "00", "12", "23"] as const;
const KINDS: Readonly<Record<string, BarKind>> = {
  "00": "straight",
  "11": "ell",
  "21": "u",
  "23": "zed",
  "51": "link",
};
const STEP = 5;
/** kg: what one person still lifts, so that no clean schedule is full of notes */
const MOST_MASS = 24;
const STOCK = 12_000;
const REMARKS = [null, null, "T1", "B1", "T2", "B2", null, "EF"] as const;

/** Bars of coded shapes within the printed limits, some of them exactly at a limit; lengths by the printed formulas. */
export function codedBars(question: CodedBarsQuestion): CorpusBar[] {
  const random = seeded(question.seed);
  const { members, prefix, firstMark = 1, remarks = REMARKS, shapes = SHAPES } = question;
  const diameters = question.diameters ?? [10, 12, 16, 20, 25, 8, 32];
  const bars: CorpusBar[] = [];
  while (bars.length < question.count) {
    const index = bars.length;
    const shape = shapes[index % shapes.length] as string;
    const diameter = shape === "51" ? random.pick([8, 10, 12]) : random.pick(diameters);
    const size = SIZES[diameter];
    if (size === undefined) throw new RangeError(`no size ${diameter}`);
    const dims = codedDims(shape, diameter, random);
    const length = roundedUp(printedLength({ shape, diameter, dims }), 25);
    if (length > STOCK || (length / 1000) * size.mass > MOST_MASS) continue;
    const [member, number] = members[Math.floor((index * members.length) / question.count)] as readonly [
      string,
      number,
    ];
    const remark = random.pick(remarks);
    const each = remark === "EF" ? random.between(4, 40, 2) : random.between(2, 40);
    bars.push({
      member,
      mark: String(firstMark + index).padStart(2, "0"),
      kind: KINDS[shape] ?? "other",
      size: `${prefix}${diameter}`,
      diameter,
      massPerMetre: size.mass,
      shape,
      dims,
      length,
      members: number,
      each,
      total: number * each,
      mass: Math.round((number * each * length * size.mass) / 10) / 100,
      grade: "B500B",
      former: 2 * (diameter <= 16 ? 2 : 3.5) * diameter,
      coating: null,
      spacing: null,
      revision: null,
      remark,
    });
  }
  return bars;
}

/** Dims within the limits that BS 8666:2005 Table 3 prints beside the shape; mm. */
function codedDims(shape: string, d: number, random: Seeded): (number | null)[] {
  const r = printedRadius(d);
  const { end, link } = SIZES[d] as (typeof SIZES)[number];
  // the straight between two bends is 4d or more (note to Table 3)
  const between = roundedUp(2 * (r + d) + 4 * d, STEP);
  const leg = (): number => (random.chance(0.15) ? end : random.between(end, 1500, STEP));
  const middle = (): number => (random.chance(0.15) ? between : random.between(between, 1400, STEP));
  switch (shape) {
    case "00":
      return [random.between(600, 5800, STEP)];
    case "11":
      return [leg(), leg()];
    case "12": {
      const radius = random.between(r, 300, STEP);
      const least = Math.max(end, radius + 6 * d);
      return [random.between(least, 1500, STEP), roundedUp(least, STEP), null, null, radius];
    }
    case "13": {
      const width = roundedUp(2 * (r + d), STEP) + random.between(0, 120, STEP);
      const least = Math.max(end, width / 2 + 5 * d);
      return [random.between(least, 1400, STEP), width, roundedUp(least, STEP)];
    }
    case "21":
    case "23":
      return [leg(), middle(), leg()];
    case "26": {
      const offset = random.between(2 * d, 3 * d, STEP);
      return [leg(), random.between(8 * offset, 8 * offset + 200, STEP), leg(), offset];
    }
    case "31":
      return [leg(), middle(), middle(), leg()];
    case "41":
    case "44":
      return [leg(), middle(), middle(), middle(), leg()];
    case "51": {
      const least = Math.max(between, link);
      return [random.between(least, 900, STEP), random.between(least, 600, STEP), roundedUp(link, STEP)];
    }
    default:
      throw new RangeError(`no limits typed for shape ${shape}`);
  }
}

function roundedUp(value: number, step: number): number {
  return Math.ceil(value / step - 1e-9) * step;
}
