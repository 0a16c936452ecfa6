import rule from "../../../../core/audit/rules/numbers-disagree";
import { ruleCases } from "../rule-cases";

// H16 is 1.58 kg/m in the UK table; totals and masses are worked out by hand
const bar = (
  length: number,
  members: number,
  each: number,
  total: number,
  totalLength: number,
  mass: number,
) => ({
  ...{ size: "H16", shape: "00", A: length, length, members, each, total, totalLength, mass },
});
const SOUND = [
  bar(2000, 2, 10, 20, 40, 63.2),
  bar(3000, 2, 10, 20, 60, 94.8),
  bar(4000, 2, 10, 20, 80, 126.4),
  bar(5000, 2, 10, 20, 100, 158),
];

// 1.21 kg/m of 14 mm, which the standard in force does not hold (EN 10080): 3 m are 3.63 kg and 20 of them 72.6
const ofOne = (size: string, length: number, pieceMass: number, mass: number) => ({
  ...{ size, shape: "00", A: length, length, members: 2, each: 10, total: 20, pieceMass, mass },
});
const WITH_ONE = [
  ofOne("H16", 2000, 3.16, 63.2),
  ofOne("H16", 3000, 4.74, 94.8),
  ofOne("H16", 4000, 6.32, 126.4),
  ofOne("14", 3000, 3.63, 72.6),
];

const of14 = (length: number, mass: number) => ({
  size: "14",
  shape: "00",
  A: length,
  length,
  total: 20,
  mass,
});
const OF_14 = [of14(2000, 48.3), of14(4000, 96.7), of14(5000, 120.8), of14(6000, 145)];

ruleCases(rule, {
  silent: [
    { rows: SOUND },
    // one product alone is told by its own rule
    { rows: [...SOUND, bar(6000, 2, 10, 20, 120, 208)] },
    { rows: [...WITH_ONE, ofOne("14", 2000, 2.42, 48.4)] },
    // 2.42 rounded to whole kg
    { rows: [...WITH_ONE, ofOne("14", 2000, 2, 48.4)] },
    // three rows are no habit
    { rows: [...SOUND.slice(0, 3), bar(4300, 2, 10, 20, 68, 107.4)] },
  ],
  speaks: [
    {
      // 14 mm is 1.208 kg/m, as above: 20 x 3 m are 72.5 kg, and the point of 725 is misplaced
      rows: [...OF_14, { ...of14(3000, 725) }],
      says: [
        {
          cell: "N6",
          message:
            "one of total, size, mass is wrong: they do not fit the mass; number x length makes 72.5 kg",
        },
      ],
    },
    {
      // the total was typed wrong after length and mass were worked out from 20
      rows: [...SOUND, bar(6000, 2, 10, 26, 120, 189.6)],
      says: [
        {
          cell: "F6",
          message: "total 26 does not fit members x bars in each and the total length and the mass; 20 would",
          after: { F6: 20 },
        },
      ],
    },
    {
      // 48.4 / 20 = 2.42, which is no 3 however it is rounded
      rows: [...WITH_ONE, ofOne("14", 2000, 3, 48.4)],
      says: [
        {
          cell: "O6",
          message: "mass of one bar 3 kg does not fit length and size; 2.42 kg would",
          // pi / 4 x 0.014 x 0.014 x 7850 = 1.2084 kg/m
          after: { O6: 2.417 },
        },
      ],
    },
    {
      // the total agrees with length and mass, which may have been worked out from it
      rows: [...SOUND, bar(6000, 2, 11, 20, 120, 189.6)],
      says: [
        {
          cell: "F6",
          message: "one of members, bars in each, total is wrong: they do not fit members x bars in each",
        },
      ],
    },
  ],
});
