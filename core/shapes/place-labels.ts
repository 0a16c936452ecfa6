import { type Box, boxesOverlap, boxInside, boxToSegment, nearestInBox } from "../geometry/box";
import { distance, type Point } from "../geometry/point";
import { nearestOnSegment, segmentDistance } from "../geometry/segment-distance";

/** A text to be placed near the stretch `from`-`to`; sizes in the frame's unit, y downwards. */
export interface LabelWish {
  readonly text: string;
  readonly width: number;
  readonly from: Point;
  readonly to: Point;
}

export interface PlacedLabel {
  readonly text: string;
  readonly box: Box;
  /** a thin line from the text to its place, where the text does not stand right beside it */
  readonly leader: { readonly from: Point; readonly to: Point } | null;
}

export interface LabelSurroundings {
  readonly frame: Box;
  /** the bar */
  readonly strokes: readonly (readonly Point[])[];
  readonly barWidth: number;
  readonly textHeight: number;
  /** least clear distance of a text from the bar and from other texts */
  readonly gap: number;
}

interface Surroundings extends LabelSurroundings {
  readonly centre: Point;
}

const SHARES = [0.5, 0.38, 0.62, 0.26, 0.74, 0.14, 0.86];
const DIRECTIONS = 16;
const RINGS = 9;
/** in heights of a text */
const RING_STEP = 0.7;

/**
 * Texts placed beside their stretches so that none touches the bar, another text or a leader, each
 * as near as it can be; null for a text that finds no room in the frame. Shortest stretches choose first.
 */
export function placeLabels(wishes: readonly LabelWish[], around: LabelSurroundings): (PlacedLabel | null)[] {
  const surroundings: Surroundings = { ...around, centre: middleOf(around.strokes) };
  const answers: (PlacedLabel | null)[] = wishes.map(() => null);
  const order = wishes.map((_, index) => index).sort((a, b) => stretch(wishes[a]) - stretch(wishes[b]));
  const placed: PlacedLabel[] = [];
  for (const index of order) {
    const label = bestPlace(wishes[index] as LabelWish, surroundings, placed);
    if (label === null) continue;
    placed.push(label);
    answers[index] = label;
  }
  return answers;
}

function stretch(wish: LabelWish | undefined): number {
  return wish === undefined ? 0 : distance(wish.from, wish.to);
}

function bestPlace(
  wish: LabelWish,
  around: Surroundings,
  placed: readonly PlacedLabel[],
): PlacedLabel | null {
  let best: PlacedLabel | null = null;
  let least = Infinity;
  for (let ring = 0; ring < RINGS; ring += 1) {
    // no text of this ring or beyond comes nearer than half its way out
    if (least <= 1.5 * (around.barWidth / 2 + around.gap + ring * around.textHeight * RING_STEP * 0.5)) break;
    for (const { label, cost } of candidates(wish, around, ring).sort((a, b) => a.cost - b.cost)) {
      if (cost >= least) break;
      if (!fits(label, around, placed)) continue;
      const full = cost + (crossesBar(label, around) ? 60 : 0);
      if (full < least) {
        least = full;
        best = label;
      }
    }
  }
  return best;
}

interface Candidate {
  readonly label: PlacedLabel;
  readonly cost: number;
}

function candidates(wish: LabelWish, around: Surroundings, ring: number): Candidate[] {
  const found: Candidate[] = [];
  const shares = stretch(wish) < 1 ? [0.5] : SHARES;
  const clear = around.barWidth / 2 + around.gap;
  const { centre } = around;
  for (let step = 0; step < DIRECTIONS; step += 1) {
    const angle = (2 * Math.PI * step) / DIRECTIONS;
    const way = { x: Math.cos(angle), y: Math.sin(angle) };
    const reach = reachBack(wish, way, around.textHeight, clear);
    const off = clear + reach + 0.5 + ring * around.textHeight * RING_STEP;
    for (const share of shares) {
      const at = between(wish.from, wish.to, share);
      const box = boxAround(at.x + way.x * off, at.y + way.y * off, wish.width, around.textHeight);
      const towards = nearestOnSegment(boxMiddle(box), wish.from, wish.to);
      const near = nearestInBox(box, towards);
      const gone = boxToSegment(box, wish.from, wish.to);
      const leader = gone > clear + around.textHeight * 0.6 ? { from: near, to: towards } : null;
      // outside of the shape reads better than inside
      const inwards = (centre.x - at.x) * way.x + (centre.y - at.y) * way.y > 0 ? 6 : 0;
      const aside = distance(towards, at) * 0.15;
      const cost = gone * 1.5 + aside + Math.abs(share - 0.5) * 16 + inwards + (leader === null ? 0 : 8);
      found.push({ label: { text: wish.text, box, leader }, cost });
    }
  }
  return found;
}

/** How far from its place along `way` a text's middle must be for the text to be clear of its own stretch. */
function reachBack(wish: LabelWish, way: Point, height: number, clear: number): number {
  const length = stretch(wish);
  if (length >= 1) {
    const across = { x: -(wish.to.y - wish.from.y) / length, y: (wish.to.x - wish.from.x) / length };
    const off = Math.abs(way.x * across.x + way.y * across.y);
    const depth = (wish.width / 2) * Math.abs(across.x) + (height / 2) * Math.abs(across.y);
    if (off > 0.5) return (clear + depth) / off - clear;
  }
  return Math.min(
    Math.abs(way.x) < 1e-9 ? Infinity : wish.width / 2 / Math.abs(way.x),
    Math.abs(way.y) < 1e-9 ? Infinity : height / 2 / Math.abs(way.y),
  );
}

function fits(label: PlacedLabel, around: LabelSurroundings, placed: readonly PlacedLabel[]): boolean {
  if (!boxInside(label.box, around.frame)) return false;
  for (const other of placed) {
    if (boxesOverlap(label.box, other.box, around.gap)) return false;
    if (other.leader !== null && boxToSegment(label.box, other.leader.from, other.leader.to) < 1)
      return false;
    if (label.leader === null) continue;
    if (boxToSegment(other.box, label.leader.from, label.leader.to) < 1) return false;
    if (
      other.leader !== null &&
      segmentDistance(label.leader.from, label.leader.to, other.leader.from, other.leader.to) < 1
    ) {
      return false;
    }
  }
  const clear = around.barWidth / 2 + around.gap;
  return !someChord(
    around.strokes,
    (from, to) => isNear(label.box, from, to, clear) && boxToSegment(label.box, from, to) < clear,
  );
}

/** Cheap: false for a chord that stays on one side of the box. */
function isNear(box: Box, from: Point, to: Point, clear: number): boolean {
  return (
    Math.max(from.x, to.x) > box.x - clear &&
    Math.min(from.x, to.x) < box.x + box.width + clear &&
    Math.max(from.y, to.y) > box.y - clear &&
    Math.min(from.y, to.y) < box.y + box.height + clear
  );
}

/** A leader may end on its own stretch but is better not drawn across the bar. */
function crossesBar(label: PlacedLabel, around: LabelSurroundings): boolean {
  const { leader } = label;
  if (leader === null) return false;
  const stop = between(
    leader.to,
    leader.from,
    Math.min(1, (around.barWidth / 2 + 1.5) / distance(leader.from, leader.to)),
  );
  return someChord(
    around.strokes,
    (from, to) => segmentDistance(leader.from, stop, from, to) < around.barWidth / 2,
  );
}

function someChord(
  strokes: readonly (readonly Point[])[],
  test: (from: Point, to: Point) => boolean,
): boolean {
  for (const stroke of strokes) {
    for (let index = 1; index < stroke.length; index += 1) {
      if (test(stroke[index - 1] as Point, stroke[index] as Point)) return true;
    }
  }
  return false;
}

function middleOf(strokes: readonly (readonly Point[])[]): Point {
  const ends = strokes.flat();
  const sum = ends.reduce((total, point) => ({ x: total.x + point.x, y: total.y + point.y }), { x: 0, y: 0 });
  return { x: sum.x / Math.max(1, ends.length), y: sum.y / Math.max(1, ends.length) };
}

function between(from: Point, to: Point, share: number): Point {
  return { x: from.x + (to.x - from.x) * share, y: from.y + (to.y - from.y) * share };
}

function boxAround(x: number, y: number, width: number, height: number): Box {
  return { x: x - width / 2, y: y - height / 2, width, height };
}

function boxMiddle(box: Box): Point {
  return { x: box.x + box.width / 2, y: box.y + box.height / 2 };
}
