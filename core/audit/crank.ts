import type { BarFacts } from "../bar/bar-facts";
import type { OfKind } from "../bar/bar-kind";
import type { DimLetter, ShapeDefinition } from "../standards/port";

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
  if (!facts.kind.ask(mayBeCrank, facts)) return null;
  return facts.isPath ? crankOfPath(facts) : crankOfCode(facts);
}

/** True of the codes of which some bar may be a crank, and of paths. */
export function mayBeCrank({ definition, isPath }: OfKind): boolean {
  return isPath || (definition !== null && offsetOf(definition) !== null);
}

/** The dimension of the offset; null for a code that is no crank. */
function offsetOf({ angles, path }: ShapeDefinition): DimLetter | null {
  if (angles === undefined || path === null || !/\+t [A-K] -t/.test(path)) return null;
  return (OFFSET.exec(angles["t"]?.equation ?? "")?.[1] as DimLetter | undefined) ?? null;
}

/** Two equal bends in opposite senses whose overall offset is a dimension. */
function crankOfCode(facts: BarFacts): Crank | null {
  const { definition } = facts;
  const letter = definition === null ? null : offsetOf(definition);
  const overall = letter === null ? null : facts.dim(letter);
  if (letter === null || overall === null) return null;
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
