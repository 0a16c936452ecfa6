import rule from "../../../../core/audit/rules/unit-mass-differs";
import { ruleCases } from "../rule-cases";

const bar = (size: string, unitMass: number) => ({
  ...{ size, shape: "00", A: 1000, length: 1000, members: 1, each: 10, total: 10, unitMass },
});

// kg/m as BS 4449 prints them: 0.888 for 12, 1.58 for 16
ruleCases(rule, {
  silent: [
    { rows: [bar("H16", 1.58), bar("H16", 1.579), bar("H12", 0.888)] },
    // two rows are no habit of a size
    { rows: [bar("H16", 1.58), bar("H16", 0.888)] },
  ],
  speaks: [
    {
      rows: [bar("H16", 1.58), bar("H16", 1.58), bar("H16", 1.58), bar("H12", 0.888), bar("H16", 0.888)],
      says: [{ cell: "N6", message: "mass per metre 0.888 is not the 1.58 of the other H16 rows" }],
    },
    {
      // one row of its size, in a column that holds those of the others; BS 4449 prints 0.617, 2.47, 3.85
      rows: [bar("H10", 0.617), bar("H12", 0.888), bar("H16", 1.58), bar("H20", 2.47), bar("H25", 2.47)].map(
        (one, at) => ({ ...one, A: 2000 + 100 * at, length: 2000 + 100 * at }),
      ),
      says: [
        {
          cell: "N6",
          message: "mass per metre 2.47 is not the 3.854 of H25, while most rows have those of their sizes",
          outcome: "unsure",
        },
      ],
    },
    {
      // every row of a size: told once
      rows: [bar("H16", 0.888), bar("H16", 0.888), bar("H16", 0.888), bar("H12", 0.888)],
      says: [{ cell: "N2", message: "mass per metre 0.888 of size H16 is that of 12" }],
    },
  ],
});
