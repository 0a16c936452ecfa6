import rule from "../../../core/audit/rules/length-off-habit";
import { ruleCases } from "../audit/rule-cases";

// lists of several countries whose lengths are the sums of their legs out to out (common practice)
const row = (shape: string, size: string, legs: readonly (number | null)[], length: number) => {
  const [A = null, B = null, C = null, D = null] = legs;
  return { size, shape, A, B, C, D, length };
};
const EC2 = "EC2:2004";
const SUMS = [
  row("U-bar", "12", [250, 1800, 250], 2300),
  row("U-bar", "20", [400, 5900, 400], 6700),
  row("Winkel", "16", [400, 2350], 2750),
  row("Winkel", "16", [350, 1500], 1850),
];
// 2 d off each right angle: 250 + 1600 + 250 - 64 = 2036, and 900 + 200 - 24 = 1076
const DEDUCTED = [
  row("コ", "16", [250, 1600, 250], 2036),
  row("コ", "25", [500, 6900, 500], 7800),
  row("Lstab", "12", [900, 200], 1076),
  row("Lstab", "20", [3350, 400], 3710),
];
// 2 (a + b) and two ends: 2 (140 + 440) + 2 x 80 = 1320, 2 (340 + 240) + 160 = 1320
const LINKS = [row("bügel", "8", [140, 440, 80], 1320), row("bügel", "8", [340, 240, 80], 1320)];
// ends of 200 mm that no column holds: 2 (200 + 550) + 200 = 1700, 2 (250 + 550) + 200 = 1800
const BARE = [row("kana", "8", [200, 550], 1700), row("kana", "8", [250, 550], 1800)];
const says = (cell: string, message: string) => [{ cell, outcome: "unsure" as const, message }];

ruleCases(rule, {
  silent: [
    { standard: EC2, rows: SUMS },
    { standard: EC2, rows: DEDUCTED },
    { standard: EC2, rows: [...SUMS, ...LINKS, ...BARE] },
    // a square link is written by one of its sides: 4 x 220 + 160 = 1040
    { standard: EC2, rows: [...SUMS, ...LINKS, row("bügel", "8", [220, null, 80], 1040)] },
    // one straight bar more is no habit of its shape
    {
      standard: EC2,
      rows: [...SUMS, row("I", "16", [5800], 5800), row("I", "16", [300, 7200, 300], 7800)],
    },
    // a crank is no sum, and no other bar has its shape
    { standard: EC2, rows: [...SUMS, row("crank", "16", [900, 150, 1200], 2210)] },
    // a closed link of four sides with its hooks elsewhere is no open bar: 2 (500 + 250) + 260 = 1760
    { standard: EC2, rows: [...SUMS, row("tie", "10", [500, 250, 500, 250], 1760)] },
  ],
  speaks: [
    {
      // a bar drawn as I is straight, and this one has the legs of a U
      standard: EC2,
      rows: [
        ...SUMS,
        row("I", "16", [5800], 5800),
        row("I", "12", [6350], 6350),
        row("I", "16", [300, 7200, 300], 7800),
      ],
      says: says(
        "H8",
        "shape I has the legs that the bars of U-bar have, and not those of all others of I: is it U-bar?",
      ),
    },
    {
      // 2100 - 250 - 1600 = 250
      standard: EC2,
      rows: [...SUMS, row("U-bar", "12", [250, 1600], 2100)],
      says: says(
        "K6",
        "leg C is blank: the length 2100 mm leaves 250 mm for it, as 4 of 5 bars make lengths of their legs",
      ),
    },
    {
      // the first leg: 6800 - 6200 - 300 = 300
      standard: EC2,
      rows: [...SUMS, row("U-bar", "20", [null, 6200, 300], 6800)],
      says: says(
        "I6",
        "leg A is blank: the length 6800 mm leaves 300 mm for it, as 4 of 5 bars make lengths of their legs",
      ),
    },
    {
      // the other leg of an angle: 1650 - 150 = 1500
      standard: EC2,
      rows: [...SUMS, row("Winkel", "12", [150], 1650)],
      says: says(
        "J6",
        "leg B is blank: the length 1650 mm leaves 1500 mm for it, as 4 of 4 bars make lengths of their legs",
      ),
    },
    {
      // with 2 d off: 4550 - 4200 + 2 x 20 = 390
      standard: EC2,
      rows: [...DEDUCTED, row("Lstab", "20", [4200], 4550)],
      says: says(
        "J6",
        "leg B is blank: the length 4550 mm leaves 390 mm for it, as 4 of 4 bars make lengths of their legs",
      ),
    },
    {
      // a side of a link: (1520 - 160) / 2 - 140 = 540
      standard: EC2,
      rows: [...SUMS, ...LINKS, row("bügel", "8", [140, null, 80], 1520)],
      says: says(
        "J8",
        "leg B is blank: the length 1520 mm leaves 540 mm for it, as 2 of 2 bars make lengths of their legs",
      ),
    },
    {
      // where ends stand in no column: (1960 - 200) / 2 - 330 = 550
      standard: EC2,
      rows: [...SUMS, ...BARE, row("kana", "8", [null, 330], 1960)],
      says: says(
        "I8",
        "leg A is blank: the length 1960 mm leaves 550 mm for it, as 2 of 2 bars make lengths of their legs",
      ),
    },
    {
      // a nought too many, as of mm among cm: 5850 - 5350 - 250 = 250
      standard: EC2,
      rows: [...SUMS, row("U-bar", "12", [2500, 5350, 250], 5850)],
      says: says(
        "I6",
        "leg A of 2500 mm does not fit the length 5850 mm: 250 mm would, as 4 of 5 bars make lengths of their legs",
      ),
    },
    {
      // a nought lost: 6700 - 6200 = 500
      standard: EC2,
      rows: [...SUMS, row("Winkel", "25", [6200, 50], 6700)],
      says: says(
        "J6",
        "leg B of 50 mm does not fit the length 6700 mm: 500 mm would, as 4 of 5 bars make lengths of their legs",
      ),
    },
    {
      // digits turned: 2400 for 2040
      standard: EC2,
      rows: [...SUMS, row("U-bar", "12", [200, 2400, 200], 2440)],
      says: says(
        "J6",
        "leg B of 2400 mm does not fit the length 2440 mm: 2040 mm would, as 4 of 5 bars make lengths of their legs",
      ),
    },
    {
      // no other bar has the shape, and the ends are alike: 470 - 130 - 210 = 130
      standard: EC2,
      rows: [...SUMS, row("S-Haken", "8", [130, 210, 30], 470)],
      says: says(
        "K6",
        "leg C of 30 mm does not fit the length 470 mm: 130 mm would, as 4 of 4 bars make lengths of their legs",
      ),
    },
    {
      // 300 + 4100 - 2 x 16 = 4368: two bars prove it where it fits to the millimetre
      standard: EC2,
      rows: [
        row("Lstab", "20", [300, 4100], 4360),
        row("Lstab", "16", [300, 4100], 4368),
        row("Lstab", "16", [300, 410], 4368),
      ],
      says: says(
        "J4",
        "leg B of 410 mm does not fit the length 4368 mm: 4100 mm would, as 2 of 3 bars make lengths of their legs",
      ),
    },
    {
      // a digit lost: 250 + 450 = 700
      standard: EC2,
      rows: [...SUMS, row("Winkel", "12", [250, 450], 1700)],
      says: says(
        "G6",
        "length 1700 mm is not the 700 mm that its legs make as 4 of 5 bars make lengths of theirs",
      ),
    },
    {
      // no bar is shorter than one of its legs: geometry
      standard: EC2,
      rows: [...SUMS, row("hairpin", "25", [400, 3250], 2440)],
      says: says("G6", "length 2440 mm is shorter than leg B of 3250 mm alone"),
    },
    {
      // the length is the sum of the two legs: nothing is left for a third
      standard: EC2,
      rows: [...SUMS, row("U-bar", "12", [250, 1600], 1850)],
      says: says(
        "H6",
        "shape U-bar has the legs that the bars of Winkel have, and not those of all others of U-bar: is it Winkel?",
      ),
    },
    {
      // two legs that make the length as angles do, under the name of bars of three
      standard: EC2,
      rows: [
        row("38", "16", [300, 4700, 300], 5220),
        row("38", "16", [300, 4100, 300], 4620),
        row("37", "16", [1300, 450], 1710),
        row("37", "20", [900, 350], 1200),
        row("38", "12", [700, 700], 1370),
      ],
      says: says(
        "H6",
        "shape 38 has the legs that the bars of 37 have, and not those of all others of 38: is it 37?",
      ),
    },
  ],
});
