import rule from "../../../../core/audit/rules/shape-code-unpadded";
import { ruleCases } from "../rule-cases";

// codes of BS 8666:2005 Table 3 have two digits
ruleCases(rule, {
  silent: [
    { rows: [{ size: "H16", shape: "01", A: 6000, length: 6000 }] },
    { rows: [{ size: "H16", shape: 11, A: 500, B: 400, length: 875 }] },
    // the types of ACI 315 have one digit
    { standard: "ACI318:2019", rows: [{ size: "#5", shape: 1, A: 7, B: 60, length: 67 }] },
    { standard: "ACI318:2019", rows: [{ size: "#5", shape: "3", A: 7, B: 60, length: 67 }] },
  ],
  speaks: [
    {
      rows: [{ size: "H16", shape: 1, A: 6000, length: 6000 }],
      says: [
        { cell: "H2", message: "shape code 1 is written without its leading nought", after: { H2: "01" } },
      ],
    },
    {
      rows: [{ size: "H16", shape: "0", A: 6000, length: 6000 }],
      says: [
        { cell: "H2", message: "shape code 0 is written without its leading nought", after: { H2: "00" } },
      ],
    },
  ],
});
