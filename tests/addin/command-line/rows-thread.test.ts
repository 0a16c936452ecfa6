import { pathToFileURL } from "node:url";
import { describe, expect, it } from "vitest";
import { rowsHelper } from "../../../addin/command-line/rows-thread";
import { openWorkbook } from "../../../addin/xlsx/read/open-workbook";
import { writeNewWorkbook } from "../../../addin/xlsx/write/new-workbook";
import type { RowsHelper } from "../../../core/audit";
import { runAudit } from "../../../core/audit/run-audit";
import { barwrightBundle } from "../../_support/command-line";
import { heldStandard } from "../../_support/held-standard";

const HEADS = ["Member", "Mark", "Size", "Shape", "A", "B", "Total no.", "Length mm", "Former"];
// BS 8666 Table 2 bends 16 mm about 4 d: every seventh former is below that
const ROWS = Array.from({ length: 20_000 }, (_, at) => [
  ...[`B${at >> 5}`, `${at + 1}`, "H16", at % 5 === 0 ? "99x" : "11", 600 + (at % 40) * 5, 500, 10],
  ...[1050 + (at % 40) * 5, at % 7 === 0 ? 50 : 64],
]);

/** Findings with and without a second thread that runs `script`; whether it was begun. */
function told(helper: RowsHelper | null) {
  const book = openWorkbook(writeNewWorkbook({ sheets: [{ name: "List", rows: [HEADS, ...ROWS] }] }));
  const asked = { sheets: [book.read("List")], standard: heldStandard("BS8666:2005"), isOnce: true };
  return runAudit(helper === null ? asked : { ...asked, helper }).byRow;
}

describe("rowsHelper", () => {
  it("should have a second thread judge rows as one thread does", () => {
    const begun: number[] = [];
    const helper = rowsHelper(undefined, pathToFileURL(barwrightBundle()), 1000);
    const counted: RowsHelper = {
      begin: (rows, sheet) => {
        begun.push(rows.bars.places.length);
        return helper.begin(rows, sheet);
      },
    };
    const alone = told(null);
    expect(alone.filter(({ code }) => code === "BEND101").length).toBeGreaterThan(2000);
    expect(told(counted)).toEqual(alone);
    expect(begun).toEqual([ROWS.length]);
  });

  it("should leave short sheets to one thread", () => {
    const helper = rowsHelper(undefined, pathToFileURL("/no/such/program.mjs"));
    expect(told(helper)).toEqual(told(null));
  });

  it("should judge all rows here where the second thread cannot run", () => {
    const helper = rowsHelper(undefined, pathToFileURL("/no/such/program.mjs"), 1000);
    expect(told(helper)).toEqual(told(null));
  });
});
