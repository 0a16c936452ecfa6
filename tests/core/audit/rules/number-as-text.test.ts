import rule from "../../../../core/audit/rules/number-as-text";
import { ruleCases } from "../rule-cases";

// a number stored as text
ruleCases(rule, {
  silent: [
    { rows: [{ size: "H16", shape: "00", A: 1000, length: 1000 }] },
    // more than any length: no fix that writes an endless number
    {
      rows: [
        { size: "H16", shape: "00", A: 1000, length: 1000 },
        { size: "H16", shape: "00", A: 1500, length: 1500, mass: "1".repeat(309) },
        { size: "H16", shape: "00", A: 2000, length: 2000 },
      ],
    },
    // a sheet of texts throughout
    { rows: [{ size: "H16", shape: "00", A: "1000", length: "1000", members: "1", each: "2", total: "2" }] },
  ],
  speaks: [
    {
      rows: [
        { size: "H16", shape: "00", A: 1000, length: 1000 },
        { size: "H16", shape: "00", A: "1500 ", length: "1500" },
        { size: "H16", shape: "00", A: 2000, length: 2000 },
      ],
      says: [
        {
          cell: "G3",
          message: "length, A stand as text: the sheet's own sums pass over them",
          after: { G3: 1500, I3: 1500 },
        },
      ],
    },
  ],
});
