import rule from "../../../../core/audit/rules/lengths-keep-another-step";
import { ruleCases } from "../rule-cases";

const straight = (...lengths: number[]) => lengths.map((length) => ({ size: "H16", shape: "00", length }));

// BS 8666:2005: lengths go up to the next 25 (from memory)
ruleCases(rule, {
  silent: [
    { rows: straight(1025, 1525, 2000, 2550, 3075) },
    // two of five are slips of their own
    { rows: straight(1020, 1530, 2000, 2550, 3075) },
    // too few to tell a habit
    { rows: straight(1020, 1530, 2010, 2540) },
  ],
  speaks: [
    {
      rows: straight(1020, 1530, 2010, 2550, 3080),
      says: [
        {
          cell: "G2",
          outcome: "unsure",
          message:
            "4 of 5 lengths are no multiples of the 25 mm of BS8666:2005; they keep 10 mm: was the list written to another standard? Choose it and check again, or round the lengths",
        },
      ],
    },
    {
      rows: straight(1021, 1533, 2012, 2549, 3087),
      says: [
        {
          cell: "G2",
          outcome: "unsure",
          message:
            "5 of 5 lengths are no multiples of the 25 mm of BS8666:2005: was the list written to another standard? Choose it and check again, or round the lengths",
        },
      ],
    },
  ],
});
