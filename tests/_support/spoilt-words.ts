import type { WordReading } from "../../core/schedule/evidence/index";
import { type Random, type RandomSchedule, seededRandom } from "./random-schedule";

/** What words say of each column. */
export type SaidWords = Map<number, WordReading>;

const SAID: ReadonlySet<string> = new Set([
  "size",
  "members",
  "each",
  "total",
  "length",
  "mass",
  "totalLength",
  "unitMass",
  "bySize",
  "leg",
  "mark",
  "shape",
  "run",
  "spacing",
]);

/** The words of a header whose every word is right. */
export function rightWords({ truth }: RandomSchedule): SaidWords {
  const words: SaidWords = new Map();
  truth.forEach(({ role, unit }, column) => {
    if (!SAID.has(role)) return;
    const reading = { column, role, unit, by: "written" } as WordReading;
    words.set(column, reading);
  });
  return words;
}

function called(words: SaidWords, role: string): WordReading | undefined {
  return [...words.values()].find((word) => word.role === role);
}

function otherUnit(unit: string | null, random: Random): WordReading["unit"] {
  return random.pick((["mm", "cm", "m"] as const).filter((one) => one !== unit));
}

function withoutRole(words: SaidWords, role: string): SaidWords | null {
  const word = called(words, role);
  if (word === undefined) return null;
  words.delete(word.column);
  return words;
}

function withOtherUnit(words: SaidWords, random: Random, by: WordReading["by"]): SaidWords | null {
  const length = called(words, "length");
  if (length === undefined || length.unit === "in") return null;
  return words.set(length.column, { ...length, unit: otherUnit(length.unit, random), by });
}

/** One word misread at a time; null where the schedule has no such column. */
export const SPOILT = {
  nothing: (words: SaidWords): SaidWords | null => words,
  "unit of length, guessed": (words: SaidWords, random: Random) => withOtherUnit(words, random, "guessed"),
  "unit of length, a wrong word": (words: SaidWords, random: Random) =>
    withOtherUnit(words, random, "written"),
  "kg / t": (words: SaidWords) => {
    const mass = called(words, "mass");
    return mass === undefined
      ? null
      : words.set(mass.column, { ...mass, unit: mass.unit === "kg" ? "t" : "kg" });
  },
  "size unseen": (words: SaidWords) => withoutRole(words, "size"),
  "length unseen": (words: SaidWords) => withoutRole(words, "length"),
  "run read as length": (words: SaidWords) => {
    const [length, run] = [called(words, "length"), called(words, "run")];
    if (length === undefined || run === undefined) return null;
    words.delete(length.column);
    return words.set(run.column, { ...length, column: run.column });
  },
  "total unseen": (words: SaidWords) => withoutRole(words, "total"),
  "count read as a leg": (words: SaidWords) => {
    const total = called(words, "total");
    return total === undefined ? null : words.set(total.column, { ...total, role: "leg", unit: "mm" });
  },
  "each read as total, total unseen": (words: SaidWords) => {
    const [each, total] = [called(words, "each"), called(words, "total")];
    if (each === undefined || total === undefined) return null;
    words.delete(total.column);
    return words.set(each.column, { ...each, role: "total" });
  },
} as const;

export type Spoilt = keyof typeof SPOILT;

/** The words of a schedule with one of them misread, the same for the same seed. */
export function spoiltWords(schedule: RandomSchedule, spoilt: Spoilt, seed: number): SaidWords | null {
  return SPOILT[spoilt](rightWords(schedule), seededRandom(seed));
}
