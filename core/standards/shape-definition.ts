import type { Citation } from "./citation";
import type { DIMENSION_LETTERS } from "./dimension-letters";

/** `main` and `link` everywhere; a standard may name further uses of its own. */
export type Use = "main" | "link" | (string & {});

export type DimLetter = (typeof DIMENSION_LETTERS)[number] | "R";

/** A limit as the standard prints it, over dims, P, r, d and R: "A >= P", "C >= 2(r + d)". */
export interface ShapeLimit {
  readonly text: string;
  readonly cite: Citation;
}

/** How a bend angle follows from the dims: an equation, and the range in degrees it is sought in. */
export interface ShapeAngle {
  readonly equation: string;
  readonly from: number;
  readonly to: number;
}

/**
 * A coded shape. From these texts come the printed formula's length, the path, the exact length,
 * the drawing and the limits; no shape has code of its own.
 */
export interface ShapeDefinition {
  readonly code: string;
  /** a few words, ours: "two right angles the same way" */
  readonly words: string;
  /** in column order; R is last where the shape takes a radius */
  readonly dims: readonly DimLetter[];
  readonly optionalDims?: readonly DimLetter[];
  /** a blank end leg of the path is a bar without that end and its bend, so long as one bend is left */
  readonly endsMayLack?: boolean;
  /** the dimension in brackets, that takes up tolerance; null where there is none */
  readonly free: DimLetter | null;
  /** as printed: "A + B + (C) - r - 2d"; null where the standard prints none */
  readonly formula: string | null;
  /** see `core/shapes/path-template.ts`; null where the shape is not held as a path */
  readonly path: string | null;
  /** equations of the path's named angles, over dims, r and d: { t: "D = B sin t + d cos t" } */
  readonly angles?: Readonly<Record<string, ShapeAngle>>;
  /** another reading of the same dims that the document's drawing would also bear */
  readonly otherReading?: {
    readonly words: string;
    /** legs run to the meeting of the outside tangents also at turns above 90 */
    readonly legsTo?: "tangents";
    readonly path: string;
    readonly angles?: Readonly<Record<string, ShapeAngle>>;
  };
  /** dims that count something and are no lengths: the turns of a helix */
  readonly counts?: readonly DimLetter[];
  /** the formula printed for dims that meet a condition */
  readonly formulaWhen?: { readonly limit: string; readonly formula: string };
  /** a shorter printed formula for least end legs, offered beside the other */
  readonly minimisedFormula?: string;
  /** "planar" unless said */
  readonly kind?: "planar" | "arc" | "circle" | "helix" | "isometric";
  readonly use?: Use;
  readonly closed?: boolean;
  readonly limits: readonly ShapeLimit[];
  /** The printed formula is approximate for a reason worth telling. */
  readonly formulaNote?: string;
  /** where the printed formula comes from */
  readonly cite: Citation;
  /** where the course of the bar, the meaning of its letters and its angles come from; as `cite` unless said */
  readonly course?: Citation;
}
