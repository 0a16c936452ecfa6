import type { BarFacts } from "../bar/bar-facts";
import type { DimLetter } from "../standards/port";

export interface Crank {
  /** the dimension of the offset, or the shape's own cell where the bar is written as a path */
  readonly letter: DimLetter | "shape";
  /** mm, overall to the outside of the bar */
  readonly overall: number;
  /** degrees of the slope against the straight parts; null where no angle fits the dims */
  readonly slope: number | null;
}

const RIGHT_ANGLE = 90;
const OFFSET = /^([A-K]) = [A-K] sin [tu] \+ d cos [tu]$/;

/** A crank by a code's offset, or by a path that steps aside once; null for every other shape. */
export function crankOf(facts: BarFacts): Crank | null {
  return facts.isPath ? crankOfPath(facts) : crankOfCode(facts);
}

/** Two equal bends in opposite senses whose overall offset is a dimension. */
function crankOfCode(facts: BarFacts): Crank | null {
  const { definition } = facts;
  if (definition === null || definition.angles === undefined || definition.path === null) return null;
  if (!/\+t [A-K] -t/.test(definition.path)) return null;
  const letter = OFFSET.exec(definition.angles["t"]?.equation ?? "")?.[1] as DimLetter | undefined;
  const overall = letter === undefined ? null : facts.dim(letter);
  if (letter === undefined || overall === null) return null;
  const turn = facts.planarPath?.turns[0];
  return { letter, overall, slope: turn === undefined ? null : Math.abs(turn.angle) };
}

/** The offset follows from the sloping leg as it does for a code: B sin t + d cos t. */
function crankOfPath({ planarPath, diameter }: BarFacts): Crank | null {
  if (planarPath === null || diameter === null || planarPath.turns.length !== 2) return null;
  const [first, second] = planarPath.turns;
  const sloping = planarPath.legs[1]?.length;
  if (first === undefined || second === undefined || sloping === undefined) return null;
  const slope = Math.abs(first.angle);
  if (first.angle !== -second.angle || slope >= RIGHT_ANGLE) return null;
  const t = (slope * Math.PI) / 180;
  return { letter: "shape", overall: sloping * Math.sin(t) + diameter * Math.cos(t), slope };
}
