/**
 * The time of one answer, shared by the questions in it: what one leaves over the next ones may use. Counted
 * in the worth of the work done, so that each share is the same each time.
 */
export class SharedTime {
  constructor(
    private left: number,
    private questions: number,
  ) {}

  /** ms for the next question */
  next(): number {
    const share = Math.max(0, this.left) / Math.max(1, this.questions);
    this.questions -= 1;
    return share;
  }

  spend(effort: number): void {
    this.left -= effort;
  }
}
