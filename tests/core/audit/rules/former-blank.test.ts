import rule from "../../../../core/audit/rules/former-blank";
import { ruleCases } from "../rule-cases";

// BS 8666:2005 Table 2: a former of 64 mm for 16 mm; A + B - 0.5 x 32 - 16 up to the next 25 mm
const bar = (B: number, former: number | string | null) => ({
  size: "H16",
  shape: "11",
  A: 500,
  B,
  length: Math.ceil((500 + B - 32) / 25) * 25,
  former,
});
const BARS = [bar(400, 64), bar(500, 64), bar(600, 64)];
const straight = { size: "H16", shape: "00", A: 2000, length: 2000, former: null };

ruleCases(rule, {
  silent: [
    { rows: BARS },
    // what is straight is bent round none
    { rows: [...BARS, straight] },
    // a column that most rows leave blank is filled where another former is wanted
    { rows: [bar(400, 64), bar(500, null), bar(600, null), bar(700, null)] },
    { rows: [bar(400, 64), bar(500, null)] },
    { rows: [...BARS, { ...bar(700, null), remark: "former 100" }] },
  ],
  speaks: [
    {
      rows: [...BARS, straight, bar(700, null)],
      says: [
        {
          cell: "N6",
          message:
            "the former is blank, where 3 of 4 bent bars name one: it was judged by the least 64 mm of BS8666:2005, ask which it is bent round",
          outcome: "unsure",
        },
      ],
    },
    {
      rows: [...BARS, bar(700, "-")],
      says: [
        {
          cell: "N5",
          message:
            "the former is blank, where 3 of 4 bent bars name one: it was judged by the least 64 mm of BS8666:2005, ask which it is bent round",
          outcome: "unsure",
        },
      ],
    },
  ],
});
