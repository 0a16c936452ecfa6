import rule from "../../../../core/audit/rules/unknown-shape";
import { ruleCases } from "../rule-cases";

// codes of BS 8666:2005 Table 3 (35 of them): 38 and 48 are none; 48 is one of the 2020 edition
ruleCases(rule, {
  silent: [
    { rows: [{ size: "H16", shape: "21", A: 500, B: 400, C: 500, length: 1350 }] },
    { rows: [{ size: "H16", shape: "500 +90 400", length: 875 }] },
    // no list of shapes is held for this standard: one note of the sheet says so
    { standard: "ACI318:2019", rows: [{ size: "#5", shape: "17", A: 40, B: 30, length: 68 }] },
  ],
  speaks: [
    {
      rows: [{ size: "H10", shape: "48", A: 500, B: 400, C: 150, length: 1675 }],
      says: [{ cell: "H2", message: "shape 48 is no code of BS8666:2005, but is one of BS8666:2020" }],
    },
    {
      rows: [{ size: "H16", shape: "97", A: 500, B: 400, C: 500, length: 1350 }],
      says: [{ cell: "H2", message: "shape 97 is no code of BS8666:2005" }],
    },
    {
      rows: [
        { size: "H16", shape: "11", A: 500, B: 400, length: 875 },
        { size: "H16", shape: "11", A: 500, B: 400, length: 875 },
        { size: "H16", shape: null, length: 875 },
      ],
      says: [{ cell: "H4", outcome: "unsure", message: "no shape code is given" }],
    },
  ],
});
