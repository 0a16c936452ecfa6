import { expect, it } from "vitest";
import rule from "../../../../core/audit/rules/dimension-off-step";
import { runAudit } from "../../../../core/audit/run-audit";
import { sheetFromRows } from "../../../../core/schedule/sheet";
import { resolveStandard, type Standard } from "../../../../core/standards";
import { ruleCases } from "../rule-cases";

// BS 8666:2005: dimensions in multiples of 5 (from memory)
ruleCases(rule, {
  silent: [
    { rows: [{ size: "H16", shape: "11", A: 505, B: 400, length: 875 }] },
    // C of 77 counts turns
    { rows: [{ size: "H8", shape: "77", A: 500, B: 150, C: 41.5, length: 64450 }] },
  ],
  speaks: [
    {
      // a link between faces is never made wider for a round figure
      rows: [{ size: "H10", shape: "51", A: 404, B: 300, C: 130, D: 130, length: 1575 }],
      says: [
        { cell: "I2", outcome: "unsure", message: "A 404 mm is no multiple of 5 mm", after: { I2: 400 } },
      ],
    },
    {
      rows: [{ size: "H16", shape: "11", A: 501, B: 404, length: 875 }],
      notCuredBecause: "one fix changes one of two dimensions",
      says: [
        { cell: "I2", outcome: "unsure", message: "A 501 mm is no multiple of 5 mm", after: { I2: 500 } },
        { cell: "J2", outcome: "unsure", message: "B 404 mm is no multiple of 5 mm", after: { J2: 405 } },
      ],
    },
  ],
});

// 12 ft 3 in are 3733.8 mm, which is a whole figure where it was measured
it.each([["12'-3\""], ["12-03"], ["12 ft 3 in"]])("asks no step of millimetres of %s", (leg) => {
  const rows = [
    ["Mark", "Size", "Shape", "A", "Length", "Total"],
    ["a", 16, "straight", leg, leg, 12],
    ["b", 16, "straight", "10'-6\"", "10'-6\"", 8],
  ];
  const standard = resolveStandard("BS8666:2005") as Standard;
  const { findings } = runAudit({ sheets: [sheetFromRows("Slab", rows)], standard });
  expect(findings.filter(({ code }) => code === rule.code)).toEqual([]);
});
