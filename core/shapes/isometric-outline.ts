import type { Point } from "../geometry/point";
import { type BarOutline, type LabelAnchor, legText, turnTexts, type WriteLength } from "./bar-outline";
import type { BarSize } from "./centre-line";
import type { PlanarPath } from "./path";

type Vector = readonly [number, number, number];

const SIN_30 = 0.5;
const COS_30 = Math.sqrt(3) / 2;

/**
 * A bar whose bends lie in more than one plane, in isometric view with sharp corners. The path holds
 * no planes, so each bend is drawn in a plane square to the one before: schematic, and says so.
 */
export function isometricOutline(path: PlanarPath, size: BarSize, write: WriteLength): BarOutline {
  const texts = turnTexts(path, size, write);
  const anchors: LabelAnchor[] = [];
  let at: Vector = [0, 0, 0];
  let along: Vector = [1, 0, 0];
  let normal: Vector = [0, -1, 0];
  const stroke: Point[] = [seen(at)];
  path.legs.forEach((leg, index) => {
    const from = at;
    at = plus(at, scaled(along, leg.length));
    stroke.push(seen(at));
    anchors.push({ kind: "leg", text: legText(leg, write), from: seen(from), to: seen(at) });
    const turn = path.turns[index];
    if (turn === undefined) return;
    if (texts.at[index] !== "") {
      anchors.push({ kind: "turn", text: texts.at[index] as string, from: seen(at), to: seen(at) });
    }
    const before = along;
    along = turned(along, normal, (turn.angle * Math.PI) / 180);
    normal = squareTo(before, along) ?? normal;
  });
  return {
    strokes: [stroke],
    breaks: [],
    anchors,
    notes: texts.notes,
    schematic: "bends in more than one plane, schematic",
  };
}

function seen([x, y, z]: Vector): Point {
  return { x: (x + y) * COS_30, y: z + (y - x) * SIN_30 };
}

function plus(a: Vector, b: Vector): Vector {
  return [a[0] + b[0], a[1] + b[1], a[2] + b[2]];
}

function scaled(a: Vector, factor: number): Vector {
  return [a[0] * factor, a[1] * factor, a[2] * factor];
}

/** The part of `a` square to a unit vector, made one long; null where they are parallel. */
function squareTo(a: Vector, unit: Vector): Vector | null {
  const shared = a[0] * unit[0] + a[1] * unit[1] + a[2] * unit[2];
  const square = plus(a, scaled(unit, -shared));
  const length = Math.hypot(...square);
  return length < 1e-6 ? null : scaled(square, 1 / length);
}

/** `a` turned about an axis that is square to it. */
function turned(a: Vector, axis: Vector, angle: number): Vector {
  const across: Vector = [
    axis[1] * a[2] - axis[2] * a[1],
    axis[2] * a[0] - axis[0] * a[2],
    axis[0] * a[1] - axis[1] * a[0],
  ];
  return plus(scaled(a, Math.cos(angle)), scaled(across, Math.sin(angle)));
}
