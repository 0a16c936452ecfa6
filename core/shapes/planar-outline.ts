import { flatten, layOut, type Piece, pointAlong } from "../geometry/curve";
import { distance, type Point } from "../geometry/point";
import { nearestOnSegment } from "../geometry/segment-distance";
import { type BarOutline, type LabelAnchor, legText, turnTexts, type WriteLength } from "./bar-outline";
import { type BarSize, centreLine } from "./centre-line";
import type { Leg, PlanarPath } from "./path";

const CHORD = (5 * Math.PI) / 180;
/** A leg longer than this many times the shortest is drawn broken, or the short one could not be seen. */
const LONGEST_TO_SHORTEST = 14;

/** An end leg that would lie upon another is drawn turned in by so much more, degrees, and so long at least. */
const TURNED_IN = 30;
const LEAST_SHARE = 0.5;

/** A bar of one plane, to scale. The longest leg lies level, and the first end is on its left. */
export function planarOutline(path: PlanarPath, size: BarSize, write: WriteLength): BarOutline {
  const { drawn: shortened, broken } = shortenLongLegs(path);
  const drawn = turnEndsIn(shortened, size);
  const upright = centreLine(drawn, size).pieces;
  const pieces = layOut(upright, { x: 0, y: 0 }, -headingOfLongest(upright));
  const strokes: Point[][] = [[]];
  const breaks: { at: Point; heading: number }[] = [];
  const anchors: LabelAnchor[] = [];
  const texts = turnTexts(path, size, write);
  pieces.forEach((piece, index) => {
    const place = Math.floor(index / 2);
    if (piece.kind === "straight") {
      anchors.push({
        kind: "leg",
        text: legText(path.legs[place] as Leg, write),
        from: piece.from,
        to: piece.to,
      });
    } else if (texts.at[place] !== "") {
      const middle = pointAlong(piece, 0.5);
      anchors.push({ kind: "turn", text: texts.at[place] as string, from: middle, to: middle });
    }
    const stroke = strokes[strokes.length - 1] as Point[];
    if (piece.kind === "straight" && broken.has(place)) {
      breaks.push({ at: pointAlong(piece, 0.5), heading: piece.heading });
      stroke.push(piece.from, pointAlong(piece, 0.48));
      strokes.push([pointAlong(piece, 0.52), piece.to]);
    } else {
      stroke.push(...flatten([piece], CHORD));
    }
  });
  const notes = path.turns.length > 0 ? texts.notes : [];
  const apart = [
    ...(broken.size > 0 ? ["long legs drawn broken"] : []),
    ...(drawn === shortened ? [] : ["not to scale: end legs drawn turned in, to be seen"]),
  ];
  return { strokes, breaks, anchors, notes, schematic: apart.length === 0 ? null : apart.join("; ") };
}

/** The end legs of a closed link lie upon its sides, where no drawing would show them. */
function turnEndsIn(path: PlanarPath, size: BarSize): PlanarPath {
  const straights = layOut(centreLine(path, size).pieces).filter(({ kind }) => kind === "straight");
  const last = straights.length - 1;
  // a leg that has no straight has no piece to be told by its place
  if (last < 3 || straights.length !== path.legs.length) return path;
  const hidden = new Set([0, last].filter((end) => isUponAnother(straights, end, size.diameter)));
  if (hidden.size === 0) return path;
  const shortestSide = Math.min(...path.legs.slice(1, -1).map(({ length }) => length));
  const turnOf = (end: number): number => (end === 0 ? 0 : end - 1);
  const turned = new Set([...hidden].map(turnOf));
  return {
    ...path,
    legs: path.legs.map((leg, at) =>
      hidden.has(at) ? { ...leg, length: Math.max(leg.length, shortestSide * LEAST_SHARE) } : leg,
    ),
    turns: path.turns.map((turn, at) =>
      turned.has(at) ? { ...turn, angle: turn.angle + Math.sign(turn.angle) * TURNED_IN } : turn,
    ),
  };
}

function isUponAnother(straights: readonly Piece[], end: number, diameter: number): boolean {
  const leg = straights[end] as Piece;
  const middle = pointAlong(leg, 0.5);
  return straights.some((other, at) => {
    if (Math.abs(at - end) < 2 || other.kind !== "straight") return false;
    const near = (point: Point): boolean =>
      distance(point, nearestOnSegment(point, other.from, other.to)) < diameter;
    return near(leg.from) && near(middle) && near(leg.to);
  });
}

function shortenLongLegs(path: PlanarPath): { drawn: PlanarPath; broken: ReadonlySet<number> } {
  const lengths = path.legs.map((leg) => leg.length).filter((length) => length > 0);
  const longest = Math.min(...lengths) * LONGEST_TO_SHORTEST;
  const broken = new Set<number>();
  const legs = path.legs.map((leg, index) => {
    if (leg.length <= longest * 1.5) return leg;
    broken.add(index);
    return { ...leg, length: longest };
  });
  return { drawn: { ...path, legs }, broken };
}

function headingOfLongest(pieces: readonly Piece[]): number {
  let longest: Piece | undefined;
  for (const piece of pieces) {
    if (piece.kind !== "straight") continue;
    if (longest === undefined || longest.kind !== "straight" || piece.length > longest.length + 1e-6)
      longest = piece;
  }
  return longest?.heading ?? 0;
}
