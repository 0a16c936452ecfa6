import { flatten, layOut, type Piece, pointAlong } from "../geometry/curve";
import type { Point } from "../geometry/point";
import { type BarOutline, type LabelAnchor, shortNumber, type WriteLength } from "./bar-outline";
import type { BarSize } from "./centre-line";
import type { ArcPath, CirclePath, HelixPath } from "./path";

const CHORD = (5 * Math.PI) / 180;
const MOST_TURNS_DRAWN = 8;
/** Radians; more would be drawn over itself, without end where a typing slip leaves hardly any radius. */
const FULL_TURN = 2 * Math.PI;

/** A bar bent to one radius over its whole length, to scale. */
export function arcOutline(path: ArcPath, size: BarSize, write: WriteLength): BarOutline {
  const radius = path.radius + size.diameter / 2;
  const turned = path.length / radius;
  const angle = Math.min(turned, FULL_TURN);
  const pieces = layOut([{ kind: "arc", radius, angle }], { x: 0, y: 0 }, -angle / 2);
  const strokes = [flatten(pieces, CHORD)];
  const middle = pointAlong(pieces[0] as Piece, 0.5);
  const anchors: LabelAnchor[] = [
    { kind: "leg", text: `length ${write(path.length)}`, from: middle, to: middle },
  ];
  const schematic = turned > FULL_TURN ? "more than a full turn, schematic" : null;
  return { strokes, breaks: [], anchors, notes: [`inside radius R ${write(path.radius)}`], schematic };
}

/** A ring with its lap inside, to scale but for the lap's step inwards. */
export function circleOutline(path: CirclePath, size: BarSize, write: WriteLength): BarOutline {
  const radius = (path.outsideDiameter - size.diameter) / 2;
  const turned = path.lap / Math.max(radius, size.diameter / 2);
  const lapAngle = Math.min(turned, FULL_TURN);
  const total = FULL_TURN + lapAngle;
  const chords = Math.max(8, Math.ceil(total / CHORD));
  const stroke: Point[] = [];
  for (let chord = 0; chord <= chords; chord += 1) {
    const turned = (total * chord) / chords;
    // the lap lies inside the ring, one bar further in, eased so that no kink shows
    const inward = size.diameter * 1.2 * easedShare((turned - 2 * Math.PI + 0.6) / 0.6);
    const angle = Math.PI / 2 - lapAngle / 2 + turned;
    stroke.push({ x: (radius - inward) * Math.cos(angle), y: (radius - inward) * Math.sin(angle) });
  }
  const top: Point = { x: 0, y: radius };
  const anchors: LabelAnchor[] = [{ kind: "leg", text: `lap ${write(path.lap)}`, from: top, to: top }];
  return {
    strokes: [stroke],
    breaks: [],
    anchors,
    notes: [`outside diameter ${write(path.outsideDiameter)}`],
    schematic: turned > FULL_TURN ? "the lap goes more than once round, schematic" : null,
  };
}

/** A helix from its side: never to scale, and says so. */
export function helixOutline(path: HelixPath, size: BarSize, write: WriteLength): BarOutline {
  const radius = (path.outsideDiameter - size.diameter) / 2;
  const turns = Math.min(path.turns, MOST_TURNS_DRAWN);
  const pitch = Math.max(path.pitch, size.diameter * 2, path.outsideDiameter / 6);
  const chords = Math.ceil(turns * 36);
  const stroke: Point[] = [];
  for (let chord = 0; chord <= chords; chord += 1) {
    const turned = (turns * chord) / chords;
    stroke.push({ x: pitch * turned, y: radius * Math.cos(2 * Math.PI * turned) });
  }
  const crest = (turn: number): Point => ({ x: pitch * turn, y: radius });
  const anchors: LabelAnchor[] =
    turns >= 1 ? [{ kind: "leg", text: `pitch ${write(path.pitch)}`, from: crest(0), to: crest(1) }] : [];
  const notes = [`outside diameter ${write(path.outsideDiameter)}; ${shortNumber(path.turns)} turns`];
  return { strokes: [stroke], breaks: [], anchors, notes, schematic: "helix seen from its side, schematic" };
}

function easedShare(share: number): number {
  const clamped = Math.max(0, Math.min(1, share));
  return clamped * clamped * (3 - 2 * clamped);
}
