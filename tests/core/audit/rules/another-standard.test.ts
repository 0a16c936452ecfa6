import rule from "../../../../core/audit/rules/another-standard";
import { ruleCases } from "../rule-cases";

const row = (size: string) => ({ size, length: 3000 });

// bars of each country's standard, from memory: ACI in #, CSA in M, AS/NZS in N
ruleCases(rule, {
  silent: [
    { rows: [row("H16"), row("H12"), row("H20")] },
    // one foreign bar among many is that row's own matter
    { rows: [row("H16"), row("H12"), row("#5")] },
    { standard: "ACI318:2019", rows: [row("#5"), row("#4"), row("#6")] },
    // of no standard held
    { rows: [row("Q13"), row("Q17"), row("Q19")] },
  ],
  speaks: [
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
