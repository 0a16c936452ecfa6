import type { Cited } from "../standards/citation";
import type { Standard, Use } from "../standards/port";
import { isRefusal, type Refusal } from "../units/refusal";

type Answer = Cited<number> | Refusal;

/** Answers by standard, grade, use and diameter; bars of one kind mostly follow one another. */
class Memory<Value> {
  readonly #byStandard = new WeakMap<Standard, Map<string | undefined, Map<Use, Map<number, Value>>>>();
  #standard: Standard | undefined;
  #use: Use | undefined;
  #grade: string | undefined;
  #byDiameter: Map<number, Value> = new Map();

  of(standard: Standard, use: Use, grade: string | undefined): Map<number, Value> {
    if (standard === this.#standard && use === this.#use && grade === this.#grade) {
      if (this.#byDiameter.size < MOST_REMEMBERED) return this.#byDiameter;
    }
    let byGrade = this.#byStandard.get(standard);
    if (byGrade === undefined) {
      byGrade = new Map();
      this.#byStandard.set(standard, byGrade);
    }
    this.#standard = standard;
    this.#use = use;
    this.#grade = grade;
    this.#byDiameter = inner(inner(byGrade, grade), use);
    return this.#byDiameter;
  }
}

const formers = new Memory<Answer>();
const radii = new Memory<Answer>();
const endLegs = new Memory<number>();

/** Least former of a standard for an uncoated bar, mm, remembered: a schedule asks for few of them often. */
export function leastFormer(standard: Standard, diameter: number, use: Use, grade?: string): Answer {
  const byDiameter = formers.of(standard, use, grade);
  let answer = byDiameter.get(diameter);
  if (answer === undefined) {
    answer = standard.former(grade === undefined ? { diameter, use } : { diameter, use, grade });
    byDiameter.set(diameter, answer);
  }
  return answer;
}

/** The r that a standard's printed formulas use, mm, remembered likewise. */
export function printedRadius(standard: Standard, diameter: number, use: Use, grade?: string): Answer {
  const byDiameter = radii.of(standard, use, grade);
  let answer = byDiameter.get(diameter);
  if (answer === undefined) {
    answer = standard.formulaRadius(diameter, use, grade);
    byDiameter.set(diameter, answer);
  }
  return answer;
}

/** Least end leg as an outside dimension, mm; NaN where the standard holds none. Remembered likewise. */
export function leastEndLeg(standard: Standard, diameter: number, use: Use, grade?: string): number {
  const byDiameter = endLegs.of(standard, use, grade);
  let answer = byDiameter.get(diameter);
  if (answer === undefined) {
    const leg = standard.endLeg(diameter, use, grade);
    answer = isRefusal(leg) ? NaN : leg.value.outside;
    byDiameter.set(diameter, answer);
  }
  return answer;
}

/** Diameters, uses and grades come from cells, so each memory is kept small. */
const MOST_REMEMBERED = 1000;

function inner<Key, InnerKey, Value>(outer: Map<Key, Map<InnerKey, Value>>, key: Key): Map<InnerKey, Value> {
  let map = outer.get(key);
  if (map === undefined || map.size >= MOST_REMEMBERED) {
    if (outer.size >= MOST_REMEMBERED) outer.clear();
    map = new Map();
    outer.set(key, map);
  }
  return map;
}
