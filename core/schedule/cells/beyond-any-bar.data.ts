import type { Cited } from "../../standards/citation";

/** mm: longer than any bar that is rolled; what is longer is a run of bars, or another unit. */
export const BEYOND_ANY_BAR: Cited<number> = {
  value: 30_000,
  cite: { document: "mills roll 12 to 18 m, a few of them longer to order", provenance: "common practice" },
};
