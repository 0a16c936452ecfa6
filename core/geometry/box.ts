import type { Point } from "./point";
import { segmentDistance } from "./segment-distance";

/** An upright rectangle; (x, y) is the corner with the least of both. */
export interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** The least box that holds all points; no points give an empty box at the origin. */
export function boxOfPoints(points: readonly Point[]): Box {
  if (points.length === 0) return { x: 0, y: 0, width: 0, height: 0 };
  let left = Infinity;
  let right = -Infinity;
  let low = Infinity;
  let high = -Infinity;
  for (const point of points) {
    left = Math.min(left, point.x);
    right = Math.max(right, point.x);
    low = Math.min(low, point.y);
    high = Math.max(high, point.y);
  }
  return { x: left, y: low, width: right - left, height: high - low };
}

/** True where the boxes come closer to each other than `gap` in both directions. */
export function boxesOverlap(a: Box, b: Box, gap = 0): boolean {
  return (
    a.x < b.x + b.width + gap &&
    b.x < a.x + a.width + gap &&
    a.y < b.y + b.height + gap &&
    b.y < a.y + a.height + gap
  );
}

export function boxInside(inner: Box, outer: Box): boolean {
  return (
    inner.x >= outer.x &&
    inner.y >= outer.y &&
    inner.x + inner.width <= outer.x + outer.width &&
    inner.y + inner.height <= outer.y + outer.height
  );
}

/** Distance from a box to a segment; 0 where the segment enters the box. */
export function boxToSegment(box: Box, from: Point, to: Point): number {
  if (holds(box, from) || holds(box, to)) return 0;
  const corners = cornersOf(box);
  let least = Infinity;
  for (let side = 0; side < 4; side += 1) {
    const a = corners[side] as Point;
    const b = corners[(side + 1) % 4] as Point;
    least = Math.min(least, segmentDistance(a, b, from, to));
  }
  return least;
}

/** The point of the box nearest to a point. */
export function nearestInBox(box: Box, point: Point): Point {
  return {
    x: Math.max(box.x, Math.min(box.x + box.width, point.x)),
    y: Math.max(box.y, Math.min(box.y + box.height, point.y)),
  };
}

function holds(box: Box, point: Point): boolean {
  return (
    point.x >= box.x && point.x <= box.x + box.width && point.y >= box.y && point.y <= box.y + box.height
  );
}

function cornersOf(box: Box): readonly Point[] {
  const right = box.x + box.width;
  const high = box.y + box.height;
  return [
    { x: box.x, y: box.y },
    { x: right, y: box.y },
    { x: right, y: high },
    { x: box.x, y: high },
  ];
}
