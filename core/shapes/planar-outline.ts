import { flatten, layOut, type Piece, pointAlong } from "../geometry/curve";
import type { Point } from "../geometry/point";
import { type BarOutline, type LabelAnchor, legText, turnTexts, type WriteLength } from "./bar-outline";
import { type BarSize, centreLine } from "./centre-line";
import type { Leg, PlanarPath } from "./path";

const CHORD = (5 * Math.PI) / 180;
/** A leg longer than this many times the shortest is drawn broken, or the short one could not be seen. */
const LONGEST_TO_SHORTEST = 14;

/** A bar of one plane, to scale. The longest leg lies level, and the first end is on its left. */
export function planarOutline(path: PlanarPath, size: BarSize, write: WriteLength): BarOutline {
  const { drawn, broken } = shortenLongLegs(path);
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
  if (broken.size > 0) return { strokes, breaks, anchors, notes, schematic: "long legs drawn broken" };
  return { strokes, breaks, anchors, notes, schematic: null };
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
