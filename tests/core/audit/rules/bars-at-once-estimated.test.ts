import { exampleShop } from "../../../../core/audit/example-shop";
import rule from "../../../../core/audit/rules/bars-at-once-estimated";
import { ruleCases } from "../rule-cases";

const BAR = { size: "H12", shape: "11", A: 900, B: 900, length: 1775 };

// (20 / 12)^3 = 4.6 of the rated bar; side by side no more than three are estimated (common practice)
ruleCases(rule, {
  silent: [
    { rows: [BAR], shop: exampleShop({ plates: [["Bench 2", "bend", "H12", 500, 3]] }) },
    { rows: [BAR] },
    { rows: [{ size: "H12", shape: "00", A: 900, length: 900 }], shop: exampleShop() },
  ],
  speaks: [
    {
      rows: [BAR, { ...BAR, A: 800, length: 1675 }],
      shop: exampleShop({ plates: [["Bench 2", "bend", "H20", 500, 1]] }),
      says: [
        {
          cell: "C2",
          outcome: "unsure",
          message:
            "bars at once of H12 on Bench 2: 3, an estimate from the plate's 1 of 20 mm: ask the maker",
        },
      ],
    },
  ],
});
