import type { BarRow } from "../schedule/bar-row";

/** True where the total is members x members x each: each was already the sum over the members. */
export function isCountedTwice({ members, each, total }: BarRow): boolean {
  return (
    members !== null && each !== null && total !== null && members > 1 && total === members * members * each
  );
}
