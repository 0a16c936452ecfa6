import rule from "../../../../core/audit/rules/unread-row";
import { ruleCases } from "../rule-cases";

// every row is in one class
ruleCases(rule, {
  silent: [{ rows: [{ size: "H16", shape: "00", A: 1000, length: 1000 }] }],
  speaks: [
    {
      rows: [
        { size: "H16", shape: "00", A: 1000, length: 1000 },
        {
          member: null,
          mark: null,
          size: null,
          members: null,
          each: null,
          total: null,
          length: 5,
          shape: "see",
          B: "sketch",
        },
      ],
      says: [{ cell: "A3", outcome: "unsure", message: "the row could not be read: neither mark nor size" }],
    },
  ],
});
