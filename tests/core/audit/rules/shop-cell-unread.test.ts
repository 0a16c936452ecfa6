import { exampleShop } from "../../../../core/audit/example-shop";
import rule from "../../../../core/audit/rules/shop-cell-unread";
import { ruleCases } from "../rule-cases";

const BAR = { size: "H12", shape: "00", A: 900, length: 900 };

ruleCases(rule, {
  silent: [{ rows: [BAR], shop: exampleShop() }, { rows: [BAR] }],
  speaks: [
    {
      rows: [BAR],
      shop: exampleShop({ bender: { guardRadius: "wide" }, limits: { hoist: -3 } }),
      says: [
        {
          cell: "C2",
          message: `"wide" could not be read: write a length in mm, or leave it blank where it is not known`,
        },
        {
          cell: "B8",
          message: `"-3" could not be read: write a number, or leave it blank where it is not known`,
        },
      ],
    },
    {
      rows: [BAR],
      shop: [
        ["Size", "Stock length"],
        ["zz", 9000],
      ],
      says: [
        {
          cell: "A2",
          message: `"zz" could not be read: write a size of BS8666:2005, or blank for every size, or leave it blank where it is not known`,
        },
      ],
    },
  ],
});
