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

/** All that the judgement of a sheet's rows goes by beside its cells, as plain data that another thread can be given. */
export interface RowsApart {
  readonly standard: string;
  readonly isStandardAssumed: boolean;
  readonly isStandardNamed: boolean;
  readonly bars: PackedBars;
  readonly known: KnownMemory;
  readonly reading: Pick<ScheduleReading, "tables" | "pasted">;
  readonly habits: Omit<SheetHabits, "identities">;
  readonly identities: Omit<SheetHabits["identities"], "brokenRows">;
}

/** Judges rows at the same time as the audit goes on: another thread, where the host has one. */
export interface RowsHelper {
  /** null where the rows are too few, or its cells cannot be handed over */
  begin(rows: RowsApart, sheet: Sheet): RowsHelped | null;
}

export interface RowsHelped {
  /** Has the rows that nobody has begun with judged here, and gives what was found of the others. */
  finish(judge: (place: number) => void, take: (place: number, found: readonly Finding[]) => void): void;
}

/** Null where more than plain data is asked: a Shop sheet, a standard of the book's own, another standard that is meant. */
export function rowsApart(
  facts: SheetFacts,
  { standard, shop, own, isStandardAssumed, isStandardNamed }: RuleContext,
): RowsApart | null {
  const isPlain = shop === null && own === null && standard.own === NOTHING_OWN;
  const { standardMeant, identities, ...habits } = facts.habits;
  if (!isPlain || facts.sheet.isTurned === true || standardMeant !== null) return null;
  if (facts.codesMeant(standard) !== null || resolveStandard(standard.id) !== standard) return null;
  const { tables, bars: rows, pasted } = facts.reading;
  const bars = packBars(rows);
  if (bars === null) return null;
  const { speaking, perMetre } = identities;
  return {
    ...{ standard: standard.id, isStandardAssumed, isStandardNamed, bars, known: facts.known.memory },
    reading: { tables, ...(pasted !== undefined && { pasted }) },
    habits: { ...habits, standardMeant },
    identities: { speaking, perMetre },
  };
}

/** Judges rows by what was handed over, one place after another; null where the standard is not held. */
export function judgeOfApart(
  { standard: id, isStandardAssumed, isStandardNamed, bars, known, reading, habits, identities }: RowsApart,
  sheet: Sheet,
): ((place: number) => readonly Finding[] | undefined) | null {
  const standard = resolveStandard(id);
  if (isRefusal(standard)) return null;
  const barAt = unpackBars(bars);
  const ofRow: SheetOfRow = {
    ...{ sheet, reading, words: new WordsOfBars(), kinds: new KindsOfBars(), inHand: new FactsInHand() },
    known: new KnownOfBars(known),
    habits: { ...habits, identities: { ...identities, brokenRows: new WeakMap() } },
    codesMeant: () => null,
  };
  const limits = limitsInForce(NO_CHANGED_LIMITS, standard);
  const judge = judgeOfRows(RULES.filter(isRowRule), {
    standard,
    isStandardAssumed,
    isStandardNamed,
    limits,
    shop: null,
    own: null,
  });
  return (place) => judge(new BarFacts(barAt(place), ofRow, standard, place));
}
