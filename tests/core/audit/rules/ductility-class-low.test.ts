import rule from "../../../../core/audit/rules/ductility-class-low";
import { ruleCases } from "../rule-cases";

// from memory: EN 1998-1 wants class B or C; letter A of BS 8666:2005 Table 1 is class A
ruleCases(rule, {
  silent: [
    { rows: [{ size: "C12", shape: "00", A: 3000, length: 3000, remark: "seismic zone" }] },
    { rows: [{ size: "A12", shape: "00", A: 3000, length: 3000, remark: "slab" }] },
  ],
  speaks: [
    {
      rows: [{ size: "A12", shape: "00", A: 3000, length: 3000, remark: "seismic zone" }],
      says: [
        {
          cell: "C2",
          outcome: "unsure",
          message: "grade A is class A in a member noted as seismic: ask the designer which class it needs",
        },
      ],
    },
  ],
});
