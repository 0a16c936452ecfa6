import type { Grade, Standard } from "../standards/port";

/** MPa, where a standard lists no grade with its yield */
const USUAL_YIELD = 500;

/**
 * The nominal yield (MPa) of a grade's name or a size's letter; the standard's usual one, not sure,
 * where neither says. "B500B" and "500" are read by their digits where the standard does not list them.
 */
export function steelNamed(
  name: string | null,
  prefix: string,
  standard: Standard,
): { yield: number; sure: boolean } {
  const grades = standard.grades.filter((grade) => grade.yield > 0);
  const named = name === null ? undefined : grades.find((grade) => isCalled(grade, name));
  const lettered = prefix === "" ? undefined : grades.find((grade) => isCalled(grade, prefix));
  const found = named ?? (name === null ? lettered : undefined);
  if (found !== undefined) return { yield: found.yield, sure: true };
  const digits = /(?<!\d)(\d{3})(?!\d)/.exec(name ?? "")?.[1];
  if (digits !== undefined) return { yield: Number(digits), sure: true };
  return { yield: grades[0]?.yield ?? USUAL_YIELD, sure: false };
}

function isCalled(grade: Grade, name: string): boolean {
  return sameText(grade.name, name) || grade.prefixes.some((prefix) => sameText(prefix, name));
}

/** Equal but for case and spaces around; nothing is equal to no text. */
export function sameText(a: string | null, b: string): boolean {
  return a !== null && a.trim().toLowerCase() === b.trim().toLowerCase();
}
