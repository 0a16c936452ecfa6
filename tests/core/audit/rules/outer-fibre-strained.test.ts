import { exampleShop } from "../../../../core/audit/example-shop";
import rule from "../../../../core/audit/rules/outer-fibre-strained";
import { ruleCases } from "../rule-cases";

const BAR = { shape: "11", A: 900, B: 900, length: 1775 };

// 12 mm on 48: 12 / 60 = 20 %; over 2.5 % (class A) 8, over 5 % (B) 4, over 7.5 % (C) 2.7 (EN 1992-1-1 Annex C,
// from memory); 3 to 5 is normal up to 16 mm, above 5 to be watched, above 8 not to be bent
ruleCases(rule, {
  silent: [
    { rows: [{ size: "B12", ...BAR }] },
    { rows: [{ size: "C12", ...BAR }] },
    // H may be A, B or C
    { rows: [{ size: "H12", ...BAR }] },
    { rows: [{ size: "A12", shape: "00", A: 900, length: 900 }] },
    // 12 / 112 = 10.7 %: 4.3
    { rows: [{ size: "A12", ...BAR, former: 100 }] },
    // below the least former another rule stops it
    { rows: [{ size: "A12", ...BAR, former: 30 }] },
  ],
  speaks: [
    {
      rows: [
        { size: "A12", ...BAR },
        { size: "A12", ...BAR, A: 800 },
      ],
      says: [
        {
          cell: "H2",
          outcome: "unsure",
          message:
            "A12 on former 48 mm (rows: 2): outer fibre strained to 20 %, 8 times what class A promises: look at the outside of the first bend",
        },
      ],
    },
    {
      rows: [{ size: "12", grade: "B500B", ...BAR, remark: "welded to plate" }],
      says: [
        {
          cell: "H2",
          outcome: "unsure",
          message:
            "12 on former 48 mm (rows: 1): outer fibre strained to 20 %, 4 times what class B promises, near a weld: look at the outside of the first bend",
        },
      ],
    },
    {
      rows: [{ size: "A12", ...BAR }],
      shop: exampleShop({ limits: { temperature: -8 } }),
      says: [
        {
          cell: "H2",
          severity: "unsafe",
          outcome: "unsure",
          message:
            "A12 on former 48 mm (rows: 1): outer fibre strained to 20 %, 8 times what class A promises, cold: stop, and ask the designer; the index is a measure of our own",
        },
      ],
    },
  ],
});
