import rule from "../../../../core/audit/rules/former-off-habit";
import { ruleCases } from "../rule-cases";

const bar = (size: string, shape: string, former: number) => ({
  ...{ size, shape, A: 350, B: 1500, C: 350, length: 2200, former },
});

// one former a size and grade in a list: common practice; NZS 3101 asks 5 d and 6 d, JASS 5 3 d and 4 d, from memory
ruleCases(rule, {
  silent: [
    { rows: [bar("HD25", "U", 150), bar("HD25", "U", 150), bar("HD16", "U", 80)] },
    // links have smaller formers than main bars of their size
    { rows: [bar("HD12", "U", 60), bar("HD12", "L", 60), bar("HD12", "Link", 24)] },
    // two against two is no habit
    {
      rows: [bar("HD25", "U", 150), bar("HD25", "U", 150), bar("HD25", "U", 100), bar("HD25", "U", 100)],
    },
    // a thicker link may have a smaller former than thinner bars of other shapes
    { rows: [bar("HD16", "Link", 64), bar("HD12", "U", 72), bar("HD10", "L", 72)] },
    // a link of a size that mains have too, 4 d against 5 d
    { rows: [bar("HD12", "L", 60), bar("HD10", "L", 50), bar("D10", "U", 50), bar("HD12", "Link", 48)] },
    // judged by the standard in force
    { rows: [bar("H16", "21", 64), bar("H16", "21", 64), bar("H16", "21", 50)] },
  ],
  speaks: [
    {
      // 3 d of 16 among 5 d: the other HD16 is no U, and of the thinner ones only the D12 is
      rows: [bar("HD16", "L", 80), bar("HD12", "L", 60), bar("D12", "U", 60), bar("HD16", "U", 48)],
      says: [
        {
          cell: "N5",
          outcome: "unsure",
          message:
            "former 48 mm is smaller than the 60 mm of 2 thinner bars, such as D12: if it is no slip, ask the designer for the least former of this steel",
        },
      ],
    },
    {
      // 3 d of an L among U bars of 5 d: both are open bars of one steel
      rows: [bar("HD16", "U", 80), bar("HD16", "U", 80), bar("HD20", "L", 60), bar("R10", "Tie", 40)],
      says: [
        {
          cell: "N4",
          outcome: "unsure",
          message:
            "former 60 mm is smaller than the 80 mm of 2 thinner bars, such as HD16: if it is no slip, ask the designer for the least former of this steel",
        },
      ],
    },
    {
      rows: [bar("HD16", "L", 80), bar("HD16", "U", 80), bar("HD25", "L", 60), bar("R10", "U", 40)],
      says: [
        {
          cell: "N4",
          outcome: "unsure",
          message:
            "former 60 mm is smaller than the 80 mm of 2 thinner bars, such as HD16: if it is no slip, ask the designer for the least former of this steel",
        },
      ],
    },
    {
      rows: [bar("HD25", "U", 150), bar("HD25", "U", 100), bar("HD25", "L", 150)],
      says: [
        {
          cell: "N3",
          outcome: "unsure",
          message:
            "former 100 mm is smaller than the 150 mm of the other 2 bars of HD25: if it is no slip, ask the designer for the least former of this steel",
        },
      ],
    },
  ],
});
