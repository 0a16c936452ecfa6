import type { BarFacts } from "./bar-facts";

/** A bar of which something was answered, and its place among the bars of its sheet. */
export interface Answered<Answer> {
  readonly place: number;
  readonly facts: BarFacts;
  readonly answer: Answer;
}

type Ask<Answer, Given> = (facts: BarFacts, given: Given) => Answer;

interface Asked {
  readonly ask: Ask<unknown, unknown>;
  readonly given: unknown;
}

/** A figure of a bar, and the group that it is one of; null where the bar has none. */
type Figure = (facts: BarFacts) => { readonly group: number; readonly figure: number } | null;

interface Built {
  readonly goesBy: (facts: BarFacts) => string;
  readonly given: unknown;
  readonly built: unknown;
}

/**
 * What is asked of each bar of a sheet. A question is one function that is made once and goes by the bar's own
 * row, and by what is given with it, alone: after an edit it is asked again of the changed bars only.
 */
export class AnswersOfBars {
  readonly #those = new Map<unknown, Asked & { readonly found: readonly Answered<unknown>[] }>();
  readonly #each = new Map<unknown, readonly unknown[]>();
  readonly #whole = new Map<unknown, Built>();
  readonly #sorted = new Map<Figure, ReadonlyMap<number, Float64Array>>();

  /** `before`: the answers before an edit that changed the bars of those places, and no others */
  constructor(
    readonly bars: readonly BarFacts[],
    before: { readonly answers: AnswersOfBars; readonly changed: readonly number[] } | null = null,
  ) {
    if (before !== null) this.#carryOn(before.answers, before.changed);
  }

  /** The bars of which the answer is not null, in order. */
  those<Answer>(ask: (facts: BarFacts) => Answer | null): readonly Answered<Answer>[];
  those<Answer, Given>(ask: Ask<Answer | null, Given>, given: Given): readonly Answered<Answer>[];
  those<Answer, Given>(ask: Ask<Answer | null, Given>, given?: Given): readonly Answered<Answer>[] {
    const known = this.#those.get(ask);
    if (known !== undefined && known.given === given) return known.found as readonly Answered<Answer>[];
    const found: Answered<Answer>[] = [];
    for (let place = 0; place < this.bars.length; place += 1) {
      const facts = this.bars[place] as BarFacts;
      const answer = ask(facts, given as Given);
      if (answer !== null) found.push({ place, facts, answer });
    }
    this.#those.set(ask, { ask: ask as Ask<unknown, unknown>, given, found });
    return found;
  }

  /** How many bars meet a condition. */
  count(isMet: (facts: BarFacts) => true | null): number {
    return this.those(isMet).length;
  }

  /** The answer of each bar, by place. */
  each<Answer>(ask: (facts: BarFacts) => Answer): readonly Answer[] {
    let answers = this.#each.get(ask) as readonly Answer[] | undefined;
    if (answers === undefined) {
      answers = this.bars.map(ask);
      this.#each.set(ask, answers);
    }
    return answers;
  }

  /** What is made of all bars together, by place; made anew only once what it goes by changed in some bar. */
  whole<Whole, Given = undefined>(
    build: (bars: readonly BarFacts[], given: Given) => Whole,
    goesBy: (facts: BarFacts) => string,
    given: Given = undefined as Given,
  ): Whole {
    let known = this.#whole.get(build);
    if (known === undefined || known.given !== given) {
      known = { goesBy, given, built: build(this.bars, given) };
      this.#whole.set(build, known);
    }
    return known.built as Whole;
  }

  /** The figures of each group, in order. */
  sorted(figureOf: Figure): ReadonlyMap<number, Float64Array> {
    let groups = this.#sorted.get(figureOf);
    if (groups === undefined) {
      const found = new Map<number, number[]>();
      for (const facts of this.bars) {
        const one = figureOf(facts);
        if (one === null) continue;
        const group = found.get(one.group);
        if (group === undefined) found.set(one.group, [one.figure]);
        else group.push(one.figure);
      }
      groups = new Map([...found].map(([group, figures]) => [group, Float64Array.from(figures).sort()]));
      this.#sorted.set(figureOf, groups);
    }
    return groups;
  }

  #carryOn(before: AnswersOfBars, changed: readonly number[]): void {
    for (const [key, asked] of before.#those)
      this.#those.set(key, { ...asked, found: this.#againThose(asked, changed) });
    for (const [key, answers] of before.#each) {
      const ask = key as (facts: BarFacts) => unknown;
      const again = answers.slice();
      for (const place of changed) again[place] = ask(this.bars[place] as BarFacts);
      this.#each.set(key, again);
    }
    for (const [figureOf, groups] of before.#sorted) {
      const again = new Map(groups);
      for (const place of changed) {
        moveFigure(again, figureOf(before.bars[place] as BarFacts), figureOf(this.bars[place] as BarFacts));
      }
      this.#sorted.set(figureOf, again);
    }
    for (const [key, kept] of before.#whole) {
      const { goesBy } = kept;
      const isSame = (place: number): boolean =>
        goesBy(this.bars[place] as BarFacts) === goesBy(before.bars[place] as BarFacts);
      if (changed.every(isSame)) this.#whole.set(key, kept);
    }
  }

  #againThose(
    { ask, given, found }: Asked & { readonly found: readonly Answered<unknown>[] },
    changed: readonly number[],
  ): readonly Answered<unknown>[] {
    const answered = changed.flatMap((place) => {
      const facts = this.bars[place] as BarFacts;
      const answer = ask(facts, given);
      return answer === null ? [] : [{ place, facts, answer }];
    });
    const gone = new Set(changed);
    const kept = found.filter(({ place }) => !gone.has(place));
    if (answered.length === 0) return kept.length === found.length ? found : kept;
    return [...kept, ...answered].sort((one, other) => one.place - other.place);
  }
}

function moveFigure(
  groups: Map<number, Float64Array>,
  from: ReturnType<Figure>,
  to: ReturnType<Figure>,
): void {
  if (from?.group === to?.group && from?.figure === to?.figure) return;
  if (from !== null) {
    const figures = groups.get(from.group) ?? new Float64Array();
    const place = figures.indexOf(from.figure);
    if (figures.length === 1) groups.delete(from.group);
    else
      groups.set(
        from.group,
        figures.filter((_, at) => at !== place),
      );
  }
  if (to !== null) {
    const figures = groups.get(to.group) ?? new Float64Array();
    const more = new Float64Array(figures.length + 1);
    more.set(figures);
    more[figures.length] = to.figure;
    groups.set(to.group, more.sort());
  }
}
