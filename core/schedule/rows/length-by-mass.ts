import type { SizeReading } from "../../standards/port";
import { MM_PER_UNIT } from "../../units/unit-table";

interface Counts {
  readonly members: number | null;
  readonly each: number | null;
  readonly total: number | null;
}

/** mm of one bar as the length of all bars of its row makes it, mm; null where the row does not say it. */
export function lengthByTotal({ members, each, total }: Counts, totalLength: number | null): number | null {
  const count = total ?? (each === null ? null : each * (members ?? 1));
  return totalLength === null || count === null || !(count > 0) ? null : totalLength / count;
}

/** mm of one bar as the mass of all bars of its row makes it, kg; null where the row does not say it. */
export function lengthByMass(
  { members, each, total }: Counts,
  size: SizeReading | null,
  mass: number | null,
): number | null {
  const count = total ?? (each === null ? null : each * (members ?? 1));
  const perMetre = size?.bar?.massPerMetre ?? size?.massPerMetre ?? null;
  if (mass === null || count === null || perMetre === null || !(count > 0)) return null;
  return (mass / (count * perMetre)) * MM_PER_UNIT.m;
}
