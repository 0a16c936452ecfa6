import type { BarRow } from "../schedule/bar-row";
import { type CutLength, cutLength } from "../shapes/cut-length";
import { developedLength } from "../shapes/developed-length";
import { formula } from "../shapes/formula";
import type { ResolvedShape } from "../shapes/resolve-shape";
import { placeOf } from "../shapes/shape-values";
import type { DimLetter, LengthRounding, Standard } from "../standards/port";
import { isRefusal, type Refusal } from "../units/refusal";
import { DIMENSION_LETTERS } from "./dimension-letters";
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
  resolveWith(dims: readonly (number | null)[], former?: number | null): ResolvedShape | Refusal;
}

/** mm typed as cm, m or km, and inches and feet taken for one another or for mm. */
const SLIP_FACTORS = [10, 1000, 100, 25.4, 12, 304.8] as const;
/** mm: what is left of a length after somebody wrote it without decimals. */
const WRITTEN_WITHOUT_DECIMALS = 0.6;
/** mm: the coarsest rounding up in use where the standard prints none. */
const COARSEST_STEP = 25;
const RADIUS = placeOf("r") ?? -1;

const UNJUDGED: LengthJudgement = { kind: "unjudged" };
const FITS: LengthJudgement = { kind: "fits" };

/**
 * Compares the typed length with the printed formula and with the exact centre line: any length from
 * the least of them unrounded to the greatest of them rounded up is right.
 */
export function judgeLength(facts: LengthQuestion): LengthJudgement {
  const { length } = facts.row;
  const { cut, shape } = facts;
  if (length === null || cut === null || shape === null || facts.row.varying) return UNJUDGED;
  const window = acceptedLengths(shape, cut, facts);
  if (length >= window.least && length <= window.most) return FITS;
  return slipInLength(facts, cut, window) ?? slipInDims(facts) ?? { kind: "differs", cut };
}

interface Window {
  readonly least: number;
  readonly most: number;
}

function acceptedLengths(shape: ResolvedShape, cut: CutLength, facts: LengthQuestion): Window {
  const slack = writtenSlack(facts);
  let least = Math.min(cut.unrounded, cut.length);
  let most = Math.max(cut.length, cut.unrounded);
  const rounding = facts.standard.lengthRounding;
  if (rounding.cite.provenance === "common practice")
    most = Math.max(most, roundedUp(cut.unrounded, COARSEST_STEP));
  const developed = developedLength(shape);
  if (!isRefusal(developed)) {
    least = Math.min(least, developed.length);
    most = Math.max(most, roundedUp(developed.length, stepOf(rounding, cut)));
  }
  const minimised = minimisedLength(shape, cut);
  if (minimised !== null) {
    least = Math.min(least, minimised);
    most = Math.max(most, roundedUp(minimised, stepOf(rounding, cut)));
  }
  return { least: least - slack, most: most + slack };
}

/** The shorter form that the standard prints for links with least ends. */
function minimisedLength({ definition, values, radius }: ResolvedShape, cut: CutLength): number | null {
  const text = definition?.minimisedFormula;
  if (text === undefined) return null;
  const withPrintedRadius = values.slice();
  withPrintedRadius[RADIUS] = cut.formulaRadius ?? radius;
  const length = formula(text).evaluate(withPrintedRadius);
  return Number.isNaN(length) ? null : length;
}

function stepOf(rounding: LengthRounding, cut: CutLength): number {
  return rounding.cite.provenance === "common practice" ? COARSEST_STEP : cut.step;
}

/** A length in metres with two decimals can be 5 mm off what it was written from. */
function writtenSlack(facts: LengthQuestion): number {
  const unit = facts.row.table.columns.get("length")?.unit;
  if (unit === "m" && Number.isInteger(Math.round((facts.row.length ?? 0) * 1e6) / 1e7)) return 5;
  return WRITTEN_WITHOUT_DECIMALS;
}

function slipInLength(facts: LengthQuestion, cut: CutLength, window: Window): LengthJudgement | null {
  const from = facts.row.length ?? 0;
  for (const factor of SLIP_FACTORS) {
    for (const to of [from * factor, from / factor]) {
      if (to >= window.least && to <= window.most)
        return { kind: "slip", at: "length", factor, from, to: cut.length, cut };
    }
  }
  return null;
}

function slipInDims(facts: LengthQuestion): LengthJudgement | null {
  const { dims, length } = facts.row;
  if (facts.isPath || length === null) return null;
  for (const factor of SLIP_FACTORS) {
    for (let index = 0; index < dims.length; index += 1) {
      const from = dims[index];
      if (from === null || from === undefined || from === 0) continue;
      for (const to of [from * factor, from / factor]) {
        const tried = facts.resolveWith(dims.map((dim, place) => (place === index ? to : dim)));
        if (isRefusal(tried)) continue;
        const cut = cutLength(tried);
        if (isRefusal(cut) || !holdsLength(acceptedLengths(tried, cut, facts), length)) continue;
        return { kind: "slip", at: DIMENSION_LETTERS[index] ?? "A", factor, from, to, cut };
      }
    }
  }
  return null;
}

function holdsLength(window: Window, length: number): boolean {
  return length >= window.least && length <= window.most;
}
