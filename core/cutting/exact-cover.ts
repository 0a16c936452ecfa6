import type { SolverProblem } from "./cutting-stock";
import type { ShortPattern } from "./full-patterns";
import type { Work } from "./work";

/** choices taken back before the search starts anew with other preferences */
const TAKEN_BACK = 300;
/** how far the preference for a pattern is shaken */
const SHAKEN = 0.5;
/** choices tried at one place */
const WIDTH = 8;

/**
 * Bars of these patterns that hold each piece just as often as it is asked for, and leave over no more
 * than `slack` together. The piece with the fewest patterns left comes first, in the one that takes the
 * fewest from the others (Knuth, Dancing Links, 2000, for the order); a search that runs into a corner starts
 * anew with other preferences.
 */
export class ExactCover {
  private readonly left: Int32Array;
  /** how many pieces forbid a pattern */
  private readonly forbidden: Int32Array;
  private readonly degree: Int32Array;
  private readonly starts: Int32Array;
  private readonly items: Int32Array;
  private readonly counts: Int32Array;
  private readonly holderStarts: Int32Array;
  private readonly holders: Int32Array;
  private readonly held: Int32Array;
  private readonly waste: Float64Array;
  private readonly used: number[] = [];
  private open: number;

  constructor(
    patterns: readonly ShortPattern[],
    { lengths, demand, stock }: SolverProblem,
    private slack: number,
    private readonly work: Work,
  ) {
    const entries = patterns.reduce((sum, { items }) => sum + items.length, 0);
    const { capacity } = stock[0]!;
    this.left = Int32Array.from(demand);
    this.open = demand.reduce((sum, count) => sum + count, 0);
    this.forbidden = new Int32Array(patterns.length);
    this.waste = new Float64Array(patterns.length).fill(capacity);
    this.starts = new Int32Array(patterns.length + 1);
    this.items = new Int32Array(entries);
    this.counts = new Int32Array(entries);
    this.degree = new Int32Array(demand.length);
    patterns.forEach(({ items, counts }, pattern) => {
      const start = this.starts[pattern]!;
      this.starts[pattern + 1] = start + items.length;
      this.items.set(items, start);
      this.counts.set(counts, start);
      items.forEach((item, k) => {
        this.degree[item]! += 1;
        this.waste[pattern]! -= lengths[item]! * counts[k]!;
      });
    });
    this.holderStarts = new Int32Array(demand.length + 1);
    for (let item = 0; item < demand.length; item += 1)
      this.holderStarts[item + 1] = this.holderStarts[item]! + this.degree[item]!;
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
    work.done += entries * 10;
  }

  /** Places of patterns that cover all, one for each bar; null where none were found. */
  search(random: () => number): readonly number[] | null {
    for (let isFirst = true; this.work.allows(); isFirst = false) {
      const ended = this.descend(isFirst ? () => 0.5 : random);
      if (ended === "covered") return this.used;
      if (ended === "exhausted") return null;
      while (this.used.length > 0) this.takeBack();
    }
    return null;
  }

  private descend(random: () => number): "covered" | "cornered" | "exhausted" {
    const places: { readonly choices: number[]; at: number }[] = [];
    for (let takenBack = 0; takenBack <= TAKEN_BACK && this.work.allows(); ) {
      if (this.open === 0) return "covered";
      places.push({ choices: this.choices(this.rarest(), random), at: 0 });
      for (;;) {
        const place = places.at(-1)!;
        const choice = place.at < WIDTH ? place.choices[place.at] : undefined;
        place.at += 1;
        if (choice !== undefined) {
          this.use(choice);
          break;
        }
        places.pop();
        if (places.length === 0) return "exhausted";
        takenBack += 1;
        this.takeBack();
      }
    }
    return "cornered";
  }

  private rarest(): number {
    let rarest = -1;
    let least = Number.POSITIVE_INFINITY;
    for (let item = 0; item < this.left.length; item += 1) {
      if (this.left[item] === 0 || this.degree[item]! >= least) continue;
      least = this.degree[item]!;
      rarest = item;
    }
    this.work.done += this.left.length;
    return rarest;
  }

  private choices(item: number, random: () => number): number[] {
    const { holders, holderStarts, forbidden, waste, starts, items, degree } = this;
    const ranked: { pattern: number; rank: number }[] = [];
    const end = holderStarts[item + 1]!;
    for (let at = holderStarts[item]!; at < end; at += 1) {
      const pattern = holders[at]!;
      if (forbidden[pattern]! > 0 || waste[pattern]! > this.slack) continue;
      let taken = 0;
      for (let k = starts[pattern]!; k < starts[pattern + 1]!; k += 1) taken += degree[items[k]!]!;
      ranked.push({ pattern, rank: taken * (1 + SHAKEN * (random() - 0.5)) });
    }
    this.work.done += end - holderStarts[item]! + ranked.length * 30;
    return ranked.sort((a, b) => a.rank - b.rank).map(({ pattern }) => pattern);
  }

  private use(pattern: number): void {
    this.used.push(pattern);
    this.slack -= this.waste[pattern]!;
    for (let k = this.starts[pattern]!; k < this.starts[pattern + 1]!; k += 1)
      this.change(this.items[k]!, -this.counts[k]!);
  }

  private takeBack(): void {
    const pattern = this.used.pop()!;
    this.slack += this.waste[pattern]!;
    for (let k = this.starts[pattern]!; k < this.starts[pattern + 1]!; k += 1)
      this.change(this.items[k]!, this.counts[k]!);
  }

  /** So many more of a piece to be cut; patterns that hold too many of it are forbidden, others no longer. */
  private change(item: number, by: number): void {
    const { holders, held, holderStarts, forbidden, starts, items, degree } = this;
    const before = this.left[item]!;
    const after = before + by;
    this.left[item] = after;
    this.open += by;
    const end = holderStarts[item + 1]!;
    const step = by < 0 ? 1 : -1;
    let changed = 0;
    for (let at = holderStarts[item]!; at < end; at += 1) {
      const count = held[at]!;
      if (count > before === count > after) continue;
      const pattern = holders[at]!;
      const times = forbidden[pattern]! + step;
      forbidden[pattern] = times;
      changed += 1;
      if (times !== (step === 1 ? 1 : 0)) continue;
      for (let k = starts[pattern]!; k < starts[pattern + 1]!; k += 1) degree[items[k]!]! -= step;
    }
    this.work.done += end - holderStarts[item]! + changed * 6;
  }
}
