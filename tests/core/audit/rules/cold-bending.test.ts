import { exampleShop } from "../../../../core/audit/example-shop";
import rule from "../../../../core/audit/rules/cold-bending";
import { ruleCases } from "../rule-cases";

const BAR = { size: "H12", shape: "11", A: 900, B: 900, length: 1775 };

// EN 13670, 6.3: -5 C (concrete.org.uk); AS 3600 as held names none
ruleCases(rule, {
  silent: [
    { rows: [BAR], shop: exampleShop({ limits: { temperature: -5 } }) },
    { rows: [BAR], shop: exampleShop() },
    { rows: [BAR] },
    {
      rows: [{ size: "H12", shape: "00", A: 900, length: 900 }],
      shop: exampleShop({ limits: { temperature: -9 } }),
    },
  ],
  speaks: [
    {
      rows: [BAR, { ...BAR, A: 800, length: 1675 }, { size: "H12", shape: "00", A: 900, length: 900 }],
      shop: exampleShop({ limits: { temperature: -6 } }),
      says: [
        {
          cell: null,
          outcome: "unsure",
          message:
            "the shop is at -6 C, below the -5 C from which bars are bent cold without leave (bent rows: 2): stop, and ask the designer",
        },
      ],
    },
    {
      rows: [{ size: "N12", shape: "900 +90 900" }],
      standard: "AS3600:2018",
      shop: exampleShop({ limits: { temperature: 2 } }),
      says: [
        {
          cell: null,
          severity: "note",
          outcome: "unsure",
          message:
            "the shop is at 2 C, and AS3600:2018 as held names no least temperature for bending (bent rows: 1): ask the designer",
        },
      ],
    },
  ],
});
