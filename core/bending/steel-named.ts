import { findGrade } from "../bars/find-grade";
import type { Standard } from "../standards/port";

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
  const said = name ?? (prefix === "" ? null : prefix);
  const found = said === null ? null : findGrade(standard.grades, said);
  if (found !== null && found.yield > 0) return { yield: found.yield, sure: true };
  const digits = /(?<!\d)(\d{3})(?!\d)/.exec(name ?? "")?.[1];
  if (digits !== undefined) return { yield: Number(digits), sure: true };
  const usual = standard.grades.find((grade) => grade.yield > 0);
  return { yield: usual?.yield ?? USUAL_YIELD, sure: false };
}

/** Equal but for case and spaces around; nothing is equal to no text. */
export function sameText(a: string | null, b: string): boolean {
  return a !== null && a.trim().toLowerCase() === b.trim().toLowerCase();
}
