import type { Agreement } from "./reading-agreement";
import type { IdentityName } from "./table-evidence";
import type { Share } from "./weighed";

const SUREST: readonly IdentityName[] = [
  "mass",
  "bySize",
  "totalLength",
  "legs",
  "members",
  "unitMass",
  "pieceMass",
  "run",
];

/** The agreement of a column that tells most of it. */
export function surest(agreement: readonly Agreement[], column: number): Agreement | null {
  for (const name of SUREST) {
    const found = agreement.find(({ identity, columns }) => identity === name && columns.includes(column));
    if (found !== undefined) return found;
  }
  return null;
}

export function shareOf(agreement: Agreement | null): Share | null {
  if (agreement === null) return null;
  const { identity, kept, tested } = agreement;
  return { identity, kept, tested };
}
