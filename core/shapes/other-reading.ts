import { isRefusal } from "../units/refusal";
import { bendAngle, solveBendAngle } from "./bend-angle";
import { setBack } from "./centre-line";
import { developPath } from "./developed-length";
import type { PlanarPath } from "./path";
import { pathOf, pathTemplate } from "./path-template";
import type { ResolvedShape } from "./resolve-shape";
import { SHAPE_SYMBOLS } from "./shape-values";

/** A code's dims taken in the other way that its drawing would also bear. */
export interface OtherReading {
  readonly words: string;
  /** named angles in degrees: { t: 143.1 } */
  readonly angles: Readonly<Record<string, number>>;
  /** mm on the centre line */
  readonly length: number;
}

/** The developed length by a code's other reading; null where it has none or the dims do not admit it. */
export function otherReading(shape: ResolvedShape): OtherReading | null {
  const other = shape.definition?.otherReading;
  if (other === undefined) return null;
  const values = shape.values.slice();
  const angles: Record<string, number> = {};
  for (const [name, given] of Object.entries(other.angles ?? {})) {
    const angle = bendAngle(name, given);
    const degrees = solveBendAngle(angle, values);
    if (Number.isNaN(degrees)) return null;
    values[angle.place] = degrees;
    angles[SHAPE_SYMBOLS[angle.place]!] = degrees;
  }
  const path = pathOf(pathTemplate(other.path, shape.definition?.kind), values);
  if (path.kind !== "planar") return null;
  const measured = other.legsTo === "tangents" ? legsToExtreme(path, shape) : path;
  const developed = developPath(measured, shape);
  return isRefusal(developed) ? null : { words: other.words, angles, length: developed.length };
}

/** Legs that run to the meeting of the outside tangents, measured as the path's legs are: to the bend's extreme. */
function legsToExtreme(path: PlanarPath, { radius, diameter }: ResolvedShape): PlanarPath {
  const shorter = path.turns.map((turn) => {
    const inside = turn.radius ?? radius;
    const angle = Math.abs(turn.angle);
    const toMeeting = (inside + diameter) * Math.tan((angle * Math.PI) / 360);
    return toMeeting - setBack(angle, inside, diameter);
  });
  const legs = path.legs.map((leg, index) => ({
    ...leg,
    length: leg.length - (shorter[index - 1] ?? 0) - (shorter[index] ?? 0),
  }));
  return { ...path, legs };
}
