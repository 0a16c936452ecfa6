/** What the machine's plate lets it bend at once. */
export interface RatedBars {
  /** mm */
  readonly diameter: number;
  /** MPa of the grade on the plate; null where the plate names none */
  readonly yield: number | null;
  readonly bars: number;
}

/**
 * A central-former bender: the bar lies between a former that turns and a back-rest, and a pin on an
 * orbit about the former bends it. Null is not known, and whatever needs it is unsure.
 */
export interface Machine {
  readonly name: string;
  /** as the plate prints it; empty where nothing was written down */
  readonly rated: readonly RatedBars[];
  /** mm, diameters in the rack */
  readonly formers: readonly number[] | null;
  /** mm, diameters of the bending pins in the rack */
  readonly pins: readonly number[] | null;
  /** mm, centre of the former to centre of the pin */
  readonly orbitRadius: number | null;
  /** mm, along the bar from the line through the former's centre to the back-rest */
  readonly backRestDistance: number | null;
  /** degrees that it turns at most */
  readonly largestAngle: number | null;
  /** mm, from the former's centre to the guard, a wall or a neighbour */
  readonly guardRadius: number | null;
}
