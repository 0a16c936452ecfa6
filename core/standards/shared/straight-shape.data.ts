import type { ShapeDefinition } from "../port";

/** The straight bar, which every standard has, for those whose shape codes are not held. */
export const STRAIGHT_SHAPE: ShapeDefinition = {
  code: "00",
  words: "straight",
  dims: ["A"],
  free: null,
  formula: null,
  path: "A",
  limits: [],
  cite: { document: "geometry", clause: "a straight bar", provenance: "geometry" },
};
