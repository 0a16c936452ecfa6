import type { LengthUnit } from "../../units/length-unit";

const TURN_OR_HOOK = /^(?:[+-]\d|[+-]?hook)/i;
const TURN = /^[+-]\d/;
const BARE_LEG = /^(\()?(\d+(?:[.,]\d+)?)(\))?$/;
const APART = /(\d)\s+(mm|cm|m|in|ft)(?=\s|\)|$)/gi;

/** What the bare numbers of a path may be in. */
export type PathUnit = "mm" | "cm" | "m";

/** Length of the bar over the sum of its legs within which a unit fits, and within which mm do at all. */
const FITS = { least: 0.7, most: 1.08 };
const FITS_AT_ALL = { least: 0.4, most: 2.5 };
/** what a lone path is held against: one that no unit fits may be of a wrong length, but in one unit only */
const FITS_ALONE = { least: 0.6, most: 1.5 };
const MM: Readonly<Record<PathUnit, number>> = { mm: 1, cm: 10, m: 1000 };
/** share of the paths of a column that are in its unit */
const MOST_PATHS = 2 / 3;

/** A path whose units stand apart from their numbers, as in "30 cm +90 245 cm", with each at its leg. */
export function unitsAtLegs(path: string): string {
  return path.replace(APART, "$1$2");
}

/** The unit in which the legs of most of a column's paths make up the lengths beside them, mm; null where none does. */
export function unitOfPaths(paths: Iterable<readonly [path: string, length: number]>): PathUnit | null {
  const votes: Record<PathUnit, number> = { mm: 0, cm: 0, m: 0 };
  let all = 0;
  for (const [path, length] of paths) {
    const legs = bareLegs(path);
    const unit = legs === null ? null : unitThatFits(legs.sum, length, FITS);
    if (unit === null) continue;
    votes[unit] += 1;
    all += 1;
  }
  return (["mm", "cm", "m"] as const).find((unit) => all > 0 && votes[unit] >= all * MOST_PATHS) ?? null;
}

/**
 * A path of bare numbers with the unit at each leg. Its column's unit holds, so that a wrong length beside it stays
 * wrong; where the column has none its legs have to add up to the typed length, mm. The path as it stands otherwise.
 *
 * @example pathInUnit("0,30 +90 2,45 +90 0,30", 3000, "mm", null) // "0,30m +90 2,45m +90 0,30m"
 */
export function pathInUnit(
  path: string,
  length: number | null,
  unit: LengthUnit,
  ofColumn: PathUnit | null,
): string {
  if (unit !== "mm" || ofColumn === "mm" || !/\s[+-]/.test(path)) return path;
  const legs = bareLegs(path, ofColumn !== null);
  if (legs === null) return path;
  const name = ofColumn ?? unitAlone(legs.sum, length);
  if (name === null || name === "mm") return path;
  return legs.parts
    .map((part) => {
      const leg = TURN_OR_HOOK.test(part) ? null : BARE_LEG.exec(part);
      return leg === null ? part : `${leg[1] ?? ""}${leg[2]}${name}${leg[3] ?? ""}`;
    })
    .join(" ");
}

/** Null where a leg says its own unit, or where a hook has a length of its own and would have to be added. */
function bareLegs(
  path: string,
  hooksToo = false,
): { readonly parts: readonly string[]; readonly sum: number } | null {
  if (!/\s[+-]\d|hook/i.test(path)) return null;
  const parts = path.trim().split(/\s+/);
  let sum = 0;
  for (const part of parts) {
    if ((hooksToo ? TURN_OR_HOOK : TURN).test(part)) continue;
    const leg = BARE_LEG.exec(part);
    if (leg === null) return null;
    sum += Number(leg[2]?.replace(",", "."));
  }
  return sum > 0 ? { parts, sum } : null;
}

function unitAlone(sum: number, length: number | null): PathUnit | null {
  if (length === null || fits("mm", sum, length, FITS_AT_ALL)) return null;
  return unitThatFits(sum, length, FITS_ALONE);
}

function unitThatFits(sum: number, length: number, within: typeof FITS): PathUnit | null {
  return (["mm", "cm", "m"] as const).find((unit) => fits(unit, sum, length, within)) ?? null;
}

function fits(unit: PathUnit, sum: number, length: number, { least, most }: typeof FITS): boolean {
  return length > 0 && length >= sum * MM[unit] * least && length <= sum * MM[unit] * most;
}
