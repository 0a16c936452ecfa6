import { DIMENSION_LETTERS } from "../standards/dimension-letters";
import { greatest } from "../units/extremes";
import type { BarFacts } from "./bar-facts";
import { LENGTH_HABIT, MOST_OFF_BEND, USUAL_ROLLS } from "./identities.data";
import type { SheetFacts } from "./sheet-facts";

/** How a sheet makes a length out of legs: each leg once or twice, less so many diameters for the bends. */
export interface LengthHabit {
  readonly times: readonly number[];
  /** bar diameters taken off; below nought what hooks add */
  readonly less: number;
  readonly kept: number;
  readonly tested: number;
}

/** A bar whose length and legs do not follow its sheet's own habit. */
export interface OffHabit {
  readonly facts: BarFacts;
  readonly habit: LengthHabit;
  /** mm by the habit */
  readonly expected: number;
  /** place of the leg that the length is longer by than its legs together: one like it may be missing */
  readonly likeLeg?: number;
}

/**
 * Lengths that do not follow from their legs as most rows of the same shape on the sheet have it. Only rows whose
 * shape the standard does not hold are looked at: the others are measured against the standard itself.
 */
export function offLengthHabit({ lengthStep, answers }: SheetFacts): OffHabit[] {
  const step = lengthStep ?? LENGTH_HABIT.value.step;
  const off = answers.whole(offHabits, goesBy, step);
  return off.map(({ place, ...habit }) => ({ ...habit, facts: answers.bar(place) }));
}

/** The same of shapes that the standard in force holds, where the list keeps to another. */
export function offHabitOfCodes({ lengthStep, answers }: SheetFacts): OffHabit[] {
  const off = answers.whole(offHabitsOfCodes, codeAndLength, lengthStep ?? LENGTH_HABIT.value.step);
  return off.map(({ place, ...habit }) => ({ ...habit, facts: answers.bar(place) }));
}

function offHabitsOfCodes(bars: readonly BarFacts[], step: number): readonly OffPlace[] {
  const groups = new Map<string, number[]>();
  bars.forEach((facts, place) => {
    const key = codeOf(facts);
    if (key === null) return;
    const group = groups.get(key);
    if (group === undefined) groups.set(key, [place]);
    else group.push(place);
  });
  return [...groups.values()].flatMap((places) => {
    const alike = places.map((place) => bars[place] as BarFacts);
    return offIn(alike, step).flatMap(({ at, ...habit }) =>
      isByRolls(alike[at] as BarFacts, alike, habit.habit, step)
        ? []
        : [{ ...habit, place: places[at] as number }],
    );
  });
}

function codeAndLength(facts: BarFacts): string {
  const code = codeOf(facts);
  return code === null ? "" : JSON.stringify([code, facts.row.length, facts.diameter, legsOf(facts)]);
}

/** The code of a bar that the standard measures, with the letters that it fills. */
function codeOf(facts: BarFacts): string | null {
  const { row, diameter, definition } = facts;
  if (!isMeasuredByStandard(facts) || definition === null || facts.isPath) return null;
  if (row.length === null || row.length <= 0 || diameter === null || row.varying) return null;
  if (row.dims.filter((dim) => dim !== null).length < 2) return null;
  return `${definition.code} ${row.dims.map((dim) => (dim === null ? "-" : "x")).join("")}`;
}

interface OffPlace extends Omit<OffHabit, "facts"> {
  readonly place: number;
}

function offHabits(bars: readonly BarFacts[], step: number): readonly OffPlace[] {
  const groups = new Map<string, number[]>();
  bars.forEach((facts, place) => {
    const key = groupOf(facts);
    if (key === null) return;
    const group = groups.get(key);
    if (group === undefined) groups.set(key, [place]);
    else group.push(place);
  });
  const areSums = sumsThroughout(
    [...groups.values()].flat().map((place) => bars[place] as BarFacts),
    step,
  );
  const off = [...withStrays(groups)].flatMap(([key, places]) => {
    const alike = places.map((place) => bars[place] as BarFacts);
    const habit = offIn(alike, step, areSums);
    const own = habit.length === 0 && areSums ? offSums(alike, step) : habit;
    const found = own.filter(({ at, habit: kept }) => {
      const facts = bars[places[at] as number] as BarFacts;
      if (!key.startsWith(SHAPE) && (isLengthOfLink(facts) || isOpenAmongLinks(facts, kept, step)))
        return false;
      return !isByRolls(facts, alike, kept, step);
    });
    return found.map(({ at, ...habit }) => ({ ...habit, place: places[at] as number }));
  });
  if (!areSums) return off;
  const told = new Set(off.map(({ place }) => place));
  const others = [...groups.values()].flat().filter((place) => !told.has(place));
  return [...off, ...withoutLeg(bars, others, step)];
}

/** Where lengths are sums throughout, bars that are longer than their legs by just one of them: one more may be missing. */
function withoutLeg(bars: readonly BarFacts[], places: readonly number[], step: number): readonly OffPlace[] {
  const bent = places.filter((place) => isBent(bars[place] as BarFacts));
  const kept = bent.filter((place) => keeps(bars[place] as BarFacts, SUM, step)).length;
  return bent.flatMap((place) => {
    const facts = bars[place] as BarFacts;
    const legs = legsOf(facts);
    if (keeps(facts, SUM, step) || !hasRoom(facts, legs) || isLengthOfLink(facts)) return [];
    const expected = byHabit(facts, SUM);
    const more = (facts.row.length ?? 0) - expected;
    const likeLeg = legs.findIndex((leg) => leg !== null && Math.abs(leg - more) <= step);
    if (likeLeg < 0) return [];
    const habit = { times: new Array<number>(legs.length).fill(1), less: 0, kept, tested: bent.length };
    return [{ place, habit, expected, likeLeg }];
  });
}

/** One of the columns for legs is blank. */
export function hasRoom(facts: BarFacts, legs: readonly (number | null)[]): boolean {
  const columns = DIMENSION_LETTERS.filter((letter) => facts.has(letter)).length;
  return legs.includes(null) || columns > legs.length;
}

const isBent = (facts: BarFacts): boolean => legsOf(facts).filter((leg) => leg !== null).length > 1;

/** A bar whose legs no other of its shape fills so is held against the most of that shape: a leg may be missing. */
function withStrays(groups: ReadonlyMap<string, readonly number[]>): Map<string, number[]> {
  const joined = new Map([...groups].map(([key, places]) => [key, [...places]]));
  const ofShape = new Map<string, string[]>();
  for (const key of groups.keys()) {
    const alike = ofShape.get(shapeOf(key));
    if (alike === undefined) ofShape.set(shapeOf(key), [key]);
    else alike.push(key);
  }
  for (const [key, places] of groups) {
    if (places.length > 1 || !key.startsWith(SHAPE)) continue;
    let most: number[] = [];
    for (const other of ofShape.get(shapeOf(key)) ?? []) {
      const alike = other === key ? [] : (joined.get(other) ?? []);
      if (alike.length > most.length) most = alike;
    }
    if (most.length < 2) continue;
    for (const place of places) most.push(place);
    joined.delete(key);
  }
  return joined;
}

/** The key without the letters that are filled. */
export const shapeOf = (key: string): string => key.slice(0, key.lastIndexOf(" ") + 1);

export const SHAPE = "shape ";

/** Where no shape is named, a length of twice its two sides or of its one leg, and of ends, is another bar and no slip. */
function isLengthOfLink(facts: BarFacts): boolean {
  const [side = null, ...others] = legsOf(facts);
  if (side === null) return false;
  const [other = null] = others;
  const ends = (facts.row.length ?? 0) - (other === null ? side : 2 * (side + other));
  return ends >= 0 && ends <= LENGTH_HABIT.value.linkEnds * (facts.diameter ?? 0);
}

/** Where no shape is named, among closed links of two sides: an open bar of two legs, less what its bends take off. */
function isOpenAmongLinks(facts: BarFacts, { times }: LengthHabit, step: number): boolean {
  if (!times.some((many) => many > 1)) return false;
  const off = byHabit(facts, SUM) - (facts.row.length ?? 0);
  const most = MOST_OFF_BEND.value * bendsOf(facts) * (facts.diameter ?? 0);
  return off >= -step && off <= most + step;
}

/**
 * Thick bars are bent round larger rolls than thin ones, so that no one deduction makes all lengths of a shape: true
 * where the rolls of a country make this one, and as many of the others as the habit does.
 */
function isByRolls(facts: BarFacts, alike: readonly BarFacts[], habit: LengthHabit, step: number): boolean {
  if (habit.times.some((many) => many > 1)) return false;
  return USUAL_ROLLS.value.some((rolls) => {
    const keepsRolls = (one: BarFacts): boolean =>
      keeps(one, { times: [], less: bendsOf(one) * lessByRolls(one, rolls) }, step);
    return keepsRolls(facts) && alike.filter(keepsRolls).length >= habit.kept;
  });
}

/** Diameters that a bend takes off along the centre line, a right angle: geometry. */
export function lessByRolls(
  { diameter }: BarFacts,
  { thin, thick, from }: (typeof USUAL_ROLLS.value)[number],
): number {
  const roll = (diameter ?? 0) < from ? thin : thick;
  return 2 * (roll / 2 + 1) - (Math.PI / 2) * (roll / 2 + 0.5);
}

const bendsOf = (facts: BarFacts): number => legsOf(facts).filter((leg) => leg !== null).length - 1;

/** What a group's habit goes by; nothing of a bar that belongs to none. */
export function goesBy(facts: BarFacts): string {
  const group = groupOf(facts);
  return group === null ? "" : JSON.stringify([group, facts.row.length, facts.diameter, legsOf(facts)]);
}

/** Bars whose lengths may be made alike: of one shape, with the same legs filled where no shape is named. */
export function groupOf(facts: BarFacts): string | null {
  // asked while a sheet is re-checked, before its habits are known: the bar's own row tells
  if (isMeasuredByStandard(facts) || facts.isPath) return null;
  const { row, diameter } = facts;
  if (row.length === null || row.length <= 0 || diameter === null || row.varying) return null;
  if (legsOf(facts).length === 0) return null;
  const filled = row.dims.map((dim) => (dim === null ? "-" : "x")).join("");
  const named = row.shape ?? facts.typed("shape");
  // a sketch is another bar each time
  if (named === "99" || named === 99) return null;
  return typeof named === "string" || typeof named === "number"
    ? `${SHAPE}${named} ${filled}`
    : `legs ${filled}`;
}

/** The standard tells the length of the shape: by its formula, or about a former. */
function isMeasuredByStandard({ definition, bar, row, leastFormer }: BarFacts): boolean {
  if (definition === null || bar === null) return false;
  return definition.formula !== null || row.former !== null || leastFormer !== null;
}

export function legsOf({ row }: BarFacts): readonly (number | null)[] {
  return row.dims.some((dim) => dim !== null) ? row.dims : (row.legs ?? []);
}

/** `areSums`: on a sheet whose lengths are sums throughout three bars that differ tell of the fourth. */
function offIn(
  bars: readonly BarFacts[],
  step: number,
  areSums = false,
): { at: number; habit: LengthHabit; expected: number }[] {
  const { rows, share, slackPerDiameter, slack } = LENGTH_HABIT.value;
  if (bars.length < rows) return [];
  const habit = habitOf(bars, step);
  const least = areSums ? rows - 1 : rows;
  if (habit === null || habit.kept < least || habit.kept < share * habit.tested) return [];
  return bars.flatMap((facts, at) => {
    const expected = byHabit(facts, habit);
    const allowed = step + slack + slackPerDiameter * (facts.diameter ?? 0);
    return Math.abs((facts.row.length ?? 0) - expected) > allowed ? [{ at, habit, expected }] : [];
  });
}

/** Most bars of the sheet, whatever their shapes, are as long as their legs together. */
function sumsThroughout(bars: readonly BarFacts[], step: number): boolean {
  const { share, sumRows } = LENGTH_HABIT.value;
  const bent = bars.filter(isBent);
  const kept = bent.filter((facts) => keeps(facts, SUM, step)).length;
  return kept >= sumRows && kept >= share * bent.length;
}

const SUM = { times: [], less: 0 } as const;

function keeps(facts: BarFacts, habit: Pick<LengthHabit, "times" | "less">, step: number): boolean {
  const { slack, slackPerDiameter } = LENGTH_HABIT.value;
  const allowed = step + slack + slackPerDiameter * (facts.diameter ?? 0);
  return Math.abs((facts.row.length ?? 0) - byHabit(facts, habit)) <= allowed;
}

/** Few bars of a shape on such a sheet: those that are no sum, where two thirds of the shape are. */
function offSums(
  bars: readonly BarFacts[],
  step: number,
): { at: number; habit: LengthHabit; expected: number }[] {
  const { sumShare } = LENGTH_HABIT.value;
  const kept = bars.filter((facts) => keeps(facts, SUM, step)).length;
  if (kept < 2 || kept < sumShare * bars.length) return [];
  const places = greatest(bars.map((facts) => legsOf(facts).length));
  const habit = { times: new Array<number>(places).fill(1), less: 0, kept, tested: bars.length };
  return bars.flatMap((facts, at) =>
    keeps(facts, SUM, step) ? [] : [{ at, habit, expected: byHabit(facts, SUM) }],
  );
}

function byHabit(facts: BarFacts, { times, less }: Pick<LengthHabit, "times" | "less">): number {
  let sum = 0;
  legsOf(facts).forEach((leg, place) => {
    sum += (leg ?? 0) * (times[place] ?? 1);
  });
  return sum - less * (facts.diameter ?? 0);
}

/** What of the bars of a group every habit is tried on; the legs change with the habit, these do not. */
interface Tried {
  readonly bars: readonly BarFacts[];
  readonly diameters: Float64Array;
  readonly lengths: Float64Array;
  /** mm that a length may be off */
  readonly allowed: Float64Array;
}

/** The habit that most of the bars keep; the plainest of those that as many keep. */
function habitOf(bars: readonly BarFacts[], step: number): LengthHabit | null {
  const { slack, slackPerDiameter } = LENGTH_HABIT.value;
  const diameters = Float64Array.from(bars, ({ diameter }) => diameter ?? 0);
  const tried: Tried = {
    bars,
    diameters,
    lengths: Float64Array.from(bars, ({ row }) => row.length ?? 0),
    allowed: diameters.map((diameter) => step + slack + slackPerDiameter * diameter),
  };
  let best: LengthHabit | null = null;
  const places = greatest(bars.map((facts) => legsOf(facts).length));
  for (const times of multiples(places)) best = betterOf(tried, times, best);
  return best;
}

/** Each leg once, then every choice of legs that count twice, as in closed links. */
function multiples(places: number): (readonly number[])[] {
  if (places > LENGTH_HABIT.value.mostTwice) return [new Array<number>(places).fill(1)];
  return Array.from({ length: 2 ** places }, (_, choice) =>
    Array.from({ length: places }, (_place, place) => 1 + (Math.floor(choice / 2 ** place) % 2)),
  );
}

/** The habit of these multiples that more bars keep than keep the best so far; else that one. */
function betterOf(tried: Tried, times: readonly number[], before: LengthHabit | null): LengthHabit | null {
  const { most, within } = LENGTH_HABIT.value;
  const { bars, diameters, lengths, allowed } = tried;
  const sums = Float64Array.from(bars, (facts) => byHabit(facts, { times, less: 0 }));
  const seen = new Set<number>();
  let best = before;
  for (let at = 0; at < bars.length; at += 1) {
    const off = (sums[at] as number) - (lengths[at] as number);
    const less = Math.round(off / (diameters[at] || 1) / within) * within;
    if (Math.abs(less) > most || seen.has(less)) continue;
    seen.add(less);
    const keeps = (one: number): boolean => {
      const expected = (sums[one] as number) - less * (diameters[one] as number);
      return Math.abs((lengths[one] as number) - expected) <= (allowed[one] as number);
    };
    let kept = 0;
    for (let one = 0; one < bars.length; one += 1) if (keeps(one)) kept += 1;
    if (kept <= (best?.kept ?? 0)) continue;
    if (areDifferent(bars.filter((_, one) => keeps(one)))) best = { times, less, kept, tested: bars.length };
  }
  return best;
}

/** Rows alike in length and legs count once, for they prove nothing more. */
function areDifferent(bars: readonly BarFacts[]): boolean {
  const seen = new Set<string>();
  for (const facts of bars) {
    seen.add(`${facts.row.length} ${legsOf(facts).join(" ")}`);
    if (seen.size >= LENGTH_HABIT.value.different) return true;
  }
  return false;
}
