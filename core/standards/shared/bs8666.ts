import type { Citation } from "../citation";
import { BS8666_SHAPES } from "./bs8666-shapes.data";
import * as data from "./bs8666-tables.data";
import { type ShapeSources, shapesOf } from "./shape-row";
import type { StandardTables } from "./standard-tables";

/** Where an edition of BS 8666 has each of its tables, and how far its copy may be trusted. */
export interface Bs8666Sources {
  /** r, M and P */
  readonly radii: Citation;
  readonly radiiRule: Citation;
  readonly endLegRule: Citation;
  readonly hooks: Citation;
  readonly typeLetters: Citation;
  readonly shapes: ShapeSources;
  readonly totalLength: Citation;
  readonly dimensionStep: Citation;
  readonly straightBetweenBends: Citation;
  readonly manyBends: Citation;
  readonly tolerances: Citation;
  readonly supplyRadius: Citation;
  readonly transportWidth: Citation;
  readonly stockLength: Citation;
  readonly largestCurveFormer: Citation;
}

/** The tables that the editions of BS 8666 share, each with the source that an edition has for it. */
export function bs8666Tables(sources: Bs8666Sources) {
  const figures = data.SINGLE_FIGURES;
  return {
    bars: [data.BARS],
    grades: [
      ...data.TYPE_LETTERS.map((grade) => ({ ...grade, cite: sources.typeLetters })),
      ...data.OLD_GRADES,
    ],
    formers: [
      { cite: sources.radii, rows: data.FORMER_ROWS },
      { cite: sources.radiiRule, rows: data.FORMER_RULE_ROWS },
    ],
    formulaRadii: { cite: sources.radii, rows: data.RADIUS_ROWS },
    endLegs: [
      { cite: sources.radii, rows: data.END_LEG_ROWS },
      { cite: sources.endLegRule, rows: data.END_LEG_RULE_ROWS },
    ],
    bendingNeedsEndLegUpTo: data.PRACTICAL_UP_TO,
    hooks: [{ cite: sources.hooks, rows: data.HOOK_ROWS }],
    shapes: shapesOf(BS8666_SHAPES, sources.shapes),
    lengthRounding: { step: figures.lengthStep, direction: "up", cite: sources.totalLength },
    dimensionStep: { value: figures.dimensionStep, cite: sources.dimensionStep },
    straightBetweenBends: { value: figures.straightBetweenBends, cite: sources.straightBetweenBends },
    manyBends: { value: figures.manyBends, cite: sources.manyBends },
    tolerances: { value: data.TOLERANCE_ROWS, cite: sources.tolerances },
    coldBending: data.COLD_BENDING,
    rebending: data.REBENDING,
    straightSupplyRadius: { cite: sources.supplyRadius, rows: data.SUPPLY_RADIUS_ROWS },
    transportWidth: { value: figures.transportWidth, cite: sources.transportWidth },
    stockLength: { value: figures.stockLength, cite: sources.stockLength },
    largestCurveFormer: { value: figures.largestCurveFormer, cite: sources.largestCurveFormer },
  } satisfies Partial<StandardTables>;
}
