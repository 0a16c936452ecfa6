import {
  type BarFilter,
  type BookDigest,
  isAsked,
  type JudgedJob,
  type SevereBar,
  type SevereBars,
  severeBars,
} from "../../../core/jobs";

/** The bars of a job that count and are not to be passed on without a word, added book by book; sheets stand behind their book. */
export class SevereOfJob implements SevereBars {
  readonly notToMake: SevereBar[] = [];
  readonly toAsk: SevereBar[] = [];
  readonly ofSheets: string[] = [];

  constructor(
    private readonly judged: Pick<JudgedJob, "leftOut">,
    private readonly filter: BarFilter,
  ) {}

  add({ book, holding, bars }: Pick<BookDigest, "book" | "holding" | "bars">): void {
    const counted = bars.filter(
      (bar) => isAsked(this.filter, bar) && this.judged.leftOut(book, bar) === null,
    );
    const own = severeBars(holding, counted);
    const inJob = (bar: SevereBar): SevereBar => ({ ...bar, sheet: `${book}, ${bar.sheet}` });
    for (const bar of own.notToMake) this.notToMake.push(inJob(bar));
    for (const bar of own.toAsk) this.toAsk.push(inJob(bar));
    for (const words of own.ofSheets) this.ofSheets.push(`${book}: ${words}`);
  }
}
