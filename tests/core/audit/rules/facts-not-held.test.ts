import rule from "../../../../core/audit/rules/facts-not-held";
import { ruleCases } from "../rule-cases";

// one note for the sheet names what it does not hold
ruleCases(rule, {
  silent: [
    { rows: [{ size: "H16", shape: "00", A: 1000, length: 1000, mass: 3.16, former: 64, revision: "A" }] },
  ],
  speaks: [
    {
      rows: [
        { size: "H16", shape: "00", A: 1000, length: 1000, mass: 3.16 },
        { size: "H16", shape: "00", A: 2000, length: 2000, mass: 6.32 },
      ],
      says: [
        {
          cell: null,
          outcome: "unsure",
          message:
            "the sheet does not hold the formers that will be used, superseded revisions, so they were not checked",
        },
      ],
    },
  ],
});
