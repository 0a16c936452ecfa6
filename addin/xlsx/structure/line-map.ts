/** Lines that stand one after the other: where they stood in the file, or null for new ones. */
export interface LineRun {
  readonly from: number | null;
  readonly count: number;
}

/**
 * What became of a sheet's rows, or of its columns, since the file was opened. Lines behind the last run
 * follow on without end.
 */
export class LineMap {
  private constructor(
    private readonly runs: readonly LineRun[],
    /** the old line that stands behind all runs */
    private readonly rest: number,
  ) {}

  static readonly unchanged = new LineMap([], 0);

  get isUnchanged(): boolean {
    return this.runs.length === 0;
  }

  /** New lines before the one at `at`, or lines that were taken out there. */
  insert(at: number, lines: readonly LineRun[]): LineMap {
    const [before, behind, rest] = this.split(at);
    return LineMap.joined([...before, ...lines, ...behind], rest);
  }

  /** Without `count` lines from `at` on; gives those as well, so that they can be put back. */
  remove(at: number, count: number): { readonly map: LineMap; readonly removed: readonly LineRun[] } {
    const [before, behind, rest] = this.split(at);
    const whole = LineMap.joined(behind, rest);
    const [removed, kept, keptRest] = whole.split(count);
    return { map: LineMap.joined([...before, ...kept], keptRest), removed };
  }

  /** Where an old line stands now; null where it was taken out. */
  to(old: number): number | null {
    let at = 0;
    for (const { from, count } of this.runs) {
      if (from !== null && old >= from && old < from + count) return at + old - from;
      at += count;
    }
    return old >= this.rest ? at + old - this.rest : null;
  }

  /** The old line that now stands at a place; null for a new one. */
  from(now: number): number | null {
    let at = 0;
    for (const { from, count } of this.runs) {
      if (now < at + count) return from === null ? null : from + now - at;
      at += count;
    }
    return this.rest + now - at;
  }

  /** Where the lines from `first` to `last` stand now, what was put between them included; null for none. */
  range(first: number, last: number): { readonly first: number; readonly last: number } | null {
    let lowest = Number.POSITIVE_INFINITY;
    let highest = -1;
    const take = (at: number, from: number, count: number): void => {
      const start = Math.max(first, from);
      const end = Math.min(last, from + count - 1);
      if (start > end) return;
      lowest = Math.min(lowest, at + start - from);
      highest = Math.max(highest, at + end - from);
    };
    let at = 0;
    for (const { from, count } of this.runs) {
      if (from !== null) take(at, from, count);
      at += count;
    }
    take(at, this.rest, Number.MAX_SAFE_INTEGER - this.rest);
    return highest < 0 ? null : { first: lowest, last: highest };
  }

  /** Runs up to a line and behind it, and the old line that then follows on. */
  private split(at: number): [LineRun[], LineRun[], number] {
    const before: LineRun[] = [];
    const behind: LineRun[] = [];
    let left = at;
    for (const { from, count } of this.runs) {
      const taken = Math.min(left, count);
      if (taken > 0) before.push({ from, count: taken });
      if (taken < count) behind.push({ from: from === null ? null : from + taken, count: count - taken });
      left -= taken;
    }
    if (left > 0) before.push({ from: this.rest, count: left });
    return [before, behind, this.rest + Math.max(0, left)];
  }

  private static joined(runs: readonly LineRun[], rest: number): LineMap {
    const list: LineRun[] = [];
    for (const run of runs) {
      const last = list.at(-1);
      const follows =
        last !== undefined &&
        (last.from === null ? run.from === null : run.from !== null && last.from + last.count === run.from);
      if (follows) list[list.length - 1] = { from: last.from, count: last.count + run.count };
      else if (run.count > 0) list.push(run);
    }
    const last = list.at(-1);
    if (last !== undefined && last.from !== null && last.from + last.count === rest) {
      list.pop();
      return LineMap.joined(list, last.from);
    }
    return list.length === 0 && rest === 0 ? LineMap.unchanged : new LineMap(list, rest);
  }
}
