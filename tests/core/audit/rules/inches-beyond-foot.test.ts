import { expect, it } from "vitest";
import rule from "../../../../core/audit/rules/inches-beyond-foot";
import { runAudit } from "../../../../core/audit/run-audit";
import { sheetFromRows } from "../../../../core/schedule/sheet";
import { resolveStandard } from "../../../../core/standards/index";
import { isRefusal } from "../../../../core/units/refusal";

// a foot is twelve inches (common practice)
it.each([
  [20, 16, "16 in beside 20 ft are more than a foot: is a digit too many?"],
  [7, 12, "12 in beside 7 ft are more than a foot: is a digit too many?"],
  [3, 46.5, "46.5 in beside 3 ft are more than a foot: is a digit too many?"],
  [20, 6, null],
  [20, 11.5, null],
  // no feet beside them
  [0, 16, null],
  [null, 16, null],
])("speaks of %j ft and %j in, or is silent", (feet, inches, message) => {
  const rows = [
    ["Mark", "Size", "Total", "Cutting length", null],
    [null, null, null, "ft", "in"],
    ["1", "#5", 10, 8, 6],
    ["2", "#5", 12, 20, 10],
    ["3", "#4", 14, feet, inches],
    ["4", "#4", 14, 5, 3],
  ];
  const standard = resolveStandard("ACI318:2019");
  if (isRefusal(standard)) throw standard;
  const { findings } = runAudit({ sheets: [sheetFromRows("Bars", rows)], standard });
  const found = findings.filter(({ code }) => code === rule.code);
  expect(found.map((one) => one.message)).toEqual(message === null ? [] : [message]);
  for (const { row, outcome } of found) expect([row, outcome]).toEqual([5, "unsure"]);
});
