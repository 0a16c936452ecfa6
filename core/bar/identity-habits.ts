/** A product that a row of a schedule holds. */
export type RowIdentity = "members" | "totalLength" | "mass" | "massOfTotal" | "pieceMass";

/** What a bar's row gives as amounts. */
export type AmountField =
  | "members"
  | "each"
  | "total"
  | "length"
  | "totalLength"
  | "mass"
  | "pieceMass"
  | "size";

/** A row that breaks what most rows of its sheet keep. */
export interface BrokenRow {
  readonly broken: readonly RowIdentity[];
  /** the likeliest cell first; several where they are as likely */
  readonly suspects: readonly AmountField[];
  /** what the likeliest cell would have to hold, mm or kg; null where that cannot be told */
  readonly expected: number | null;
}

/** Which products a sheet keeps, and the masses per metre that it keeps them with. */
export interface IdentityHabits {
  /** kept by so many rows that a row which breaks it is at fault */
  readonly speaking: ReadonlySet<RowIdentity>;
  /** kg/m that the sheet uses for a diameter, where several of its rows agree */
  readonly perMetre: ReadonlyMap<number, number>;
  /** what was worked out by them, by bar */
  readonly brokenRows: WeakMap<object, { readonly found: BrokenRow | null }>;
}

export function sameSpeaking(one: IdentityHabits, other: IdentityHabits): boolean {
  return (
    one.speaking.size === other.speaking.size && [...one.speaking].every((name) => other.speaking.has(name))
  );
}

/** True where no row breaks or keeps a product of masses otherwise. */
export function samePerMetre(
  one: Pick<IdentityHabits, "perMetre">,
  other: Pick<IdentityHabits, "perMetre">,
): boolean {
  if (one.perMetre.size !== other.perMetre.size) return false;
  for (const [diameter, mass] of one.perMetre) if (other.perMetre.get(diameter) !== mass) return false;
  return true;
}
