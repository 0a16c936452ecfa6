import type { BarFacts } from "./bar-facts";

/** A bar of which something was answered, and its place among the bars of its sheet. */
export interface Answered<Answer> {
  readonly place: number;
  readonly facts: BarFacts;
  readonly answer: Answer;
}

/** An edit that changed the bars of those places, and no others. */
export interface BarsChanged {
  readonly before: readonly BarFacts[];
  readonly now: readonly BarFacts[];
  readonly changed: readonly number[];
}

/** What was answered of all bars of a sheet; the same object after an edit where the answer is the same. */
export interface Kept<Value> {
  readonly value: Value;
  /** what was given with the question */
  readonly given: unknown;
  /** null where it has to be asked of all bars again */
  after(edit: BarsChanged): Kept<Value> | null;
}

/** The bars of which the answer is not null, in order. */
export class KeptThose<Answer, Given> implements Kept<readonly Answered<Answer>[]> {
  constructor(
    private readonly ask: (facts: BarFacts, given: Given) => Answer | null,
    readonly given: Given,
    readonly value: readonly Answered<Answer>[],
  ) {}

  static of<Answer, Given>(
    ask: (facts: BarFacts, given: Given) => Answer | null,
    given: Given,
    bars: readonly BarFacts[],
  ): KeptThose<Answer, Given> {
    const found: Answered<Answer>[] = [];
    for (let place = 0; place < bars.length; place += 1) {
      const facts = bars[place] as BarFacts;
      const answer = ask(facts, given);
      if (answer !== null) found.push({ place, facts, answer });
    }
    return new KeptThose(ask, given, found);
  }

  after({ now, changed }: BarsChanged): this | KeptThose<Answer, Given> {
    let again: Answered<Answer>[] | undefined;
    for (const place of changed) {
      const facts = now[place] as BarFacts;
      const answer = this.ask(facts, this.given);
      const list = again ?? this.value;
      const at = firstFrom(list, place);
      const isThere = list[at]?.place === place;
      if (answer === null && !isThere) continue;
      again ??= this.value.slice();
      again.splice(at, isThere ? 1 : 0, ...(answer === null ? [] : [{ place, facts, answer }]));
    }
    return again === undefined ? this : new KeptThose(this.ask, this.given, again);
  }
}

function firstFrom(list: readonly Answered<unknown>[], place: number): number {
  let low = 0;
  let high = list.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((list[middle] as Answered<unknown>).place < place) low = middle + 1;
    else high = middle;
  }
  return low;
}

/** How many bars meet a condition. */
export class KeptCount implements Kept<number> {
  readonly given = undefined;

  constructor(
    private readonly isMet: (facts: BarFacts) => boolean,
    readonly value: number,
  ) {}

  static of(isMet: (facts: BarFacts) => boolean, bars: readonly BarFacts[]): KeptCount {
    let count = 0;
    for (const facts of bars) if (isMet(facts)) count += 1;
    return new KeptCount(isMet, count);
  }

  after({ before, now, changed }: BarsChanged): KeptCount {
    let count = this.value;
    for (const place of changed)
      count += Number(this.isMet(now[place] as BarFacts)) - Number(this.isMet(before[place] as BarFacts));
    return count === this.value ? this : new KeptCount(this.isMet, count);
  }
}

/** What is made of all bars together, as long as what it goes by stays the same in every bar. */
export class KeptWhole<Whole, Given> implements Kept<Whole> {
  constructor(
    private readonly goesBy: (facts: BarFacts, given: Given) => string,
    readonly given: Given,
    readonly value: Whole,
  ) {}

  after({ before, now, changed }: BarsChanged): this | null {
    const isSame = (place: number): boolean =>
      this.goesBy(now[place] as BarFacts, this.given) === this.goesBy(before[place] as BarFacts, this.given);
    return changed.every(isSame) ? this : null;
  }
}

/** A figure of a bar, and the group that it is one of; null where the bar has none. */
export type Figure = (facts: BarFacts) => { readonly group: number; readonly figure: number } | null;

/** The figures of each group, in order. */
export class KeptFigures implements Kept<ReadonlyMap<number, Float64Array>> {
  readonly given = undefined;

  constructor(
    private readonly figureOf: Figure,
    readonly value: ReadonlyMap<number, Float64Array>,
  ) {}

  static of(figureOf: Figure, bars: readonly BarFacts[]): KeptFigures {
    const found = new Map<number, number[]>();
    for (const facts of bars) {
      const one = figureOf(facts);
      if (one === null) continue;
      const group = found.get(one.group);
      if (group === undefined) found.set(one.group, [one.figure]);
      else group.push(one.figure);
    }
    const groups = [...found].map(([group, figures]) => [group, Float64Array.from(figures).sort()] as const);
    return new KeptFigures(figureOf, new Map(groups));
  }

  after({ before, now, changed }: BarsChanged): KeptFigures {
    let groups: Map<number, Float64Array> | undefined;
    for (const place of changed) {
      const from = this.figureOf(before[place] as BarFacts);
      const to = this.figureOf(now[place] as BarFacts);
      if (from?.group === to?.group && from?.figure === to?.figure) continue;
      groups ??= new Map(this.value);
      moveFigure(groups, from, to);
    }
    return groups === undefined ? this : new KeptFigures(this.figureOf, groups);
  }
}

function moveFigure(
  groups: Map<number, Float64Array>,
  from: ReturnType<Figure>,
  to: ReturnType<Figure>,
): void {
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
