import { expect, it } from "vitest";
import { exampleSheets } from "../../../core/audit/example-sheet";
import { runAudit } from "../../../core/audit/run-audit";
import { standardNamed } from "./rule-cases";

// BS 8666:2005, 51 (from memory): A and B stand twice each; C at most the lesser of A and B
it("should tell what is said twice of a leg once", () => {
  const { findings } = runAudit({
    sheets: exampleSheets({
      rows: [{ size: "H10", shape: "51", A: 90, B: 90, C: 110, D: 110, length: 500 }],
    }),
    standard: standardNamed("BS8666:2005"),
  });
  const told = findings.map(({ code, cell, message }) => `${code} ${cell} ${message}`);
  expect(told.filter((words) => /^(?:BEND104|SHAPE107)/.test(words)).length).toBeGreaterThan(1);
  expect(told).toEqual([...new Set(told)]);
});
