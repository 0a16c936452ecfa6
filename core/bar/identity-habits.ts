/** A product that a row of a schedule holds. */
export type RowIdentity = "members" | "totalLength" | "mass" | "massOfTotal";

/** Which products a sheet keeps, and the masses per metre that it keeps them with. */
export interface IdentityHabits {
  /** rows that keep each product, of those that can be tested */
  readonly shares: ReadonlyMap<RowIdentity, { readonly kept: number; readonly tested: number }>;
  /** kept by so many rows that a row which breaks it is at fault */
  readonly speaking: ReadonlySet<RowIdentity>;
  /** places among the sheet's bars of those that break any product, speaking or not */
  readonly breaking: readonly number[];
  /** kg/m that the sheet uses for a diameter, where several of its rows agree */
  readonly perMetre: ReadonlyMap<number, number>;
}

/** kg/m: what the middle of a sheet's masses moves by where one row is edited */
const SAME = 0.002;

/** True where no row would be judged otherwise. */
export function sameIdentities(one: IdentityHabits, other: IdentityHabits): boolean {
  if (one.speaking.size !== other.speaking.size || one.perMetre.size !== other.perMetre.size) return false;
  for (const name of one.speaking) if (!other.speaking.has(name)) return false;
  for (const [diameter, mass] of one.perMetre) {
    const beside = other.perMetre.get(diameter);
    if (beside === undefined || Math.abs(mass / beside - 1) > SAME) return false;
  }
  return true;
}
