import type { Point } from "./point";

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
  return Math.sqrt(segmentDistanceSquared(a.x, a.y, b.x, b.y, c.x, c.y, d.x, d.y));
}

/** Square of the same over bare numbers, for loops that make millions of comparisons. */
export function segmentDistanceSquared(
  ax: number,
  ay: number,
  bx: number,
  by: number,
  cx: number,
  cy: number,
  dx: number,
  dy: number,
): number {
  const ux = bx - ax;
  const uy = by - ay;
  const vx = dx - cx;
  const vy = dy - cy;
  const cross = ux * vy - uy * vx;
  // parallel segments cannot cross; where they overlap an end lies on the other
  if (Math.abs(cross) > 1e-12) {
    const wx = ax - cx;
    const wy = ay - cy;
    const along = (vx * wy - vy * wx) / cross;
    const across = (ux * wy - uy * wx) / cross;
    if (along >= 0 && along <= 1 && across >= 0 && across <= 1) return 0;
  }
  return Math.min(
    pointToSegmentSquared(ax, ay, cx, cy, vx, vy),
    pointToSegmentSquared(bx, by, cx, cy, vx, vy),
    pointToSegmentSquared(cx, cy, ax, ay, ux, uy),
    pointToSegmentSquared(dx, dy, ax, ay, ux, uy),
  );
}

/** Square of the distance from (px, py) to the segment from (x, y) along (ux, uy). */
export function pointToSegmentSquared(
  px: number,
  py: number,
  x: number,
  y: number,
  ux: number,
  uy: number,
): number {
  const wx = px - x;
  const wy = py - y;
  const square = ux * ux + uy * uy;
  const along = square === 0 ? 0 : Math.max(0, Math.min(1, (wx * ux + wy * uy) / square));
  const ex = wx - along * ux;
  const ey = wy - along * uy;
  return ex * ex + ey * ey;
}
