import type { ColumnKind, ScheduleReading } from "../schedule/bar-row";
import type { Sheet } from "../schedule/sheet";
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
  /** set by the audit once every row has its facts */
  bars: readonly BarFacts[] = [];
  book: BookFacts = { sheets: [this] };
  readonly words = new WordsOfBars();
  readonly inHand = new FactsInHand();
  #habits: SheetHabits | undefined;
  #byRow: ReadonlyMap<number, BarFacts> | undefined;
  #repeated: Iterable<readonly BarFacts[]> | undefined;

  constructor(
    readonly sheet: Sheet,
    readonly reading: ScheduleReading,
  ) {}

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
    this.#habits ??= sheetHabits(this.bars);
    return this.#habits;
  }

  /** Bars that share a normalised mark, and a member too where marks start again for each; two or more. */
  get repeatedMarks(): Iterable<readonly BarFacts[]> {
    this.#repeated ??= repeatedMarks(this.bars, this.habits.marksRestart);
    return this.#repeated;
  }
}

const FEWEST_ROWS_FOR_A_HABIT = 5;
const NEARLY_ALL = 0.8;

function sheetHabits(bars: readonly BarFacts[]): SheetHabits {
  let graded = 0;
  let shaped = 0;
  let usesBrackets = false;
  for (const facts of bars) {
    if (facts.gradeName !== null) graded += 1;
    if (facts.row.shape !== null) shaped += 1;
    if (facts.row.freeDims !== "") usesBrackets = true;
  }
  return {
    gradeShare: bars.length === 0 ? 0 : graded / bars.length,
    shapeShare: bars.length === 0 ? 0 : shaped / bars.length,
    usesBrackets,
    marksRestart: marksRestart(bars),
    massFactor: commonMassFactor(bars),
    offStepShare: offStepShare(bars),
    lengthsAreSums: lengthsAreSums(bars),
    standardMeant: standardMeant(bars, bars[0]?.standard),
    identities: identityHabits(bars),
  };
}

/** 0 where the standard prints no step, or too few lengths stand to tell a habit. */
function offStepShare(bars: readonly BarFacts[]): number {
  const rounding = bars[0]?.standard.lengthRounding;
  if (rounding === undefined || rounding.cite.provenance === "common practice") return 0;
  let lengths = 0;
  let off = 0;
  for (const { row } of bars) {
    if (row.length === null) continue;
    lengths += 1;
    if (offStep(row.length, rounding.step)) off += 1;
  }
  return lengths < FEWEST_ROWS_FOR_A_HABIT ? 0 : off / lengths;
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
function marksRestart(bars: readonly BarFacts[]): boolean {
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

function repeatedMarks(bars: readonly BarFacts[], restart: boolean): Iterable<readonly BarFacts[]> {
  const firsts = new MarkIndex<BarFacts>();
  const repeated = new Map<BarFacts, BarFacts[]>();
  for (const facts of bars) {
    if (facts.markKey === null) continue;
    const first = firsts.keep(restart ? facts.row.member : null, facts.markKey, facts);
    if (first === facts) continue;
    const group = repeated.get(first);
    if (group === undefined) repeated.set(first, [first, facts]);
    else group.push(facts);
  }
  // several rules go through them
  return [...repeated.values()];
}

/** A factor within 0.4 % of which at least four in five typed masses lie, and which is off 1 by over 1 %. */
function commonMassFactor(bars: readonly BarFacts[]): number | null {
  const all = new Float64Array(bars.length);
  let count = 0;
  for (const { massRatio } of bars) {
    if (massRatio === null) continue;
    all[count] = massRatio;
    count += 1;
  }
  if (count < FEWEST_ROWS_FOR_A_HABIT) return null;
  const ratios = all.subarray(0, count).sort();
  const median = ratios[ratios.length >> 1] as number;
  if (Math.abs(median - 1) <= 0.01 || median < 0.8 || median > 1.25) return null;
  const near = ratios.filter((ratio) => Math.abs(ratio / median - 1) <= 0.004).length;
  return near / ratios.length >= NEARLY_ALL ? Math.round(median * 1000) / 1000 : null;
}
