import { DEGREE } from "../geometry/degree";
import type { PlanarPath } from "../shapes/path";
import { type PathTemplate, templateAngle, templateLegLength } from "../shapes/path-template";
import type { ResolvedShape } from "../shapes/resolve-shape";
import type { ShapeValues } from "../shapes/shape-values";

/**
 * mm: the shorter side of the narrowest rectangle round the bent bar, where it is over `limit`; null
 * where the bar fits. Corners are taken as sharp, which is right to the outside of each bend up to 90
 * degrees (derived).
 */
export function widthIfOver(shape: ResolvedShape, limit: number): number | null {
  const legs = measureLegs(shape);
  const width = legs > 0 ? narrowest(legs, shape.diameter, limit) : curvedWidth(shape);
  return width !== null && width > limit + 1e-6 ? width : null;
}

/** mm, the farthest that two ends or corners of the bent bar stand apart; null for a shape that is held without a path. */
export function farthestApart(shape: ResolvedShape): number | null {
  const legs = measureLegs(shape);
  if (legs === 0) return curvedLength(shape);
  layCorners(legs);
  let most = 0;
  for (let from = 0; from <= legs; from += 1)
    for (let to = from + 1; to <= legs; to += 1)
      most = Math.max(most, Math.hypot(across[to]! - across[from]!, up[to]! - up[from]!));
  return most;
}

function curvedLength({ path, diameter }: ResolvedShape): number | null {
  if (path === null || path.kind === "planar") return null;
  if (path.kind !== "arc") return path.outsideDiameter;
  const radius = path.radius + diameter / 2;
  const half = path.length / radius / 2;
  return half > Math.PI / 2 ? 2 * radius + diameter : 2 * radius * Math.sin(half);
}

/** Null for a shape that is held without a path. */
function curvedWidth({ path, diameter }: ResolvedShape): number | null {
  if (path === null || path.kind === "planar") return null;
  if (path.kind !== "arc") return path.outsideDiameter;
  const radius = path.radius + diameter / 2;
  const half = path.length / radius / 2;
  if (half >= Math.PI) return 2 * (radius + diameter / 2);
  const rise = radius * (1 - Math.cos(half)) + diameter;
  const chord = half > Math.PI / 2 ? 2 * radius + diameter : 2 * radius * Math.sin(half) + diameter;
  return Math.min(rise, chord);
}

/** Legs and corners of the bar in hand: one place for all bars, since an audit measures each of them. */
const lengths: number[] = [];
const angles: number[] = [];
const across: number[] = [];
const up: number[] = [];

/** Notes lengths (mm) and signed turns (degrees) of a bar of legs; 0 where it has none. A coded shape needs no path for it. */
function measureLegs({ compiled, path, values }: ResolvedShape): number {
  const template = compiled?.template;
  if (template?.kind === "planar") return legsOfTemplate(template, values);
  return path?.kind === "planar" ? legsOfPath(path) : 0;
}

function legsOfTemplate(
  { legs, turns }: Extract<PathTemplate, { kind: "planar" }>,
  values: ShapeValues,
): number {
  for (let at = 0; at < legs.length; at += 1) {
    const turn = turns[at];
    lengths[at] = templateLegLength(legs[at]!, values);
    angles[at] = turn === undefined ? 0 : turn.sign * templateAngle(turn, values);
  }
  return legs.length;
}

function legsOfPath({ legs, turns }: PlanarPath): number {
  for (let at = 0; at < legs.length; at += 1) {
    lengths[at] = legs[at]!.length;
    angles[at] = turns[at]?.angle ?? 0;
  }
  return legs.length;
}

/** Null where the bar is no wider than `limit`. */
function narrowest(legs: number, diameter: number, limit: number): number | null {
  let sum = 0;
  let longest = 0;
  for (let at = 0; at < legs; at += 1) {
    const length = lengths[at] as number;
    sum += length;
    if (length > longest) longest = length;
  }
  // laid along its longest leg a bar is never wider than its other legs together
  if (sum - longest + diameter <= limit) return null;
  layCorners(legs);
  let least = Infinity;
  // a side runs along a line through two corners; the narrowest is most often along a leg, so legs come first
  for (let apart = 1; apart <= legs; apart += 1) {
    for (let from = 0; from + apart <= legs; from += 1) {
      const width = widthAcross(legs + 1, from, from + apart);
      if (width <= limit) return null;
      if (width < least) least = width;
    }
  }
  return Number.isFinite(least) ? least : null;
}

function layCorners(legs: number): void {
  let x = 0;
  let y = 0;
  let alongX = 1;
  let alongY = 0;
  across[0] = 0;
  up[0] = 0;
  for (let at = 0; at < legs; at += 1) {
    const length = lengths[at] as number;
    x += length * alongX;
    y += length * alongY;
    across[at + 1] = x;
    up[at + 1] = y;
    const angle = angles[at] as number;
    // nearly every bend is a right angle
    const isRight = angle === 90 || angle === -90;
    const cosine = isRight ? 0 : Math.cos(angle * DEGREE);
    const sine = isRight ? Math.sign(angle) : Math.sin(angle * DEGREE);
    const turnedX = alongX * cosine - alongY * sine;
    alongY = alongX * sine + alongY * cosine;
    alongX = turnedX;
  }
}

/** The shorter side of the rectangle that has a side along the line through two corners. */
function widthAcross(corners: number, from: number, to: number): number {
  const runX = (across[to] as number) - (across[from] as number);
  const runY = (up[to] as number) - (up[from] as number);
  const length = Math.sqrt(runX * runX + runY * runY);
  if (length < 1e-9) return Infinity;
  const alongX = runX / length;
  const alongY = runY / length;
  return Math.min(extent(corners, alongX, alongY), extent(corners, -alongY, alongX));
}

function extent(corners: number, axisX: number, axisY: number): number {
  let low = Infinity;
  let high = -Infinity;
  for (let at = 0; at < corners; at += 1) {
    const place = (across[at] as number) * axisX + (up[at] as number) * axisY;
    if (place < low) low = place;
    if (place > high) high = place;
  }
  return high - low;
}
