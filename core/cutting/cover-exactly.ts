import type { ShortPattern } from "./full-patterns";
import type { Work } from "./work";

/** steps of the search that one step here is worth */
const STEP = 3;
/** how far the order of patterns is shaken, against sums of shares from 0 to 1 */
const SHAKEN = 0.2;

/**
 * Places of patterns that hold each piece just as often as it is asked for; null where none are found within so many choices. The piece that the fewest patterns can
 * still hold is served first (Knuth, Dancing Links, 2000), by the pattern whose pieces are rarest.
 */
export function coverExactly(
  patterns: readonly ShortPattern[],
  demand: readonly number[],
  choices: number,
  random: () => number,
  work: Work,
): readonly number[] | null {
  const cover = new Cover(patterns, demand, choices, random);
  const isFound = cover.complete();
  work.done += cover.steps * STEP;
  return isFound ? cover.used : null;
}

class Cover {
  steps = 0;
  readonly used: number[] = [];
  private readonly holders: number[][];
  /** patterns that can still hold each piece */
  private readonly open: number[];
  private readonly left: number[];
  private readonly isOut: Uint8Array;
  private pieces: number;

  constructor(
    private readonly patterns: readonly ShortPattern[],
    demand: readonly number[],
    private choices: number,
    private readonly random: () => number,
  ) {
    this.left = demand.slice();
    this.pieces = demand.reduce((sum, count) => sum + count, 0);
    this.holders = demand.map(() => []);
    this.isOut = new Uint8Array(patterns.length);
    patterns.forEach(({ items }, pattern) => {
      for (const item of items) this.holders[item]!.push(pattern);
      this.steps += items.length;
    });
    this.open = this.holders.map(({ length }) => length);
  }

  complete(): boolean {
    if (this.pieces === 0) return true;
    this.choices -= 1;
    const item = this.rarest();
    if (this.choices < 0 || this.open[item] === 0) return false;
    const refuted: number[] = [];
    for (const pattern of this.inOrder(item)) {
      const barred = this.use(pattern);
      if (this.complete()) return true;
      this.takeBack(pattern, barred);
      if (this.choices < 0) break;
      this.bar(pattern, refuted);
    }
    this.unbar(refuted);
    return false;
  }

  private rarest(): number {
    let rarest = -1;
    let fewest = Number.POSITIVE_INFINITY;
    this.steps += this.left.length;
    for (let item = 0; item < this.left.length && fewest > 1; item += 1) {
      if (this.left[item] === 0 || this.open[item]! >= fewest) continue;
      fewest = this.open[item]!;
      rarest = item;
    }
    return rarest;
  }

  private inOrder(item: number): number[] {
    const ranked = this.holders[item]!.filter((pattern) => this.isOut[pattern] === 0).map((pattern) => {
      const { items } = this.patterns[pattern]!;
      this.steps += items.length + 4;
      const rarity = items.reduce((sum, other) => sum + 1 / this.open[other]!, 0);
      return { pattern, rank: rarity + SHAKEN * this.random() };
    });
    return ranked.sort((a, b) => b.rank - a.rank).map(({ pattern }) => pattern);
  }

  /** Fixes a bar; gives the patterns that hold more of a piece than is left of it now. */
  private use(pattern: number): number[] {
    const { items, counts } = this.patterns[pattern]!;
    this.used.push(pattern);
    items.forEach((item, k) => {
      this.left[item]! -= counts[k]!;
      this.pieces -= counts[k]!;
    });
    const barred: number[] = [];
    for (const item of items) {
      this.steps += this.holders[item]!.length;
      for (const other of this.holders[item]!)
        if (this.isOut[other] === 0 && this.holdsTooMany(other, item)) this.bar(other, barred);
    }
    return barred;
  }

  private holdsTooMany(pattern: number, item: number): boolean {
    const { items, counts } = this.patterns[pattern]!;
    return counts[items.indexOf(item)]! > this.left[item]!;
  }

  private takeBack(pattern: number, barred: readonly number[]): void {
    const { items, counts } = this.patterns[pattern]!;
    this.unbar(barred);
    this.used.pop();
    items.forEach((item, k) => {
      this.left[item]! += counts[k]!;
      this.pieces += counts[k]!;
    });
  }

  private bar(pattern: number, barred: number[]): void {
    if (this.isOut[pattern] !== 0) return;
    this.isOut[pattern] = 1;
    barred.push(pattern);
    this.steps += 4;
    for (const item of this.patterns[pattern]!.items) this.open[item]! -= 1;
  }

  private unbar(barred: readonly number[]): void {
    for (const pattern of barred) {
      this.isOut[pattern] = 0;
      for (const item of this.patterns[pattern]!.items) this.open[item]! += 1;
    }
  }
}
