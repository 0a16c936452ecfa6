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

ruleCases(rule, {
  silent: [
    { rows: SOUND },
    // one product alone is told by its own rule
    { rows: [...SOUND, bar(6000, 2, 10, 20, 120, 208)] },
    // three rows are no habit
    { rows: [...SOUND.slice(0, 3), bar(4300, 2, 10, 20, 68, 107.4)] },
  ],
  speaks: [
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
