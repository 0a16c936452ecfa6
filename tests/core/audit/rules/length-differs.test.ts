import rule from "../../../../core/audit/rules/length-differs";
import { ruleCases } from "../rule-cases";

// BS 8666:2005 Table 3, by hand. 11 in 16 mm: 500 + 400 - 0.5 x 32 - 16 = 868, up to 875.
// 51 in 12 mm, C 160: 2(400 + 300 + 160) - 2.5 x 24 - 5 x 12 = 1600; minimised 2 x 400 + 2 x 300 + 192 = 1592, up to 1600.
// 51 in 16 mm, C 210: 2(400 + 300 + 210) - 80 - 80 = 1660, up to 1675; minimised 1400 + 256 = 1656, up to 1675.
// 00: A, so 1000 stays 1000 and 1001 becomes 1025
ruleCases(rule, {
  silent: [
    // legs 300, 2445 and 200, former 80: 2945 - 2 (2 x 56 - pi/2 x 48) = 2871.8, up to the next 10 mm
    { standard: "AS3600:2018", rows: [{ size: "N16", shape: "300 +90 2445 +90 200", length: 2880 }] },
    // a link's former of 4d, not 5d: 1760 - 5 (2 x 30 - pi/2 x 25) = 1656.3, up to the next 25 mm
    {
      standard: "AS3600:2018",
      rows: [{ size: "N10", shape: "130 +90 400 +90 350 +90 400 +90 350 +90 130", length: 1675 }],
    },
    // the same as no link, as BAR.CUTLENGTH gives it unless told: 1760 - 5 (2 x 35 - pi/2 x 30) = 1645.6, up to 1650
    {
      standard: "AS3600:2018",
      rows: [{ size: "N10", shape: "130 +90 400 +90 350 +90 400 +90 350 +90 130", length: 1650 }],
    },
    { rows: [{ size: "H16", shape: "11", A: 500, B: 400, length: 875 }] },
    // not rounded, or rounded less: another rule's
    { rows: [{ size: "H16", shape: "11", A: 500, B: 400, length: 868 }] },
    { rows: [{ size: "H16", shape: "11", A: 500, B: 400, length: 870 }] },
    { rows: [{ size: "H12", shape: "51", A: 400, B: 300, C: 160, length: 1600 }] },
    // exactly on the minimised form: 2 x 404 + 2 x 300 + 192 = 1600
    { rows: [{ size: "H12", shape: "51", A: 404, B: 300, C: 200, length: 1600 }] },
    { rows: [{ size: "H16", shape: "51", A: 400, B: 300, C: 210, length: 1675 }] },
    { rows: [{ size: "H16", shape: "00", A: 1000, length: 1000 }] },
    { rows: [{ size: "H16", shape: "00", A: 1005, length: 1025 }] },
    { rows: [{ size: "H16", shape: "99", A: 500, B: 400, C: 300, length: 5000 }] },
    // a slip by ten is another rule's
    { rows: [{ size: "H16", shape: "11", A: 500, B: 400, length: 8750 }] },
  ],
  speaks: [
    {
      // a list without formulas: 2(250 + 550 + 160) - 5(2 x 30 - pi/2 x 25) = 1816.3, up to 1820; an office may take
      // each bend's deduction half a diameter otherwise, 25 mm in all, and no more
      standard: "ISO3766:2003",
      rows: [1800, 1790].map((length) => ({
        ...{ size: "10", shape: "51", A: 250, B: 550, C: 160, former: 40, length },
      })),
      says: [
        {
          cell: "G2",
          outcome: "unsure",
          severity: "note",
          message: "length 1800 mm is 20 mm short of the 1820 mm that the dimensions need (geometry)",
        },
        {
          cell: "G3",
          outcome: "unsure",
          message: "length 1790 mm is 30 mm short of the 1820 mm that the dimensions need (geometry)",
          after: { G3: 1820 },
        },
      ],
    },
    {
      rows: [{ size: "H16", shape: "11", A: 500, B: 400, length: 850 }],
      says: [
        {
          cell: "G2",
          message: "length 850 mm is 25 mm short of the 875 mm that the dimensions need (printed formula)",
          after: { G2: 875 },
        },
      ],
    },
    {
      rows: [{ size: "H16", shape: "11", A: 500, B: 400, length: 900 }],
      says: [
        {
          cell: "G2",
          message: "length 900 mm is 25 mm over the 875 mm that the dimensions need (printed formula)",
          after: { G2: 875 },
        },
      ],
    },
    {
      rows: [{ size: "H16", shape: "00", A: 1000, length: 1025 }],
      says: [
        {
          cell: "G2",
          message: "length 1025 mm is 25 mm over the 1000 mm that the dimensions need (printed formula)",
          after: { G2: 1000 },
        },
      ],
    },
    {
      rows: [{ size: "H12", shape: "51", A: 400, B: 300, C: 160, length: 1575 }],
      says: [
        {
          cell: "G2",
          message: "length 1575 mm is 25 mm short of the 1600 mm that the dimensions need (printed formula)",
          after: { G2: 1600 },
        },
      ],
    },
  ],
});
