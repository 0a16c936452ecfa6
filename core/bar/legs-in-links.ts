import { LEG_CONVENTION } from "./identities.data";
import type { Legged, OffLeg } from "./legged";

interface Place extends OffLeg {
  readonly place: number;
}

/** How the lengths of closed links of one shape are made: twice two sides, the other legs so many times, and ends. */
interface LinkWay {
  readonly times: number;
  /** mm, or diameters of the bar */
  readonly ends: number;
  readonly isByDiameter: boolean;
}

/** Closed links that lack a side or an end which all others of their shape have and their length holds. */
export function legsInLinks(all: readonly Legged[]): readonly Place[] {
  const shapes = new Map<string, Legged[]>();
  for (const one of all) {
    if (one.name === "") continue;
    const alike = shapes.get(one.name);
    if (alike === undefined) shapes.set(one.name, [one]);
    else alike.push(one);
  }
  return [...shapes.values()].flatMap((alike) => {
    const whole = alike.filter(({ legs }) => (legs[0] ?? null) !== null && (legs[1] ?? null) !== null);
    const way = wayOf(whole);
    if (way === null) return [];
    const keeping = whole.filter((one) => Math.abs(left(one, way)) <= one.allowed);
    const filled = filledIn(keeping);
    return alike.flatMap((one) => {
      const leg = lacking(one, filled, way);
      return leg === null ? [] : [{ ...leg, place: one.place, kept: keeping.length, tested: whole.length }];
    });
  });
}

const othersOf = ({ legs }: Legged): number => legs.slice(2).reduce<number>((so, leg) => so + (leg ?? 0), 0);

/** mm of the length that sides, other legs and ends do not make. */
function left(one: Legged, { times, ends, isByDiameter }: LinkWay): number {
  const [a, b] = one.legs;
  const atEnds = ends * (isByDiameter ? one.diameter : 1);
  return one.length - 2 * ((a ?? 0) + (b ?? 0)) - times * othersOf(one) - atEnds;
}

/** links whose ends are tried as those of all: the way of a long list is that of its first */
const MOST_TRIED = 40;

/** The plainest way that two different links keep, and most of their shape. */
function wayOf(whole: readonly Legged[]): LinkWay | null {
  const { share } = LEG_CONVENTION.value;
  const ways: LinkWay[] = [];
  for (const times of whole.some((one) => othersOf(one) > 0) ? [2, 1] : [0]) {
    if (times > 0) ways.push({ times, ends: 0, isByDiameter: false });
    for (const one of whole.slice(0, MOST_TRIED)) {
      const ends = left(one, { times, ends: 0, isByDiameter: false });
      if (Math.abs(ends) > LEG_CONVENTION.value.mostEnds * one.diameter) continue;
      ways.push({ times, ends, isByDiameter: false });
      ways.push({ times, ends: ends / one.diameter, isByDiameter: true });
    }
  }
  for (const way of ways) {
    const keeping = whole.filter((one) => Math.abs(left(one, way)) <= one.allowed);
    const different = new Set(keeping.map(({ legs }) => legs.slice(0, 2).join(" "))).size;
    if (different >= 2 && keeping.length >= share * whole.length) return way;
  }
  return null;
}

/** The places of legs that all have. */
function filledIn(keeping: readonly Legged[]): readonly number[] {
  return [...(keeping[0]?.legs.keys() ?? [])].filter((at) =>
    keeping.every(({ legs }) => (legs[at] ?? null) !== null),
  );
}

/** The one leg that a link lacks of those that all others have. */
function lacking(
  one: Legged,
  filled: readonly number[],
  way: LinkWay,
): Pick<OffLeg, "kind" | "leg" | "to"> | null {
  const blank = filled.filter((at) => (one.legs[at] ?? null) === null);
  const [leg] = blank;
  if (leg === undefined || blank.length !== 1) return null;
  const times = leg < 2 ? 2 : way.times;
  const to = times === 0 ? 0 : left(one, way) / times;
  const least = LEG_CONVENTION.value.leastLeg * one.diameter;
  // a square is written by one side
  const side = one.legs[1 - leg] ?? null;
  if (leg < 2 && side !== null && Math.abs(side - to) <= one.allowed) return null;
  return to >= least && to < one.length ? { kind: "blank", leg, to } : null;
}
