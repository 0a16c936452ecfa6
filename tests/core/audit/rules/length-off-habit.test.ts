import rule from "../../../../core/audit/rules/length-off-habit";
import { ruleCases } from "../rule-cases";

// an office that takes 2.5 diameters off three legs: 300 + 1000 + 300 - 40 = 1560
const bar = (A: number, B: number, length: number) => ({ size: "16", shape: "21", A, B, C: 300, length });
const SOUND = [bar(300, 1000, 1560), bar(300, 1500, 2060), bar(400, 2000, 2660), bar(500, 900, 1660)];
// closed links: twice each leg and twice the hook, less 3 d of 10: 800 + 600 + 200 - 30 = 1570
const link = (A: number, B: number, C: number, length: number) => ({
  size: "10",
  shape: "51",
  A,
  B,
  C,
  length,
});
const LINKS = [
  link(400, 300, 100, 1570),
  link(500, 300, 120, 1810),
  link(500, 400, 100, 1970),
  link(250, 250, 90, 1150),
];

ruleCases(rule, {
  silent: [
    { standard: "EC2:2004", rows: SOUND },
    { standard: "EC2:2004", rows: LINKS },
    // the standard's own shapes are measured against the standard
    { rows: [...SOUND, bar(300, 1200, 2760)] },
    // no shape is named, and 1920 is twice 400 + 500 with ends of 12 d: a link among bars of three legs
    {
      standard: "EC2:2004",
      rows: [...SOUND, { ...bar(400, 500, 1920), size: "10", C: 60 }].map(({ shape: _, ...row }) => row),
    },
    // three rows are no habit
    { standard: "EC2:2004", rows: [...SOUND.slice(0, 2), bar(300, 1200, 2760)] },
  ],
  speaks: [
    {
      standard: "EC2:2004",
      rows: [...SOUND, bar(300, 1200, 2760)],
      says: [
        {
          cell: "G6",
          message:
            "length 2760 mm is not the 1760 mm that A + B + C - 2.5 d make, as in 4 of 5 bars of this shape",
          outcome: "unsure",
        },
      ],
    },
    {
      // a nought lost in one leg
      standard: "EC2:2004",
      rows: [...LINKS, link(60, 300, 100, 1970)],
      says: [
        {
          cell: "G6",
          message:
            "length 1970 mm is not the 890 mm that 2A + 2B + 2C - 3 d make, as in 4 of 5 bars of this shape",
          outcome: "unsure",
        },
      ],
    },
  ],
});
