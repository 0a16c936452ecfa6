import { expect, it } from "vitest";
import rule from "../../../../core/audit/rules/former-too-small";
import { runAudit } from "../../../../core/audit/run-audit";
import { sheetFromRows } from "../../../../core/schedule/sheet";
import { heldStandard } from "../../../_support/held-standard";
import { ruleCases } from "../rule-cases";

const CLOSED = "160 +90 400 +90 300 +90 400 +90 300 +90 160";

// BS 8666:2005 Table 2 (tunleyrod.co.uk/barsizes.html): former 64 for 16 mm, 140 for 20, 175 for 25; r is printed 87 for 25
ruleCases(rule, {
  silent: [
    { rows: [{ size: "H20", shape: "21", A: 350, B: 2400, C: 350, length: 3000, remark: "former 7d" }] },
    { rows: [{ size: "H20", shape: "21", A: 350, B: 2400, C: 350, length: 3000, remark: "former 200 mm" }] },
    // 2(r + d) = 180, Table 3
    { rows: [{ size: "H20", shape: "13", A: 600, B: 180, C: 600, length: 1275 }] },
    // 2(87 + 25) = 224 by the printed r
    { rows: [{ size: "H25", shape: "13", A: 600, B: 224, C: 600, length: 1300 }] },
    // 4 x 16: written as a multiple of the bar
    { rows: [{ size: "H16", shape: "11", A: 500, B: 400, length: 875, former: "4d" }] },
    { rows: [{ size: "H16", shape: "11", A: 500, B: 400, length: 875, former: 64 }] },
    { rows: [{ size: "H25", shape: "12", A: 700, B: 700, R: 87, length: 1325 }] },
    { rows: [{ size: "H16", shape: "11", A: 500, B: 400, length: 875 }] },
    { rows: [{ size: "H16", shape: "500 +90r32 400", length: 875 }] },
    {
      // AS 3600:2018 17.2.3: fitments of D500N 4d, here said to be one
      standard: "AS3600:2018",
      rows: [{ size: "N12", shape: CLOSED, former: 48, remark: "tie" }],
    },
    { standard: "AS3600:2018", rows: [{ size: "N12", shape: CLOSED, former: 60 }] },
  ],
  speaks: [
    {
      // BS 8666:2005 Table 2: 140 for 20 mm
      rows: [{ size: "H20", shape: "21", A: 350, B: 2400, C: 350, length: 3000, remark: "former 100" }],
      says: [{ cell: "N2", outcome: "unsure", message: "former 100 mm is below the least 140 mm for H20" }],
    },
    // the half circle over B: inside radius B/2 - d, so 120/2 - 20 = 40 where r of Table 2 is 70
    {
      rows: [{ size: "H20", shape: "13", A: 600, B: 120, C: 600, length: 1250 }],
      says: [
        {
          cell: "J2",
          message:
            "B 120 mm makes a bend with an inside radius of 40 mm, a former of 80 mm; the least for H20 is 70 mm, a former of 140 mm: ask the designer for a wider one",
        },
      ],
    },
    // 100/2 - 20 = 30; the half circles of a closed link
    {
      rows: [{ size: "H20", shape: "33", A: 600, B: 100, C: 200, length: 1700 }],
      says: [
        {
          cell: "J2",
          message:
            "B 100 mm makes a bend with an inside radius of 30 mm, a former of 60 mm; the least for H20 is 70 mm, a former of 140 mm: ask the designer for a wider one",
        },
      ],
    },
    // a right angle, then a half circle over C: 90/2 - 16 = 29 where r is 32
    {
      rows: [{ size: "H16", shape: "22", A: 400, B: 500, C: 90, D: 150, length: 1050 }],
      says: [
        {
          cell: "K2",
          message:
            "C 90 mm makes a bend with an inside radius of 29 mm, a former of 58 mm; the least for H16 is 32 mm, a former of 64 mm: ask the designer for a wider one",
        },
      ],
    },
    // AS 3600 17.2.3.2, from memory: 4d for fitments, 5d for other bars; "T" is no code that is held
    {
      standard: "AS3600:2018",
      rows: [{ size: "N12", shape: "T", A: 400, B: 400, length: 1740, former: 48 }],
      says: [
        {
          cell: "N2",
          severity: "note",
          outcome: "unsure",
          message:
            "former 48 mm is enough for a link of N12, and 60 mm is the least for any other bar: the shape is not held, so which it is was not judged",
        },
      ],
    },
    {
      rows: [{ size: "H16", shape: "11", A: 500, B: 400, length: 875, former: "3d" }],
      says: [
        {
          cell: "N2",
          message: "former 48 mm is below the least 64 mm for H16",
          after: { N2: 64 },
        },
      ],
    },
    {
      // AS 3600:2018 17.2.3: fitments of D500N 4d = 48, any other bend 5d = 60
      standard: "AS3600:2018",
      rows: [{ size: "N12", shape: CLOSED, former: 48 }],
      says: [
        {
          cell: "N2",
          outcome: "unsure",
          message:
            "former 48 mm is the least for a link of N12, and 60 mm for any other bar: write in the remarks whether this closed path is a link",
        },
      ],
    },
    {
      rows: [{ size: "H16", shape: "11", A: 500, B: 400, length: 875, former: 63 }],
      says: [{ cell: "N2", message: "former 63 mm is below the least 64 mm for H16", after: { N2: 64 } }],
    },
    {
      rows: [{ size: "H16", shape: "11", A: 500, B: 400, length: 875, former: 64, coating: "epoxy" }],
      says: [
        {
          cell: "N2",
          outcome: "unsure",
          message:
            "former 64 mm may be too small for H16 epoxy: BS8666:2005 holds no former for the coating, ask the designer",
        },
      ],
    },
    {
      rows: [{ size: "H20", shape: "12", A: 600, B: 600, R: 69, length: 1150 }],
      says: [
        {
          cell: "N2",
          message: "inside radius 69 mm is below the least 70 mm for H20: ask the designer for a larger one",
        },
      ],
    },
    {
      rows: [{ size: "H16", shape: "500 +90r30 400", length: 875 }],
      says: [
        {
          cell: "H2",
          message: "inside radius 30 mm is below the least 32 mm for H16: ask the designer for a larger one",
        },
      ],
    },
    {
      // 95 - 2 x 16 = 63 inside the ring
      rows: [{ size: "H16", shape: "75", A: 95, B: 200, length: 450 }],
      says: [
        {
          cell: "I2",
          message:
            "inside diameter 63 mm is below the least former 64 mm for H16: ask the designer for a wider ring",
        },
      ],
    },
  ],
});

// BS 8666:2005 Table 2: at least 64 mm for 16, 140 for 20 and 175 for 25
it("formers of one size below the least stay certain where nobody chose the standard; of three sizes they are perhaps", () => {
  const told = (...formers: readonly (readonly [string, number])[]) => {
    const rows = formers.map(([size, former], at) => [String(at + 1), size, 4, 1275, "11", 900, 400, former]);
    const heads = ["Mark", "Size", "Total no.", "Length mm", "Shape code", "A", "B", "Former mm"];
    const { findings } = runAudit({
      sheets: [sheetFromRows("List", [heads, ...rows])],
      standard: heldStandard("BS8666:2005"),
      isStandardAssumed: true,
      rules: [rule],
    });
    return findings.map(({ severity, outcome }) => `${severity} ${outcome}`);
  };
  expect(told(["H16", 50], ["H16", 50], ["H16", 50])).toEqual(Array(3).fill("unsafe broken"));
  expect(told(["H16", 50], ["H20", 100], ["H25", 125])).toEqual(Array(3).fill("unsafe unsure"));
  // one question for the list: which document it keeps
  expect(told(["H16", 50], ["H16", 50], ["H20", 100], ["H20", 100], ["H25", 125], ["H25", 125])).toEqual([
    "unsafe unsure",
  ]);
});
