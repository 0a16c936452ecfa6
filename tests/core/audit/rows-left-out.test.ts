import { expect, it } from "vitest";
import { exampleSheets } from "../../../core/audit/example-sheet";
import { holdsOf } from "../../../core/audit/holds";
import { runAudit } from "../../../core/audit/run-audit";
import type { Sheet } from "../../../core/schedule/sheet";
import { standardNamed } from "./rule-cases";

// 50 mm is below the 64 mm of BS 8666:2005 Table 2 for 16 mm
const TIGHT = { size: "H16", shape: "11", A: 500, B: 400, length: 875, former: 50 };
const LEFT = "former 50 mm is below the least 64 mm for H16";

it("should tell as notes what is wrong with bars that are not to be made", () => {
  const [sheet] = exampleSheets({
    rows: [
      { ...TIGHT, mark: "01" },
      { ...TIGHT, mark: "02", remark: "superseded" },
      { ...TIGHT, mark: "03", remark: "omit" },
      { ...TIGHT, mark: "04" },
    ],
  });
  const struck: Sheet = { ...(sheet as Sheet), isStruckThrough: (row) => row === 4 };
  const { byRow } = runAudit({ sheets: [struck], standard: standardNamed("BS8666:2005") });
  const told = byRow.filter(({ code }) => code === "BEND101");
  expect(told.map(({ row, severity, message }) => [row, severity, message])).toEqual([
    [2, "unsafe", LEFT],
    [3, "note", `${LEFT} (the row is superseded by its own remark)`],
    [4, "note", `${LEFT} (the row is superseded by its own remark)`],
    [5, "note", `${LEFT} (the row is struck through)`],
  ]);
  const holds = holdsOf(byRow);
  expect([2, 3, 4, 5].map((row) => holds("Schedule", row).length)).toEqual([1, 0, 0, 0]);
});
