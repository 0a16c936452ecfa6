import rule from "../../../../core/audit/rules/many-bends";
import { ruleCases } from "../rule-cases";

// BS 8666:2005 Table 3, note 2 (fendersteel.co.uk/codesbs2005notes.html): five bends or more; 64 has six, 44 four, 51 is closed
ruleCases(rule, {
  silent: [
    { rows: [{ size: "H12", shape: "44", A: 300, B: 300, C: 300, D: 300, E: 300, length: 1400 }] },
    { rows: [{ size: "H10", shape: "51", A: 400, B: 300, C: 130, length: 1575 }] },
    { rows: [{ size: "H12", shape: "300 +90 300 +90 300 -90 300 -90 300", length: 1375 }] },
  ],
  speaks: [
    {
      rows: [{ size: "H12", shape: "64", A: 300, B: 300, C: 300, D: 300, E: 300, F: 300, length: 1975 }],
      says: [{ cell: "H2", message: "6 bends: from 5 on a shape may be impractical within tolerance" }],
    },
    {
      rows: [{ size: "H12", shape: "300 +90 300 +90 300 -90 300 -90 300 +90 300", length: 1650 }],
      says: [{ cell: "H2", message: "5 bends: from 5 on a shape may be impractical within tolerance" }],
    },
  ],
});
