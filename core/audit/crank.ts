import type { BarFacts } from "../bar/bar-facts";
import type { DimLetter } from "../standards/port";

export interface Crank {
  /** the dimension of the offset */
  readonly letter: DimLetter;
  /** mm, overall to the outside of the bar */
  readonly overall: number;
  /** degrees of the slope against the straight parts; null where no angle fits the dims */
  readonly slope: number | null;
}

const OFFSET = /^([A-K]) = [A-K] sin [tu] \+ d cos [tu]$/;

/**
 * The crank of a coded shape: two equal bends in opposite senses whose overall offset is a
 * dimension. Null for every other shape.
 */
export function crankOf(facts: BarFacts): Crank | null {
  const { definition } = facts;
  if (definition === null || definition.angles === undefined || definition.path === null) return null;
  if (!/\+t [A-K] -t/.test(definition.path)) return null;
  const letter = OFFSET.exec(definition.angles["t"]?.equation ?? "")?.[1] as DimLetter | undefined;
  const overall = letter === undefined ? null : facts.dim(letter);
  if (letter === undefined || overall === null) return null;
  const turn = facts.planarPath?.turns[0];
  return { letter, overall, slope: turn === undefined ? null : Math.abs(turn.angle) };
}
