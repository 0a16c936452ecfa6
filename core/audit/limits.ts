import type { Citation, Cited } from "../standards/citation";
import type { Standard } from "../standards/port";

/** Figures a workbook may change. Null takes the standard's own, or leaves the question unasked. */
export interface Limits {
  /** kg of one bar above which it is not lifted by hand alone */
  readonly handLift: number | null;
  /** kg of one bar that crane or hoist may lift */
  readonly hoist: number | null;
  /** mm */
  readonly stockLength: number | null;
  /** mm, shorter side of the rectangle round a bent bar */
  readonly transportWidth: number | null;
  /** mm, the opening on site that a bent bar must pass */
  readonly accessWidth: number | null;
}

export const NO_CHANGED_LIMITS: Limits = {
  handLift: null,
  hoist: null,
  stockLength: null,
  transportWidth: null,
  accessWidth: null,
};

const CHANGED: Citation = {
  document: "limits changed in this workbook",
  provenance: "common practice",
};

const HAND_LIFT: Cited<number> = {
  value: 25,
  cite: {
    document: "HSE manual handling guideline figure, a filter and no safe weight",
    provenance: "memory",
    conflict: "16 to 55 kg by country and person",
  },
};

/** The limits in force, each with where it comes from; null where nothing says one. */
export interface LimitsInForce {
  readonly handLift: Cited<number>;
  readonly hoist: Cited<number> | null;
  readonly stockLength: Cited<number> | null;
  readonly transportWidth: Cited<number> | null;
  readonly accessWidth: Cited<number> | null;
}

export function limitsInForce(changed: Limits, standard: Standard): LimitsInForce {
  const own = (value: number | null): Cited<number> | null =>
    value === null ? null : { value, cite: CHANGED };
  return {
    handLift: own(changed.handLift) ?? HAND_LIFT,
    hoist: own(changed.hoist),
    stockLength: own(changed.stockLength) ?? standard.supply.stockLength,
    transportWidth: own(changed.transportWidth) ?? standard.supply.transportWidth,
    accessWidth: own(changed.accessWidth),
  };
}
