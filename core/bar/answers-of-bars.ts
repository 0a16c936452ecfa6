import type { BarFacts } from "./bar-facts";
import { KeptAlike, type NumberOf } from "./kept-alike";
import {
  type Answered,
  type BarsChanged,
  type Figure,
  type Kept,
  KeptCount,
  KeptFigures,
  KeptThose,
  KeptWhole,
} from "./kept-answers";
import type { Looked } from "./looked";

type Kind = "those" | "count" | "alike" | "whole" | "figures";

/**
 * What is asked of each bar of a sheet. A question is one function that is made once and goes by the bar's own
 * row, and by what is given with it, alone: after an edit it is asked again of the changed bars only.
 */
export class AnswersOfBars {
  /** what is asked meanwhile is written down here */
  looked: Looked | null = null;
  readonly #bars: readonly BarFacts[];
  readonly #kept = new Map<Kind, Map<unknown, Kept<unknown>>>();
  /** null where the bars were not carried on from others */
  readonly #changed: readonly number[] | null;

  /** `before`: the answers before an edit that changed the bars of those places, and no others */
  constructor(
    bars: readonly BarFacts[],
    before: { readonly answers: AnswersOfBars; readonly changed: readonly number[] } | null = null,
  ) {
    this.#bars = bars;
    this.#changed = before?.changed ?? null;
    if (before === null) return;
    const edit: BarsChanged = { before: before.answers.#bars, now: bars, changed: before.changed };
    for (const [kind, answers] of before.answers.#kept) {
      const again = new Map<unknown, Kept<unknown>>();
      for (const [question, kept] of answers) {
        const after = kept.after(edit);
        if (after !== null) again.set(question, after);
      }
      this.#kept.set(kind, again);
    }
  }

  /** All bars. What looks at them goes by all of them. */
  get bars(): readonly BarFacts[] {
    this.looked?.atAllBars();
    return this.#bars;
  }

  /** How many bars there are. */
  get length(): number {
    return this.#bars.length;
  }

  /** The bar of a place that another answer named. */
  bar(place: number): BarFacts {
    this.looked?.atBar(place);
    return this.#bars[place] as BarFacts;
  }

  /** The bars of which the answer is not null, in order. */
  those<Answer>(ask: (facts: BarFacts) => Answer | null): readonly Answered<Answer>[];
  those<Answer, Given>(
    ask: (facts: BarFacts, given: Given) => Answer | null,
    given: Given,
  ): readonly Answered<Answer>[];
  those<Answer, Given>(
    ask: (facts: BarFacts, given: Given) => Answer | null,
    given?: Given,
  ): readonly Answered<Answer>[] {
    return this.#ask("those", ask, given, () => KeptThose.of(ask, given as Given, this.#bars));
  }

  /** How many bars meet a condition. */
  count(isMet: (facts: BarFacts) => boolean): number {
    return this.#ask("count", isMet, undefined, () => KeptCount.of(isMet, this.#bars));
  }

  /** Places of bars that share a key, two or more, by where the first of them stands. */
  alike(keyOf: (facts: BarFacts) => string | null, numberOf: NumberOf): readonly (readonly number[])[] {
    return this.#ask("alike", keyOf, undefined, () => KeptAlike.of(keyOf, numberOf, this.#bars));
  }

  /** What is made of all bars together, by place; made anew only once what it goes by changed in some bar. */
  whole<Whole, Given = undefined>(
    build: (bars: readonly BarFacts[], given: Given) => Whole,
    goesBy: (facts: BarFacts, given: Given) => string,
    given: Given = undefined as Given,
  ): Whole {
    return this.#ask(
      "whole",
      build,
      given,
      () => new KeptWhole(goesBy, given, build(this.#bars, given)) as Kept<Whole>,
    );
  }

  /** The figures of each group, in order. */
  figures(figureOf: Figure): ReadonlyMap<number, Float64Array> {
    return this.#ask("figures", figureOf, undefined, () => KeptFigures.of(figureOf, this.#bars));
  }

  /** True where all that was looked at stands as it did before the edit that these answers were carried over. */
  standAsIn(looked: Looked): boolean {
    const changed = this.#changed;
    if (changed === null || looked.isAtAllBars) return false;
    if (changed.some((place) => looked.bars.has(place))) return false;
    for (const [kept, { kind, question }] of looked.answers)
      if (this.#kept.get(kind as Kind)?.get(question) !== kept) return false;
    return true;
  }

  #ask<Value>(kind: Kind, question: unknown, given: unknown, make: () => Kept<Value>): Value {
    let answers = this.#kept.get(kind);
    if (answers === undefined) {
      answers = new Map();
      this.#kept.set(kind, answers);
    }
    let kept = answers.get(question) as Kept<Value> | undefined;
    if (kept === undefined || kept.given !== given) {
      kept = make();
      answers.set(question, kept);
    }
    this.looked?.atAnswer(kept, kind, question);
    return kept.value;
  }
}
