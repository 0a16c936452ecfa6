import rule from "../../../../core/audit/rules/path-unread";
import { ruleCases } from "../rule-cases";

// a path alternates legs and turns
ruleCases(rule, {
  silent: [{ rows: [{ size: "H16", shape: "500 +90 400", length: 875 }] }],
  speaks: [
    {
      rows: [{ size: "H16", shape: "500 +190 400", length: 875 }],
      says: [
        {
          cell: "H2",
          outcome: "unsure",
          message: 'turn "+190" of the path "500 +190 400" is 190 degrees: a turn is over 0 and at most 180',
        },
      ],
    },
  ],
});
