import { type BarSize, centreLine, setBack } from "../shapes/centre-line";
import type { PlanarPath } from "../shapes/path";
import { defineRefusal, type Refusal } from "../units/refusal";
import { toTenth } from "../units/to-tenth";

export type BarEnd = "first end" | "last end";

/** Where a stop bears: on an end of the bar, or on a bend that is made already. */
export interface StopDistance {
  /** mm from the line through the former's centre, square to the bar */
  readonly distance: number;
  /** number of the bend whose outside it is measured from; null from the bar's end */
  readonly fromBend: number | null;
  /** false where that bend turns by less than 90, so that no face of it stands square to the bar */
  readonly face: boolean;
}

/** One bend on the bar as cut, straight, measured from the path's first end. */
export interface BendMark {
  /** from 1, along the path */
  readonly bend: number;
  /** degrees, signed as in the path */
  readonly turn: number;
  /** mm */
  readonly start: number;
  readonly middle: number;
  readonly end: number;
  /** the end that swings; the other is held */
  readonly swinging: BarEnd;
  readonly fromHeld: StopDistance;
  readonly fromSwinging: StopDistance;
}

/** A bend in working order and the end that swings for it. */
export interface WorkStep {
  /** from 1 */
  readonly bend: number;
  readonly swinging: BarEnd;
}

export interface BendMarksInput extends BarSize {
  readonly path: PlanarPath;
  /** mm, the bar as cut; what it has over the developed length lies in the free leg */
  readonly cutLength: number;
  /** along the path with the last end swinging, unless given */
  readonly order?: readonly WorkStep[];
}

export const bendsOverlapOnBar = defineRefusal(
  "bends-overlap-on-bar",
  "value",
  "leg {leg} of {length} leaves a straight of {straight} between its bends, which overlap: lengthen it by {short} or take a smaller former",
);
const cutTooShort = defineRefusal(
  "cut-too-short",
  "value",
  "a cut length of {cut} is below the developed length of {developed} by more than the free leg's straight of {free}: cut it longer",
);

/**
 * The marks of every bend on the straight bar, with the stops for both sides. From an end, the stop to the
 * line through the former's centre is the start of the bend as seen from the held side. Where a bend made
 * earlier lies on that side, the stop is from that bend's outside (derived).
 *
 * Refuses bends that overlap, and a bar cut so short that the free leg is used up.
 *
 * @example
 * bendMarks({ path, diameter: 16, radius: 32, cutLength: 975 }); // an L of 600 x 400: start 552, end 614.8
 */
export function bendMarks(input: BendMarksInput): BendMark[] | Refusal {
  const { path } = input;
  const line = centreLine(path, input);
  const overlapping = line.straights.findIndex((straight) => straight < -1e-9);
  if (overlapping >= 0) return overlap(path, line.straights, overlapping);
  const surplus = input.cutLength - line.developed;
  const free = freeLeg(path);
  const freeStraight = (line.straights[free] as number) + surplus;
  if (freeStraight < -1e-9) {
    return cutTooShort({
      cut: toTenth(input.cutLength),
      developed: toTenth(line.developed),
      free: toTenth(line.straights[free] as number),
    });
  }
  const straights = line.straights.map((straight, leg) => (leg === free ? freeStraight : straight));
  const starts: number[] = [];
  let at = 0;
  path.turns.forEach((_, bend) => {
    at += straights[bend] as number;
    starts.push(at);
    at += line.arcs[bend] as number;
  });
  const bar: LaidBar = {
    cutLength: input.cutLength,
    starts,
    ends: starts.map((start, bend) => start + (line.arcs[bend] as number)),
    setBacks: path.turns.map((turn) =>
      setBack(Math.abs(turn.angle), turn.radius ?? input.radius, input.diameter),
    ),
    turns: path.turns.map((turn) => turn.angle),
  };
  const order =
    input.order ?? path.turns.map((_, bend): WorkStep => ({ bend: bend + 1, swinging: "last end" }));
  const made: number[] = [];
  const marks = order.map((step) => {
    const mark = markOf(bar, step, made);
    made.push(step.bend - 1);
    return mark;
  });
  return marks.sort((a, b) => a.bend - b.bend);
}

/** The leg that takes up tolerance: the one marked so, else the last. */
export function freeLeg(path: PlanarPath): number {
  const marked = path.legs.findIndex((leg) => leg.free);
  return marked >= 0 ? marked : path.legs.length - 1;
}

interface LaidBar {
  readonly cutLength: number;
  readonly starts: readonly number[];
  readonly ends: readonly number[];
  readonly setBacks: readonly number[];
  readonly turns: readonly number[];
}

function markOf(bar: LaidBar, step: WorkStep, made: readonly number[]): BendMark {
  const bend = step.bend - 1;
  const start = bar.starts[bend] as number;
  const end = bar.ends[bend] as number;
  // the bend begins at its end on the held side
  const line = step.swinging === "last end" ? start : end;
  const towardsFirst = stopTowardsFirst(bar, line, bend, made);
  const towardsLast = stopTowardsLast(bar, line, bend, made);
  const [fromHeld, fromSwinging] =
    step.swinging === "last end" ? [towardsFirst, towardsLast] : [towardsLast, towardsFirst];
  return {
    bend: step.bend,
    turn: bar.turns[bend] as number,
    start,
    middle: (start + end) / 2,
    end,
    swinging: step.swinging,
    fromHeld,
    fromSwinging,
  };
}

function stopTowardsFirst(bar: LaidBar, line: number, bend: number, made: readonly number[]): StopDistance {
  const nearest = Math.max(-1, ...made.filter((other) => other < bend));
  if (nearest < 0) return { distance: line, fromBend: null, face: false };
  return fromBend(bar, nearest, line - (bar.ends[nearest] as number));
}

function stopTowardsLast(bar: LaidBar, line: number, bend: number, made: readonly number[]): StopDistance {
  const nearest = Math.min(Infinity, ...made.filter((other) => other > bend));
  if (nearest === Infinity) return { distance: bar.cutLength - line, fromBend: null, face: false };
  return fromBend(bar, nearest, (bar.starts[nearest] as number) - line);
}

function fromBend(bar: LaidBar, bend: number, straight: number): StopDistance {
  return {
    distance: straight + (bar.setBacks[bend] as number),
    fromBend: bend + 1,
    face: Math.abs(bar.turns[bend] as number) >= 90,
  };
}

function overlap(path: PlanarPath, straights: readonly number[], leg: number): Refusal {
  const straight = straights[leg] as number;
  return bendsOverlapOnBar({
    leg: path.legs[leg]?.letter ?? leg + 1,
    length: toTenth(path.legs[leg]?.length ?? 0),
    straight: toTenth(straight),
    short: toTenth(-straight),
  });
}
