import { FIBRE_LIMITS, LEAST_ELONGATION } from "./capacity.data";

/** What makes a bent bar likelier to crack than its strain alone says. */
export type FibreCircumstance =
  | "cold"
  | "bent back"
  | "coated"
  | "near a weld"
  | "corroded or nicked"
  | "high strength"
  | "bent fast";

export interface OuterFibre {
  /** share by which the outer fibre is stretched */
  readonly strain: number;
  /** strain over the class's least elongation: an index, no prediction */
  readonly index: number;
  readonly judgement: "normal" | "watch" | "do not bend";
}

const STEPS = ["normal", "watch", "do not bend"] as const;

/**
 * The strain of the outermost fibre, diameter / (former + diameter), as an index over the elongation that the
 * ductility class promises (derived). Bars do not break where it passes 1, because no neck can form in a bend;
 * it only ranks. Any circumstance raises the judgement by one step; a former below the standard's least stops it.
 *
 * @example
 * outerFibre({ diameter: 16, former: 64, ductility: "B" }); // strain 0.2, index 4, normal
 */
export function outerFibre(bar: {
  diameter: number;
  former: number;
  ductility: "A" | "B" | "C";
  circumstances?: readonly FibreCircumstance[];
  belowLeastFormer?: boolean;
}): OuterFibre {
  const limits = FIBRE_LIMITS.value;
  const strain = bar.diameter / (bar.former + bar.diameter);
  const index = strain / LEAST_ELONGATION.value[bar.ductility];
  // 8 exactly is still to be watched: float noise must not stop it
  const passes = (limit: number) => index > limit + 1e-9;
  const watched =
    passes(limits.watchAbove) ||
    (!(index < limits.normalBelow) && bar.diameter > limits.watchAboveThickerThan);
  const step = passes(limits.stopAbove) || bar.belowLeastFormer === true ? 2 : watched ? 1 : 0;
  const raised = (bar.circumstances?.length ?? 0) > 0 ? 1 : 0;
  return { strain, index, judgement: STEPS[Math.min(2, step + raised)] as OuterFibre["judgement"] };
}
