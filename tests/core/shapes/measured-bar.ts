/**
 * A bar measured with a ruler, so to speak: its centre line is a polyline of short chords, its faces are
 * that line moved sideways, and dimensions are read off the faces. Knows no set-back and no arc length.
 */
export interface Corner {
  /** degrees, signed */
  readonly turn: number;
  /** mm, inside */
  readonly radius: number;
}

interface Point {
  readonly x: number;
  readonly y: number;
}

interface Stretch {
  readonly heading: number;
  readonly from: Point;
  readonly to: Point;
}

export interface MeasuredBar {
  /** mm, sum of the chords */
  readonly length: number;
  /** mm, outside dimension of each leg: to the meeting of the outside edges up to 90, else to the bend's extreme */
  readonly legs: readonly number[];
  /** corners of the steel: faces of the legs and of the bends */
  readonly outline: readonly Point[];
  /** where the outside edges of each bend meet; undefined for parallel edges */
  readonly meetings: readonly (Point | undefined)[];
}

/** mm: how far a chord may stand off the curve. */
const SAGITTA = 1e-4;

export function measuredBar(
  straights: readonly number[],
  corners: readonly Corner[],
  diameter: number,
): MeasuredBar {
  const half = diameter / 2;
  const stretches: Stretch[] = [];
  const bends: Point[][] = [];
  const outline: Point[] = [];
  let at: Point = { x: 0, y: 0 };
  let heading = 0;
  let length = 0;
  straights.forEach((straight, index) => {
    const to = moved(at, heading, straight);
    length += Math.hypot(to.x - at.x, to.y - at.y);
    stretches.push({ heading, from: at, to });
    for (const side of [half, -half]) outline.push(beside(at, heading, side), beside(to, heading, side));
    at = to;
    const corner = corners[index];
    if (corner === undefined) return;
    const radius = corner.radius + half;
    const angle = (corner.turn * Math.PI) / 180;
    const chords = Math.ceil(Math.abs(angle) / (2 * Math.acos(1 - SAGITTA / radius)));
    const step = angle / chords;
    const outer: Point[] = [beside(at, heading, -Math.sign(angle) * half)];
    for (let chord = 0; chord < chords; chord += 1) {
      const size = 2 * radius * Math.sin(Math.abs(step) / 2);
      const next = moved(at, heading + step / 2, size);
      length += Math.hypot(next.x - at.x, next.y - at.y);
      heading += step;
      at = next;
      outer.push(beside(at, heading, -Math.sign(angle) * half));
    }
    bends.push(outer);
    outline.push(...outer);
  });
  const meetings = corners.map((corner, index) =>
    meeting(stretches[index]!, stretches[index + 1]!, corner, half),
  );
  const legs = stretches.map((stretch, index) => {
    const ends = [
      end(stretch, stretch.from, corners[index - 1], meetings[index - 1], bends[index - 1], -1),
      end(stretch, stretch.to, corners[index], meetings[index], bends[index], 1),
    ];
    return ends[1]! - ends[0]!;
  });
  return { length, legs, outline, meetings };
}

/** Where a leg is measured to, along its own direction. */
function end(
  { heading }: Stretch,
  free: Point,
  corner: Corner | undefined,
  apex: Point | undefined,
  bend: readonly Point[] | undefined,
  sense: 1 | -1,
): number {
  const along = (point: Point) => point.x * Math.cos(heading) + point.y * Math.sin(heading);
  if (corner === undefined || bend === undefined) return along(free);
  if (Math.abs(corner.turn) <= 90 && apex !== undefined) return along(apex);
  return sense * bend.reduce((most, point) => Math.max(most, sense * along(point)), -Infinity);
}

/** Crossing of the outside edges of two legs. */
function meeting(before: Stretch, after: Stretch, corner: Corner, half: number): Point | undefined {
  if (Math.abs(corner.turn) > 179) return undefined;
  const side = -Math.sign(corner.turn) * half;
  const p = beside(before.to, before.heading, side);
  const q = beside(after.from, after.heading, side);
  const cross = Math.sin(after.heading - before.heading);
  const share = ((q.x - p.x) * Math.sin(after.heading) - (q.y - p.y) * Math.cos(after.heading)) / cross;
  return moved(p, before.heading, share);
}

function moved(point: Point, heading: number, distance: number): Point {
  return { x: point.x + distance * Math.cos(heading), y: point.y + distance * Math.sin(heading) };
}

/** A point to the left of the way, or to the right where `left` is negative. */
function beside(point: Point, heading: number, left: number): Point {
  return { x: point.x - left * Math.sin(heading), y: point.y + left * Math.cos(heading) };
}

/** Straights that give the wanted leg dimensions: each leg is its straight plus what its bends add. */
export function straightsFor(
  legs: readonly number[],
  corners: readonly Corner[],
  diameter: number,
): number[] {
  const trial = 5000;
  const tried = measuredBar(
    legs.map(() => trial),
    corners,
    diameter,
  );
  return legs.map((leg, index) => leg - (tried.legs[index]! - trial));
}

/** Degrees for which `measure` gives `wanted`, by halving between two angles of opposite verdict. */
export function halve(
  measure: (degrees: number) => number,
  wanted: number,
  low: number,
  high: number,
): number {
  const rises = measure(high) > measure(low);
  for (let round = 0; round < 40; round += 1) {
    const middle = (low + high) / 2;
    if (measure(middle) < wanted === rises) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
