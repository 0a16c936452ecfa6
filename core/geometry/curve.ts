import type { Point } from "./point";

/** One step along a curve of straights and arcs that run into each other without a kink. */
export type Step =
  | { readonly kind: "straight"; readonly length: number }
  | {
      readonly kind: "arc";
      readonly radius: number;
      /** radians; positive is counter-clockwise */
      readonly angle: number;
    };

/** A step laid down: where it begins and ends, and the heading it begins with, in radians. */
export type Piece = Step & { readonly from: Point; readonly to: Point; readonly heading: number };

/**
 * Lays steps down one after the other from `start`, heading along `heading` (radians, 0 is +x).
 * A straight of negative length runs backwards.
 */
export function layOut(steps: readonly Step[], start: Point = { x: 0, y: 0 }, heading = 0): Piece[] {
  const pieces: Piece[] = [];
  let at = start;
  let direction = heading;
  for (const step of steps) {
    const to = endOf(step, at, direction);
    pieces.push({ ...step, from: at, to, heading: direction });
    at = to;
    if (step.kind === "arc") direction += step.angle;
  }
  return pieces;
}

/** Points along the pieces; an arc is cut into chords of at most `chordAngle` radians. */
export function flatten(pieces: readonly Piece[], chordAngle: number): Point[] {
  const first = pieces[0];
  if (first === undefined) return [];
  const points: Point[] = [first.from];
  for (const piece of pieces) {
    const chords = piece.kind === "arc" ? Math.max(1, Math.ceil(Math.abs(piece.angle) / chordAngle)) : 1;
    for (let chord = 1; chord <= chords; chord += 1) points.push(pointAlong(piece, chord / chords));
  }
  return points;
}

/** The point at a share of a piece's length: 0 is its beginning, 1 its end. */
export function pointAlong(piece: Piece, share: number): Point {
  if (piece.kind === "straight")
    return endOf({ kind: "straight", length: piece.length * share }, piece.from, piece.heading);
  return endOf({ kind: "arc", radius: piece.radius, angle: piece.angle * share }, piece.from, piece.heading);
}

function endOf(step: Step, from: Point, heading: number): Point {
  if (step.kind === "straight") {
    return { x: from.x + step.length * Math.cos(heading), y: from.y + step.length * Math.sin(heading) };
  }
  const chord = 2 * step.radius * Math.sin(Math.abs(step.angle) / 2);
  const direction = heading + step.angle / 2;
  return { x: from.x + chord * Math.cos(direction), y: from.y + chord * Math.sin(direction) };
}
