import type { SolverProblem } from "./cutting-stock";
import type { Work } from "./work";

/** a bar's pieces by item, and how many of each */
export interface ShortPattern {
  readonly items: readonly number[];
  readonly counts: readonly number[];
}

export interface PatternList {
  readonly patterns: readonly ShortPattern[];
  /** pieces of the longest pattern listed */
  readonly pieces: number;
  /** no pattern is left out */
  readonly isWhole: boolean;
}

const MOST_STEPS = 12_000_000;
/** one first part in so many is completed where all would be too many, then one in the square of it, and so on */
const THINNED = 2;
const STEPS = { each: 4, found: 700 };

/**
 * Fillings of one bar with pieces of `least` ticks together, those of few pieces first: all of them where
 * they are few, else all up to some number of pieces and a part of those of one piece more, or none of those
 * where all up to `enough` pieces are listed.
 */
export function fullPatterns(
  problem: SolverProblem,
  least: number,
  most: number,
  work: Work,
  enough = Number.POSITIVE_INFINITY,
): PatternList {
  const patterns: ShortPattern[] = [];
  const { lengths, stock } = problem;
  const mostPieces = Math.floor(stock[0]!.capacity / lengths.at(-1)!);
  for (let pieces = 1; pieces <= mostPieces; pieces += 1) {
    for (let oneIn = 1; ; oneIn *= THINNED) {
      if (!work.allows()) return { patterns, pieces: pieces - 1, isWhole: false };
      const filling = new Filling(problem, least, pieces, oneIn, most - patterns.length);
      const isWhole = filling.complete();
      work.done += filling.steps * STEPS.each + filling.found.length * STEPS.found;
      if (!isWhole && pieces > enough) return { patterns, pieces: pieces - 1, isWhole: false };
      if (!isWhole) continue;
      for (const taken of filling.found) patterns.push(shortened(taken));
      if (oneIn > 1) return { patterns, pieces, isWhole: false };
      break;
    }
  }
  return { patterns, pieces: mostPieces, isWhole: true };
}

/** The fillings of a bar with so many pieces, longest first; the last two are looked for together. */
class Filling {
  steps = 0;
  readonly found: number[][] = [];
  private readonly taken: number[] = [];
  private readonly lengths: readonly number[];
  private readonly demand: readonly number[];
  private firstParts = 0;

  constructor(
    { lengths, demand, stock }: SolverProblem,
    private readonly least: number,
    private readonly pieces: number,
    private readonly oneIn: number,
    private readonly most: number,
  ) {
    this.lengths = lengths;
    this.demand = demand;
    this.room = stock[0]!.capacity;
  }

  private readonly room: number;

  /** false where there are too many */
  complete(): boolean {
    const need = Math.max(1, this.least);
    return this.pieces === 1 ? this.addSingle(need) : this.extend(0, this.pieces, this.room, need);
  }

  private addSingle(need: number): boolean {
    this.lengths.forEach((length, item) => {
      if (length >= need && length <= this.room) this.found.push([item]);
    });
    return this.isBearable();
  }

  private extend(from: number, pieces: number, room: number, need: number): boolean {
    const { lengths, taken } = this;
    if (pieces === 2) return this.addPairs(from, room, need);
    const shortest = lengths.at(-1)!;
    for (let item = from; item < lengths.length; item += 1) {
      const length = lengths[item]!;
      if (length * pieces < need) break;
      this.steps += 1;
      if (length + (pieces - 1) * shortest > room || !this.isLeft(item)) continue;
      taken.push(item);
      const isWhole = this.extend(item, pieces - 1, room - length, need - length);
      taken.pop();
      if (!isWhole) return false;
    }
    return this.isBearable();
  }

  /** All pairs from this item on that fill the room: as the one grows shorter the other grows longer. */
  private addPairs(from: number, room: number, need: number): boolean {
    const { lengths, taken } = this;
    this.firstParts += 1;
    if (this.oneIn > 1 && scattered(this.firstParts) % this.oneIn !== 0) return true;
    let start = lengths.length;
    for (let one = from; one < lengths.length; one += 1) {
      const length = lengths[one]!;
      if (2 * length < need) break;
      while (start > from && lengths[start - 1]! + length <= room) start -= 1;
      this.steps += 1;
      for (let other = Math.max(start, one); other < lengths.length; other += 1) {
        if (lengths[other]! + length < need) break;
        this.steps += 1;
        taken.push(one, other);
        if (this.isLeft()) this.found.push(taken.slice());
        taken.length -= 2;
      }
    }
    return this.isBearable();
  }

  /** Whether no more are taken of a piece than are asked for, with one more of `extra`. */
  private isLeft(extra?: number): boolean {
    const items = extra === undefined ? this.taken : [...this.taken, extra];
    return items.every((item, at) => {
      if (items.indexOf(item) !== at) return true;
      return items.reduce((count, other) => count + (other === item ? 1 : 0), 0) <= this.demand[item]!;
    });
  }

  private isBearable(): boolean {
    return this.found.length <= this.most && this.steps <= MOST_STEPS;
  }
}

function scattered(at: number): number {
  return Math.imul(at, 2_654_435_761) >>> 8;
}

function shortened(taken: readonly number[]): ShortPattern {
  const items = [...new Set(taken)];
  return { items, counts: items.map((item) => taken.filter((other) => other === item).length) };
}
