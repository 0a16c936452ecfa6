import type { Cited } from "../standards/citation";

/** Bars side by side share a load unevenly, so an estimate stops here; only a plate says more. */
export const CAPACITY_LIMITS: Cited<{ readonly mostEstimated: number }> = {
  value: { mostEstimated: 3 },
  cite: { document: "bars bent side by side", provenance: "common practice" },
};

/** Least total elongation at maximum force, as a share, by ductility class. */
export const LEAST_ELONGATION: Cited<Readonly<Record<"A" | "B" | "C", number>>> = {
  value: { A: 0.025, B: 0.05, C: 0.075 },
  cite: { document: "EN 1992-1-1", edition: "2004", clause: "Annex C, Table C.1", provenance: "memory" },
};

/** Outer-fibre strain over the least elongation: where it is to be watched, and where not to bend. */
export interface FibreLimits {
  readonly normalBelow: number;
  readonly watchAbove: number;
  readonly watchAboveThickerThan: number;
  readonly stopAbove: number;
}

export const FIBRE_LIMITS: Cited<FibreLimits> = {
  value: { normalBelow: 3, watchAbove: 5, watchAboveThickerThan: 16, stopAbove: 8 },
  cite: { document: "outer-fibre strain index of bent bars", provenance: "memory" },
};
