/**
 * How much a search has done and may do, counted in steps: what bounds it is work and not time, so that a
 * plan is the same each time it is asked for. The clock only guards against a far slower machine; a search
 * that it cut short says so.
 */
export class Work {
  done = 0;
  cutShort = false;
  private ceiling: number;

  constructor(
    private readonly limit: number,
    /** ms since epoch */
    private readonly deadline: number,
  ) {
    this.ceiling = limit;
  }

  /** From now on up to this share of the whole may be spent. */
  upTo(share: number): void {
    this.ceiling = this.limit * share;
  }

  allows(): boolean {
    if (this.done >= this.ceiling || this.cutShort) return false;
    this.cutShort = Date.now() > this.deadline;
    return !this.cutShort;
  }
}
