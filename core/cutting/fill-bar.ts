/** The most valuable filling of one bar, or the best found with a bound on what was not. */
export interface Filling {
  readonly value: number;
  readonly counts: number[];
  /** no filling is worth more */
  readonly upperBound: number;
}

export interface SearchedFilling extends Filling {
  /** steps of the search */
  readonly nodes: number;
}

/**
 * Fills a bar by depth-first search over the items in falling value per length, each at most
 * `limits` times. Stops after `nodeLimit` steps with the best so far and the fractional bound.
 */
export function fillBar(
  values: readonly number[],
  lengths: readonly number[],
  limits: readonly number[],
  capacity: number,
  nodeLimit: number,
): SearchedFilling {
  const order: number[] = [];
  for (let i = 0; i < values.length; i += 1) {
    if (values[i]! > 0 && limits[i]! > 0 && lengths[i]! <= capacity) order.push(i);
  }
  order.sort((a, b) => values[b]! / lengths[b]! - values[a]! / lengths[a]! || lengths[b]! - lengths[a]!);
  const search = new FillingSearch(values, lengths, limits, order, nodeLimit);
  search.descend(0, capacity, 0);
  const counts = new Array<number>(values.length).fill(0);
  order.forEach((item, place) => {
    counts[item] = search.best[place]!;
  });
  const density = order.length > 0 ? values[order[0]!]! / lengths[order[0]!]! : 0;
  const upperBound =
    search.nodes <= nodeLimit ? search.bestValue : Math.max(search.bestValue, capacity * density);
  return { value: search.bestValue, counts, upperBound, nodes: search.nodes };
}

class FillingSearch {
  best: number[];
  bestValue = 0;
  nodes = 0;
  private readonly current: number[];
  private readonly shortestFrom: number[];
  private readonly v: number[];
  private readonly l: number[];
  private readonly u: number[];
  private readonly density: number[];

  constructor(
    values: readonly number[],
    lengths: readonly number[],
    limits: readonly number[],
    order: readonly number[],
    private readonly nodeLimit: number,
  ) {
    this.v = order.map((item) => values[item]!);
    this.l = order.map((item) => lengths[item]!);
    this.u = order.map((item) => limits[item]!);
    this.density = this.v.map((value, place) => value / this.l[place]!);
    this.current = new Array<number>(order.length).fill(0);
    this.best = new Array<number>(order.length).fill(0);
    this.shortestFrom = new Array<number>(order.length + 1).fill(Number.POSITIVE_INFINITY);
    for (let place = order.length - 1; place >= 0; place -= 1) {
      this.shortestFrom[place] = Math.min(this.l[place]!, this.shortestFrom[place + 1]!);
    }
  }

  descend(place: number, room: number, value: number): void {
    this.nodes += 1;
    if (value > this.bestValue) {
      this.bestValue = value;
      this.best = this.current.slice();
    }
    if (this.nodes > this.nodeLimit || room < this.shortestFrom[place]!) return;
    const length = this.l[place]!;
    const most = Math.min(this.u[place]!, Math.floor(room / length));
    const next = this.density[place + 1] ?? 0;
    for (let taken = most; taken >= 0; taken -= 1) {
      const left = room - taken * length;
      const gained = value + taken * this.v[place]!;
      if (gained + left * next <= this.bestValue * (1 + 1e-12)) break;
      this.current[place] = taken;
      this.descend(place + 1, left, gained);
      if (this.nodes > this.nodeLimit) break;
    }
    this.current[place] = 0;
  }
}
