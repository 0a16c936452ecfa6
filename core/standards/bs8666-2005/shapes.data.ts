import type { ShapeDefinition } from "../port";

/** Shape codes of the standard's shape table. */
export const SHAPES: readonly ShapeDefinition[] = [
  {
    code: "00",
    words: "straight",
    dims: ["A"],
    free: null,
    formula: "A",
    path: "A",
    limits: [],
    cite: {
      document: "BS 8666",
      clause: "shape table",
      provenance: "published",
      seen: "rom.co.uk/products/Reinforcement.aspx",
    },
  },
];
