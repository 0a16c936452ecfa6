import type { BarKind, CorpusBar } from "./corpus-bar";
import { type Seeded, seeded } from "./seeded";
import { tracedLength } from "./traced-length";

/** A size of a practice without coded shapes; mm and kg/m. */
export interface Steel {
  readonly size: string | number;
  readonly diameter: number;
  readonly mass: number;
  /** inside radius of bends in main bars and in links */
  readonly radius: number;
  readonly linkRadius: number;
  /** least end leg outside, of main bars and of links */
  readonly end: number;
  readonly linkEnd: number | null;
}

export interface PathBarsQuestion {
  readonly seed: number;
  readonly count: number;
  readonly members: readonly (readonly [string, number])[];
  readonly steels: readonly Steel[];
  /** mm: legs are multiples of it */
  readonly step: number;
  /** mm of one unit of the standard; 1 unless given */
  readonly unit?: number;
  /** scheduled length from the traced one; up to the next `step` unless given */
  readonly lengthOf?: (traced: number, bar: { legs: readonly number[]; diameter: number }) => number;
  readonly firstMark?: number;
  readonly markOf?: (index: number) => string;
  readonly remarks?: readonly (string | null)[];
  readonly grade?: string | null;
  /** mm, the longest bar */
  readonly stock?: number;
  readonly kinds?: readonly BarKind[];
}

const KINDS: readonly BarKind[] = ["straight", "u", "link", "ell", "straight", "zed", "u", "link", "stool"];
const MOST_MASS = 24;

/** Bars by outside legs and right angles; lengths traced along the centre line. */
export function pathBars(question: PathBarsQuestion): CorpusBar[] {
  const { members, steels, step, unit = 1, firstMark = 1, kinds = KINDS, stock = 11_500 } = question;
  const { grade = null, remarks = [null] } = question;
  const lengthOf = question.lengthOf ?? ((traced) => Math.ceil(traced / step - 1e-9) * step);
  const markOf = question.markOf ?? ((index) => String(firstMark + index));
  const random = seeded(question.seed);
  const bars: CorpusBar[] = [];
  while (bars.length < question.count) {
    const index = bars.length;
    const kind = kinds[index % kinds.length] as BarKind;
    const steel = random.pick(
      kind === "link" ? steels.filter(({ linkEnd }) => linkEnd !== null).slice(0, 3) : steels,
    );
    const radius = kind === "link" ? steel.linkRadius : steel.radius;
    const { legs, senses } = shapeOf(kind, steel, radius, step, random);
    const traced = tracedLength({ diameter: steel.diameter, radius, legs, senses });
    const length = Number(lengthOf(traced, { legs, diameter: steel.diameter }).toFixed(6));
    if (length > stock || (length / 1000) * steel.mass > MOST_MASS) continue;
    const [member, number] = members[Math.floor((index * members.length) / question.count)] as readonly [
      string,
      number,
    ];
    const remark = random.pick(remarks);
    const each = random.between(2, 30, 2);
    bars.push({
      member,
      mark: markOf(index),
      kind,
      size: steel.size,
      diameter: steel.diameter,
      massPerMetre: steel.mass,
      shape: pathText(legs, senses, unit),
      dims: kind === "link" ? legs.slice(0, 3) : legs,
      length,
      members: number,
      each,
      total: number * each,
      mass: Math.round((number * each * length * steel.mass) / 10) / 100,
      grade,
      former: 2 * radius,
      coating: null,
      spacing: null,
      revision: null,
      remark,
    });
  }
  return bars;
}

function shapeOf(
  kind: BarKind,
  steel: Steel,
  radius: number,
  step: number,
  random: Seeded,
): { legs: number[]; senses: (1 | -1)[] } {
  const { diameter: d } = steel;
  const between = 2 * (radius + d) + 4 * d;
  const end = (): number =>
    random.chance(0.15) ? Math.ceil(steel.end / step - 1e-9) * step : random.between(steel.end, 1400, step);
  const middle = (): number => random.between(between, 2600, step);
  switch (kind) {
    case "ell":
      return { legs: [end(), random.between(Math.max(between, steel.end), 2600, step)], senses: [1] };
    case "u":
      return { legs: [end(), middle(), end()], senses: [1, 1] };
    case "zed":
      return { legs: [end(), middle(), end()], senses: [1, -1] };
    case "stool":
      return {
        legs: [end(), random.between(between, 900, step), random.between(between, 700, step), end()],
        senses: [1, 1, 1],
      };
    case "link": {
      const tail = Math.ceil((steel.linkEnd ?? 0) / step - 1e-9) * step;
      const least = Math.max(between, tail);
      const [a, b] = [random.between(least, 800, step), random.between(least, 500, step)];
      return { legs: [tail, a, b, a, b, tail], senses: [1, 1, 1, 1, 1] };
    }
    default:
      return { legs: [random.between(600, 6000, step)], senses: [] };
  }
}

/** Legs and turns as the standard in force reads them; "" for a straight bar, whose length says all. */
function pathText(legs: readonly number[], senses: readonly (1 | -1)[], unit: number): string {
  if (senses.length === 0) return "00";
  const written = legs.map((leg) => String(Number((leg / unit).toFixed(4))));
  return written
    .map((leg, at) => (at === 0 ? leg : `${senses[at - 1] === 1 ? "+90" : "-90"} ${leg}`))
    .join(" ");
}
