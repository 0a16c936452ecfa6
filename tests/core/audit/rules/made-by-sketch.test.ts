import rule from "../../../../core/audit/rules/made-by-sketch";
import { ruleCases } from "../rule-cases";

const SKETCH = { size: "H16", shape: "99", length: 2450 };
const CODED = { size: "H16", shape: "11", A: 500, B: 400, length: 875 };

// BS 8666:2005 Table 3, 99: all other shapes, by a dimensioned sketch
ruleCases(rule, {
  silent: [{ rows: [CODED] }, { rows: [{ ...SKETCH, shape: "500 +90 400" }] }],
  speaks: [
    {
      rows: [CODED, SKETCH, CODED, { ...SKETCH, A: 800 }, SKETCH],
      says: [
        {
          cell: "H3",
          outcome: "unsure",
          message:
            "shape 99 is made by sketch, so no bend, leg or former of it was checked, nor its length against them (rows 3, 5-6): see the drawing, or write the shape as a path",
        },
      ],
    },
  ],
});
