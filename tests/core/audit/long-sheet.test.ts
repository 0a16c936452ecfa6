import { expect, it } from "vitest";
import { runAudit } from "../../../core/audit/run-audit";
import { sheetFromRows } from "../../../core/schedule/sheet";
import { heldStandard } from "../../_support/held-standard";

const HEADS = ["Member", "Mark", "Size", "Shape", "A", "B", "Total no.", "Length mm", "Former"];
// BS 8666 Table 2 bends 10, 16 and 20 mm about 4 d and 7 d: each of these formers is below that
const BARS = [
  ["B1", "1", "H10", "11", 600, 500, 10, 1075, 30],
  ["B1", "2", "H16", "11", 600, 500, 10, 1050, 60],
  ["B1", "3", "H20", "11", 600, 500, 10, 1050, 100],
  ["B1", "4", "H10", "51", 300, 200, 10, 1075, 30],
];

/** More of a kind than a call takes arguments: each list of the bars of a kind is that long. */
const OFTEN = 160_000;

it("a list of 160,000 rows of a kind is judged row by row as one of four rows is", () => {
  const [first = []] = BARS;
  const rows = [...Array.from({ length: OFTEN }, () => first), ...BARS];
  const told = (list: typeof rows) =>
    runAudit({ sheets: [sheetFromRows("List", [HEADS, ...list])], standard: heldStandard("BS8666:2005") });
  const { rows: counted, findings } = told(rows);
  expect(counted.bars).toBe(rows.length);
  const ofFormers = (row: number) =>
    findings.filter((one) => one.row === row && one.code === "BEND101").map(({ message }) => message);
  const few = told(BARS).findings.filter(({ code }) => code === "BEND101");
  expect(few).toHaveLength(4);
  for (const { row, message } of few) expect(ofFormers((row ?? 0) + OFTEN)).toEqual([message]);
});
