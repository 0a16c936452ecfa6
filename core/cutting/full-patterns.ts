import type { SolverProblem } from "./cutting-stock";
import { commonMeasure } from "./fill-by-table";
import type { Work } from "./work";

/** a bar's pieces by item, and how many of each */
export interface ShortPattern {
  readonly items: readonly number[];
  readonly counts: readonly number[];
}

/** cells of the table of what can still be put into the rest of a bar */
const MOST_CELLS = 6_000_000;
const MOST_PATTERNS = 9_000;
const MOST_STEPS = 30_000_000;

/**
 * Every filling of one bar with pieces of `least` ticks together; null where there are too many to be listed
 * or to be looked for.
 */
export function fullPatterns(problem: SolverProblem, least: number, work: Work): ShortPattern[] | null {
  const measure = commonMeasure([...problem.lengths, problem.stock[0]!.capacity]);
  const size = problem.lengths.map((length) => length / measure);
  const filling = new Filling(
    size,
    problem.demand,
    problem.stock[0]!.capacity / measure,
    Math.ceil(least / measure - 1e-9),
  );
  const found = filling.all();
  work.done += filling.cells * 3 + filling.steps * 6;
  return found;
}

/** A search over pieces longest first, which knows what those that follow can fill of each room at most. */
class Filling {
  steps = 0;
  readonly cells: number;
  private readonly width: number;
  /** units in a cell: more than one where the table would be too large, and tells too much at times */
  private readonly grid: number;
  private readonly fills: Int32Array;
  private readonly taken: number[];
  private readonly found: ShortPattern[] = [];

  constructor(
    private readonly size: readonly number[],
    private readonly demand: readonly number[],
    private readonly room: number,
    private readonly least: number,
  ) {
    this.grid = Math.ceil(((size.length + 1) * (room + 1)) / MOST_CELLS);
    this.width = Math.floor(room / this.grid) + 2;
    this.cells = (size.length + 1) * this.width;
    this.taken = new Array<number>(size.length).fill(0);
    this.fills = new Int32Array(this.cells);
    for (let item = size.length - 1; item >= 0; item -= 1) this.fillRow(item);
  }

  /** null where there are too many. */
  all(): ShortPattern[] | null {
    return this.extend(0, this.room, this.least) ? this.found : null;
  }

  private fillRow(item: number): void {
    const { width, fills } = this;
    const here = item * width;
    const next = here + width;
    fills.copyWithin(here, next, next + width);
    for (let count = 1; count <= this.demand[item]!; count += 1) {
      const cells = Math.floor((count * this.size[item]!) / this.grid);
      if (cells >= width) return;
      for (let cell = cells; cell < width; cell += 1) {
        const filled = fills[next + cell - cells]! + count * this.size[item]!;
        if (filled > fills[here + cell]!) fills[here + cell] = filled;
      }
    }
  }

  /** Fills the room with at least `need` from this item on; false where it becomes too much. */
  private extend(from: number, room: number, need: number): boolean {
    const { size, demand, taken, fills, width } = this;
    if (need <= 0) this.found.push(shortened(taken));
    if (room < size.at(-1)!) return this.isBearable();
    const cell = Math.min(width - 1, Math.floor(room / this.grid) + 1);
    const isLast = room < 2 * size.at(-1)!;
    for (let item = Math.max(from, this.firstWithin(room)); item < size.length; item += 1) {
      this.steps += 1;
      const length = size[item]!;
      if (isLast && length < need) break;
      if (fills[item * width + cell]! < need) break;
      for (let count = Math.min(demand[item]!, Math.floor(room / length)); count > 0; count -= 1) {
        taken[item] = count;
        if (!this.extend(item + 1, room - count * length, need - count * length)) return false;
      }
      taken[item] = 0;
    }
    return this.isBearable();
  }

  private isBearable(): boolean {
    return this.found.length <= MOST_PATTERNS && this.steps <= MOST_STEPS;
  }

  /** The longest item that fits. */
  private firstWithin(room: number): number {
    let low = 0;
    let high = this.size.length;
    while (low < high) {
      const middle = (low + high) >> 1;
      if (this.size[middle]! <= room) high = middle;
      else low = middle + 1;
    }
    this.steps += 2;
    return low;
  }
}

function shortened(taken: readonly number[]): ShortPattern {
  const items: number[] = [];
  const counts: number[] = [];
  taken.forEach((count, item) => {
    if (count === 0) return;
    items.push(item);
    counts.push(count);
  });
  return { items, counts };
}
