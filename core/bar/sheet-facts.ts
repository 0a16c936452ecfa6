import type { ColumnKind, ScheduleReading } from "../schedule/bar-row";
import type { Sheet } from "../schedule/sheet";
import { AnswersOfBars } from "./answers-of-bars";
import type { BarFacts } from "./bar-facts";
import { FactsInHand } from "./facts-in-hand";
import { MarkIndex } from "./mark-index";
import { identityHabits } from "./row-identities";
import { WordsOfBars } from "./said-words";
import { isMost, type SheetHabits, type SheetOfRow } from "./sheet-habits";
import { standardMeant } from "./standard-meant";
import { offStep } from "./step";
import { isSumOfLegs } from "./sum-of-legs";

/** All sheets of a workbook, for what only several show. */
export interface BookFacts {
  readonly sheets: readonly SheetFacts[];
}

/** One sheet's bars and what holds of all of them, each worked out once and only where asked. */
export class SheetFacts implements SheetOfRow {
  /** given by the audit once every row has its facts */
  answers = new AnswersOfBars([]);
  /** True once the other sheets of the book were asked for. */
  looksBeside = false;
  readonly words = new WordsOfBars();
  readonly inHand = new FactsInHand();
  #book: BookFacts = { sheets: [this] };
  #habits: SheetHabits | undefined;
  #byRow: ReadonlyMap<number, BarFacts> | undefined;

  constructor(
    readonly sheet: Sheet,
    readonly reading: ScheduleReading,
  ) {}

  get book(): BookFacts {
    this.looksBeside = true;
    return this.#book;
  }

  set book(book: BookFacts) {
    this.#book = book;
  }

  get bars(): readonly BarFacts[] {
    return this.answers.bars;
  }

  get name(): string {
    return this.sheet.name;
  }

  /** True where some table of the sheet has the column. */
  has(field: ColumnKind): boolean {
    return this.reading.tables.some((table) => table.columns.has(field));
  }

  /** The bar of a row of the used range. */
  barAt(row: number): BarFacts | undefined {
    this.#byRow ??= new Map(this.bars.map((facts) => [facts.row.row, facts]));
    return this.#byRow.get(row);
  }

  get habits(): SheetHabits {
    this.#habits ??= sheetHabits(this.answers);
    return this.#habits;
  }

  /** Habits that are the same as before an edit stay those of before, with what was worked out by them. */
  keepHabits(before: SheetHabits): void {
    this.#habits = before;
  }

  /** Bars that share a normalised mark, and a member too where marks start again for each; two or more. */
  get repeatedMarks(): readonly (readonly BarFacts[])[] {
    const places = this.answers.whole(repeatedMarks, markAndMember);
    return places.map((group) => group.map((place) => this.bars[place] as BarFacts));
  }
}

const FEWEST_ROWS_FOR_A_HABIT = 5;
const NEARLY_ALL = 0.8;

function sheetHabits(answers: AnswersOfBars): SheetHabits {
  const { bars } = answers;
  const shareWithout = (isWithout: (facts: BarFacts) => true | null): number =>
    bars.length === 0 ? 0 : (bars.length - answers.count(isWithout)) / bars.length;
  return {
    gradeShare: shareWithout(hasNoGrade),
    shapeShare: shareWithout(hasNoShape),
    usesBrackets: answers.count(hasBrackets) > 0,
    shapesOwnWay: isOwnWay(answers.count(hasOwnShape), answers.count(hasShapeTyped)),
    showsStandard: answers.count(isOfStandard) * 2 > bars.length,
    marksRestart: answers.whole(marksRestart, markAndMember),
    massFactor: commonMassFactor(answers),
    offStepShare: offStepShare(answers),
    lengthsAreSums: lengthsAreSums(bars),
    standardMeant: standardMeant(answers, bars[0]?.standard),
    identities: identityHabits(answers),
  };
}

const where = (isMet: boolean): true | null => (isMet ? true : null);
const hasNoGrade = ({ gradeName }: BarFacts) => where(gradeName === null);
const hasNoShape = ({ row }: BarFacts) => where(row.shape === null);
const hasBrackets = ({ row }: BarFacts) => where(row.freeDims !== "");
const hasNoLength = ({ row }: BarFacts) => where(row.length === null);
const isOffStep = ({ row, standard }: BarFacts) =>
  where(row.length !== null && offStep(row.length, standard.lengthRounding.step));

/** What groups by mark go by. */
export function markAndMember({ row, markKey }: BarFacts): string {
  return JSON.stringify([markKey, row.mark, row.member]);
}

const OWN_WAY = 0.5;

function isOwnWay(ownShapes: number, shapes: number): boolean {
  return ownShapes >= FEWEST_ROWS_FOR_A_HABIT && ownShapes > shapes * OWN_WAY;
}

const isTyped = (facts: BarFacts): boolean => String(facts.typed("shape") ?? "").trim() !== "";
const hasShapeTyped = (facts: BarFacts) => where(isTyped(facts));
const hasOwnShape = (facts: BarFacts) => where(isTyped(facts) && facts.definition === null && !facts.isPath);

/** A code with a figure in it, or a bar type that the standard has. */
const isOfStandard = (facts: BarFacts) => {
  const isCode = facts.definition !== null && /\d/.test(String(facts.typed("shape") ?? ""));
  return where(isCode || (facts.row.size !== null && facts.row.size.prefix !== "" && facts.grade !== null));
};

/** 0 where the standard prints no step, or too few lengths stand to tell a habit. */
function offStepShare(answers: AnswersOfBars): number {
  const { bars } = answers;
  const rounding = bars[0]?.standard.lengthRounding;
  if (rounding === undefined || rounding.cite.provenance === "common practice") return 0;
  const lengths = bars.length - answers.count(hasNoLength);
  return lengths < FEWEST_ROWS_FOR_A_HABIT ? 0 : answers.count(isOffStep) / lengths;
}

/** Bent bars with a typed length that are looked at to tell how a sheet gives lengths. */
const LOOKED_AT = 60;
const FEWEST_SUMS = 3;

function lengthsAreSums(bars: readonly BarFacts[]): boolean {
  let sums = 0;
  let others = 0;
  for (const facts of bars) {
    if (sums + others >= LOOKED_AT) break;
    if (facts.row.length === null || (facts.bendCount ?? 0) === 0) continue;
    if (isSumOfLegs(facts)) sums += 1;
    else others += 1;
  }
  return sums >= FEWEST_SUMS && isMost(sums / (sums + others));
}

/** Marks restart where more than one in ten marks names bars of several members. */
export function marksRestart(bars: readonly BarFacts[]): boolean {
  const members = new Map<string, string>();
  const shared = new Set<string>();
  for (const { markKey, row } of bars) {
    if (markKey === null || row.member === null) continue;
    const first = members.get(markKey);
    if (first === undefined) members.set(markKey, row.member);
    else if (first !== row.member) shared.add(markKey);
  }
  return shared.size > Math.max(1, members.size * 0.1);
}

/** Places of the bars of each mark that comes again. */
function repeatedMarks(bars: readonly BarFacts[]): readonly (readonly number[])[] {
  const restart = marksRestart(bars);
  const firsts = new MarkIndex<number>();
  const repeated = new Map<number, number[]>();
  bars.forEach(({ markKey, row }, place) => {
    if (markKey === null) return;
    const first = firsts.keep(restart ? row.member : null, markKey, place);
    if (first === place) return;
    const group = repeated.get(first);
    if (group === undefined) repeated.set(first, [first, place]);
    else group.push(place);
  });
  return [...repeated.values()];
}

const NEAR_ONE = 0.01;

/** A factor within 0.4 % of which at least four in five typed masses lie, and which is off 1 by over 1 %. */
function commonMassFactor(answers: AnswersOfBars): number | null {
  const all = new Float64Array(answers.bars.length);
  let count = 0;
  let nearOne = 0;
  for (const ratio of answers.each(massRatio)) {
    if (ratio === null) continue;
    all[count] = ratio;
    count += 1;
    if (Math.abs(ratio - 1) <= NEAR_ONE) nearOne += 1;
  }
  // then the middle one is near 1 too
  if (count < FEWEST_ROWS_FOR_A_HABIT || nearOne * 2 > count + 1) return null;
  const ratios = all.subarray(0, count).sort();
  const median = ratios[ratios.length >> 1] as number;
  if (Math.abs(median - 1) <= NEAR_ONE || median < 0.8 || median > 1.25) return null;
  const near = ratios.filter((ratio) => Math.abs(ratio / median - 1) <= 0.004).length;
  return near / ratios.length >= NEARLY_ALL ? Math.round(median * 1000) / 1000 : null;
}

const massRatio = (facts: BarFacts): number | null => facts.massRatio;
