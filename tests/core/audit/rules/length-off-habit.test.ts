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

// lengths that are sums: 500 + 2650, 400 + 1900 + 400, 300 + 2950
const sum = (shape: string, A: number, B: number, length: number, C?: number) => ({
  ...{ size: "16", shape, A, B, length },
  ...(C === undefined ? {} : { C }),
});
const SUMS = [
  sum("angle", 500, 2650, 3150),
  sum("U", 400, 1900, 2700, 400),
  sum("angle", 300, 2950, 3250),
  sum("U", 300, 1000, 1600, 300),
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
    // 400 + 350 + 1700
    { rows: [...SUMS, sum("Z", 400, 350, 2450, 1700)] },
    // several of a letter have their lengths otherwise
    { rows: [...SUMS, sum("Z", 400, 350, 2450), sum("Z", 300, 350, 1450)] },
    // three rows are no habit
    { standard: "EC2:2004", rows: [...SOUND.slice(0, 2), bar(300, 1200, 2760)] },
  ],
  speaks: [
    {
      // a bar that is drawn as a Z has three legs
      rows: [...SUMS, sum("Z", 400, 350, 2450)],
      says: [
        {
          cell: "K6",
          message:
            "leg C is blank: the length 2450 mm leaves 1700 mm for it, as 4 of 4 bars make lengths of their legs",
          outcome: "unsure",
        },
      ],
    },
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
