import rule from "../../../../core/audit/rules/fabric-as-bar";
import { ruleCases } from "../rule-cases";

// names of welded fabric in BS 4483 (from memory): A393, B785, C283, D98
ruleCases(rule, {
  silent: [{ rows: [{ size: "A10", shape: "00", A: 4800, length: 4800 }] }],
  speaks: [
    {
      rows: [{ size: "A393", shape: "00", A: 4800, length: 4800 }],
      says: [{ cell: "C2", message: '"A393" is welded fabric and no bar: put it on a fabric schedule' }],
    },
  ],
});
