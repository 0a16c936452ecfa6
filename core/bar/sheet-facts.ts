import type { ColumnKind, ScheduleReading } from "../schedule/bar-row";
import { cellAddress } from "../schedule/cell-address";
import type { Cell, Sheet } from "../schedule/sheet";
import type { ShapeDefinition, Standard } from "../standards/port";
import { greatest } from "../units/extremes";
import { Memo } from "../units/memo";
import { AnswersOfBars } from "./answers-of-bars";
import type { BarFacts } from "./bar-facts";
import { type CodesMeant, codesMeant } from "./codes-meant";
import { commonMassFactor } from "./common-mass-factor";
import { documentHabits, namesDocumentOf } from "./document-habits";
import { FactsInHand } from "./facts-in-hand";
import { codeAndFree, freeLeftBlank } from "./free-left-blank";
import { samePerMetre } from "./identity-habits";
import { KindsOfBars } from "./kinds-of-bars";
import { KnownOfBars } from "./known-of-bars";
import { Looked } from "./looked";
import { MarkIndex } from "./mark-index";
import { identityHabits } from "./row-identities";
import { WordsOfBars } from "./said-words";
import { isMost, type SheetHabits, type SheetOfRow } from "./sheet-habits";
import { lettersElsewhere, standardMeant } from "./standard-meant";
import { saysLapsIncluded, statedLength } from "./stated-length";
import { STATED_LENGTH } from "./stated-length.data";
import { statedMasses } from "./stated-masses";
import { offStep } from "./step";
import { codeAndExtra, strayLetters } from "./stray-letters";
import { isSumOfLegs } from "./sum-of-legs";

/** All sheets of a workbook, for what only several show. */
export interface BookFacts {
  readonly sheets: readonly SheetFacts[];
}

/** One sheet's bars and what holds of all of them, each worked out once and only where asked. */
export class SheetFacts implements SheetOfRow {
  /** given by the audit once every row has its facts */
  answers = new AnswersOfBars([]);
  readonly words = new WordsOfBars();
  readonly kinds = new KindsOfBars();
  readonly inHand = new FactsInHand();
  readonly known: KnownOfBars;
  #book: BookFacts = { sheets: [this] };
  #habits: SheetHabits | undefined;
  #codesMeant: CodesMeant | null | undefined;
  readonly #reading: ScheduleReading;
  readonly #before: SheetHabits | null;

  constructor(
    readonly sheet: Sheet,
    reading: ScheduleReading,
    /** before an edit: habits that are the same stay the same object, with what was worked out by them */
    habitsBefore: SheetHabits | null = null,
    /** where they were asked for already */
    codes?: CodesMeant | null,
  ) {
    this.#reading = reading;
    this.known = KnownOfBars.of(reading.bars.length);
    this.#codesMeant = codes;
    this.#before = habitsBefore;
  }

  /** Runs what looks at the sheet, and says what it looked at. */
  lookedAt(run: () => void): Looked {
    const looked = new Looked();
    this.answers.looked = looked;
    run();
    this.answers.looked = null;
    return looked;
  }

  /** True where all that was looked at stands as it did before the edit of a few rows. */
  standsAsIn(looked: Looked): boolean {
    const sameHabits = looked.habits === null || looked.habits === this.habits;
    const sameStep =
      looked.lengthStep === undefined || looked.lengthStep === (this.#reading.lengthStep ?? null);
    return !looked.isBeside && sameHabits && sameStep && this.answers.standAsIn(looked);
  }

  /** The sheet as read. What looks at it goes by all of its bars. */
  get reading(): ScheduleReading {
    this.answers.looked?.atAllBars();
    return this.#reading;
  }

  /** mm: the step that most lengths keep */
  get lengthStep(): number | null {
    const { lengthStep = null } = this.#reading;
    if (this.answers.looked !== null) this.answers.looked.lengthStep = lengthStep;
    return lengthStep;
  }

  get book(): BookFacts {
    this.answers.looked?.atOtherSheets();
    return this.#book;
  }

  set book(book: BookFacts) {
    this.#book = book;
  }

  /** All bars. What looks at them goes by all of them; `answers` says less. */
  get bars(): readonly BarFacts[] {
    return this.answers.bars;
  }

  get name(): string {
    return this.sheet.name;
  }

  /** True where some table of the sheet has the column. */
  has(field: ColumnKind): boolean {
    return this.#reading.tables.some((table) => table.columns.has(field));
  }

  /** The bar of a row of the used range; of lists side by side the one that a cell belongs to. Bars stand in order of their rows. */
  barAt(row: number, cell: string | null = null): BarFacts | undefined {
    let low = 0;
    let high = this.answers.length - 1;
    while (low < high) {
      const middle = (low + high) >> 1;
      if (this.answers.bar(middle).row.row < row) low = middle + 1;
      else high = middle;
    }
    for (let at = low; cell !== null && at < this.answers.length; at += 1) {
      const { row: bar } = this.answers.bar(at);
      if (bar.row !== row) break;
      const { left = 0, right = left - 1 } = bar.table;
      for (let column = left; column <= right; column += 1)
        if (cellAddress(this.sheet, row, column) === cell) return this.answers.bar(at);
    }
    const facts = this.answers.length === 0 ? undefined : this.answers.bar(low);
    return facts?.row.row === row ? facts : undefined;
  }

  codesMeant(standard: Standard): CodesMeant | null {
    if (this.#codesMeant === undefined) this.#codesMeant = codesMeant(this.#reading.bars, standard);
    // how many fit hangs on every bar; that none is meant is asked anew with each edit
    if (this.#codesMeant !== null) this.answers.looked?.atAllBars();
    return this.#codesMeant;
  }

  get habits(): SheetHabits {
    const { looked } = this.answers;
    if (this.#habits === undefined) {
      this.answers.looked = null;
      this.#habits = sheetHabits(this.answers, this.sheet, this.#reading, this.#before);
      this.answers.looked = looked;
    }
    looked?.atHabits(this.#habits);
    return this.#habits;
  }

  /** The same mark means another bar in another member. */
  get marksRestart(): boolean {
    return this.answers.whole(marksRestart, markAndMember);
  }

  /** Bars that share a normalised mark, and a member too where marks start again for each; two or more. */
  get repeatedMarks(): readonly (readonly BarFacts[])[] {
    const places = this.answers.whole(repeatedMarks, markAndMember, this.marksRestart);
    return places.map((group) => group.map((place) => this.answers.bar(place)));
  }
}

const FEWEST_ROWS_FOR_A_HABIT = 5;

function sheetHabits(
  answers: AnswersOfBars,
  sheet: Sheet,
  reading: ScheduleReading,
  before: SheetHabits | null,
): SheetHabits {
  const { bars, length } = answers;
  const lengthStep = reading.lengthStep ?? null;
  const inForce = bars[0]?.standard;
  const isNamed = (id: string): boolean => namesDocumentOf(sheet, reading, id);
  const shareWithout = (isWithout: (facts: BarFacts) => boolean): number =>
    length === 0 ? 0 : (length - answers.count(isWithout)) / length;
  const habits = {
    gradeShare: shareWithout(hasNoGrade),
    shapeShare: shareWithout(hasNoShape),
    usesBrackets: answers.count(hasBrackets) > 0,
    shapesOwnWay: isOwnWay(
      answers.count(hasOwnShape),
      answers.count(isSketch),
      answers.count(isShapeTyped),
      answers.count(hasCodeTyped),
    ),
    showsStandard: answers.count(hasCodeTyped) * 2 > length,
    marksRestart: answers.whole(marksRestart, markAndMember),
    massFactor: commonMassFactor(answers),
    offStepShare: offStepShare(answers),
    keepsAnotherStep: keepsAnotherStep(answers, lengthStep),
    lengthsAreSums: answers.whole(lengthsAreSums, sumOrOther),
    ...documentHabits(answers, sheet, reading),
    formersOwnWay: formersOwnWay(answers),
    ...statedHabits(answers, sheet, reading),
    freeLeftBlank: answers.whole(freeLeftBlank, codeAndFree),
    strayLetters: answers.whole(strayLetters, codeAndExtra),
    standardMeant: standardMeant(answers, inForce, isNamed),
    lettersElsewhere: lettersElsewhere(answers, inForce, isNamed),
    identities: identityHabits(answers, before?.identities ?? null),
    statedMasses: statedMassesAgain(answers, reading, before),
  };
  return before !== null && areEqual(habits, before) ? before : habits;
}

/** Masses that are as before an edit stay that object. */
function statedMassesAgain(answers: AnswersOfBars, reading: ScheduleReading, before: SheetHabits | null) {
  const perMetre = statedMasses(answers, reading);
  const known = before?.statedMasses;
  return known !== undefined && samePerMetre({ perMetre: known }, { perMetre }) ? known : perMetre;
}

/** What titles and notes say of lengths; a length that many bars are beyond is of something else. */
function statedHabits(answers: AnswersOfBars, sheet: Sheet, reading: ScheduleReading) {
  const stated = statedLength(sheet, reading);
  const beyond =
    stated === null ? 0 : answers.bars.filter(({ row }) => (row.length ?? 0) > stated.most).length;
  return {
    statedLength: beyond > STATED_LENGTH.value.beyond * answers.length ? null : stated,
    lapsIncluded: saysLapsIncluded(sheet, reading),
  };
}

function areEqual(habits: SheetHabits, before: SheetHabits): boolean {
  const { standardMeant: one, statedLength: said, ...others } = habits;
  const { standardMeant: other } = before;
  if (said?.cell !== before.statedLength?.cell || said?.typed !== before.statedLength?.typed) return false;
  const isSameMeant =
    one?.id === other?.id &&
    one?.first === other?.first &&
    one?.misfits === other?.misfits &&
    one?.fitting === other?.fitting;
  const names = Object.keys(others) as (keyof typeof others)[];
  return isSameMeant && names.every((name) => others[name] === before[name]);
}

const hasNoGrade = ({ gradeName }: BarFacts): boolean => gradeName === null;
const hasNoShape = ({ row }: BarFacts): boolean => row.shape === null;
const hasBrackets = ({ row }: BarFacts): boolean => row.freeDims !== "";
const hasLength = ({ row }: BarFacts): boolean => row.length !== null;
const isOffStep = ({ row, standard }: BarFacts): boolean =>
  row.length !== null && offStep(row.length, standard.lengthRounding.step);

/** What groups by mark go by. */
export function markAndMember({ row, markKey }: BarFacts): string {
  return JSON.stringify([markKey, row.mark, row.member]);
}

const isFormerBelow = ({ row, leastFormer }: BarFacts): boolean =>
  row.former !== null && leastFormer !== null && row.former < leastFormer.value;

/** The largest former of each diameter, where the list keeps leasts of its own: "|20:100|10:20|"; else nothing. */
function formersOwnWay(answers: AnswersOfBars): string {
  if (answers.figures(formerBelow).size < FEWEST_OWN) return "";
  const largest = [...answers.figures(formerTyped)].map(([size, all]) => `${size}:${greatest(all)}`);
  return `|${largest.join("|")}|`;
}

const formerTyped = ({ row, diameter }: BarFacts) =>
  row.former === null || diameter === null ? null : { group: diameter, figure: row.former };

/** A former below the least, by the bar's diameter: a slip is one of one diameter. */
const formerBelow = (facts: BarFacts) =>
  isFormerBelow(facts) ? { group: facts.diameter ?? 0, figure: facts.row.former ?? 0 } : null;

const OWN_WAY = 0.5;
const FEWEST_OWN = 3;
const FEWEST_SKETCHES = 2;

/** Most shapes are of the sheet's own making, or none is a code of the standard. */
function isOwnWay(ownShapes: number, sketches: number, shapes: number, codes: number): boolean {
  if (codes === 0 && (ownShapes >= FEWEST_OWN || (sketches === ownShapes && sketches >= FEWEST_SKETCHES)))
    return true;
  return ownShapes >= FEWEST_ROWS_FOR_A_HABIT && ownShapes > shapes * OWN_WAY;
}

/** What is typed as the shape of a bar. */
interface TypedShape {
  readonly isTyped: boolean;
  /** neither a code that is held nor a path */
  readonly isOwn: boolean;
  /** legs in words: two numbers and more, which is no code mistyped */
  readonly isSketch: boolean;
  /** a code as it stands in the list: a length in the place of the shape is no code of a straight bar */
  readonly isCode: boolean;
}

type ShapesTyped = Memo<Cell, TypedShape>;
const shapesTyped = (): ShapesTyped => new Memo(100);

/** Bars of one kind mostly have the same typed. */
function typedShape(facts: BarFacts): TypedShape {
  const cell = facts.typed("shape");
  return facts.kind.ask(shapesTyped, facts).of(cell, () => readTyped(facts, String(cell ?? "")));
}

function readTyped({ definition, isPath }: BarFacts, typed: string): TypedShape {
  const isTyped = typed.trim() !== "";
  const isOwn = isTyped && definition === null && !isPath;
  const isSketch = isOwn && (typed.match(/\d+/g)?.length ?? 0) > 1;
  return {
    isTyped,
    isOwn,
    isSketch,
    isCode: definition !== null && isCodeOf(definition, typed.toUpperCase()),
  };
}

function isCodeOf({ code }: ShapeDefinition, typed: string): boolean {
  if (!/\d/.test(typed)) return false;
  const words = typed.match(/[\p{L}\d]+/gu) ?? [];
  // several numbers are legs
  if (words.filter((word) => /\d/.test(word)).length > 1) return false;
  // 1, 2 and 3 are types of a list's own more often than codes without their noughts
  return words.some((word) => word === code || (Number(word) === Number(code) && !/^[1-9]$/.test(word)));
}

const isSketch = (facts: BarFacts): boolean => typedShape(facts).isSketch;
const isShapeTyped = (facts: BarFacts): boolean => typedShape(facts).isTyped;
const hasOwnShape = (facts: BarFacts): boolean => typedShape(facts).isOwn;
const hasCodeTyped = (facts: BarFacts): boolean => typedShape(facts).isCode;

/** 0 where the standard prints no step, or too few lengths stand to tell a habit. */
function offStepShare(answers: AnswersOfBars): number {
  const { bars } = answers;
  const rounding = bars[0]?.standard.lengthRounding;
  if (rounding === undefined || rounding.cite.provenance === "common practice") return 0;
  const lengths = answers.count(hasLength);
  return lengths < FEWEST_ROWS_FOR_A_HABIT ? 0 : answers.count(isOffStep) / lengths;
}

const FEWEST_OFF = 3;

/** Nearly all lengths keep a step, 10 mm, that the printed one, 25 mm, is no multiple of: no slips, but the list's own. */
function keepsAnotherStep(answers: AnswersOfBars, lengthStep: number | null): boolean {
  const step = answers.bars[0]?.standard.lengthRounding.step ?? 0;
  if (lengthStep === null || step <= 0 || lengthStep % step === 0 || step % lengthStep === 0) return false;
  return offStepShare(answers) > 0 && answers.count(isOffStep) >= FEWEST_OFF;
}

/** Bent bars with a typed length that are looked at to tell how a sheet gives lengths. */
const LOOKED_AT = 60;
const FEWEST_SUMS = 3;

function lengthsAreSums(bars: readonly BarFacts[]): boolean {
  let sums = 0;
  let others = 0;
  for (const facts of bars) {
    if (sums + others >= LOOKED_AT) break;
    const said = sumOrOther(facts);
    if (said === "sum") sums += 1;
    if (said === "other") others += 1;
  }
  return sums >= FEWEST_SUMS && isMost(sums / (sums + others));
}

/** What a bent bar's typed length is. */
function sumOrOther(facts: BarFacts): "sum" | "other" | "none" {
  if (facts.row.length === null || (facts.bendCount ?? 0) === 0) return "none";
  return isSumOfLegs(facts) ? "sum" : "other";
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

/** Places of the bars of each mark that comes again. */
function repeatedMarks(bars: readonly BarFacts[], restart: boolean): readonly (readonly number[])[] {
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
