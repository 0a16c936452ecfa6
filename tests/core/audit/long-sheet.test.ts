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

/** Each row held against all others of as many shapes would be a thousand million steps. */
const SHAPES = 30_000;

it("a list of 30,000 rows, each with a sketch of its own, is judged in as many steps as it has rows", () => {
  const heads = ["Member", "Mark", "Size", "Shape", "A", "B", "Total no.", "Length mm"];
  const rows = Array.from({ length: SHAPES }, (_, at) => [
    ...["B1", `${at + 1}`, "H16", `see sketch ${at + 1} on drawing`, 600, 400, 10, 1000],
  ]);
  const { rows: counted, findings } = runAudit({
    sheets: [sheetFromRows("List", [heads, ...rows])],
    standard: heldStandard("BS8666:2005"),
  });
  expect(counted.bars).toBe(SHAPES);
  expect(findings.length).toBeLessThan(100);
});
