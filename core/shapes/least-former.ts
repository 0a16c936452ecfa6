import type { Cited } from "../standards/citation";
import type { Standard, Use } from "../standards/port";
import type { Refusal } from "../units/refusal";

type Answer = Cited<number> | Refusal;

const formers = new WeakMap<Standard, Map<Use, Map<number, Answer>>>();
const radii = new WeakMap<Standard, Map<Use, Map<number, Answer>>>();

/** Least former of a standard without coating or grade, mm, remembered by diameter and use. */
export function leastFormer(standard: Standard, diameter: number, use: Use): Answer {
  const byDiameter = inner(formers, standard, use);
  let answer = byDiameter.get(diameter);
  if (answer === undefined) {
    answer = standard.former({ diameter, use });
    byDiameter.set(diameter, answer);
  }
  return answer;
}

/** The r that a standard's printed formulas use, mm, remembered by diameter and use. */
export function printedRadius(standard: Standard, diameter: number, use: Use): Answer {
  const byDiameter = inner(radii, standard, use);
  let answer = byDiameter.get(diameter);
  if (answer === undefined) {
    answer = standard.formulaRadius(diameter, use);
    byDiameter.set(diameter, answer);
  }
  return answer;
}

/** Diameters come from cells: the memory of one standard and use is kept small. */
const MOST_REMEMBERED = 1000;

function inner(
  memory: WeakMap<Standard, Map<Use, Map<number, Answer>>>,
  standard: Standard,
  use: Use,
): Map<number, Answer> {
  let byUse = memory.get(standard);
  if (byUse === undefined) {
    byUse = new Map();
    memory.set(standard, byUse);
  }
  let byDiameter = byUse.get(use);
  if (byDiameter === undefined || byDiameter.size >= MOST_REMEMBERED) {
    byDiameter = new Map();
    byUse.set(use, byDiameter);
  }
  return byDiameter;
}
