import type { Standard } from "./port";

/**
 * A yard that codes shapes by one document and bends by another: shapes, rounding, scheduling steps
 * and tolerances of `shapes`; bars, formers, hooks, end legs and what the steel allows of `bars`.
 * Its unit is that of `shapes`, in which its schedules are written.
 */
export function combineStandards(shapes: Standard, bars: Standard): Standard {
  return {
    ...bars,
    id: `${shapes.id}+${bars.id}`,
    title: `shapes of ${shapes.title}; bars and formers of ${bars.title}`,
    caution: shapes.caution ?? bars.caution,
    unit: shapes.unit,
    shapes: shapes.shapes,
    shapesInPart: shapes.shapesInPart,
    endAllowance: shapes.endAllowance,
    lengthRounding: shapes.lengthRounding,
    dimensionStep: shapes.dimensionStep,
    straightBetweenBends: shapes.straightBetweenBends,
    manyBends: shapes.manyBends,
    tolerances: shapes.tolerances,
    supply: shapes.supply,
    siteDeductions: shapes.siteDeductions,
  };
}
