import rule from "../../../../core/audit/rules/length-rounded-further";
import { ruleCases } from "../rule-cases";

// EN 1992-1-1 Table 8.1N: a former of 4 x 12 = 48 mm. On the centre line 300 + 1000 + 300 less, for each of two
// right angles, 2 (24 + 12) - (24 + 6) pi/2 = 24.88: 1550.3, and up to the next 5 mm 1555
const bar = (B: number, over = 0) => ({
  size: "12",
  shape: `300 +90 ${B} +90 300`,
  length: B + 555 + over,
});
const SOUND = [bar(1000), bar(1500), bar(2000), bar(2500)];
const DIN = "DIN-EC2:2013";

ruleCases(rule, {
  silent: [
    { standard: DIN, rows: SOUND },
    // 5 mm further is the step itself
    { standard: DIN, rows: [...SOUND, bar(1200, 5)] },
    // beyond what any list rounds by another rule tells of it
    { standard: DIN, rows: [...SOUND, bar(1200, 60)] },
    // a list that rounds so throughout has a step of its own
    { standard: DIN, rows: [bar(1000, 20), bar(1500, 20), bar(2000, 20), bar(2500)] },
    // nothing is there to be further than
    { standard: DIN, rows: [bar(1200, 20)] },
    // a printed step rounds one way, and nothing else fits: 500 + 400 - 0.5 x 32 - 16 = 868
    { rows: [{ size: "H16", shape: "11", A: 500, B: 400, length: 875 }] },
  ],
  speaks: [
    {
      standard: DIN,
      rows: [...SOUND, bar(1200, 20)],
      says: [
        {
          cell: "G6",
          message:
            "length 1775 mm is 20 mm over the 1755 mm that the dimensions make, further than the other lengths of the sheet: it is cut as typed and weighed by its dimensions",
          outcome: "unsure",
        },
      ],
    },
  ],
});
