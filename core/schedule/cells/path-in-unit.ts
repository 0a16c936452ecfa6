import type { LengthUnit } from "../../units/length-unit";

const TURN_OR_HOOK = /^(?:[+-]\d|[+-]?hook)/i;
const BARE_LEG = /^(\()?(\d+(?:[.,]\d+)?)(\))?$/;
const APART = /(\d)\s+(mm|cm|m|in|ft)(?=\s|\)|$)/gi;

/** Length of the bar over the sum of its legs in mm within which mm are right, and within which another unit is. */
const FITS_AT_ALL = { least: 0.4, most: 2.5 };
const FITS = { least: 0.7, most: 1.08 };
const OTHERS = [
  ["m", 1000],
  ["cm", 10],
] as const;

/** A path whose units stand apart from their numbers, as in "30 cm +90 245 cm", with each at its leg. */
export function unitsAtLegs(path: string): string {
  return path.replace(APART, "$1$2");
}

/**
 * A path of bare numbers in metres or centimetres, where its legs add up to the typed length, mm, only so; the path
 * as it stands otherwise.
 *
 * @example pathInUnit("0,30 +90 2,45 +90 0,30", 3000, "mm") // "0,30m +90 2,45m +90 0,30m"
 */
export function pathInUnit(path: string, length: number | null, unit: LengthUnit): string {
  if (unit !== "mm" || length === null || !(length > 0) || !/\s[+-]\d/.test(path)) return path;
  const parts = path.trim().split(/\s+/);
  const legs = parts.map((part) => (TURN_OR_HOOK.test(part) ? null : BARE_LEG.exec(part)));
  if (parts.some((part, at) => legs[at] === null && !/^[+-]\d/.test(part))) return path;
  const sum = legs.reduce((so, leg) => so + Number(leg?.[2]?.replace(",", ".") ?? 0), 0);
  const fits = (factor: number, { least, most }: typeof FITS): boolean =>
    length >= sum * factor * least && length <= sum * factor * most;
  if (sum <= 0 || fits(1, FITS_AT_ALL)) return path;
  const [name] = OTHERS.find(([, factor]) => fits(factor, FITS)) ?? [null];
  if (name === null) return path;
  return parts
    .map((part, at) => {
      const leg = legs[at];
      return leg == null ? part : `${leg[1] ?? ""}${leg[2]}${name}${leg[3] ?? ""}`;
    })
    .join(" ");
}
