import type { SolverProblem } from "./cutting-stock";
import type { ShortPattern } from "./full-patterns";
import type { Work } from "./work";

/** sweeps over all pieces before the first pattern is fixed, and after each */
const SWEEPS = { first: 20, each: 3 };
/** a sweep that changed no share by more than this is the last */
const SETTLED = 0.03;
/** how far the preference for a pattern is shaken, from the second try on */
const SHAKEN = 0.3;
/** tries to mend a plan that some pieces found no place in, before all starts anew */
const MENDS = 10;
/** shares of such a plan's bars that stay, from and to */
const STAY = { least: 0.1, most: 0.6 };
/** first share of a pattern for each repeated piece: as often as pieces of one length are drawn together */
const REPEATED = 0.1;

/**
 * Bars of these patterns that hold each piece just as often as it is asked for, and leave over no more
 * than `slack` together. Patterns share each piece's demand as evenly as all the others allow (iterative
 * proportional fitting, Deming and Stephan, Annals of Mathematical Statistics 11, 1940: the shares of
 * greatest entropy); the one with the greatest share is fixed, the rest share anew.
 */
export class EvenShares {
  private readonly starts: Int32Array;
  private readonly items: Int32Array;
  private readonly counts: Int32Array;
  private readonly holderStarts: Int32Array;
  private readonly holders: Int32Array;
  private readonly held: Int32Array;
  private readonly waste: Float64Array;
  /** patterns of an item that can still be used stand first in its part of `holders` */
  private readonly live: Int32Array;
  /** how often each piece is still asked for after a descent */
  readonly left: Int32Array;
  private readonly shares: Float64Array;
  private readonly firstShares: Float64Array;
  private firstSettled: Float64Array | null = null;
  private readonly isOut: Uint8Array;
  private readonly open: Int32Array;
  private openCount = 0;
  private pieces = 0;
  private slackLeft = 0;
  /** a pattern that alone can still hold some piece; -1 where none is known */
  private forced = -1;
  /** other patterns than these may hold a piece */
  private mayLeave = false;

  constructor(
    patterns: readonly ShortPattern[],
    private readonly problem: SolverProblem,
    private readonly slack: number,
    private readonly work: Work,
  ) {
    const { lengths, demand, stock } = problem;
    const entries = patterns.reduce((sum, { items }) => sum + items.length, 0);
    this.starts = new Int32Array(patterns.length + 1);
    this.items = new Int32Array(entries);
    this.counts = new Int32Array(entries);
    this.waste = new Float64Array(patterns.length).fill(stock[0]!.capacity);
    this.holderStarts = new Int32Array(demand.length + 1);
    patterns.forEach(({ items, counts }, pattern) => {
      const start = this.starts[pattern]!;
      this.starts[pattern + 1] = start + items.length;
      this.items.set(items, start);
      this.counts.set(counts, start);
      items.forEach((item, k) => {
        this.holderStarts[item + 1]! += 1;
        this.waste[pattern]! -= lengths[item]! * counts[k]!;
      });
    });
    for (let item = 0; item < demand.length; item += 1)
      this.holderStarts[item + 1]! += this.holderStarts[item]!;
    this.holders = new Int32Array(entries);
    this.held = new Int32Array(entries);
    const filled = this.holderStarts.slice();
    patterns.forEach(({ items, counts }, pattern) => {
      items.forEach((item, k) => {
        const at = filled[item]!;
        filled[item] = at + 1;
        this.holders[at] = pattern;
        this.held[at] = counts[k]!;
      });
    });
    this.live = new Int32Array(demand.length);
    this.left = new Int32Array(demand.length);
    this.shares = new Float64Array(patterns.length);
    this.firstShares = Float64Array.from(patterns, ({ counts }) =>
      counts.reduce((share, count) => share * REPEATED ** (count - 1), 1),
    );
    this.isOut = new Uint8Array(patterns.length);
    this.open = new Int32Array(patterns.length);
    work.done += entries * 10;
  }

  /** Places of patterns that cover all, one for each bar; null where none were found. */
  search(random: () => number): readonly number[] | null {
    for (let isFirst = true; this.work.allows(); isFirst = false) {
      let best = this.attempt(isFirst ? () => 0 : random, []);
      let left = this.pieces;
      for (let mend = 0; left > 0 && mend < MENDS && this.work.allows(); mend += 1) {
        const stay = STAY.least + (STAY.most - STAY.least) * random();
        const used = this.attempt(
          random,
          best.filter(() => random() < stay),
        );
        if (this.pieces > left) continue;
        left = this.pieces;
        best = used;
      }
      if (left === 0) return best;
    }
    return null;
  }

  /**
   * Fixes bars, those `asked` first as far as the pieces go, until no more than `rest` pieces are left or no
   * pattern can be used; gives the places of the patterns used. Pieces that no pattern here can hold are left
   * to other patterns.
   */
  descend(random: () => number, asked: readonly number[], rest: number): number[] {
    this.mayLeave = true;
    const used = this.attempt(random, asked, rest);
    this.mayLeave = false;
    return used;
  }

  /** `pieces` are left that found no bar */
  private attempt(random: () => number, kept: readonly number[], rest = 0): number[] {
    this.begin();
    const used: number[] = [];
    for (const pattern of kept) {
      if (this.isOut[pattern] !== 0) continue;
      used.push(pattern);
      this.use(pattern);
    }
    const isFresh = used.length === 0;
    for (let sweeps = isFresh ? this.settled() : SWEEPS.first; this.pieces > rest; sweeps = SWEEPS.each) {
      if (!this.work.allows() || !this.share(sweeps)) return used;
      const pattern = this.forced >= 0 ? this.forced : this.greatest(random);
      if (pattern < 0) return used;
      for (let times = Math.max(1, Math.floor(this.shares[pattern]!)); times > 0; times -= 1) {
        used.push(pattern);
        this.use(pattern);
        if (this.isOut[pattern] !== 0 || this.slackLeft < this.waste[pattern]!) break;
      }
    }
    return used;
  }

  /** Takes the shares that the first sweeps over all patterns come to; gives the sweeps still to do. */
  private settled(): number {
    if (this.firstSettled === null) {
      if (!this.share(SWEEPS.first)) return SWEEPS.each;
      this.firstSettled = this.shares.slice();
    }
    this.shares.set(this.firstSettled);
    return SWEEPS.each;
  }

  private begin(): void {
    const { demand } = this.problem;
    this.left.set(demand);
    this.pieces = demand.reduce((sum, count) => sum + count, 0);
    this.slackLeft = this.slack;
    this.openCount = this.open.length;
    for (let pattern = 0; pattern < this.open.length; pattern += 1) this.open[pattern] = pattern;
    this.isOut.fill(0);
    this.shares.set(this.firstShares);
    for (let item = 0; item < demand.length; item += 1)
      this.live[item] = this.holderStarts[item + 1]! - this.holderStarts[item]!;
    this.work.done += this.open.length * 2;
  }

  /** Evens the shares; false where a piece is left that no pattern can hold. */
  private share(sweeps: number): boolean {
    this.forced = -1;
    for (let sweep = 0; sweep < sweeps; sweep += 1) {
      let change = this.slack > 0 ? this.scaleWaste() : 0;
      for (let item = 0; item < this.left.length; item += 1) {
        if (this.left[item] === 0) continue;
        const scale = this.scaleOf(item);
        if (!(scale > 0)) {
          if (this.mayLeave) continue;
          return false;
        }
        change = Math.max(change, Math.abs(scale - 1));
      }
      if (this.forced >= 0) return true;
      if (change < SETTLED) return true;
    }
    return true;
  }

  /** Makes the shares of an item's patterns add up to what is left of it; gives by what they were scaled. */
  private scaleOf(item: number): number {
    const { holders, held, isOut, shares } = this;
    const start = this.holderStarts[item]!;
    let end = start + this.live[item]!;
    let sum = 0;
    for (let at = start; at < end; ) {
      const pattern = holders[at]!;
      if (isOut[pattern] === 0) {
        sum += shares[pattern]! * held[at]!;
        at += 1;
        continue;
      }
      end -= 1;
      const count = held[at]!;
      holders[at] = holders[end]!;
      held[at] = held[end]!;
      holders[end] = pattern;
      held[end] = count;
    }
    this.live[item] = end - start;
    if (end - start === 1 && !this.mayLeave) this.forced = holders[start]!;
    this.work.done += (end - start) * 3 + 4;
    if (sum < 1e-9) return 0;
    const scale = this.left[item]! / sum;
    for (let at = start; at < end; at += 1) shares[holders[at]!]! *= scale;
    return scale;
  }

  /** Shares of patterns that leave something over are lowered until all together leave no more than may be. */
  private scaleWaste(): number {
    const { open, isOut, shares, waste, slackLeft } = this;
    let sum = 0;
    for (let at = 0; at < this.openCount; at += 1) {
      const pattern = open[at]!;
      if (isOut[pattern] === 0) sum += shares[pattern]! * waste[pattern]!;
    }
    this.work.done += this.openCount * 3;
    if (sum <= slackLeft) return 0;
    const scale = Math.max(0.1, slackLeft / sum);
    for (let at = 0; at < this.openCount; at += 1) if (waste[open[at]!]! > 0) shares[open[at]!]! *= scale;
    return 1 - scale;
  }

  private greatest(random: () => number): number {
    const { open, isOut, shares, waste } = this;
    let greatest = -1;
    let most = -1;
    let kept = 0;
    for (let at = 0; at < this.openCount; at += 1) {
      const pattern = open[at]!;
      if (isOut[pattern] !== 0) continue;
      if (waste[pattern]! > this.slackLeft) {
        isOut[pattern] = 1;
        continue;
      }
      open[kept] = pattern;
      kept += 1;
      const rank = shares[pattern]! * (1 + SHAKEN * random());
      if (rank <= most) continue;
      most = rank;
      greatest = pattern;
    }
    this.work.done += this.openCount * 3;
    this.openCount = kept;
    return greatest;
  }

  /** Fixes a bar; patterns that hold more of a piece than is left of it are out. */
  private use(pattern: number): void {
    const { holders, held, isOut, left } = this;
    this.slackLeft -= this.waste[pattern]!;
    for (let k = this.starts[pattern]!; k < this.starts[pattern + 1]!; k += 1) {
      const item = this.items[k]!;
      left[item]! -= this.counts[k]!;
      this.pieces -= this.counts[k]!;
      const start = this.holderStarts[item]!;
      const end = start + this.live[item]!;
      for (let at = start; at < end; at += 1) if (held[at]! > left[item]!) isOut[holders[at]!] = 1;
      this.work.done += end - start;
    }
  }
}
