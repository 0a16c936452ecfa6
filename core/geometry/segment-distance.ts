import { distance, type Point } from "./point";

/** Distance from a point to the segment `from`-`to`; a segment of no length is a point. */
export function pointToSegment(point: Point, from: Point, to: Point): number {
  return distance(point, nearestOnSegment(point, from, to));
}

/** The place on the segment that is nearest to the point. */
export function nearestOnSegment(point: Point, from: Point, to: Point): Point {
  const dx = to.x - from.x;
  const dy = to.y - from.y;
  const square = dx * dx + dy * dy;
  if (square === 0) return from;
  const along = ((point.x - from.x) * dx + (point.y - from.y) * dy) / square;
  const clamped = Math.max(0, Math.min(1, along));
  return { x: from.x + clamped * dx, y: from.y + clamped * dy };
}

/**
 * Least distance between two segments of a plane; 0 where they cross or touch.
 *
 * @example
 * segmentDistance({ x: 0, y: 0 }, { x: 4, y: 0 }, { x: 1, y: 3 }, { x: 9, y: 3 }); // 3
 */
export function segmentDistance(a: Point, b: Point, c: Point, d: Point): number {
  if (segmentsCross(a, b, c, d)) return 0;
  return Math.min(
    pointToSegment(a, c, d),
    pointToSegment(b, c, d),
    pointToSegment(c, a, b),
    pointToSegment(d, a, b),
  );
}

function segmentsCross(a: Point, b: Point, c: Point, d: Point): boolean {
  const ux = b.x - a.x;
  const uy = b.y - a.y;
  const vx = d.x - c.x;
  const vy = d.y - c.y;
  const cross = ux * vy - uy * vx;
  // parallel segments cannot cross; where they overlap an end lies on the other
  if (Math.abs(cross) < 1e-12) return false;
  const wx = a.x - c.x;
  const wy = a.y - c.y;
  const along = (vx * wy - vy * wx) / cross;
  const across = (ux * wy - uy * wx) / cross;
  return along >= 0 && along <= 1 && across >= 0 && across <= 1;
}
