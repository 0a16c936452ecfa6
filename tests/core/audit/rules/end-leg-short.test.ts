import rule from "../../../../core/audit/rules/end-leg-short";
import { ruleCases } from "../rule-cases";

// BS 8666:2005 Table 2 (tunleyrod.co.uk/barsizes.html): P 130 for 16 mm, 190 for 20
ruleCases(rule, {
  silent: [
    // a path all the way round is a link: 5d of straight after the bend, 80 outside; a main bar needs 150
    {
      standard: "GB50204:2015",
      rows: [{ size: "C10", shape: "80 +90 400 +90 300 +90 400 +90 300 +90 80", length: 1460 }],
    },
    { rows: [{ size: "H16", shape: "21", A: 130, B: 400, C: 130, length: 600 }] },
    { rows: [{ size: "H20", shape: "190 +90 400", length: 550 }] },
    { rows: [{ size: "H20", shape: "hook90 500 +90 400", length: 1250 }] },
    { rows: [{ size: "H16", shape: "00", A: 50, length: 50 }] },
    // ACI 318-19 25.3.1: a hook of 180 has 4d of straight, 4 x 1 + 3 + 1 = 8 overall
    { standard: "ACI318:2019", rows: [{ size: "#8", shape: "8 +180 120", length: 131 }] },
    // PCI Design Handbook 7th ed., Design Aid 15.4.1: 5 in for a 180 hook of #3, rounded from 5.12
    { standard: "ACI318:2019", rows: [{ size: "#3", shape: "1", A: 5, B: 15, length: 20 }] },
  ],
  speaks: [
    {
      // 130 + 400 + 130 - 32 - 32 = 596, up to 600: no other length
      rows: [{ size: "H16", shape: "21", A: 125, B: 400, C: 120, length: 600 }],
      says: [
        {
          cell: "I2",
          message: "end leg A 125 mm is below the least 130 mm for H16: ask the designer",
        },
        {
          cell: "K2",
          message: "end leg C 120 mm is below the least 130 mm for H16: ask the designer",
        },
      ],
    },
    {
      // 100 + 400 + 100 - 64 = 536, up to 550; with both at 130 it is 596, up to 600
      rows: [{ size: "H16", shape: "21", A: 100, B: 400, C: 100, length: 550 }],
      says: ["I2", "K2"].map((cell) => ({
        cell,
        message: `end leg ${cell === "I2" ? "A" : "C"} 100 mm is below the least 130 mm for H16: so long it would need a bar of 600 mm, ask the designer`,
      })),
    },
    {
      rows: [{ size: "H20", shape: "11", A: 185, B: 500, length: 650 }],
      says: [
        {
          cell: "I2",
          message: "end leg A 185 mm is below the least 190 mm for H20: ask the designer",
        },
      ],
    },
    {
      // up to 12 mm P is what bending needs (Table 2, note): 120 for 10 mm
      rows: [{ size: "H10", shape: "11", A: 100, B: 500, length: 575 }],
      says: [
        {
          cell: "I2",
          severity: "unbendable",
          message: "end leg A 100 mm is below the least 120 mm for H10: ask the designer",
        },
      ],
    },
    {
      // ACI 318-19 25.3.1: 12d + r + d = 12 x 0.625 + 3 x 0.625 + 0.625 = 10 is the hook that counts as an anchorage
      standard: "ACI318:2019",
      rows: [{ size: "#5", shape: "8 +90 40", length: 46 }],
      says: [
        {
          cell: "H2",
          severity: "note",
          message:
            'the first leg of 8" is shorter than a standard hook of 10" for #5: it may not be counted as one',
        },
      ],
    },
    {
      standard: "ACI318:2019",
      rows: [{ size: "#5", shape: "8 +90 40", length: 46, remark: "std hook each end" }],
      says: [
        {
          cell: "H2",
          message:
            'the first leg of 8" is shorter than a standard hook of 10" for #5: it may not be counted as one',
        },
      ],
    },
    {
      rows: [{ size: "H20", shape: "500 +90 189", length: 650 }],
      says: [{ cell: "H2", message: "the last leg of 189 mm is below the least 190 mm for H20" }],
    },
    // a hook of 180 adds arc + 4d - (r + d) = 3.5 pi + 4 - 4 = 10.996 (11 in Table 1 of ACI 315); the type is recalled
    {
      standard: "ACI318:2019",
      rows: [{ size: "#8", shape: "1", A: 8, B: 120, length: 128 }],
      says: [
        {
          cell: "I2",
          outcome: "unsure",
          message:
            'end leg A of 8" is shorter than a standard hook of 10.996" for #8: it may not be counted as one',
        },
      ],
    },
    {
      standard: "ACI318:2019",
      rows: [{ size: "#8", shape: "6 +180 120", length: 129 }],
      says: [
        {
          cell: "H2",
          severity: "note",
          message:
            'the first leg of 6" is shorter than a standard hook of 8" for #8: it may not be counted as one',
        },
      ],
    },
  ],
});
