import type { Refusal } from "../units/refusal";
import { isRefusal } from "../units/refusal";
import { type BarOnBender, type BendOrderInput, layOnBender, sweepOf } from "./bar-on-bender";
import type { BarEnd } from "./bend-marks";
import type { SweepNote, SweepObstacle, SweepResult } from "./bend-sweep";

export type { BendOrderInput } from "./bar-on-bender";

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
  /** mm */
  readonly former: number;
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

/** What makes an order dear: a note, another former, turning over, end for end, and a little for the swing. */
const COST = { note: 10, formerChange: 5, turnOver: 2, endForEnd: 1, perMetreOfSwing: 0.01 };

/**
 * The cheapest order in which all bends can be made with nothing touching anything, or for each bend that
 * cannot be made the first reason with as much made as can be. What has been made matters, not in which
 * order, so the search runs over sets of bends. Swept as capsules, the compensated angle included.
 *
 * Refuses (unsure) bends of more than one plane, tools that are not known, and bends that overlap.
 */
export function bendOrder(input: BendOrderInput): BendOrder | Refusal {
  const bar = layOnBender(input);
  return isRefusal(bar) ? bar : search(bar, input.path.turns.length, input.bentTo);
}

interface State {
  readonly cost: number;
  readonly bends: readonly OrderedBend[];
  /** which way round and up the bar lay for the last bend; 0 before the first */
  readonly sense: number;
  readonly side: number;
  readonly former: number;
}

function search(bar: BarOnBender, count: number, degrees: readonly number[]): BendOrder {
  const full = (1 << count) - 1;
  const best: State[][] = Array.from({ length: full + 1 }, () => []);
  best[0] = [{ cost: 0, bends: [], sense: 0, side: 0, former: 0 }];
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
  readonly bar: BarOnBender;
  readonly bend: number;
  readonly side: number;
  readonly result: SweepResult & { clear: true };
  readonly degrees: readonly number[];
}

/** Puts the move behind each state before it, and keeps the cheapest of those that leave the bar lying alike. */
function extend(after: State[], before: readonly State[], move: Move): void {
  const { bar, bend, side, result } = move;
  const sense = side * Math.sign(bar.turns[bend] as number);
  const former = bar.tooling[bend]?.former ?? 0;
  for (const state of before) {
    const formerChanged = state.former !== 0 && state.former !== former;
    const endForEnd = state.side !== 0 && state.side !== side;
    // the machine bends one way only, so a bend the other way needs the bar's other face up
    const turnedOver = state.sense !== 0 && state.sense !== sense;
    const cost =
      state.cost +
      result.notes.length * COST.note +
      (formerChanged ? COST.formerChange : 0) +
      (turnedOver ? COST.turnOver : 0) +
      (endForEnd ? COST.endForEnd : 0) +
      (result.reach / 1000) * COST.perMetreOfSwing;
    const alike = after.findIndex(
      (other) => other.sense === sense && other.side === side && other.former === former,
    );
    if (alike >= 0 && (after[alike] as State).cost <= cost) continue;
    const step: OrderedBend = {
      bend: bend + 1,
      swinging: side > 0 ? "last end" : "first end",
      turnedOver,
      height: result.height,
      endForEnd,
      former,
      swingRadius: result.reach,
      bentTo: move.degrees[bend] as number,
      notes: result.notes,
    };
    const next: State = { cost, bends: [...state.bends, step], sense, side, former };
    if (alike >= 0) after[alike] = next;
    else after.push(next);
  }
}

function blockedAt(bar: BarOnBender, count: number, made: number): BendOrder {
  const all = Array.from({ length: count }, (_, bend) => bend);
  const blocked = all
    .filter((bend) => !((made >> bend) & 1))
    .map((bend): BlockedBend => ({ bend: bend + 1, reasons: reasonsOf(bar, made, bend) }));
  return { kind: "blocked", made: all.filter((bend) => (made >> bend) & 1).map((bend) => bend + 1), blocked };
}

/** What is met while turning tells more than a leg that is too short for either side. */
function reasonsOf(bar: BarOnBender, made: number, bend: number): BlockedReason[] {
  const reasons: BlockedReason[] = [];
  for (const side of [1, -1]) {
    const result = sweepOf(bar, made, bend, side);
    if (result.clear) continue;
    reasons.push({ swinging: side > 0 ? "last end" : "first end", obstacle: result.obstacle, at: result.at });
  }
  return reasons.sort((a, b) => Number(b.at !== null) - Number(a.at !== null));
}

function bitsOf(mask: number): number {
  let count = 0;
  for (let left = mask; left > 0; left &= left - 1) count += 1;
  return count;
}
