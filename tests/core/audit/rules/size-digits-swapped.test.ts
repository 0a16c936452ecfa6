import rule from "../../../../core/audit/rules/size-digits-swapped";
import { ruleCases } from "../rule-cases";

// sizes of BS 8666:2005: 12 and 16 are bars, 21 and 61 are none
ruleCases(rule, {
  silent: [
    { rows: [{ size: "H12", shape: "00", A: 1000, length: 1000 }] },
    { rows: [{ size: "H13", shape: "00", A: 1000, length: 1000 }] },
  ],
  speaks: [
    {
      rows: [{ size: "H21", shape: "00", A: 1000, length: 1000 }],
      says: [
        {
          cell: "C2",
          message: 'size "H21" is no bar of BS8666:2005; H12 is; ask the designer which is meant',
        },
      ],
    },
    {
      rows: [{ size: "H61", shape: "00", A: 1000, length: 1000 }],
      // the masses of 16 mm differ between sources, and with them the table
      says: [
        {
          cell: "C2",
          outcome: "unsure",
          message: 'size "H61" is no bar of BS8666:2005; H16 is; ask the designer which is meant',
        },
      ],
    },
    {
      rows: [{ size: "H02", shape: "00", A: 1000, length: 1000 }],
      says: [
        {
          cell: "C2",
          message: 'size "H02" is no bar of BS8666:2005; H20 is; ask the designer which is meant',
        },
      ],
    },
  ],
});
