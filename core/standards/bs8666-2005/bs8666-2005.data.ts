import type { Bs8666Sources } from "../shared/bs8666";

/** Where the tables of the edition of 2005 were read. */
export const SOURCES: Bs8666Sources = {
  radii: {
    document: "BS 8666",
    edition: "2005",
    clause: "Table 2",
    provenance: "published",
    seen: "tunleyrod.co.uk/barsizes.html; scribd 126511147, 378246795, 526661066: all agree",
  },
  radiiRule: {
    document: "BS 8666",
    edition: "2005",
    clause: "Table 2, the multiples that it follows",
    provenance: "derived",
  },
  endLegRule: {
    document: "BS 8666",
    edition: "2005",
    clause: "Table 2, the rule that its larger sizes follow",
    provenance: "derived",
  },
  hooks: {
    document: "BS 8666",
    edition: "2005",
    clause: "Table 2, end projection less r and d",
    provenance: "derived",
  },
  typeLetters: {
    document: "BS 8666",
    edition: "2005",
    clause: "Table 1",
    provenance: "memory",
  },
  shapes: {
    formula: {
      document: "BS 8666",
      edition: "2005",
      clause: "Table 3",
      provenance: "published",
      seen: "obconstruction.co.uk/reinforcement/shapecodes; tunleyrod.co.uk/barsizes.html; rom.co.uk/products/Reinforcement.aspx; fendersteel.co.uk/codesbs2005; midlandrapid.co.uk: reproductions of one table, which confirm the copying",
    },
    course: {
      document: "BS 8666",
      edition: "2005",
      clause: "Table 3, drawings",
      provenance: "memory",
    },
    limits: {
      document: "BS 8666",
      edition: "2005",
      clause: "Table 3",
      provenance: "published",
      seen: "obconstruction.co.uk/reinforcement/shapecodes; tunleyrod.co.uk/barsizes.html; rom.co.uk/products/Reinforcement.aspx; fendersteel.co.uk/codesbs2005; midlandrapid.co.uk: reproductions of one table, which confirm the copying",
    },
    limitElsewhere: {
      "12 R >= r": {
        document: "BS 8666",
        edition: "2005",
        clause: "Table 2",
        provenance: "published",
        seen: "fendersteel.co.uk/codesbs2005notes.html: r of Table 2 applies to all codes",
      },
      "24 A, (C) >= P": {
        document: "BS 8666",
        edition: "2005",
        clause: "Table 3, note that r and P of Table 2 apply to all codes",
        provenance: "published",
        seen: "fendersteel.co.uk/codesbs2005notes.html; the line of code 24 says only that A and (C) are at 90 degrees",
      },
    },
  },
  totalLength: {
    document: "BS 8666",
    edition: "2005",
    clause: "Table 3, total length",
    provenance: "memory",
  },
  dimensionStep: {
    document: "BS 8666",
    edition: "2005",
    clause: "dimensions A to E",
    provenance: "memory",
  },
  straightBetweenBends: {
    document: "BS 8666",
    edition: "2005",
    clause: "notes to Table 3",
    provenance: "published",
    seen: "fendersteel.co.uk/codesbs2005notes.html; valbruna.co.uk bs8666-2005-shape-code-limitations-page-4",
  },
  manyBends: {
    document: "BS 8666",
    edition: "2005",
    clause: "Table 3, note 2",
    provenance: "published",
    seen: "fendersteel.co.uk/codesbs2005notes.html",
  },
  tolerances: {
    document: "BS 8666",
    edition: "2005",
    clause: "Table 5",
    provenance: "memory",
  },
  supplyRadius: {
    document: "BS 8666",
    edition: "2005",
    clause: "Table 6",
    provenance: "published",
    seen: "tunleyrod.co.uk/barsizes.html; scribd 378246795, 126511147",
  },
  transportWidth: {
    document: "BS 8666",
    edition: "2005",
    clause: "bars for transport",
    provenance: "memory",
  },
  stockLength: {
    document: "BS 8666",
    edition: "2005",
    clause: "Table 3, note 4, which names 6 and 12 m as examples",
    provenance: "published",
    seen: "fendersteel.co.uk/codesbs2005notes.html",
  },
  largestCurveFormer: {
    document: "BS 8666",
    edition: "2005",
    clause: "Table 3, note 3",
    provenance: "published",
    seen: "fendersteel.co.uk/codesbs2005notes.html",
  },
};
