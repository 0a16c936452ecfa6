import type { ShapeDefinition } from "./shape-definition";

/** Who looked in the bought copy, and when: "2026-11-29". */
export interface LookedUp {
  readonly by: string;
  readonly on: string;
}

/** One figure of a document as its owner's copy has it. */
export interface OwnFigure extends LookedUp {
  /** id of the document: "BS8666:2020" */
  readonly standard: string;
  /** the figure's name within it, as `figuresOf` gives it */
  readonly figure: string;
  /** in the document's unit; a text where the figure is one */
  readonly value: number | string;
}

/** A shape code of a firm, a yard or a country that no document held here has. */
export interface OwnShape {
  /** id of the document that it joins; null joins every one */
  readonly standard: string | null;
  readonly shape: ShapeDefinition;
}

/** A lap or anchorage of the project's own table: design lengths are the designer's. */
export interface OwnLap {
  /** as typed, "16" or "H16" */
  readonly size: string;
  /** blank serves every grade, every case */
  readonly grade: string;
  readonly case: string;
  /** as typed: a number in the standard's unit, or a text with its unit */
  readonly lap: number | string;
}

/** What a workbook's owner looked up and added. Plain data, so that it is its own key. */
export interface OwnStandard {
  readonly figures: readonly OwnFigure[];
  readonly shapes: readonly OwnShape[];
  readonly laps: readonly OwnLap[];
}

export const NOTHING_OWN: OwnStandard = { figures: [], shapes: [], laps: [] };
