import type { BarRow } from "../schedule/bar-row";
import { type CutLength, cutLength } from "../shapes/cut-length";
import { exactLengthOf } from "../shapes/exact-length";
import { formula } from "../shapes/formula";
import type { ResolvedShape } from "../shapes/resolve-shape";
import { placeOf } from "../shapes/shape-values";
import { DIMENSION_LETTERS } from "../standards/dimension-letters";
import type { DimLetter, LengthRounding, Standard, Use } from "../standards/port";
import { isRefusal, type Refusal } from "../units/refusal";
import { roundedUp } from "./step";

/** How a typed length stands to the dimensions beside it. */
export type LengthJudgement =
  | { readonly kind: "unjudged" }
  | { readonly kind: "fits" }
  | { readonly kind: "differs"; readonly cut: CutLength }
  /** one figure times or divided by `factor` would make both agree */
  | {
      readonly kind: "slip";
      readonly at: DimLetter | "length";
      readonly factor: SlipFactor;
      readonly from: number;
      readonly to: number;
      readonly cut: CutLength;
    };

export type SlipFactor = (typeof SLIP_FACTORS)[number];

/** What the comparison needs of a bar. */
export interface LengthQuestion {
  readonly row: BarRow;
  readonly standard: Standard;
  readonly isPath: boolean;
  readonly shape: ResolvedShape | null;
  readonly cut: CutLength | null;
  resolveWith(dims: readonly (number | null)[], former?: number | null, use?: Use): ResolvedShape | Refusal;
}

/** mm typed as cm, m or km, and inches and feet taken for one another or for mm. */
const SLIP_FACTORS = [10, 1000, 100, 25.4, 12, 304.8] as const;
/** mm: what is left of a length after somebody wrote it without decimals. */
const WRITTEN_WITHOUT_DECIMALS = 0.6;
/** mm */
const HALF_CENTIMETRE = 5;
/** mm: the coarsest rounding up in use where the standard prints none. */
const COARSEST_STEP = 25;
/** mm: what rounding can add to a difference of two lengths. */
const MOST_ROUNDING = 100;
const RADIUS = placeOf("r") ?? -1;

export const UNJUDGED: LengthJudgement = { kind: "unjudged" };
export const FITS: LengthJudgement = { kind: "fits" };

/**
 * Compares the typed length with every length that the row may rightly have: by the printed formula,
 * by the exact centre line, and by the shorter form printed for links with least ends; each from its
 * unrounded value to that rounded up.
 */
export function judgeLength(facts: LengthQuestion): LengthJudgement {
  const { length } = facts.row;
  const { cut, shape } = facts;
  if (length === null || cut === null || shape === null || facts.row.varying) return UNJUDGED;
  if (isRounded(length, cut, facts) || isOfExact(length, shape, cut, facts)) return FITS;
  if (isMinimised(length, shape, cut, facts) || isOfLeastFormer(length, facts)) return FITS;
  if (isOfMainUse(length, facts)) return FITS;
  return slipInLength(facts, cut, shape) ?? slipInDims(facts, cut.length) ?? { kind: "differs", cut };
}

/** From the unrounded cut length to that rounded up. */
function isRounded(length: number, cut: CutLength, facts: LengthQuestion): boolean {
  const slack = writtenSlack(facts);
  const step = stepOf(facts.standard.lengthRounding, cut);
  const least = Math.min(cut.unrounded, cut.length) - slack;
  return length >= least && length <= Math.max(cut.length, mostRoundedUp(cut.unrounded, step, facts)) + slack;
}

/** From the exact centre line to that rounded up. */
function isOfExact(length: number, shape: ResolvedShape, cut: CutLength, facts: LengthQuestion): boolean {
  const exact = exactLengthOf(shape);
  if (Number.isNaN(exact)) return false;
  const slack = writtenSlack(facts);
  const step = stepOf(facts.standard.lengthRounding, cut);
  return (
    length >= exact - slack - mostRoundedDown(facts) && length <= mostRoundedUp(exact, step, facts) + slack
  );
}

/** By the shorter form that the standard prints for links with least ends. */
function isMinimised(length: number, shape: ResolvedShape, cut: CutLength, facts: LengthQuestion): boolean {
  const text = shape.definition?.minimisedFormula;
  if (text === undefined) return false;
  const values = shape.values.slice();
  values[RADIUS] = cut.formulaRadius ?? shape.radius;
  const unrounded = formula(text).evaluate(values);
  const slack = writtenSlack(facts);
  return length >= unrounded - slack && length <= roundedUp(unrounded, cut.step) + slack;
}

/** A former of another size changes the bend, but the schedule may still be by the standard's own. */
function isOfLeastFormer(length: number, facts: LengthQuestion): boolean {
  if (facts.row.former === null) return false;
  const shape = facts.resolveWith(facts.row.dims, null);
  if (isRefusal(shape)) return false;
  const cut = cutLength(shape);
  return !isRefusal(cut) && (isRounded(length, cut, facts) || isOfExact(length, shape, cut, facts));
}

/** A path is a main bar for the functions, unless they are told that it is a link. */
function isOfMainUse(length: number, facts: LengthQuestion): boolean {
  if (!facts.isPath || facts.shape?.use !== "link") return false;
  const shape = facts.resolveWith(facts.row.dims, facts.row.former, "main");
  if (isRefusal(shape)) return false;
  const cut = cutLength(shape);
  return !isRefusal(cut) && (isRounded(length, cut, facts) || isOfExact(length, shape, cut, facts));
}

/** Where the standard prints no step of its own, the coarsest rounding up in use is right too. */
function stepOf(rounding: LengthRounding, cut: CutLength): number {
  return rounding.cite.provenance === "common practice" ? Math.max(COARSEST_STEP, cut.step) : cut.step;
}

/** Up to the printed step; where none is printed any step up to the coarsest may have been used. */
function mostRoundedUp(length: number, step: number, { standard }: LengthQuestion): number {
  const isPrinted = standard.lengthRounding.cite.provenance !== "common practice";
  return isPrinted ? roundedUp(length, step) : length + step;
}

/** Where no step is printed a length may stand to the nearest centimetre; a printed one goes up. */
function mostRoundedDown({ standard }: LengthQuestion): number {
  return standard.lengthRounding.cite.provenance === "common practice" ? HALF_CENTIMETRE : 0;
}

/** A length in metres with two decimals can be 5 mm off what it was written from. */
function writtenSlack({ row }: LengthQuestion): number {
  const unit = row.table.columns.get("length")?.unit;
  const wholeCentimetres = Math.abs((row.length ?? 0) / 10 - Math.round((row.length ?? 0) / 10)) < 1e-6;
  return unit === "m" && wholeCentimetres ? HALF_CENTIMETRE : WRITTEN_WITHOUT_DECIMALS;
}

function slipInLength(facts: LengthQuestion, cut: CutLength, shape: ResolvedShape): LengthJudgement | null {
  const from = facts.row.length ?? 0;
  for (const factor of SLIP_FACTORS) {
    for (const to of [from * factor, from / factor]) {
      if (!isRounded(to, cut, facts) && !isOfExact(to, shape, cut, facts)) continue;
      return { kind: "slip", at: "length", factor, from, to: cut.length, cut };
    }
  }
  return null;
}

function slipInDims(facts: LengthQuestion, computed: number): LengthJudgement | null {
  const { dims, length } = facts.row;
  if (facts.isPath || length === null) return null;
  for (const factor of SLIP_FACTORS) {
    for (let index = 0; index < dims.length; index += 1) {
      const from = dims[index];
      if (from === null || from === undefined || from === 0) continue;
      for (const to of [from * factor, from / factor]) {
        // no shape takes a dimension more than four times
        const change = Math.abs(to - from);
        const difference = Math.abs(length - computed);
        if (difference < change * 0.5 - MOST_ROUNDING || difference > change * 4 + MOST_ROUNDING) continue;
        const tried = facts.resolveWith(dims.map((dim, place) => (place === index ? to : dim)));
        if (isRefusal(tried)) continue;
        const cut = cutLength(tried);
        if (isRefusal(cut) || !isRounded(length, cut, facts)) continue;
        return { kind: "slip", at: DIMENSION_LETTERS[index] ?? "A", factor, from, to, cut };
      }
    }
  }
  return null;
}
