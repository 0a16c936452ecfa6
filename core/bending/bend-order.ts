import { flatten } from "../geometry/curve";
import { segmentDistanceSquared } from "../geometry/segment-distance";
import { centreLine } from "../shapes/centre-line";
import type { PlanarPath } from "../shapes/path";
import { defineRefusal, isRefusal, type Refusal } from "../units/refusal";
import { type BarEnd, bendsOverlapOnBar } from "./bend-marks";
import { bendSweep, type SweepNote, type SweepObstacle, type SweepResult } from "./bend-sweep";
import type { Machine } from "./machine";
import { type ChainStep, type HeldChain, heldChain, type SideChain, sideChain } from "./side-chain";
import { type Tooling, toolingOf } from "./tooling";

export interface BendOrderInput {
  readonly path: PlanarPath;
  /** mm */
  readonly diameter: number;
  /** mm; every turn is bent round it */
  readonly former: number;
  readonly machine: Machine;
  /** degrees bent to, one a turn, unsigned: the compensated angles */
  readonly bentTo: readonly number[];
}

/** One bend in working order. */
export interface OrderedBend {
  /** from 1, along the path */
  readonly bend: number;
  readonly swinging: BarEnd;
  /** the bar is turned over before this bend; `height` mm of room are needed for it */
  readonly turnedOver: boolean;
  readonly height: number;
  /** the bar is turned end for end before this bend */
  readonly endForEnd: boolean;
  /** mm, radius about the former that must be clear of people */
  readonly swingRadius: number;
  /** degrees */
  readonly bentTo: number;
  readonly notes: readonly SweepNote[];
}

/** Why a bend cannot be made once the others that can be made are. */
export interface BlockedBend {
  readonly bend: number;
  /** one a side that could swing; the more telling first */
  readonly reasons: readonly BlockedReason[];
}

export interface BlockedReason {
  readonly swinging: BarEnd;
  readonly obstacle: SweepObstacle;
  /** degrees turned when it happens; null before the machine turns */
  readonly at: number | null;
}

export type BendOrder =
  | {
      readonly kind: "order";
      readonly bends: readonly OrderedBend[];
      readonly turnedOver: number;
      readonly endForEnd: number;
      /** mm, the largest of all bends */
      readonly swingRadius: number;
    }
  | {
      readonly kind: "blocked";
      /** bends that can be made, the most that any order makes */
      readonly made: readonly number[];
      readonly blocked: readonly BlockedBend[];
    };

const notInOnePlane = defineRefusal(
  "bends-not-in-one-plane",
  "not-held",
  "the order of bends was not checked: they lie in more than one plane, so try one bar slowly",
);
const tooManyBends = defineRefusal(
  "too-many-bends-to-order",
  "not-held",
  "the order of {count} bends was not searched: {most} is the limit, so try one bar slowly",
);

/** mm that parts of the bar must stay clear of each other while they move. */
const CLEARANCE = 1;
const MOST_BENDS = 12;
/** What makes an order dear: a note, turning over, end for end, and a little for the swing. */
const COST = { note: 10, turnOver: 2, endForEnd: 1, perMetreOfSwing: 0.01 };

/**
 * The cheapest order in which all bends can be made with nothing touching anything, or for each bend that
 * cannot be made the first reason with as much made as can be. What has been made matters, not in which
 * order, so the search runs over sets of bends. Swept as capsules, the compensated angle included.
 *
 * Refuses (unsure) bends of more than one plane, tools that are not known, and bends that overlap.
 */
export function bendOrder(input: BendOrderInput): BendOrder | Refusal {
  const { path } = input;
  if (!path.inOnePlane) return notInOnePlane({});
  const count = path.turns.length;
  if (count > MOST_BENDS) return tooManyBends({ count, most: MOST_BENDS });
  const tooling = toolingOf(input.machine, input);
  if (isRefusal(tooling)) return tooling;
  const bar = barOf(input, tooling);
  if (isRefusal(bar)) return bar;
  return search(bar, count, input.bentTo);
}

interface Bar {
  readonly tooling: Tooling;
  readonly straights: readonly number[];
  readonly arcs: readonly number[];
  /** radians, signed */
  readonly turns: readonly number[];
  /** radians, unsigned */
  readonly bentTo: readonly number[];
  readonly radius: number;
  /** pairs of pieces that lie over each other in the finished bar */
  readonly overlaps: readonly (readonly [number, number])[];
  readonly chains: Map<number, SideChain>;
  readonly heldChains: Map<number, HeldChain>;
  readonly scratch: Float64Array;
}

function barOf(input: BendOrderInput, tooling: Tooling): Bar | Refusal {
  const radius = (input.former + input.diameter) / 2;
  // all on one former: radii of the path's own need their own setting of the machine
  const path = {
    ...input.path,
    turns: input.path.turns.map((turn) => ({ ...turn, radius: input.former / 2 })),
  };
  const line = centreLine(path, { diameter: input.diameter, radius: input.former / 2 });
  const leg = line.straights.findIndex((straight) => straight < -1e-9);
  if (leg >= 0) {
    const straight = line.straights[leg] as number;
    return bendsOverlapOnBar({
      leg: path.legs[leg]?.letter ?? leg + 1,
      length: short(path.legs[leg]?.length ?? 0),
      straight: short(straight),
      short: short(-straight),
    });
  }
  return {
    tooling,
    straights: line.straights,
    arcs: line.arcs,
    turns: path.turns.map((turn) => (turn.angle * Math.PI) / 180),
    bentTo: input.bentTo.map((degrees) => (degrees * Math.PI) / 180),
    radius,
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

interface State {
  readonly cost: number;
  readonly bends: readonly OrderedBend[];
  /** which way round and up the bar lay for the last bend; 0 before the first */
  readonly sense: number;
  readonly side: number;
}

function search(bar: Bar, count: number, degrees: readonly number[]): BendOrder {
  const full = (1 << count) - 1;
  const best: State[][] = Array.from({ length: full + 1 }, () => []);
  best[0] = [{ cost: 0, bends: [], sense: 0, side: 0 }];
  let farthest = 0;
  for (let made = 0; made < full; made += 1) {
    const states = best[made] as State[];
    if (states.length === 0) continue;
    if (bitsOf(made) > bitsOf(farthest)) farthest = made;
    for (let bend = 0; bend < count; bend += 1) {
      if ((made >> bend) & 1) continue;
      for (const side of [1, -1]) {
        const result = sweepOf(bar, made, bend, side);
        if (result.clear)
          extend(best[made | (1 << bend)] as State[], states, { bar, bend, side, result, degrees });
      }
    }
  }
  const finished = (best[full] as State[]).sort((a, b) => a.cost - b.cost)[0];
  if (finished === undefined) return blockedAt(bar, count, farthest);
  return {
    kind: "order",
    bends: finished.bends,
    turnedOver: finished.bends.filter((step) => step.turnedOver).length,
    endForEnd: finished.bends.filter((step) => step.endForEnd).length,
    swingRadius: Math.max(0, ...finished.bends.map((step) => step.swingRadius)),
  };
}

interface Move {
  readonly bar: Bar;
  readonly bend: number;
  readonly side: number;
  readonly result: SweepResult & { clear: true };
  readonly degrees: readonly number[];
}

/** Puts the move behind each state before it, and keeps the cheapest of those that leave the bar lying alike. */
function extend(after: State[], before: readonly State[], move: Move): void {
  const { bar, bend, side, result } = move;
  const sense = side * Math.sign(bar.turns[bend] as number);
  for (const state of before) {
    const endForEnd = state.side !== 0 && state.side !== side;
    // the machine bends one way only, so a bend the other way needs the bar's other face up
    const turnedOver = state.sense !== 0 && state.sense !== sense;
    const cost =
      state.cost +
      result.notes.length * COST.note +
      (turnedOver ? COST.turnOver : 0) +
      (endForEnd ? COST.endForEnd : 0) +
      (result.reach / 1000) * COST.perMetreOfSwing;
    const alike = after.findIndex((other) => other.sense === sense && other.side === side);
    if (alike >= 0 && (after[alike] as State).cost <= cost) continue;
    const step: OrderedBend = {
      bend: bend + 1,
      swinging: side > 0 ? "last end" : "first end",
      turnedOver,
      height: result.height,
      endForEnd,
      swingRadius: result.reach,
      bentTo: move.degrees[bend] as number,
      notes: result.notes,
    };
    const next: State = { cost, bends: [...state.bends, step], sense, side };
    if (alike >= 0) after[alike] = next;
    else after.push(next);
  }
}

function blockedAt(bar: Bar, count: number, made: number): BendOrder {
  const all = Array.from({ length: count }, (_, bend) => bend);
  const blocked = all
    .filter((bend) => !((made >> bend) & 1))
    .map((bend): BlockedBend => ({ bend: bend + 1, reasons: reasonsOf(bar, made, bend) }));
  return { kind: "blocked", made: all.filter((bend) => (made >> bend) & 1).map((bend) => bend + 1), blocked };
}

/** What is met while turning tells more than a leg that is too short for either side. */
function reasonsOf(bar: Bar, made: number, bend: number): BlockedReason[] {
  const reasons: BlockedReason[] = [];
  for (const side of [1, -1]) {
    const result = sweepOf(bar, made, bend, side);
    if (result.clear) continue;
    reasons.push({ swinging: side > 0 ? "last end" : "first end", obstacle: result.obstacle, at: result.at });
  }
  return reasons.sort((a, b) => Number(b.at !== null) - Number(a.at !== null));
}

function sweepOf(bar: Bar, made: number, bend: number, side: number): SweepResult {
  return bendSweep({
    swinging: swingingChain(bar, made, bend, side),
    held: heldChainOf(bar, made, bend, -side),
    scratch: bar.scratch,
    angle: Math.abs(bar.turns[bend] as number),
    bentTo: bar.bentTo[bend] as number,
    radius: bar.radius,
    tooling: bar.tooling,
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

function swingingChain(bar: Bar, made: number, bend: number, side: number): SideChain {
  const key = chainKey(made, bend, side);
  const known = bar.chains.get(key);
  if (known !== undefined) return known;
  const chain = layChain(bar, made, bend, side, Math.sign(bar.turns[bend] as number) * side);
  bar.chains.set(key, chain);
  return chain;
}

function heldChainOf(bar: Bar, made: number, bend: number, side: number): HeldChain {
  const key = chainKey(made, bend, side);
  const known = bar.heldChains.get(key);
  if (known !== undefined) return known;
  const sign = Math.sign(bar.turns[bend] as number) * -side;
  const chain = heldChain(layChain(bar, made, bend, side, sign), bar.radius);
  bar.heldChains.set(key, chain);
  return chain;
}

/** Only the bends on that side decide how it lies. */
function chainKey(made: number, bend: number, side: number): number {
  const mask = side > 0 ? made >> (bend + 1) : made & ((1 << bend) - 1);
  return (mask * MOST_BENDS + bend) * 2 + (side > 0 ? 1 : 0);
}

/** One side of a bend in the frame in which that bend is counter-clockwise; `sign` mirrors it so. */
function layChain(bar: Bar, made: number, bend: number, side: number, sign: number): SideChain {
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

function bitsOf(mask: number): number {
  let count = 0;
  for (let left = mask; left > 0; left &= left - 1) count += 1;
  return count;
}

function short(value: number): string {
  return String(Math.round(value * 10) / 10);
}
