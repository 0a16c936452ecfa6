import type { BarPath } from "../shapes/path";
import { memoryOfThreads } from "../units/memory-of-threads";
import type { LengthJudgement } from "./length-judgement";

/** What is known of a bar, each in a bit of its own. */
export enum Known {
  /** all of the others are told */
  Settled = 1,
  /** its shape is refused */
  Refused = 2,
  /** some limit of its shape is not met */
  Broken = 4,
  /** it has an exact length */
  Exact = 8,
  /** the typed length is held against the dimensions */
  Judged = 16,
  /** the typed length fits the dimensions */
  Fits = 32,
  // 64 to 4096 tell its path and bends
  /** its printed formula is beside the length of its centre line */
  Beside = 8192,
  /** it has a shorter straight between two bends than the standard has */
  ShortStraight = 16384,
}

/** where the number of bends begins */
const BENDS_AT = 64;
/** where the kind of the path begins */
const PATH_AT = 1024;
const PATHS_END = 8192;
/** numbers of bends that stand for more than are kept, and for none that can be told */
const MANY = 14;
const NONE = 15;

type PathKind = BarPath["kind"] | null;
const PATHS: readonly PathKind[] = [null, "planar", "arc", "circle", "helix"];

/** Bits for the kind of a path and its bends, null where it is no path of legs and turns. */
export function signsOfPath(kind: PathKind, bends: number | null): number {
  return PATHS.indexOf(kind) * PATH_AT + (bends === null ? NONE : Math.min(bends, MANY)) * BENDS_AT;
}

export function pathKindOf(signs: number): PathKind {
  return PATHS[Math.floor((signs % PATHS_END) / PATH_AT)] as PathKind;
}

/** Null where there is no path of legs and turns; undefined where they are too many to be kept. */
export function bendsOf(signs: number): number | null | undefined {
  const bends = Math.floor(signs / BENDS_AT) % (PATH_AT / BENDS_AT);
  return bends < MANY ? bends : bends === NONE ? null : undefined;
}

const MOST_JUDGEMENTS = 20_000;

/** The memory of `KnownOfBars`, as another thread is given it. */
export interface KnownMemory {
  readonly signs: Uint16Array;
  readonly lengths: Float64Array;
}

/**
 * What of each bar is asked long after it was in hand: some bits and its cut length, by the bar's place. Two threads
 * that judge one sheet look into the same memory, so that each shape is resolved by one of them.
 */
export class KnownOfBars {
  /** of the few bars whose lengths do not fit, by place: what would explain it takes many trials */
  readonly #judgements = new Map<number, LengthJudgement>();

  constructor(readonly memory: KnownMemory) {}

  static of(bars: number): KnownOfBars {
    return new KnownOfBars({
      signs: new Uint16Array(memoryOfThreads(bars * Uint16Array.BYTES_PER_ELEMENT)),
      lengths: new Float64Array(memoryOfThreads(bars * Float64Array.BYTES_PER_ELEMENT)),
    });
  }

  /** The bits of a bar; 0 where nothing was settled yet. */
  signsOf(place: number): number {
    return this.memory.signs[place] ?? 0;
  }

  /** Of a bar whose length does not fit. */
  judgementOf(place: number, judge: () => LengthJudgement): LengthJudgement {
    let judgement = this.#judgements.get(place);
    if (judgement === undefined) {
      judgement = judge();
      if (this.#judgements.size < MOST_JUDGEMENTS) this.#judgements.set(place, judgement);
    }
    return judgement;
  }

  /** mm, of a bar that is settled; NaN where it has no cut length. */
  lengthOf(place: number): number {
    // whoever sees the bits sees the length too
    Atomics.load(this.memory.signs, place);
    return this.memory.lengths[place] as number;
  }

  settle(place: number, signs: number, length: number): void {
    this.memory.lengths[place] = length;
    Atomics.store(this.memory.signs, place, signs | Known.Settled);
  }
}
