import { DIMENSION_LETTERS } from "../standards/dimension-letters";
import type { BarFacts } from "./bar-facts";
import { LEG_CONVENTION, LEGS_OF_LETTER, LENGTH_HABIT, USUAL_ROLLS } from "./identities.data";
import type { Legged, OffLeg } from "./legged";
import { legsInLinks } from "./legs-in-links";
import { goesBy, groupOf, hasRoom, legsOf, lessByRolls, SHAPE, shapeOf } from "./length-habits";
import type { SheetFacts } from "./sheet-facts";

/** Diameters that a bend of a bar takes off its legs. */
type LessOf = (facts: BarFacts) => number;

/**
 * Bars that one leg would bring into line with the way in which the sheet makes lengths of the legs of open bars,
 * whatever their shapes, or of closed links of one shape. Few bars of a shape are enough where many keep the way.
 */
export function offLegConvention({
  lengthStep,
  answers,
}: SheetFacts): (OffLeg & { readonly facts: BarFacts })[] {
  const off = answers.whole(offPlaces, goesBy, lengthStep ?? LENGTH_HABIT.value.step);
  return off.map(({ place, ...leg }) => ({ ...leg, facts: answers.bar(place) }));
}

interface Place extends OffLeg {
  readonly place: number;
}

function offPlaces(bars: readonly BarFacts[], step: number): readonly Place[] {
  const { slack, slackPerDiameter } = LENGTH_HABIT.value;
  const all = bars.flatMap((facts, place): Legged[] => {
    const key = groupOf(facts);
    if (key === null || hasUnreadLeg(facts)) return [];
    const diameter = facts.diameter ?? 0;
    const name = key.startsWith(SHAPE) ? shapeOf(key) : "";
    const allowed = step + slack + slackPerDiameter * diameter;
    return [{ place, facts, name, legs: legsOf(facts), length: facts.row.length ?? 0, diameter, allowed }];
  });
  if (all.length < LEG_CONVENTION.value.rows) return [];
  const open = openBars(all);
  const told = new Set(open.map(({ place }) => place));
  const links = legsInLinks(all).filter(({ place }) => !told.has(place));
  const found = [...open, ...links];
  const others = new Set(found.map(({ place }) => place));
  return [...found, ...longerThanBar(all).filter(({ place }) => !others.has(place))];
}

function hasUnreadLeg({ row }: BarFacts): boolean {
  return row.problems?.some(({ field }) => (DIMENSION_LETTERS as readonly string[]).includes(field)) === true;
}

/** A leg, out to out, that is longer than the bar: of few, for else the columns mean something else. */
function longerThanBar(all: readonly Legged[]): readonly Place[] {
  const off = all.flatMap(({ place, legs, length, diameter }) => {
    const leg = legs.findIndex((one) => (one ?? 0) > length + diameter + CLOSE);
    return leg < 0 ? [] : [{ place, leg, to: legs[leg] ?? 0 }];
  });
  const kept = all.length - off.length;
  if (off.length > all.length * LEG_CONVENTION.value.few) return [];
  return off.map((one) => ({ ...one, kind: "longer" as const, kept, tested: all.length }));
}

const CLOSE = 1;

function openBars(all: readonly Legged[]): readonly Place[] {
  const { rows, share } = LEG_CONVENTION.value;
  let best = { less: WAYS[0] as LessOf, keeping: new Set<Legged>(), different: 0, off: 0 };
  for (const less of WAYS) {
    const keeping = all.filter((one) => countOf(one.legs) > 1 && isKept(one, one.legs, less));
    const different = new Set(keeping.map(({ legs, length }) => `${legs.join(" ")} ${length}`)).size;
    const off = keeping.reduce((so, one) => so + Math.abs(over(one, one.legs, less)), 0);
    // the plain sum where it does as well
    const isBetter = different > best.different || (different === best.different && off < best.off - CLOSE);
    if (isBetter) best = { less, keeping: new Set(keeping), different, off };
  }
  if (best.different < 2) return [];
  const { less, keeping } = best;
  // two bars prove the way only of what fits it to the millimetre
  const isProven = best.different >= rows;
  const names = byFilledLegs(keeping);
  const isLink = linksAmong(all.filter((one) => !keeping.has(one)));
  const tested = all.filter((one) => countOf(one.legs) > 1 && names.has(one.name) && !isLink(one)).length;
  if (keeping.size < share * tested) return [];
  const kept = keeping.size;
  const whole = byFilledLegs(all);
  return all.flatMap((one) => {
    if (one.legs.length === 0 || isLink(one)) return [];
    const alike = names.get(one.name) ?? NONE;
    if (keeping.has(one)) {
      const moved = isProven ? movedLeg(one, alike) : null;
      if (moved !== null) return [{ ...moved, place: one.place }];
      const shape = isProven
        ? (shapeMeant(one, alike, names) ?? shapeOfMore(one, whole.get(one.name) ?? NONE, names))
        : null;
      return shape === null ? [] : [{ kind: "shape", leg: 0, to: 0, shape, place: one.place, kept, tested }];
    }
    const leg = isProven
      ? (lackingLeg(one, alike, less) ??
        lackingByLetter(one, all, less) ??
        otherLeg(one, alike, less) ??
        otherSum(one, alike, less))
      : otherLeg({ ...one, allowed: CLOSE }, alike, less);
    return leg === null ? [] : [{ ...leg, place: one.place, kept, tested }];
  });
}

/** Bars of one name that have the same legs filled, of a full sheet as well: one of them, and how many they are. */
interface Alike {
  readonly example: Legged;
  count: number;
}

/** By the legs that are filled. */
type Named = ReadonlyMap<string, Alike>;

const NONE: Named = new Map();

function byFilledLegs(bars: Iterable<Legged>): ReadonlyMap<string, Named> {
  const names = new Map<string, Map<string, Alike>>();
  for (const one of bars) {
    const named = names.get(one.name) ?? new Map<string, Alike>();
    names.set(one.name, named);
    const mask = maskOf(one.legs);
    const alike = named.get(mask);
    if (alike === undefined) named.set(mask, { example: one, count: 1 });
    else alike.count += 1;
  }
  return names;
}

/** Whether a bar may be a closed link: no shape tells it from open bars, or one that several such lengths share. */
function linksAmong(off: readonly Legged[]): (one: Legged) => boolean {
  const links = off.filter(isLengthOfLink);
  const ofName = new Map<string, number>();
  for (const { name } of links) ofName.set(name, (ofName.get(name) ?? 0) + 1);
  const all = new Set(links.filter(({ name }) => name === "" || (ofName.get(name) ?? 0) > 1));
  return (one) => all.has(one);
}

/** Twice two sides, the first two or the two longest where hooks stand before them, and ends. */
function isLengthOfLink({ legs, length, diameter }: Legged): boolean {
  const filled = legs.flatMap((leg) => leg ?? []);
  if (filled.length < 2) return false;
  return [filled, [...filled].sort((a, b) => b - a)].some(([one = 0, other = 0]) => {
    const ends = length - 2 * (one + other);
    return ends >= -CLOSE && ends <= LENGTH_HABIT.value.linkEnds * diameter;
  });
}

const WAYS: readonly LessOf[] = [
  ...[0, 0.5, 1, 1.5, 2, 2.5, 3].map((less) => () => less),
  ...USUAL_ROLLS.value.map((rolls) => (facts: BarFacts) => lessByRolls(facts, rolls)),
];

export const countOf = (legs: readonly (number | null)[]): number =>
  legs.filter((leg) => leg !== null).length;

const sumOf = (legs: readonly (number | null)[]): number =>
  legs.reduce<number>((so, leg) => so + (leg ?? 0), 0);

/** mm that the length is over what the legs make of it. */
function over({ facts, length, diameter }: Legged, legs: readonly (number | null)[], less: LessOf): number {
  return length - sumOf(legs) + less(facts) * diameter * Math.max(0, countOf(legs) - 1);
}

function isKept(one: Legged, legs: readonly (number | null)[], less: LessOf): boolean {
  return Math.abs(over(one, legs, less)) <= one.allowed;
}

type Leg = Pick<OffLeg, "kind" | "leg" | "to">;

/** The leg that other bars of the shape have and this one does not, where its length leaves room for one. */
function lackingLeg(one: Legged, alike: Named, less: LessOf): Leg | null {
  if (one.name === "") return lackingLikeOther(one, less) ?? lackingFirst(one, alike, less);
  for (const {
    example: { legs },
  } of alike.values()) {
    const lacking = [...legs.keys()].filter((at) => legs[at] !== null && (one.legs[at] ?? null) === null);
    const [leg] = lacking;
    if (leg === undefined || lacking.length !== 1 || countOf(legs) !== countOf(one.legs) + 1) continue;
    const to = over(one, [...one.legs.filter((at) => at !== null), 0], less);
    if (to >= LEG_CONVENTION.value.leastLeg * one.diameter && to < one.length)
      return { kind: "blank", leg, to };
  }
  return null;
}

/** The last leg that a bar drawn as a letter has, where it is the only one so called and its length leaves room for it. */
function lackingByLetter(one: Legged, all: readonly Legged[], less: LessOf): Leg | null {
  const legs = LEGS_OF_LETTER.value[one.name.slice(SHAPE.length).trim().toUpperCase()];
  const leg = countOf(one.legs);
  if (legs === undefined || leg !== legs - 1 || one.legs.slice(0, leg).includes(null)) return null;
  if (!hasRoom(one.facts, one.legs) || all.some((other) => other !== one && other.name === one.name))
    return null;
  const to = over(one, [...one.legs.slice(0, leg), 0], less);
  const isLeg = to >= LEG_CONVENTION.value.leastLeg * one.diameter && to < one.length;
  return isLeg ? { kind: "blank", leg, to } : null;
}

/** Of no named shape: one more leg like another that the row has. */
function lackingLikeOther(one: Legged, less: LessOf): Leg | null {
  const { facts, legs, allowed } = one;
  if (!hasRoom(facts, legs)) return null;
  const to = over(one, [...legs.filter((leg) => leg !== null), 0], less);
  const isLike = legs.some((leg) => leg !== null && Math.abs(leg - to) <= allowed);
  const at = legs.indexOf(null);
  return isLike ? { kind: "blank", leg: at < 0 ? legs.length : at, to } : null;
}

/** The first leg of a bar of no named shape that alone has none, as its former says too. */
function lackingFirst(one: Legged, alike: Named, less: LessOf): Leg | null {
  if (one.legs[0] !== null || countOf(one.legs) < 1) return null;
  const others = [...alike.values()].filter(({ example }) => example.legs[0] !== null);
  if (others.length < alike.size - 1 || others.reduce((so, { count }) => so + count, 0) < FEW) return null;
  const to = over(one, [...one.legs.filter((leg) => leg !== null), 0], less);
  return to >= LEG_CONVENTION.value.leastLeg * one.diameter && to < one.length
    ? { kind: "blank", leg: 0, to }
    : null;
}

/** The one leg of which another figure makes the length: of its own digits, or as the leg at the other end. */
function otherLeg(one: Legged, alike: Named, less: LessOf): Leg | null {
  const { legs } = one;
  const filled = [...legs.keys()].filter((at) => legs[at] !== null);
  if (filled.length < 2) return null;
  const isShapeKnown = [...alike.values()].some(({ example }) =>
    filled.every((at) => (example.legs[at] ?? null) !== null),
  );
  const [first = 0, last = 0] = [filled[0], filled.at(-1)];
  const fitting = filled.flatMap((leg): Leg[] => {
    const typed = legs[leg] ?? 0;
    const to = over(one, legs, less) + typed;
    if (to < LEG_CONVENTION.value.leastLeg * one.diameter) return [];
    const isEnd = filled.length === 3 && (leg === first || leg === last);
    const isLikeOther = isEnd && Math.abs((legs[leg === first ? last : first] ?? 0) - to) <= one.allowed;
    const isSlip = isShapeKnown && slips(typed).some((slip) => Math.abs(slip - to) <= one.allowed);
    return isLikeOther || isSlip ? [{ kind: "fits", leg, to }] : [];
  });
  return fitting.length === 1 ? (fitting[0] ?? null) : null;
}

/** A length that all legs together do not make, by far, as those of other bars of the shape do. */
function otherSum(one: Legged, alike: Named, less: LessOf): Leg | null {
  const off = over(one, one.legs, less);
  const asFilled = alike.get(maskOf(one.legs))?.count ?? 0;
  const enough = less(one.facts) === 0 ? 1 : 2;
  if (one.name === "" || countOf(one.legs) < 2 || asFilled < enough) return null;
  if (Math.abs(off) < LEG_CONVENTION.value.far * one.length) return null;
  return { kind: "sum", leg: 0, to: one.length - off };
}

const maskOf = (legs: readonly (number | null)[]): string =>
  legs.map((leg) => (leg === null ? "-" : "x")).join("");

/** The shape whose bars all have just the legs that this one has, where all others of its own have another one too. */
function shapeMeant(one: Legged, alike: Named, names: ReadonlyMap<string, Named>): string | null {
  const own = maskOf(one.legs);
  const [others, ...more] = [...alike.values()].filter(({ example }) => maskOf(example.legs) !== own);
  const isAlone = alike.get(own)?.count === 1 && others !== undefined;
  if (one.name === "" || !isAlone) return null;
  const all = [others, ...more];
  if (all.reduce((so, { count }) => so + count, 0) < FEW) return null;
  if (!all.every(({ example }) => countOf(example.legs) === countOf(one.legs) + 1)) return null;
  return onlyNameWith(own, names);
}

/** The shape whose bars all have just the legs that this one has, where all others of its own have fewer: an I with three. */
function shapeOfMore(one: Legged, alike: Named, names: ReadonlyMap<string, Named>): string | null {
  const own = maskOf(one.legs);
  const others = [...alike.values()].filter(({ example }) => maskOf(example.legs) !== own);
  if (one.name === "" || alike.get(own)?.count !== 1) return null;
  if (others.reduce((so, { count }) => so + count, 0) < FEW) return null;
  if (others.some(({ example }) => countOf(example.legs) >= countOf(one.legs))) return null;
  return onlyNameWith(own, names);
}

/** The one shape of which all bars have those legs. */
function onlyNameWith(mask: string, names: ReadonlyMap<string, Named>): string | null {
  const meant = [...names].filter(
    ([name, named]) => name !== "" && named.size === 1 && (named.get(mask)?.count ?? 0) >= FEW,
  );
  return meant.length === 1 ? (meant[0]?.[0].slice(SHAPE.length).trim() ?? null) : null;
}

/**
 * The leg that stands apart from the others of its bar, where all others of the shape have theirs side by side: an L may
 * be bent at either end of its leg B.
 */
function movedLeg(one: Legged, alike: Named): Omit<Place, "place"> | null {
  const own = maskOf(one.legs);
  const [others, another] = [...alike.values()].filter(({ example }) => maskOf(example.legs) !== own);
  if (one.name === "" || alike.get(own)?.count !== 1 || another !== undefined) return null;
  if (others === undefined || others.count < FEW) return null;
  const { legs } = others.example;
  if (!IS_APART.test(own) || IS_APART.test(maskOf(legs))) return null;
  const isFilled = (of: readonly (number | null)[], at: number): boolean => (of[at] ?? null) !== null;
  const places = [...Array(Math.max(legs.length, one.legs.length)).keys()];
  const [leg, ...more] = places.filter((at) => isFilled(one.legs, at) && !isFilled(legs, at));
  const [instead, ...lacking] = places.filter((at) => isFilled(legs, at) && !isFilled(one.legs, at));
  if (leg === undefined || instead === undefined || more.length + lacking.length > 0) return null;
  return { kind: "moved", leg, to: 0, instead, kept: others.count, tested: others.count + 1 };
}

const IS_APART = /x-+x/;
const FEW = 2;

/** What is meant by a number of which a nought was lost or two digits were exchanged, or that has another unit. */
function slips(value: number): readonly number[] {
  const digits = String(Math.round(value));
  const turned = [...digits.slice(1)].map((digit, at) =>
    Number(digits.slice(0, at) + digit + digits[at] + digits.slice(at + 2)),
  );
  return [10, 100, 1000, 0.1, 0.01, 0.001].map((factor) => value * factor).concat(turned);
}
