import { describe, expect, it } from "vitest";
import { openAudit, recheck, runAudit } from "../../../../core/audit/run-audit";
import { readSchedule } from "../../../../core/schedule/read-schedule";
import { type Cell, sheetFromRows } from "../../../../core/schedule/sheet";
import { heldStandard } from "../../../_support/held-standard";

// all rows are invented; the former of the third bar is too small for its size (BS 8666:2005, table 2)

const standard = heldStandard("BS8666:2005");
const BLANK = [null, null, null];
const HEADS = ["Bar mark", "Size", "Total no.", "Shape code", "Length mm", "A mm", "B mm", "Former mm"];
const LIST: Cell[][] = [
  ["Footing F1"],
  [],
  HEADS,
  ["01", "H16", 10, "00", 3000, 3000, null, null],
  ["02", "H16", 12, "00", 2400, 2400, null, null],
  ["03", "H20", 8, "11", 1950, 1000, 1000, 40],
  ["04", "H12", 20, "00", 5000, 5000, null, null],
].map((row) => [...BLANK, ...row]);
const HEADER = 2;
const BELOW = LIST.length + 1;

const sheetOf = (rows: readonly (readonly Cell[])[]) => sheetFromRows("S1", rows);
const withCells = (...typed: readonly (readonly [number, number, Cell])[]): Cell[][] => {
  const rows = Array.from({ length: BELOW + 1 }, (_, row) =>
    Array.from({ length: 16 }, (_, column) => LIST[row]?.[column] ?? null),
  );
  for (const [row, column, cell] of typed) (rows[row] as Cell[])[column] = cell;
  return rows;
};
const told = (rows: Cell[][]) =>
  runAudit({ standard, sheets: [sheetOf(rows)] })
    .findings.filter(({ severity }) => severity !== "note")
    .map(({ code, severity, cell }) => `${code} ${severity} ${cell}`);

describe("cells typed beside a table", () => {
  const beside: readonly (readonly [string, number, number])[] = [
    ["right of it, behind blank columns", HEADER, 14],
    ["right at its last column", HEADER, 11],
    ["left of it", HEADER, 1],
    ["right over its header", HEADER - 1, 14],
    ["below it", BELOW, 1],
  ];
  for (const [where, row, column] of beside)
    for (const cell of [7.5, 0, -3, 16, 45321, "seen", "12/03/2026"])
      it(`should leave the reading and its findings as they are: ${cell} ${where}`, () => {
        const rows = withCells([row, column, cell]);
        const { noHeader, bars, tables } = readSchedule(sheetOf(rows), standard);
        expect([noHeader, bars.length, tables[0]?.headerTop]).toEqual([null, 4, HEADER]);
        expect(told(rows)).toEqual(told(withCells()));
        expect(told(rows).some((one) => one.startsWith("BEND101 unsafe"))).toBe(true);
      });

  it("should not give a column's place to the same word that stands alone over blank cells", () => {
    const { bars } = readSchedule(sheetOf(withCells([HEADER, 0, "Mark"])), standard);
    expect(bars.map(({ mark }) => mark)).toEqual(["01", "02", "03", "04"]);
  });

  it("should keep a run of sizes that follows the words, with a number behind it", () => {
    const sizes = [8, 10, 12, 16];
    const head = ["Bar mark", "Size", "Total no.", "Length mm", ...sizes];
    const bar = ["01", "H12", 10, 3000, null, null, 26.64, null];
    const read = (beside: readonly Cell[]) =>
      readSchedule(sheetOf([[...head, null, ...beside], bar, ["02", ...bar.slice(1)]]), standard).tables[0];
    expect(read([7.5])?.bySize).toEqual(read([null])?.bySize);
    expect(read([7.5])?.bySize?.length).toBe(sizes.length);
  });

  it("should find after a paste beside the table what a whole check finds, nothing unsafe lost", () => {
    const before = openAudit({ standard, sheets: [sheetOf(withCells())] });
    const rows = withCells([HEADER - 1, 14, 7.5], [HEADER - 1, 15, "x"], [HEADER, 14, 8], [HEADER, 15, 3]);
    const after = recheck(before, sheetOf(rows), HEADER - 1, HEADER).report;
    expect(after.findings).toEqual(runAudit({ standard, sheets: [sheetOf(rows)] }).findings);
    expect(told(rows)).toEqual(told(withCells()));
  });
});
