import type { Cited } from "../citation";
import type { LengthRounding, ToleranceRow } from "../port";

export const LENGTH_ROUNDING: LengthRounding = {
  step: 5,
  direction: "up",
  cite: { document: "IS 2502 prints no step", provenance: "common practice" },
};

export const TOLERANCES: Cited<readonly ToleranceRow[]> = {
  value: [{ applies: "cut length", upTo: Infinity, plus: 75, minus: 25 }],
  cite: { document: "IS 2502", edition: "1963", clause: "cutting", provenance: "memory" },
};
