import type { BarFacts } from "../bar/bar-facts";
import { findLap } from "../own/find-lap";
import type { Cited } from "../standards/citation";
import type { Standard } from "../standards/port";
import { isRefusal } from "../units/refusal";

/** The lap of the project's own table for this bar; null without a table, and where it leaves open which lap is meant. */
export function ownLap(facts: BarFacts, standard: Standard): Cited<number> | null {
  if (standard.own.laps.length === 0 || facts.row.sizeTyped === null) return null;
  const found = findLap({ size: facts.sizeName, grade: facts.row.grade ?? undefined }, standard);
  return isRefusal(found) ? null : found;
}
