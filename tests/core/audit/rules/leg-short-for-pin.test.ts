import { exampleShop } from "../../../../core/audit/example-shop";
import rule from "../../../../core/audit/rules/leg-short-for-pin";
import { ruleCases } from "../rule-cases";

// 16 mm on a former of 64 with a pin of 40 on an orbit of 130: 32 + 16 + 20 = 68 across, so the pin stands
// sqrt(130^2 - 68^2) = 110.8 along the leg and a swinging straight needs 120.8; a held one needs the 100 to the
// back-rest, which is less: 100 + 32 + 16 = 148 outside
ruleCases(rule, {
  silent: [
    { rows: [{ size: "H16", shape: "11", A: 800, B: 148, length: 900 }], shop: exampleShop() },
    { rows: [{ size: "H16", shape: "11", A: 800, B: 60, length: 900 }] },
    {
      rows: [{ size: "H16", shape: "11", A: 800, B: 60, length: 900 }],
      shop: exampleShop({ bender: { pins: null } }),
    },
  ],
  speaks: [
    {
      rows: [{ size: "H16", shape: "11", A: 800, B: 147, length: 900 }],
      shop: exampleShop(),
      says: [
        {
          cell: "J2",
          message:
            "on Bench 2: leg B of 147 mm is too short; pin and back-rest need 148 mm: use another machine or a smaller pin",
        },
      ],
    },
    {
      rows: [{ size: "H16", shape: "21", A: 100, B: 500, C: 110, length: 625 }],
      shop: exampleShop(),
      says: [
        {
          cell: "I2",
          message:
            "on Bench 2: leg A of 100 mm is too short; pin and back-rest need 148 mm: use another machine or a smaller pin",
        },
        {
          cell: "K2",
          message:
            "on Bench 2: leg C of 110 mm is too short; pin and back-rest need 148 mm: use another machine or a smaller pin",
        },
      ],
    },
    {
      // both ends of the link are C: one cause in one cell
      rows: [{ size: "H16", shape: "51", A: 400, B: 300, C: 110, length: 1475 }],
      shop: exampleShop(),
      says: [
        {
          cell: "K2",
          message:
            "on Bench 2: leg C of 110 mm is too short; pin and back-rest need 148 mm: use another machine or a smaller pin",
        },
      ],
    },
    {
      // another bender with a nearer back-rest: 60 + 48 = 108, so it comes as near and is named second
      rows: [{ size: "H16", shape: "11", A: 800, B: 90, length: 850 }],
      shop: exampleShop({
        secondBender: { machine: "Bench 3", backRestDistance: 60 },
        plates: [
          ["Bench 2", "bend", "H20", 500, 0],
          ["Bench 3", "bend", "H20", 500, 2],
        ],
      }),
      says: [
        {
          cell: "J2",
          outcome: "broken",
          message:
            "on Bench 3, the nearest of 2 benders: leg B of 90 mm is too short; pin and back-rest need 108 mm: use another machine or a smaller pin",
        },
      ],
    },
  ],
});
