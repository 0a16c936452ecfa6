import type { Citation, Cited } from "../standards/citation";
import type { ShapeDefinition, Standard, Use } from "../standards/port";
import { printLength } from "../units/print-length";
import { defineRefusal, isRefusal, type Refusal } from "../units/refusal";
import { solveBendAngle } from "./bend-angle";
import { type CompiledShape, compiledShape } from "./compiled-shape";
import { givenEnds } from "./given-ends";
import { leastFormer } from "./least-former";
import type { BarPath } from "./path";
import { pathOf } from "./path-template";
import { readPath } from "./read-path";
import { shapeNamed } from "./shape-named";
import { noValues, placeOf, SHAPE_SYMBOLS, type ShapeValues } from "./shape-values";

export interface ShapeQuestion {
  readonly standard: Standard;
  /** a code of the standard, or a path */
  readonly shape: string | number;
  /** mm, by column: A is first; R right after the code's last letter or in column 5 */
  readonly dims: readonly (number | null)[];
  /** mm */
  readonly diameter: number;
  /** `link` for a link code and `main` otherwise, unless given */
  readonly use?: Use | undefined;
  /** grade by name or letter, where the least former depends on it */
  readonly grade?: string | undefined;
  /** mm; the standard's least unless given */
  readonly former?: number | null;
}

/** A bar's shape with everything that its lengths, drawing and limits follow from. */
export interface ResolvedShape {
  readonly standard: Standard;
  /** null for a path */
  readonly code: string | null;
  readonly definition: ShapeDefinition | null;
  readonly compiled: CompiledShape | null;
  /** null for a shape that the standard holds only as a sketch or a formula */
  readonly path: BarPath | null;
  readonly diameter: number;
  readonly use: Use;
  readonly grade: string | undefined;
  readonly former: Cited<number>;
  readonly formerGiven: boolean;
  /** mm, half the former */
  readonly radius: number;
  /** dims, r (half the former), d and solved angles; no number but d for a path */
  readonly values: ShapeValues;
}

export const dimMissing = defineRefusal(
  "dim-missing",
  "value",
  "{letter} is blank, and code {code} needs {dims}: give {letter}",
);
export const dimNotPositive = defineRefusal(
  "dim-not-positive",
  "value",
  "{letter} of code {code} is {value}: it must be over 0",
);
const dimExtra = defineRefusal(
  "dim-extra",
  "value",
  "column {column} of the dims holds {value}, but code {code} takes {dims} only: clear it or choose another code",
);
const dimsBesidePath = defineRefusal(
  "dims-beside-path",
  "value",
  `dims stand beside the path "{path}", which holds its own legs: leave the dims empty`,
);
export const noBendAngle = defineRefusal(
  "no-bend-angle",
  "value",
  "code {code} has no bend angle from {from} to {to} degrees with {dims}: {equation} cannot be met, correct these dims",
);
const formerNotPositive = defineRefusal(
  "former-not-positive",
  "value",
  "former {former} mm is no diameter: give one over 0, or leave it out for the least of {standard}",
);

const GIVEN_FORMER: Citation = { document: "former as given", provenance: "own" };
/** No former to bend by: only the geometry beside a length by deductions is laid about it. */
const FORMER_OF_DEDUCTIONS: Citation = {
  document: "the former that the deductions fit: the document holds none for the bar",
  provenance: "common practice",
};
/** Of a bar that is not bent about a former, in a standard that holds none for it. */
export const NO_FORMER: Cited<number> = {
  value: 0,
  cite: { document: "not bent about a former", provenance: "geometry" },
};
const R = placeOf("R")!;
const r = placeOf("r")!;
const d = placeOf("d")!;
const h = placeOf("h")!;
const n = placeOf("n")!;
/** The column of a schedule that E and R share. */
const RADIUS_COLUMN = 4;

/**
 * A code with its dims, or a path, as one bar: the definition, the path, the former and the radius.
 * Refuses a code that the standard does not hold, a blank that the code needs, a dim that it does not
 * take, dims that admit no bend angle, and a path that cannot be read.
 *
 * @example
 * resolveShape({ standard, shape: "21", dims: [1000, 400, 500], diameter: 16 }); // path A +90 B +90 (C)
 */
export function resolveShape(question: ShapeQuestion): ResolvedShape | Refusal {
  const { standard, diameter } = question;
  const named = shapeNamed(standard, question.shape);
  if (isRefusal(named)) return named;
  const definition = named.kind === "code" ? named.definition : null;
  const use = question.use ?? definition?.use ?? "main";
  const former = formerOf(question, use, definition);
  if (isRefusal(former)) return former;
  const formerGiven = former.cite === GIVEN_FORMER || former.cite === FORMER_OF_DEDUCTIONS;
  const radius = former.value / 2;
  const values = noValues();
  values[r] = radius;
  values[d] = diameter;
  if (named.kind === "path") {
    if (question.dims.some((dim) => dim !== null && dim !== 0)) return dimsBesidePath({ path: named.text });
    const path = readPath(named.text, {
      standard,
      diameter,
      use,
      grade: question.grade,
      formerGiven,
      radius,
    });
    if (isRefusal(path)) return path;
    const none = { code: null, definition: null, compiled: null };
    return {
      standard,
      ...none,
      path,
      diameter,
      use,
      grade: question.grade,
      former,
      formerGiven,
      radius,
      values,
    };
  }
  const compiled = compiledShape(givenEnds(named.definition, (letter) => !question.dims[placeOf(letter)!]));
  const refusal =
    fillDims(compiled, question, values) ??
    fillAllowances(compiled, question, values) ??
    solveAngles(compiled, question, values);
  if (refusal !== null) return refusal;
  return new CodedShape(question, compiled, use, former, formerGiven, radius, values);
}

/** The path is laid only where somebody asks for it: most lengths need none. */
class CodedShape implements ResolvedShape {
  #path: BarPath | null | undefined;

  readonly standard: Standard;
  readonly diameter: number;
  readonly grade: string | undefined;

  constructor(
    question: ShapeQuestion,
    readonly compiled: CompiledShape,
    readonly use: Use,
    readonly former: Cited<number>,
    readonly formerGiven: boolean,
    readonly radius: number,
    readonly values: ShapeValues,
  ) {
    this.standard = question.standard;
    this.diameter = question.diameter;
    this.grade = question.grade;
  }

  get code(): string {
    return this.compiled.definition.code;
  }

  get definition(): ShapeDefinition {
    return this.compiled.definition;
  }

  get path(): BarPath | null {
    const { template } = this.compiled;
    this.#path ??= template === null ? null : pathOf(template, this.values);
    return this.#path;
  }
}

function formerOf(
  { standard, diameter, former, grade }: ShapeQuestion,
  use: Use,
  definition: ShapeDefinition | null,
): Cited<number> | Refusal {
  if (former !== undefined && former !== null) {
    if (former > 0) return { value: former, cite: GIVEN_FORMER };
    return formerNotPositive({ former, standard: standard.id });
  }
  const least = leastFormer(standard, diameter, use, grade);
  const { siteDeductions: site } = standard;
  if (isRefusal(least) && site !== null) {
    return { value: site.value.formerPerDiameter * diameter, cite: FORMER_OF_DEDUCTIONS };
  }
  const unbent = definition !== null && isRefusal(least) && needsNoFormer(compiledShape(definition));
  return unbent ? NO_FORMER : least;
}

/** A straight bar, or a curve of its own radius: it can be made where no former is known. */
function needsNoFormer({ template, formula }: CompiledShape): boolean {
  if (template === null || formula?.places.includes(r)) return false;
  return template.kind !== "planar" || template.turns.every((turn) => turn.radius !== null);
}

function fillDims(compiled: CompiledShape, question: ShapeQuestion, values: number[]): Refusal | null {
  const { columns, needed } = compiled;
  const { dims } = question;
  for (let column = 0; column < columns.length; column += 1) {
    const dim = dims[columns[column]!] ?? null;
    if (dim === null || (dim === 0 && !needed[column])) {
      if (needed[column]) return missing(compiled, columns[column]!);
    } else if (dim > 0) {
      values[columns[column]!] = dim;
    } else {
      return notPositive(compiled, columns[column]!, dim, question);
    }
  }
  const radiusColumn = compiled.takesRadius ? findRadius(compiled, dims) : -1;
  if (radiusColumn >= 0) {
    const radius = dims[radiusColumn]!;
    if (!(radius > 0)) return notPositive(compiled, R, radius, question);
    values[R] = radius;
  } else if (compiled.needsRadius) return missing(compiled, R);
  for (let column = 0; column < dims.length; column += 1) {
    // a zero in a column that the code does not use is a formula's blank
    if (dims[column] && column !== radiusColumn && !columns.includes(column)) {
      return extra(compiled, column, question);
    }
  }
  return null;
}

/** h and n as the document prints them, for codes whose formula has them. */
function fillAllowances(
  { needsAllowance }: CompiledShape,
  { standard, diameter, grade }: ShapeQuestion,
  values: number[],
): Refusal | null {
  const allowance = needsAllowance ? standard.endAllowance(diameter, grade) : null;
  if (allowance === null || isRefusal(allowance)) return allowance;
  values[h] = allowance.value.hook;
  values[n] = allowance.value.bend;
  return null;
}

/** Directly after the last letter, else in the shared column with blanks between; -1 where it is in neither. */
function findRadius({ columns }: CompiledShape, dims: readonly (number | null)[]): number {
  const after = (columns.at(-1) ?? -1) + 1;
  if (dims[after]) return after;
  return after < RADIUS_COLUMN && dims[RADIUS_COLUMN] ? RADIUS_COLUMN : -1;
}

function solveAngles(compiled: CompiledShape, question: ShapeQuestion, values: number[]): Refusal | null {
  for (const angle of compiled.angles) {
    const degrees = solveBendAngle(angle, values);
    if (Number.isNaN(degrees)) {
      const { unit } = question.standard;
      const dims = angle.places
        .filter((place) => place < r)
        .map((place) => `${SHAPE_SYMBOLS[place]} ${printLength(values[place]!, unit)}`);
      return noBendAngle({
        code: compiled.definition.code,
        from: Math.min(angle.from, angle.to),
        to: Math.max(angle.from, angle.to),
        dims: dims.join(", "),
        equation: angle.equation,
      });
    }
    values[angle.place] = degrees;
  }
  return null;
}

function missing({ definition }: CompiledShape, place: number): Refusal {
  const needed = definition.dims.filter((letter) => !definition.optionalDims?.includes(letter));
  return dimMissing({ letter: SHAPE_SYMBOLS[place]!, code: definition.code, dims: needed.join(", ") });
}

function notPositive(
  compiled: CompiledShape,
  place: number,
  dim: number,
  { standard }: ShapeQuestion,
): Refusal {
  const value = printLength(dim, standard.unit);
  return dimNotPositive({ letter: SHAPE_SYMBOLS[place]!, code: compiled.definition.code, value });
}

function extra({ definition }: CompiledShape, column: number, { standard, dims }: ShapeQuestion): Refusal {
  const value = printLength(dims[column]!, standard.unit);
  return dimExtra({ column: column + 1, value, code: definition.code, dims: definition.dims.join(", ") });
}
