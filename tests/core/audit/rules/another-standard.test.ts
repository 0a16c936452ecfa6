import rule from "../../../../core/audit/rules/another-standard";
import { ruleCases } from "../rule-cases";

const row = (size: string) => ({ size, length: 3000 });
/** Codes 20, 37, 38 are of BS 4466 alone; 51 is a bend in it and a closed link since. */
const OLD_LIST = [
  { size: "T16", shape: "37", A: 500, B: 400, length: 875 },
  { size: "T12", shape: "20", A: 1200, length: 1200 },
  { size: "T16", shape: "38", A: 500, B: 400, C: 500, length: 1325 },
  { size: "T16", shape: "51", A: 600, B: 500, length: 1000 },
];

/** Types 1, 2 and 17 of a maker's own sheet: 01 of the standard is straight and takes no B. */
const OWN_LIST = [
  { size: "16", shape: "STR", length: 4000 },
  { size: "16", shape: "1", A: 310, B: 2650, G: 310, length: 3270 },
  { size: "20", shape: "2", A: 400, B: 1600, length: 2000 },
  { size: "20", shape: "2", A: 600, B: 4200, length: 4800 },
  { size: "12", shape: "17", B: 900, C: 300, length: 1200 },
];

// bars of each country's standard, from memory: ACI in #, CSA in M, AS/NZS in N
ruleCases(rule, {
  silent: [
    { rows: [row("H16"), row("H12"), row("H20")] },
    // one foreign bar among many is that row's own matter
    { rows: [row("H16"), row("H12"), row("#5")] },
    { standard: "ACI318:2019", rows: [row("#5"), row("#4"), row("#6")] },
    { standard: "BS4466:1989", rows: OLD_LIST },
    // one code of another list is that row's own matter
    {
      rows: [
        OLD_LIST[0]!,
        { size: "T16", shape: "11", A: 500, B: 400 },
        { size: "T16", shape: "00", A: 900 },
      ],
    },
    // codes of no list that is held
    { rows: OWN_LIST },
    // of no standard held
    { rows: [row("Q13"), row("Q17"), row("Q19")] },
  ],
  speaks: [
    {
      // 61 is of BS 4466 alone
      rows: [...OLD_LIST, { size: "R10", shape: "61", A: 400, B: 300, length: 1525 }],
      says: [
        {
          cell: "H2",
          outcome: "unsure",
          message:
            "4 of 5 shape codes, such as 37, are none of BS8666:2005, while 5 are of BS4466:1989, where a number means another shape: choose BS4466:1989 if the schedule is of that list, and check again; no shape of the sheet was judged",
        },
      ],
    },
    {
      rows: OLD_LIST,
      says: [
        {
          cell: "H2",
          outcome: "unsure",
          message:
            "3 of 4 shape codes, such as 37, are none of BS8666:2005, while 4 are of SANS282:2011 or BS4466:1989, where a number means another shape: choose SANS282:2011 or BS4466:1989 if the schedule is of that list, and check again; no shape of the sheet was judged",
        },
      ],
    },
    {
      rows: [row("N16"), row("N12"), row("N24"), row("N20")],
      says: [
        {
          cell: "C2",
          outcome: "unsure",
          message:
            "4 of 4 bars, such as N16, are none of BS8666:2005, while 4 are of AS3600:2018: choose AS3600:2018 as the standard and check again; what else hangs on the size was not judged",
        },
      ],
    },
    {
      rows: ["22", "12", "8"].map((size) => ({ size, grade: "HRB400", length: 3000 })),
      says: [
        {
          cell: "C2",
          outcome: "unsure",
          message:
            "3 of 3 bars, such as 22 HRB400, are none of BS8666:2005, while 3 are of GB50204:2015: choose GB50204:2015 as the standard and check again; what else hangs on the size was not judged",
        },
      ],
    },
  ],
});
