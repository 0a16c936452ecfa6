import { DEGREE } from "../geometry/degree";
import type { LengthUnit } from "../standards/port";
import { printLength } from "../units/print-length";
import { defineRefusal, isRefusal, type Refusal } from "../units/refusal";
import { setBack } from "./centre-line";
import { isLengthOfBar, noLengthOfBar } from "./contradicting-dims";
import type { BarPath, PlanarPath } from "./path";
import type { ResolvedShape } from "./resolve-shape";

/** A bar along its centre line. Straights and arcs alternate in a planar path, and add up to `length`. */
export interface DevelopedLength {
  /** mm, unrounded */
  readonly length: number;
  /** mm, tangent to tangent, one a leg; empty for a curve */
  readonly straights: readonly number[];
  /** mm along the centre line, one a turn; the whole curve for an arc, ring or helix */
  readonly arcs: readonly number[];
}

export interface PathSize {
  /** mm */
  readonly diameter: number;
  /** mm inside, for turns that bring no radius of their own */
  readonly radius: number;
  /** unit that a refusal speaks in; mm unless given */
  readonly unit?: LengthUnit;
}

const shapeHasNoPath = defineRefusal(
  "shape-has-no-path",
  "not-held",
  "code {code} of {standard} is drawn for each bar, so its geometry is not held: write the bar as a path such as 500 +90 1200",
);
export const bendsOverlap = defineRefusal(
  "bends-overlap",
  "value",
  "{bends} overlap: leg {leg} of {length} leaves {straight} of straight, so lengthen it by {short} or take a smaller former than {former}",
);
export const legInsideBend = defineRefusal(
  "leg-inside-bend",
  "value",
  "leg {leg} of {length} ends inside bend {bend}: lengthen it by {short} or take a smaller former than {former}",
);
export const bendHasNoInside = defineRefusal(
  "bend-has-no-inside",
  "value",
  "{bend} is {width} wide outside, below twice the bar's {diameter}: correct the width",
);
const ringTooSmall = defineRefusal(
  "ring-too-small",
  "value",
  "the outside diameter {outside} is not above twice the bar's {diameter}: correct the diameter",
);

/** mm: a straight this much below zero is float noise of a straight that is nothing. */
const NOISE = 1e-9;

/**
 * Length of the bar on its centre line by exact geometry, mm, unrounded. Refuses where a straight comes
 * out negative, because the bends overlap, and where the shape is held only as a sketch.
 *
 * @example
 * developedLength(resolveShape({ standard, shape: "600 +90 400", dims: [], diameter: 16 })).length; // 966.8
 */
export function developedLength(shape: ResolvedShape): DevelopedLength | Refusal {
  const { path, diameter, radius, standard } = shape;
  if (path === null) return shapeHasNoPath({ code: shape.code ?? "", standard: standard.id });
  const developed = developPath(path, { diameter, radius, unit: standard.unit });
  if (isRefusal(developed) || isLengthOfBar(developed.length)) return developed;
  return noLengthOfBar(developed.length, standard.unit);
}

/**
 * The same for a path alone. A leg loses its set-back at each end, (r + d) tan(t / 2) up to 90 and r + d
 * above; a turn adds t (r + d / 2).
 */
export function developPath(path: BarPath, size: PathSize): DevelopedLength | Refusal {
  const { diameter } = size;
  switch (path.kind) {
    case "planar":
      return developPlanar(path, size);
    case "arc":
      return { length: path.length, straights: [], arcs: [path.length] };
    case "circle": {
      if (path.outsideDiameter <= 2 * diameter) return tooSmall(path.outsideDiameter, size);
      const ring = Math.PI * (path.outsideDiameter - diameter);
      return { length: ring + path.lap, straights: [], arcs: [ring + path.lap] };
    }
    case "helix": {
      if (path.outsideDiameter <= 2 * diameter) return tooSmall(path.outsideDiameter, size);
      const oneTurn = Math.hypot(Math.PI * (path.outsideDiameter - diameter), path.pitch);
      return { length: path.turns * oneTurn, straights: [], arcs: [path.turns * oneTurn] };
    }
  }
}

function developPlanar(path: PlanarPath, size: PathSize): DevelopedLength | Refusal {
  const { legs, turns } = path;
  const straights: number[] = [];
  const arcs: number[] = [];
  let length = 0;
  let before = 0;
  for (let at = 0; at < legs.length; at += 1) {
    const turn = turns[at];
    const radius = turn?.radius ?? size.radius;
    if (radius < -NOISE) return noInside(at, radius, size);
    const angle = turn === undefined ? 0 : Math.abs(turn.angle);
    const after = turn === undefined ? 0 : setBack(angle, radius, size.diameter);
    const straight = legs[at]!.length - before - after;
    if (straight < -NOISE) return overlap(path, at, straight, size);
    straights.push(Math.max(0, straight));
    length += straight;
    if (turn !== undefined) {
      const arc = angle * DEGREE * (radius + size.diameter / 2);
      arcs.push(arc);
      length += arc;
    }
    before = after;
  }
  return { length, straights, arcs };
}

function overlap({ legs, turns }: PlanarPath, at: number, straight: number, size: PathSize): Refusal {
  const unit = size.unit ?? "mm";
  const values = {
    leg: legs[at]!.letter ?? `${at + 1}`,
    length: printLength(legs[at]!.length, unit),
    short: printLength(-straight, unit),
    former: printLength(2 * size.radius, unit),
  };
  if (at === 0 || at === turns.length) return legInsideBend({ ...values, bend: at === 0 ? 1 : turns.length });
  return bendsOverlap({
    ...values,
    bends: `bends ${at} and ${at + 1}`,
    straight: printLength(straight, unit),
  });
}

function noInside(at: number, radius: number, { diameter, unit = "mm" }: PathSize): Refusal {
  return bendHasNoInside({
    bend: `bend ${at + 1}`,
    width: printLength(2 * (radius + diameter), unit),
    diameter: printLength(diameter, unit),
  });
}

function tooSmall(outside: number, { diameter, unit = "mm" }: PathSize): Refusal {
  return ringTooSmall({ outside: printLength(outside, unit), diameter: printLength(diameter, unit) });
}
