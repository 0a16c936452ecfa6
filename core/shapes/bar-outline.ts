import type { Point } from "../geometry/point";
import type { BarSize } from "./centre-line";
import type { Leg, PlanarPath } from "./path";

/** A text that belongs to a stretch of the bar. */
export interface LabelAnchor {
  readonly kind: "leg" | "turn";
  readonly text: string;
  readonly from: Point;
  readonly to: Point;
}

/** A bar as strokes of its centre line, mm, y upwards, with what is to be written beside it. */
export interface BarOutline {
  readonly strokes: readonly (readonly Point[])[];
  /** where a long leg was shortened: the middle of the gap and the leg's heading in radians */
  readonly breaks: readonly { readonly at: Point; readonly heading: number }[];
  readonly anchors: readonly LabelAnchor[];
  readonly notes: readonly string[];
  /** why the drawing is not to scale; null where it is */
  readonly schematic: string | null;
}

export type WriteLength = (millimetres: number) => string;

/** "A 1000", "(B 500)" for the leg that takes up tolerance, "500" for a leg without a letter. */
export function legText(leg: Leg, write: WriteLength): string {
  const text = leg.letter === null ? write(leg.length) : `${leg.letter} ${write(leg.length)}`;
  return leg.free ? `(${text})` : text;
}

/** Angle and radius texts: what is the same at every bend becomes a note, the rest stands at its bend. */
export function turnTexts(
  path: PlanarPath,
  size: BarSize,
  write: WriteLength,
): { at: string[]; notes: string[] } {
  const radii = path.turns.map((turn) => turn.radius ?? size.radius);
  const alike = new Set(radii).size === 1;
  const right = path.turns.some((turn) => Math.abs(turn.angle) === 90);
  const at = path.turns.map((turn, index) => {
    const angle = Math.abs(turn.angle) === 90 ? "" : `${shortNumber(Math.abs(turn.angle))}°`;
    return alike ? angle : `${angle} r ${write(radii[index] as number)}`.trim();
  });
  const notes: string[] = [];
  if (alike)
    notes.push(
      `inside radius r ${write(radii[0] as number)}${path.turns.length > 1 ? " at every bend" : ""}`,
    );
  if (right) notes.push(at.some((text) => text.includes("°")) ? "bends 90° where not marked" : "bends 90°");
  return { at, notes: notes.length > 0 ? [notes.join("; ")] : [] };
}

/** At most one decimal, none where it is not needed. */
export function shortNumber(value: number): string {
  return String(Math.round(value * 10) / 10);
}
