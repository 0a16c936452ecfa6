import type { Cited } from "../standards/citation";

/** mm from which a rest goes back to the rack where the Shop sheet names no length. */
export const LEAST_REMNANT: Cited<number> = {
  value: 1000,
  cite: {
    document: "yard practice",
    clause: "rests kept for links and spacers",
    provenance: "common practice",
  },
};
