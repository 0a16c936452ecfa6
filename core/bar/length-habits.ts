import type { BarFacts } from "./bar-facts";
import { LENGTH_HABIT } from "./identities.data";
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
}

/**
 * Lengths that do not follow from their legs as most rows of the same shape on the sheet have it. Only rows whose
 * shape the standard does not hold are looked at: the others are measured against the standard itself.
 */
export function offLengthHabit({ reading, answers, bars }: SheetFacts): OffHabit[] {
  const step = reading.lengthStep ?? LENGTH_HABIT.value.step;
  const off = answers.whole(offHabits, goesBy, step);
  return off.map(({ place, ...habit }) => ({ ...habit, facts: bars[place] as BarFacts }));
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
  return [...withStrays(groups).values()].flatMap((places) => {
    const found = offIn(
      places.map((place) => bars[place] as BarFacts),
      step,
    );
    return found.map(({ at, ...habit }) => ({ ...habit, place: places[at] as number }));
  });
}

/** A bar whose legs no other of its shape fills so is held against the most of that shape: a leg may be missing. */
function withStrays(groups: ReadonlyMap<string, readonly number[]>): Map<string, number[]> {
  const joined = new Map([...groups].map(([key, places]) => [key, [...places]]));
  for (const [key, places] of groups) {
    if (places.length > 1 || !key.startsWith(SHAPE)) continue;
    const shape = key.slice(0, key.lastIndexOf(" ") + 1);
    const alike = [...joined].filter(([other]) => other !== key && other.startsWith(shape));
    const [most] = alike.sort((a, b) => b[1].length - a[1].length);
    if (most === undefined || most[1].length < 2) continue;
    most[1].push(...places);
    joined.delete(key);
  }
  return joined;
}

const SHAPE = "shape ";

/** What a group's habit goes by; nothing of a bar that belongs to none. */
function goesBy(facts: BarFacts): string {
  const group = groupOf(facts);
  return group === null ? "" : JSON.stringify([group, facts.row.length, facts.diameter, legsOf(facts)]);
}

/** Bars whose lengths may be made alike: of one shape, with the same legs filled where no shape is named. */
function groupOf(facts: BarFacts): string | null {
  if (facts.definition !== null || facts.isPath) return null;
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

function legsOf({ row }: BarFacts): readonly (number | null)[] {
  return row.dims.some((dim) => dim !== null) ? row.dims : (row.legs ?? []);
}

function offIn(
  bars: readonly BarFacts[],
  step: number,
): { at: number; habit: LengthHabit; expected: number }[] {
  const { rows, share, slackPerDiameter, slack } = LENGTH_HABIT.value;
  if (bars.length < rows) return [];
  const habit = habitOf(bars, step);
  if (habit === null || habit.kept < rows || habit.kept < share * habit.tested) return [];
  return bars.flatMap((facts, at) => {
    const expected = byHabit(facts, habit);
    const allowed = step + slack + slackPerDiameter * (facts.diameter ?? 0);
    return Math.abs((facts.row.length ?? 0) - expected) > allowed ? [{ at, habit, expected }] : [];
  });
}

function byHabit(facts: BarFacts, { times, less }: Pick<LengthHabit, "times" | "less">): number {
  let sum = 0;
  legsOf(facts).forEach((leg, place) => {
    sum += (leg ?? 0) * (times[place] ?? 1);
  });
  return sum - less * (facts.diameter ?? 0);
}

/** The habit that most of the bars keep; the plainest of those that as many keep. */
function habitOf(bars: readonly BarFacts[], step: number): LengthHabit | null {
  let best: LengthHabit | null = null;
  const places = Math.max(...bars.map((facts) => legsOf(facts).length));
  for (const times of multiples(places)) {
    const found = lessOf(bars, times, step);
    if (found !== null && (best === null || found.kept > best.kept)) best = found;
  }
  return best;
}

/** Each leg once, then every choice of legs that count twice, as in closed links. */
function multiples(places: number): (readonly number[])[] {
  if (places > LENGTH_HABIT.value.mostTwice) return [new Array<number>(places).fill(1)];
  return Array.from({ length: 2 ** places }, (_, choice) =>
    Array.from({ length: places }, (_place, place) => 1 + (Math.floor(choice / 2 ** place) % 2)),
  );
}

/** How many diameters less most of the bars have under these multiples. */
function lessOf(bars: readonly BarFacts[], times: readonly number[], step: number): LengthHabit | null {
  const { most, within } = LENGTH_HABIT.value;
  let best: LengthHabit | null = null;
  const tried = new Set<number>();
  for (const facts of bars) {
    const off = byHabit(facts, { times, less: 0 }) - (facts.row.length ?? 0);
    const less = Math.round(off / (facts.diameter ?? 1) / within) * within;
    if (Math.abs(less) > most || tried.has(less)) continue;
    tried.add(less);
    const kept = distinctKept(bars, { times, less }, step);
    if (best === null || kept > best.kept) best = { times, less, kept, tested: bars.length };
  }
  return best;
}

/** Rows that keep a habit; rows alike in length and legs count once, for they prove nothing more. */
function distinctKept(
  bars: readonly BarFacts[],
  habit: Pick<LengthHabit, "times" | "less">,
  step: number,
): number {
  const { slack, slackPerDiameter } = LENGTH_HABIT.value;
  const seen = new Set<string>();
  let kept = 0;
  for (const facts of bars) {
    const allowed = step + slack + slackPerDiameter * (facts.diameter ?? 0);
    if (Math.abs((facts.row.length ?? 0) - byHabit(facts, habit)) > allowed) continue;
    kept += 1;
    seen.add(`${facts.row.length} ${legsOf(facts).join(" ")}`);
  }
  return seen.size >= LENGTH_HABIT.value.different ? kept : 0;
}
