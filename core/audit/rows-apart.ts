import { BarFacts } from "../bar/bar-facts";
import { FactsInHand } from "../bar/facts-in-hand";
import { KindsOfBars } from "../bar/kinds-of-bars";
import { type KnownMemory, KnownOfBars } from "../bar/known-of-bars";
import { WordsOfBars } from "../bar/said-words";
import type { SheetFacts } from "../bar/sheet-facts";
import type { SheetHabits, SheetOfRow } from "../bar/sheet-habits";
import type { ScheduleReading } from "../schedule/bar-row";
import { type PackedBars, packBars, unpackBars } from "../schedule/rows/packed-bars";
import type { Sheet } from "../schedule/sheet";
import { NOTHING_OWN } from "../standards/own-standard";
import { resolveStandard } from "../standards/resolve-standard";
import { isRefusal } from "../units/refusal";
import type { Finding } from "./finding";
import { judgeOfRows } from "./judge-of-rows";
import { limitsInForce, NO_CHANGED_LIMITS } from "./limits";
import { isRowRule } from "./rule";
import type { RuleContext } from "./rule-context";
import { RULES } from "./rules/index";

/** What the rows of a sheet say beside its cells, as plain data that another thread can be given. */
export interface RowsApart {
  readonly standard: string;
  readonly isStandardAssumed: boolean;
  readonly isStandardNamed: boolean;
  readonly bars: PackedBars;
  readonly known: KnownMemory;
  readonly reading: Pick<ScheduleReading, "tables" | "pasted">;
}

/** What else the judgement of a row goes by, once all rows were asked; plain data too. */
export interface HabitsApart {
  readonly habits: Omit<SheetHabits, "identities">;
  readonly identities: Omit<SheetHabits["identities"], "brokenRows">;
}

/** Works on rows at the same time as the audit goes on: another thread, where the host has one. */
export interface RowsHelper {
  /** null where the rows are too few, or its cells cannot be handed over */
  begin(rows: RowsApart, sheet: Sheet): RowsBegun | null;
}

/** Works out what is known of each bar by itself, until the habits are there. */
export interface RowsBegun {
  judge(habits: HabitsApart): RowsHelped;
  /** ends it: the rows cannot be judged apart */
  leave(): void;
}

export interface RowsHelped {
  /** Has the rows that nobody has begun with judged here, and gives what was found of the others. */
  finish(judge: (place: number) => void, take: (place: number, found: readonly Finding[]) => void): void;
}

/** Null where more than plain data is asked: a Shop sheet, a standard of the book's own, codes of another list. */
function rowsApart(
  facts: SheetFacts,
  { standard, shop, own, isStandardAssumed, isStandardNamed }: RuleContext,
): RowsApart | null {
  const isPlain = shop === null && own === null && standard.own === NOTHING_OWN;
  if (!isPlain || facts.sheet.isTurned === true) return null;
  if (facts.codesMeant(standard) !== null || resolveStandard(standard.id) !== standard) return null;
  const { tables, bars: rows, pasted } = facts.reading;
  const bars = packBars(rows);
  if (bars === null) return null;
  return {
    ...{ standard: standard.id, isStandardAssumed, isStandardNamed, bars, known: facts.known.memory },
    reading: { tables, ...(pasted !== undefined && { pasted }) },
  };
}

/** Null where another standard is meant, which is no plain data. */
function habitsApart({ habits: all }: SheetFacts): HabitsApart | null {
  const { standardMeant, identities, ...habits } = all;
  if (standardMeant !== null) return null;
  const { speaking, perMetre } = identities;
  return { habits: { ...habits, standardMeant }, identities: { speaking, perMetre } };
}

/** Has a helper begin with the rows, and go on with the judgement once the habits are known. */
export function beginApart(helper: RowsHelper, facts: SheetFacts, context: RuleContext): RowsHelped | null {
  const apart = rowsApart(facts, context);
  const begun = apart === null ? null : helper.begin(apart, facts.sheet);
  if (begun === null) return null;
  const habits = habitsApart(facts);
  if (habits !== null) return begun.judge(habits);
  begun.leave();
  return null;
}

/** The rows that were handed over, one place after another. */
export interface RowsOfApart {
  /** Works out what is known of the bar by itself, if nobody did. */
  settle(place: number): void;
  judgeBy(habits: HabitsApart): (place: number) => readonly Finding[] | undefined;
}

/** Null where the standard is not held. */
export function rowsOfApart(
  { standard: id, isStandardAssumed, isStandardNamed, bars, known: memory, reading }: RowsApart,
  sheet: Sheet,
): RowsOfApart | null {
  const standard = resolveStandard(id);
  if (isRefusal(standard)) return null;
  const barAt = unpackBars(bars);
  const known = new KnownOfBars(memory);
  let habits: SheetHabits | null = null;
  const ofRow: SheetOfRow = {
    ...{ sheet, reading, words: new WordsOfBars(), kinds: new KindsOfBars(), inHand: new FactsInHand() },
    known,
    get habits() {
      if (habits === null) throw new Error("the habits of the sheet are not known yet");
      return habits;
    },
    codesMeant: () => null,
  };
  const factsAt = (place: number): BarFacts => new BarFacts(barAt(place), ofRow, standard, place);
  return {
    settle: (place) => {
      if (known.signsOf(place) === 0) factsAt(place).settle();
    },
    judgeBy: (given) => {
      habits = { ...given.habits, identities: { ...given.identities, brokenRows: new WeakMap() } };
      const limits = limitsInForce(NO_CHANGED_LIMITS, standard);
      const context = { standard, isStandardAssumed, isStandardNamed, limits, shop: null, own: null };
      const judge = judgeOfRows(RULES.filter(isRowRule), context);
      return (place) => judge(factsAt(place));
    },
  };
}
