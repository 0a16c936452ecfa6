import type { Point } from "../geometry/point";
import type { BarPath, PlanarPath } from "../shapes/path";

const DEGREE = Math.PI / 180;

/**
 * mm: the shorter side of the narrowest rectangle round the bent bar, where it is over `limit`; null
 * where the bar fits. Corners are taken as sharp, which is right to the outside of each bend up to 90
 * degrees (derived).
 */
export function widthIfOver(path: BarPath, diameter: number, limit: number): number | null {
  const width = path.kind === "planar" ? planarWidth(path, diameter, limit) : curvedWidth(path, diameter);
  return width !== null && width > limit + 1e-6 ? width : null;
}

function curvedWidth(path: Exclude<BarPath, PlanarPath>, diameter: number): number {
  if (path.kind !== "arc") return path.outsideDiameter;
  const radius = path.radius + diameter / 2;
  const half = path.length / radius / 2;
  if (half >= Math.PI) return 2 * (radius + diameter / 2);
  const rise = radius * (1 - Math.cos(half)) + diameter;
  const chord = half > Math.PI / 2 ? 2 * radius + diameter : 2 * radius * Math.sin(half) + diameter;
  return Math.min(rise, chord);
}

function planarWidth(path: PlanarPath, diameter: number, limit: number): number | null {
  let sum = 0;
  let longest = 0;
  for (const { length } of path.legs) {
    sum += length;
    if (length > longest) longest = length;
  }
  // laid along its longest leg a bar is never wider than its other legs together
  if (sum - longest + diameter <= limit) return null;
  const corners = cornersOf(path);
  let narrowest = Infinity;
  for (let a = 0; a < corners.length; a += 1) {
    for (let b = a + 1; b < corners.length; b += 1) {
      narrowest = Math.min(narrowest, widthAcross(corners, corners[a] as Point, corners[b] as Point));
    }
  }
  return Number.isFinite(narrowest) ? narrowest : null;
}

function cornersOf(path: PlanarPath): readonly Point[] {
  let heading = 0;
  let at: Point = { x: 0, y: 0 };
  const corners = [at];
  path.legs.forEach((leg, index) => {
    at = { x: at.x + leg.length * Math.cos(heading), y: at.y + leg.length * Math.sin(heading) };
    corners.push(at);
    heading += (path.turns[index]?.angle ?? 0) * DEGREE;
  });
  return corners;
}

/** The narrowest rectangle has a side along a line through two corners. */
function widthAcross(corners: readonly Point[], from: Point, to: Point): number {
  const length = Math.hypot(to.x - from.x, to.y - from.y);
  if (length < 1e-9) return Infinity;
  const normal = { x: (from.y - to.y) / length, y: (to.x - from.x) / length };
  const along = { x: (to.x - from.x) / length, y: (to.y - from.y) / length };
  return Math.min(extent(corners, normal), extent(corners, along));
}

function extent(corners: readonly Point[], axis: Point): number {
  let low = Infinity;
  let high = -Infinity;
  for (const { x, y } of corners) {
    const place = x * axis.x + y * axis.y;
    if (place < low) low = place;
    if (place > high) high = place;
  }
  return high - low;
}
