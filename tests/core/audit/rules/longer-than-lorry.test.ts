import { exampleShop } from "../../../../core/audit/example-shop";
import rule from "../../../../core/audit/rules/longer-than-lorry";
import { ruleCases } from "../rule-cases";

// common practice: a load of 13.5 m
ruleCases(rule, {
  silent: [
    { rows: [{ size: "H32", shape: "00", A: 13500, length: 13500 }] },
    { rows: [{ size: "H12", shape: "00", A: 15000, length: 15000 }] },
    // the yard's own lorry takes more
    {
      rows: [{ size: "H32", shape: "00", A: 15000, length: 15000 }],
      shop: exampleShop({ limits: { lorryLength: 15000 } }),
    },
    // bent to 6000 mm by 6000 mm: its corners stand 8485 mm apart (Pythagoras)
    {
      rows: [{ size: "H16", shape: "11", A: 6000, B: 6000, length: 11975 }],
      shop: exampleShop({ limits: { lorryLength: 8500 } }),
    },
  ],
  speaks: [
    {
      rows: [
        { size: "H16", shape: "00", A: 11800, length: 11800 },
        { size: "H32", shape: "00", A: 11500, length: 11500 },
      ],
      shop: exampleShop({ limits: { lorryLength: 11500 } }),
      says: [
        {
          cell: "G2",
          severity: "doubtful",
          message:
            "a bar of 11800 mm is longer than the 11500 mm that the yard's lorry takes, by the Shop sheet: it goes on no load",
        },
      ],
    },
    {
      // 6000 x sqrt 2 = 8485.28
      rows: [{ size: "H16", shape: "11", A: 6000, B: 6000, length: 11975 }],
      shop: exampleShop({ limits: { lorryLength: 8400 } }),
      says: [
        {
          cell: "G2",
          severity: "doubtful",
          message:
            "the bent bar is 8485.3 mm from end to end, longer than the 8400 mm that the yard's lorry takes, by the Shop sheet: it goes on no load",
        },
      ],
    },
    {
      rows: [{ size: "H32", shape: "00", A: 15000, length: 15000 }],
      says: [
        {
          cell: "G2",
          outcome: "unsure",
          message: "a bar of 15000 mm is longer than the 13500 mm that an ordinary lorry carries",
        },
      ],
    },
  ],
});
