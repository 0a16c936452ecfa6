import rule from "../../../../core/audit/rules/radius-supplied-straight";
import { ruleCases } from "../rule-cases";

// BS 8666:2005 Table 6 (tunleyrod.co.uk/barsizes.html): 7.5 m for 16 mm
ruleCases(rule, {
  silent: [
    { rows: [{ size: "H16", shape: "67", A: 5000, B: 4900, C: 400, R: 7500, length: 5000 }] },
    { rows: [{ size: "H16", shape: "00", A: 5000, length: 5000 }] },
  ],
  speaks: [
    // in the form's column E/R the cell is that column's
    {
      rows: [{ size: "H16", shape: "67", A: 5000, B: 4900, C: 400, E: "R=7505", length: 5000 }],
      says: [{ cell: "M2", message: "radius 7505 mm is above 7500 mm, from which H16 is supplied straight" }],
    },
    {
      rows: [{ size: "H16", shape: "67", A: 5000, B: 4900, C: 400, R: 7505, length: 5000 }],
      says: [{ cell: "N2", message: "radius 7505 mm is above 7500 mm, from which H16 is supplied straight" }],
    },
  ],
});
