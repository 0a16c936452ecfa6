import { DEGREE } from "../geometry/degree";
import { isRefusal } from "../units/refusal";
import { setBack } from "./centre-line";
import { isLengthOfBar } from "./contradicting-dims";
import { developedLength } from "./developed-length";
import { type PathTemplate, templateAngle, templateLegLength, templateRadius } from "./path-template";
import type { ResolvedShape } from "./resolve-shape";
import type { ShapeValues } from "./shape-values";

type PlanarTemplate = Extract<PathTemplate, { kind: "planar" }>;

/** mm: a straight this much below zero is float noise of a straight that is nothing. */
const NOISE = 1e-9;

/**
 * `developedLength` as a number alone, mm; NaN where that refuses. A coded shape is measured on its
 * template, so that no path is laid: an audit asks this of every bar.
 *
 * @example exactLengthOf(resolveShape({ standard, shape: "11", dims: [600, 400], diameter: 16 })); // 966.8
 */
export function exactLengthOf(shape: ResolvedShape): number {
  const template = planarTemplate(shape);
  if (template === null) {
    const developed = developedLength(shape);
    return isRefusal(developed) ? NaN : developed.length;
  }
  const { diameter, radius, values } = shape;
  let length = 0;
  let before = 0;
  for (let at = 0; at < template.legs.length; at += 1) {
    const turn = template.turns[at];
    let after = 0;
    let arc = 0;
    if (turn !== undefined) {
      const angle = templateAngle(turn, values);
      const inside = templateRadius(turn, values) ?? radius;
      if (inside < -NOISE) return NaN;
      after = setBack(angle, inside, diameter);
      arc = angle * DEGREE * (inside + diameter / 2);
    }
    const straight = legLength(template, at, values) - before - after;
    if (straight < -NOISE) return NaN;
    length += straight + arc;
    before = after;
  }
  return isLengthOfBar(length) ? length : NaN;
}

/** mm: the shortest straight with a bend at both its ends; Infinity where there is none, NaN where a bend overlaps. */
export function shortestBetweenBends(shape: ResolvedShape): number {
  const template = planarTemplate(shape);
  if (template === null) return ofPath(shape);
  const { diameter, radius, values } = shape;
  let shortest = Infinity;
  let before = 0;
  for (let at = 0; at < template.turns.length; at += 1) {
    const turn = template.turns[at]!;
    const after = setBack(templateAngle(turn, values), templateRadius(turn, values) ?? radius, diameter);
    if (at > 0) shortest = Math.min(shortest, legLength(template, at, values) - before - after);
    before = after;
  }
  return shortest < -NOISE ? NaN : shortest;
}

function planarTemplate({ compiled }: ResolvedShape): PlanarTemplate | null {
  const template = compiled?.template;
  return template?.kind === "planar" ? template : null;
}

function legLength({ legs }: PlanarTemplate, at: number, values: ShapeValues): number {
  return templateLegLength(legs[at]!, values);
}

function ofPath(shape: ResolvedShape): number {
  const developed = developedLength(shape);
  if (isRefusal(developed)) return NaN;
  return Math.min(Infinity, ...developed.straights.slice(1, -1));
}
