import { DEGREE } from "../geometry/degree";
import type { ShapeAngle } from "../standards/port";
import { compileFormula, type Formula } from "./formula";
import { type FormulaTree, parseFormula } from "./formula-tree";
import { placeOf, type ShapeValues } from "./shape-values";

/** A named angle of a shape's path, to be solved from its dims. */
export interface BendAngle {
  /** place of the angle in the shape's values */
  readonly place: number;
  readonly equation: string;
  readonly from: number;
  readonly to: number;
  /** places of the dims that the equation speaks of */
  readonly places: readonly number[];
  /** sine x sin t + cosine x cos t + rest = 0 */
  readonly sine: Formula;
  readonly cosine: Formula;
  readonly rest: Formula;
}

/** Degrees by which a root may lie outside its range and still count: float noise at 90. */
const NOISE = 1e-9;
const ZERO: FormulaTree = { kind: "number", text: "0", value: 0 };

/**
 * The equation of an angle, taken apart into sine, cosine and rest: "D = B sin t + d cos t".
 * Throws for an equation that is not of this form: equations are data of ours.
 */
export function bendAngle(name: string, { equation, from, to }: ShapeAngle): BendAngle {
  const place = placeOf(name);
  const [left, right] = equation.split("=");
  if (place === undefined || left === undefined || right === undefined) {
    throw new Error(`"${equation}" is no equation of an angle ${name}`);
  }
  const difference: FormulaTree = {
    kind: "subtract",
    left: parseFormula(right).tree,
    right: parseFormula(left).tree,
  };
  const parts = split(difference, place);
  const sine = compileFormula(`sine part of ${equation}`, parts.sine, []);
  const cosine = compileFormula(`cosine part of ${equation}`, parts.cosine, []);
  const rest = compileFormula(`rest of ${equation}`, parts.rest, []);
  const places = [...new Set([...sine.places, ...cosine.places, ...rest.places])];
  return { place, equation, from, to, places, sine, cosine, rest };
}

/**
 * Degrees of bend that meet the equation: the first root on the way from `from` to `to`, both ends but
 * `from` counting as inside; NaN where there is none.
 *
 * P sin t + Q cos t = S is sqrt(P^2 + Q^2) sin(t + atan2(Q, P)) = S (derived).
 */
export function solveBendAngle(angle: BendAngle, values: ShapeValues): number {
  const sine = angle.sine.evaluate(values);
  const cosine = angle.cosine.evaluate(values);
  const share = -angle.rest.evaluate(values) / Math.hypot(sine, cosine);
  if (!(Math.abs(share) <= 1)) return NaN;
  const lead = Math.atan2(cosine, sine) / DEGREE;
  const first = Math.asin(share) / DEGREE;
  const one = inRange(first - lead, angle);
  const other = inRange(180 - first - lead, angle);
  if (Number.isNaN(one)) return other;
  if (Number.isNaN(other)) return one;
  return angle.from < angle.to ? Math.min(one, other) : Math.max(one, other);
}

/** The same angle a whole turn on or back, if that lies in the range; else NaN. */
function inRange(degrees: number, { from, to }: BendAngle): number {
  const low = Math.min(from, to);
  const high = Math.max(from, to);
  const turned = degrees < low - NOISE ? degrees + 360 : degrees > high + NOISE ? degrees - 360 : degrees;
  if (turned < low - NOISE || turned > high + NOISE || Math.abs(turned - from) <= NOISE) return NaN;
  return Math.min(high, turned);
}

interface Parts {
  readonly sine: FormulaTree;
  readonly cosine: FormulaTree;
  readonly rest: FormulaTree;
}

function split(tree: FormulaTree, place: number): Parts {
  if (!mentions(tree, place)) return { sine: ZERO, cosine: ZERO, rest: tree };
  if (tree.kind === "add" || tree.kind === "subtract") {
    const left = split(tree.left, place);
    const right = split(tree.right, place);
    const join = (one: FormulaTree, other: FormulaTree): FormulaTree => ({
      kind: tree.kind,
      left: one,
      right: other,
    });
    return {
      sine: join(left.sine, right.sine),
      cosine: join(left.cosine, right.cosine),
      rest: join(left.rest, right.rest),
    };
  }
  if (tree.kind === "multiply") {
    const [factor, other] = mentions(tree.left, place) ? [tree.right, tree.left] : [tree.left, tree.right];
    const parts = split(other, place);
    const times = (part: FormulaTree): FormulaTree => ({ kind: "multiply", left: factor, right: part });
    return { sine: times(parts.sine), cosine: times(parts.cosine), rest: times(parts.rest) };
  }
  if (tree.kind === "call" && tree.args[0]?.kind === "symbol") {
    const one: FormulaTree = { kind: "number", text: "1", value: 1 };
    if (tree.name === "sin") return { sine: one, cosine: ZERO, rest: ZERO };
    if (tree.name === "cos") return { sine: ZERO, cosine: one, rest: ZERO };
  }
  throw new Error("an angle stands in its equation only as sin and cos, not multiplied with each other");
}

function mentions(tree: FormulaTree, place: number): boolean {
  switch (tree.kind) {
    case "number":
    case "pi":
      return false;
    case "symbol":
      return tree.place === place;
    case "square":
      return mentions(tree.of, place);
    case "call":
      return tree.args.some((arg) => mentions(arg, place));
    default:
      return mentions(tree.left, place) || mentions(tree.right, place);
  }
}
