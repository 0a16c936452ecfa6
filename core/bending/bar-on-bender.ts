import { flatten } from "../geometry/curve";
import { segmentDistanceSquared } from "../geometry/segment-distance";
import { centreLine } from "../shapes/centre-line";
import type { PlanarPath } from "../shapes/path";
import { defineRefusal, isRefusal, type Refusal } from "../units/refusal";
import { toTenth } from "../units/to-tenth";
import { bendsOverlapOnBar } from "./bend-marks";
import { bendSweep, type SweepResult } from "./bend-sweep";
import type { Machine } from "./machine";
import { type ChainStep, type HeldChain, heldChain, type SideChain, sideChain } from "./side-chain";
import { type Tooling, toolingOf } from "./tooling";

export interface BendOrderInput {
  readonly path: PlanarPath;
  /** mm */
  readonly diameter: number;
  /** mm, for turns that bring no radius of their own; those take a former of twice their radius */
  readonly former: number;
  readonly machine: Machine;
  /** degrees bent to, one a turn, unsigned: the compensated angles */
  readonly bentTo: readonly number[];
}

const notInOnePlane = defineRefusal(
  "bends-not-in-one-plane",
  "not-held",
  "the order of bends was not checked: they lie in more than one plane, so try one bar, and stop where it meets tools or itself",
);
const tooManyBends = defineRefusal(
  "too-many-bends-to-order",
  "not-held",
  "the order of {count} bends was not searched: {most} is the limit, so try one bar, and stop where it meets tools or itself",
);

/** mm that parts of the bar must stay clear of each other while they move. */
const CLEARANCE = 1;
const MOST_BENDS = 12;

/** One bar dressed on one bender, with what was laid out of it so far. */
export interface BarOnBender {
  /** one a bend */
  readonly tooling: readonly Tooling[];
  readonly straights: readonly number[];
  readonly arcs: readonly number[];
  /** radians, signed */
  readonly turns: readonly number[];
  /** radians, unsigned */
  readonly bentTo: readonly number[];
  /** pairs of pieces that lie over each other in the finished bar */
  readonly overlaps: readonly (readonly [number, number])[];
  readonly chains: Map<number, SideChain>;
  readonly heldChains: Map<number, HeldChain>;
  readonly scratch: Float64Array;
}

/**
 * The bar laid out for its sweeps. Refuses (unsure) bends of more than one plane or more bends than are
 * searched, tools that are not known or do not fit, and bends that overlap.
 */
export function layOnBender(input: BendOrderInput): BarOnBender | Refusal {
  const { path } = input;
  if (!path.inOnePlane) return notInOnePlane({});
  const count = path.turns.length;
  if (count > MOST_BENDS) return tooManyBends({ count, most: MOST_BENDS });
  const tooling: Tooling[] = [];
  for (const turn of path.turns) {
    const former = turn.radius === null ? input.former : 2 * turn.radius;
    const dressed = toolingOf(input.machine, { diameter: input.diameter, former });
    if (isRefusal(dressed)) return dressed;
    tooling.push(dressed);
  }
  return barOf(input, tooling);
}

function barOf(input: BendOrderInput, tooling: readonly Tooling[]): BarOnBender | Refusal {
  const { path } = input;
  const line = centreLine(path, { diameter: input.diameter, radius: input.former / 2 });
  const leg = line.straights.findIndex((straight) => straight < -1e-9);
  if (leg >= 0) {
    const straight = line.straights[leg] as number;
    return bendsOverlapOnBar({
      leg: path.legs[leg]?.letter ?? leg + 1,
      length: toTenth(path.legs[leg]?.length ?? 0),
      straight: toTenth(straight),
      short: toTenth(-straight),
    });
  }
  return {
    tooling,
    straights: line.straights,
    arcs: line.arcs,
    turns: path.turns.map((turn) => (turn.angle * Math.PI) / 180),
    bentTo: input.bentTo.map((degrees) => (degrees * Math.PI) / 180),
    overlaps: overlapsOf(
      line.pieces.map((piece) => flatten([piece], Math.PI / 18)),
      input.diameter,
    ),
    chains: new Map(),
    heldChains: new Map(),
    // two numbers a chord, and no bend has more than a dozen chords
    scratch: new Float64Array(path.legs.length * 32),
  };
}

/** Pieces of the finished bar that come closer than a bar allows; neighbours and their next do not count. */
function overlapsOf(
  pieces: readonly (readonly { x: number; y: number }[])[],
  diameter: number,
): (readonly [number, number])[] {
  const found: [number, number][] = [];
  const limit = (diameter + CLEARANCE) ** 2;
  pieces.forEach((one, first) => {
    for (let second = first + 3; second < pieces.length; second += 1) {
      if (nearerThan(one, pieces[second] ?? [], limit)) found.push([first, second]);
    }
  });
  return found;
}

function nearerThan(
  one: readonly { x: number; y: number }[],
  other: readonly { x: number; y: number }[],
  limit: number,
): boolean {
  for (let i = 1; i < one.length; i += 1) {
    const a = one[i - 1]!;
    const b = one[i]!;
    for (let k = 1; k < other.length; k += 1) {
      const c = other[k - 1]!;
      const d = other[k]!;
      if (segmentDistanceSquared(a.x, a.y, b.x, b.y, c.x, c.y, d.x, d.y) < limit) return true;
    }
  }
  return false;
}

/** The sweep of one bend, from 0, once the bends of the set `made` are there; side 1 swings the last end. */
export function sweepOf(bar: BarOnBender, made: number, bend: number, side: number): SweepResult {
  const tooling = bar.tooling[bend] as Tooling;
  return bendSweep({
    swinging: swingingChain(bar, made, bend, side),
    held: heldChainOf(bar, made, bend, -side),
    scratch: bar.scratch,
    angle: Math.abs(bar.turns[bend] as number),
    bentTo: bar.bentTo[bend] as number,
    radius: radiusOf(tooling),
    tooling,
    clearance: CLEARANCE,
    passesItself: bar.overlaps.some((pair) => closes(pair, made, bend)),
  });
}

/** True where this bend completes a stretch whose ends lie over each other in the finished bar. */
function closes([first, second]: readonly [number, number], made: number, bend: number): boolean {
  // pieces are leg 0, bend 0, leg 1, ...: bends strictly between both, and the pieces themselves where bends
  const from = Math.floor(first / 2);
  const to = Math.ceil(second / 2) - 1;
  if (bend < from || bend > to) return false;
  for (let between = from; between <= to; between += 1) {
    if (between !== bend && !((made >> between) & 1)) return false;
  }
  return true;
}

function swingingChain(bar: BarOnBender, made: number, bend: number, side: number): SideChain {
  const key = chainKey(made, bend, side);
  const known = bar.chains.get(key);
  if (known !== undefined) return known;
  const chain = layChain(bar, made, bend, side, Math.sign(bar.turns[bend] as number) * side);
  bar.chains.set(key, chain);
  return chain;
}

function heldChainOf(bar: BarOnBender, made: number, bend: number, side: number): HeldChain {
  const key = chainKey(made, bend, side);
  const known = bar.heldChains.get(key);
  if (known !== undefined) return known;
  const sign = Math.sign(bar.turns[bend] as number) * -side;
  const chain = heldChain(layChain(bar, made, bend, side, sign), radiusOf(bar.tooling[bend] as Tooling));
  bar.heldChains.set(key, chain);
  return chain;
}

/** mm, centre line round the former */
function radiusOf({ former, diameter }: Tooling): number {
  return (former + diameter) / 2;
}

/** Only the bends on that side decide how it lies. */
function chainKey(made: number, bend: number, side: number): number {
  const mask = side > 0 ? made >> (bend + 1) : made & ((1 << bend) - 1);
  return (mask * MOST_BENDS + bend) * 2 + (side > 0 ? 1 : 0);
}

/** One side of a bend in the frame in which that bend is counter-clockwise; `sign` mirrors it so. */
function layChain(bar: BarOnBender, made: number, bend: number, side: number, sign: number): SideChain {
  const count = bar.turns.length;
  const steps: ChainStep[] = [];
  const leg = (at: number) => steps.push({ piece: 2 * at, length: bar.straights[at] as number, angle: 0 });
  const turn = (at: number) => {
    // walked backwards a bend turns the other way
    const angle = (made >> at) & 1 ? (bar.turns[at] as number) * side * sign : 0;
    steps.push({ piece: 2 * at + 1, length: bar.arcs[at] as number, angle });
  };
  if (side > 0) {
    leg(bend + 1);
    for (let at = bend + 1; at < count; at += 1) {
      turn(at);
      leg(at + 1);
    }
  } else {
    leg(bend);
    for (let at = bend - 1; at >= 0; at -= 1) {
      turn(at);
      leg(at);
    }
  }
  return sideChain(steps);
}
