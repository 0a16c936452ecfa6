import { layOut, type Piece, type Step } from "../geometry/curve";
import { DEGREE } from "../geometry/degree";
import type { PlanarPath } from "./path";

const RIGHT_ANGLE = Math.tan((90 * DEGREE) / 2);

/** A planar path as straights and arcs on the bar's centre line. */
export interface CentreLine {
  /** straight, arc, straight, ...: one straight more than arcs, from the path's first end */
  readonly pieces: readonly Piece[];
  /** mm, tangent to tangent; negative where two bends overlap */
  readonly straights: readonly number[];
  /** mm along the centre line, one a bend */
  readonly arcs: readonly number[];
  /** mm, the sum of both */
  readonly developed: number;
}

export interface BarSize {
  /** mm */
  readonly diameter: number;
  /** mm inside, for turns that bring no radius of their own */
  readonly radius: number;
}

/**
 * The centre line of a planar path whose legs are outside dimensions, laid from the origin along +x.
 * Each end of a leg is set back by its own turn (`setBack`). A straight may come out negative:
 * then the bends on both sides of it overlap, and the caller decides what that means.
 *
 * Geometry (derived): the bar's axis keeps its length in bending.
 *
 * @example
 * // 600 x 400, 16 mm bar about a 64 mm former: straights 552 and 352, developed 966.8
 * centreLine(path, { diameter: 16, radius: 32 });
 */
export function centreLine(path: PlanarPath, size: BarSize): CentreLine {
  const straights = straightsOf(path, size);
  const steps: Step[] = [];
  const arcs: number[] = [];
  straights.forEach((length, leg) => {
    steps.push({ kind: "straight", length });
    const turn = path.turns[leg];
    if (turn === undefined) return;
    const radius = insideRadius(turn.radius, size) + size.diameter / 2;
    steps.push({ kind: "arc", radius, angle: turn.angle * DEGREE });
    arcs.push(Math.abs(turn.angle) * DEGREE * radius);
  });
  const developed = [...straights, ...arcs].reduce((sum, length) => sum + length, 0);
  return { pieces: layOut(steps), straights, arcs, developed };
}

/**
 * mm from a bend's tangent point to where its leg is measured to: the meeting of the outside
 * tangents for a turn up to 90, the bend's outside extreme above. `angle` is in degrees, unsigned.
 */
export function setBack(angle: number, insideRadius: number, diameter: number): number {
  const outside = insideRadius + diameter;
  // nearly every bend is a right angle, and an audit asks this of all of them
  if (angle === 90) return outside * RIGHT_ANGLE;
  return angle < 90 ? outside * Math.tan((angle * DEGREE) / 2) : outside;
}

function straightsOf(path: PlanarPath, size: BarSize): number[] {
  return path.legs.map((leg, index) => {
    const before = path.turns[index - 1];
    const after = path.turns[index];
    let length = leg.length;
    for (const turn of [before, after]) {
      if (turn !== undefined)
        length -= setBack(Math.abs(turn.angle), insideRadius(turn.radius, size), size.diameter);
    }
    return length;
  });
}

function insideRadius(own: number | null, size: BarSize): number {
  return own ?? size.radius;
}
