import rule from "../../../../core/audit/rules/bends-overlap";
import { ruleCases } from "../rule-cases";

// geometry by hand: each right angle takes r + d of the leg; r 112 for 32 mm (BS 8666:2005 Table 2), so 2 x 144 = 288
ruleCases(rule, {
  silent: [
    // a crank's slope, and sides of a link that the length counts twice, are no legs beside right angles
    { standard: "DIN-EC2:2013", rows: [{ size: "20", shape: "S", A: 900, B: 150, C: 900, length: 1950 }] },
    { standard: "DIN-EC2:2013", rows: [{ size: "8", shape: "Bügel", A: 20, B: 300, length: 740 }] },
    { rows: [{ size: "H32", shape: "21", A: 500, B: 288, C: 500, length: 1125 }] },
    { rows: [{ size: "H32", shape: "00", A: 500, length: 500 }] },
  ],
  speaks: [
    {
      // no code, so the legs alone tell: 20 mm about 7 x 20 = 140 takes 70 + 20 = 90 of each leg beside a right angle
      standard: "DIN-EC2:2013",
      rows: [{ size: "20", shape: "L", A: 60, B: 3000, length: 3060 }],
      says: [
        {
          cell: "I2",
          outcome: "unsure",
          message:
            "leg A of 60 mm is too short for the right angles beside it, which take 90 mm of 20 with a former of 140 mm: if it is bent so",
        },
      ],
    },
    {
      // 10 mm about 40 takes 2 x 30 = 60 of the leg between the bends of a U
      standard: "DIN-EC2:2013",
      rows: [{ size: "10", shape: "U", A: 450, B: 50, C: 450, length: 950 }],
      says: [
        {
          cell: "J2",
          outcome: "unsure",
          message:
            "leg B of 50 mm is too short for the right angles beside it, which take 60 mm of 10 with a former of 40 mm: if it is bent so",
        },
      ],
    },
    {
      // a right angle takes r + d = 3 x 0.75 + 0.75 = 3 in; the course of the type is recalled, and no length printed
      standard: "ACI318:2019",
      rows: [{ size: "#6", shape: "17", A: 30, B: 2, length: 32 }],
      says: [
        {
          cell: "J2",
          outcome: "unsure",
          message:
            'leg B of 2" ends inside its bend: 1" too short for #6 with a former of 4 1/2": ask the designer for a longer one',
        },
      ],
    },
    {
      rows: [{ size: "H32", shape: "21", A: 500, B: 280, C: 500, length: 1100 }],
      says: [
        {
          cell: "J2",
          message:
            "bends 1 and 2 overlap: leg B of 280 mm is 8 mm too short for H32 with a former of 224 mm: ask the designer for a longer one",
        },
      ],
    },
    {
      rows: [{ size: "H32", shape: "100 +90 500", length: 500 }],
      says: [
        {
          cell: "H2",
          message:
            "leg 1 of 100 mm ends inside its bend: 44 mm too short for H32 with a former of 224 mm: ask the designer for a longer one",
        },
      ],
    },
  ],
});
