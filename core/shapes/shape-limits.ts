import type { Citation } from "../standards/citation";
import { isRefusal } from "../units/refusal";
import type { CompiledShape } from "./compiled-shape";
import { leastEndLeg } from "./least-former";
import type { ResolvedShape } from "./resolve-shape";
import type { CompiledLimit } from "./shape-limit-text";
import { noValues, placeOf, type ShapeValues } from "./shape-values";

/** One dim against one bound of its code. */
export interface LimitJudgement {
  /** as printed: "A, (C) >= P" */
  readonly text: string;
  readonly letter: string;
  /** mm */
  readonly actual: number;
  /** mm; null where the bound is from above */
  readonly least: number | null;
  /** mm; null where the bound is from below */
  readonly most: number | null;
  /** null where the bound could not be computed: this standard does not hold it for the bar */
  readonly met: boolean | null;
  readonly cite: Citation | null;
}

/** mm: the noise of a computed bound. */
const NOISE = 1e-9;
const r = placeOf("r")!;
const P = placeOf("P")!;
const P_LINKS = placeOf("P(links)")!;

/**
 * Every printed limit of the bar's code, judged; empty for a path. Limits on dims that were left blank
 * are passed over. r is the printed one, P the least end leg of Table 2, for links where the text says so.
 */
export function shapeLimits(shape: ResolvedShape): LimitJudgement[] {
  const { compiled } = shape;
  if (compiled === null || compiled.limits.length === 0) return [];
  const values = valuesOfLimits(shape, compiled);
  const judgements: LimitJudgement[] = [];
  for (const limit of compiled.limits) {
    const actual = limit.actual.evaluate(values);
    if (!Number.isNaN(actual) && !namesBlankDim(limit, values)) judgements.push(judge(limit, values, actual));
  }
  return judgements;
}

/** Those of `shapeLimits` that are not met. A bar that meets them all costs no judgement. */
export function brokenShapeLimits(shape: ResolvedShape): readonly LimitJudgement[] {
  const { compiled } = shape;
  if (compiled === null || compiled.limits.length === 0) return NONE;
  const values = valuesOfLimits(shape, compiled);
  let broken: LimitJudgement[] | undefined;
  for (const limit of compiled.limits) {
    const actual = limit.actual.evaluate(values);
    const bound = limit.bound.evaluate(values);
    // a number is missing, or the bound is met
    if (Number.isNaN(actual) || Number.isNaN(bound) || compare(actual, limit, bound)) continue;
    if (namesBlankDim(limit, values)) continue;
    broken ??= [];
    broken.push(judge(limit, values, actual));
  }
  return broken ?? NONE;
}

const NONE: readonly LimitJudgement[] = [];

const copied = noValues();

/** A copy that stands until the next one is taken: limits are judged one bar after another. */
function copyOf(values: ShapeValues): number[] {
  for (let place = 0; place < copied.length; place += 1) copied[place] = values[place] as number;
  return copied;
}

function valuesOfLimits(shape: ResolvedShape, { limitsNeed }: CompiledShape): ShapeValues {
  const values = copyOf(shape.values);
  const { standard, diameter, use, grade } = shape;
  const printed = standard.formulaRadius(diameter, use, grade);
  if (!isRefusal(printed)) values[r] = printed.value;
  if (limitsNeed.endLeg) values[P] = leastEndLeg(standard, diameter, "main", grade);
  if (limitsNeed.linkEnd) values[P_LINKS] = leastEndLeg(standard, diameter, "link", grade);
  return values;
}

/** Whether a limit holds; false also where a value is missing. */
export function limitMet(limit: CompiledLimit, values: ShapeValues): boolean {
  return compare(limit.actual.evaluate(values), limit, limit.bound.evaluate(values));
}

function judge(limit: CompiledLimit, values: ShapeValues, actual: number): LimitJudgement {
  const bound = limit.bound.evaluate(values);
  const { text, letter, relation, cite } = limit;
  const known = !Number.isNaN(bound);
  return {
    text,
    letter,
    actual,
    least: known && relation !== "<=" ? bound : null,
    most: known && (relation === "<=" || relation === "=") ? bound : null,
    met: known ? compare(actual, limit, bound) : null,
    cite,
  };
}

function compare(actual: number, { relation }: CompiledLimit, bound: number): boolean {
  switch (relation) {
    case ">=":
      return actual >= bound - NOISE;
    case "<=":
      return actual <= bound + NOISE;
    case ">":
      return actual > bound + NOISE;
    case "=":
      return Math.abs(actual - bound) <= NOISE;
  }
}

/** A bound such as "(D)" of a dim that repeats another and may be left out. */
function namesBlankDim({ bound }: CompiledLimit, values: ShapeValues): boolean {
  return bound.places.some((place) => place < r && Number.isNaN(values[place]!));
}
