import { expect } from "vitest";
import { exampleShop } from "../../../../core/audit/example-shop";
import rule from "../../../../core/audit/rules/trial-doubtful";
import { ruleCases } from "../rule-cases";

const BAR = { size: "H12", shape: "00", A: 900, length: 900 };
const GOOD = [
  ["2031-03-02", "Bench 2", "H12", 48, "H", "bar", "K4", 90, 85],
  ["2031-03-02", "Bench 2", "H12", 48, "H", "bar", "K4", 135, 128.5],
];

// the log's header stands in row 7 of the example's Shop sheet
ruleCases(rule, {
  silent: [
    { rows: [BAR], shop: exampleShop({ trials: GOOD }) },
    { rows: [BAR], shop: exampleShop() },
    { rows: [BAR] },
  ],
  speaks: [
    {
      rows: [BAR],
      shop: exampleShop({ trials: [...GOOD, ["2031-03-05", "Bench 2", "H12", 48, "H", "bar", "K4", 5, 4]] }),
      says: [
        {
          cell: "A10",
          message:
            "trial in row 10: bent to 5 is below 10 degrees, where the bar has not yet wrapped; bend a trial further",
        },
      ],
    },
    {
      // 45 read between the legs is a bend of 135
      rows: [BAR],
      shop: exampleShop({
        trials: [...GOOD, ["2031-03-05", "Bench 2", "H12", 48, "H", "bar", "K4", 140, 45]],
      }),
      says: [
        {
          cell: "A10",
          outcome: "unsure",
          message: expect.stringMatching(
            /^trial in row 10: released 45 looks like the angle between the legs/,
          ) as string,
        },
      ],
    },
    {
      rows: [BAR],
      shop: exampleShop({ trials: GOOD.slice(0, 1) }),
      says: [
        {
          cell: "A8",
          severity: "note",
          message: expect.stringMatching(
            /has one trial only: bend a second bar and write it down$/,
          ) as string,
        },
      ],
    },
    {
      rows: [BAR],
      shop: [
        ["Bent to", "Released"],
        [90, 85],
      ],
      says: [{ cell: "A1", message: expect.stringMatching(/^no header of trials was found/) as string }],
    },
  ],
});
