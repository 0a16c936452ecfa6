import type { Citation, Cited } from "../standards/citation";
import type { LengthRounding, SiteDeductions } from "../standards/port";
import { isRefusal, type Refusal } from "../units/refusal";
import { roundExactly, roundIfSure, roundMeasured } from "../units/round-to-step";
import type { CompiledShape } from "./compiled-shape";
import { contradictingDims, isLengthOfBar, noLengthOfBar } from "./contradicting-dims";
import { developedLength } from "./developed-length";
import type { Formula } from "./formula";
import { leastFormer } from "./least-former";
import type { ResolvedShape } from "./resolve-shape";
import { limitMet } from "./shape-limits";
import { placeOf, type ShapeValues } from "./shape-values";
import { siteCutLength } from "./site-cut-length";

/** The length to schedule and cut, and how it came about. */
export interface CutLength {
  /** mm, rounded */
  readonly length: number;
  /** mm */
  readonly unrounded: number;
  readonly basis: "printed formula" | "geometry" | "site deductions";
  /** mm; 0 where it is not rounded */
  readonly step: number;
  /** of the formula, the geometry or the deductions; the rounding has its own in the standard */
  readonly cite: Citation;
  /** the formula that was used, as printed; null where there is none */
  readonly formula: string | null;
  /** mm, the r that the formula took; null where there is none */
  readonly formulaRadius: number | null;
}

const GEOMETRY: Citation = { document: "geometry of the centre line", provenance: "derived" };
const r = placeOf("r")!;

/**
 * The length to schedule and cut: by the standard's printed formula where it prints one, else by
 * geometry, rounded as the standard says; by deductions where the standard is a rule of deductions.
 *
 * A pair of ends that the formula takes as one and that differ, C and D of 51, goes by geometry.
 *
 * The formula takes its printed r (87 for a 25 mm bar, whose former is 175). A former given with the bar
 * that is not the standard's least takes the place of r: half of it. Refuses what `developedLength`
 * refuses where no formula is printed; a printed formula answers also where bends overlap, unless what
 * comes out is nought or less: then it says which dimensions contradict each other.
 */
export function cutLength(shape: ResolvedShape): CutLength | Refusal {
  const { standard } = shape;
  if (standard.siteDeductions !== null) return siteLength(shape, standard.siteDeductions);
  const printed = printedFormula(shape);
  if (printed === null) return geometricCutLength(shape);
  const rounding = standard.lengthRounding;
  const usesRadius = printed.places.includes(r);
  const radius = usesRadius ? radiusOfFormula(shape) : null;
  if (isRefusal(radius)) return radius;
  const values = radius === null || radius === shape.radius ? shape.values : withRadius(shape.values, radius);
  const unrounded = printed.evaluate(values);
  if (!isLengthOfBar(unrounded)) return contradictingDims(shape, printed, values, unrounded);
  const length = roundFormula(printed, values, unrounded, rounding);
  if (!isLengthOfBar(length)) return contradictingDims(shape, printed, values, length);
  return {
    length,
    unrounded,
    basis: "printed formula",
    step: rounding.step,
    cite: shape.definition?.cite ?? GEOMETRY,
    formula: printed.text,
    formulaRadius: radius,
  };
}

/** Deductions are for bends: a curve is cut by its geometry, not rounded either. */
function siteLength(shape: ResolvedShape, { value, cite }: Cited<SiteDeductions>): CutLength | Refusal {
  const { path, diameter, standard } = shape;
  if (path?.kind !== "planar") return geometricCutLength(shape);
  const site = siteCutLength({ path, diameter, standard: standard.id }, value);
  if (isRefusal(site)) return site;
  const { length } = site;
  if (!isLengthOfBar(length)) return noLengthOfBar(length, standard.unit);
  const basis = "site deductions";
  return { length, unrounded: length, basis, step: 0, cite, formula: null, formulaRadius: null };
}

function printedFormula({ compiled, values }: ResolvedShape): Formula | null {
  if (compiled === null || hasUnequalPair(compiled, values)) return null;
  const when = compiled.formulaWhen;
  return when !== null && limitMet(when.limit, values) ? when.formula : compiled.formula;
}

/** Two dims differ that the printed formula takes as one: only geometry counts each as it is. */
export function hasUnequalPair({ equalities }: CompiledShape, values: ShapeValues): boolean {
  return equalities.some(({ actual, bound }) => {
    const [one, other] = [actual.evaluate(values), bound.evaluate(values)];
    return !Number.isNaN(one) && !Number.isNaN(other) && one !== other;
  });
}

function geometricCutLength(shape: ResolvedShape): CutLength | Refusal {
  const developed = developedLength(shape);
  if (isRefusal(developed)) return developed;
  const { step, direction } = shape.standard.lengthRounding;
  const length = roundMeasured(developed.length, step, direction);
  const unrounded = developed.length;
  if (!isLengthOfBar(length)) return noLengthOfBar(length, shape.standard.unit);
  return { length, unrounded, basis: "geometry", step, cite: GEOMETRY, formula: null, formulaRadius: null };
}

/** A former that is the standard's least stays the printed r, which may be cut to whole millimetres. */
function radiusOfFormula(shape: ResolvedShape): number | Refusal {
  const { standard, diameter, use, grade, former, formerGiven, radius } = shape;
  const printed = standard.formulaRadius(diameter, use, grade);
  if (formerGiven) {
    const least = leastFormer(standard, diameter, use, grade);
    if (isRefusal(printed) || isRefusal(least) || least.value !== former.value) return radius;
  }
  return isRefusal(printed) ? printed : printed.value;
}

function withRadius(values: ShapeValues, radius: number): ShapeValues {
  const copy = values.slice();
  copy[r] = radius;
  return copy;
}

function roundFormula(
  printed: Formula,
  values: ShapeValues,
  unrounded: number,
  { step, direction }: LengthRounding,
): number {
  const sure = roundIfSure(unrounded, printed.errorBound(values), step, direction);
  return Number.isNaN(sure) ? roundExactly(printed.exact(values), step, direction) : sure;
}
