import { recheck, runAudit } from "../../core/audit/run-audit";
import { readSchedule } from "../../core/schedule/read-schedule";
import { type Cell, type Sheet, sheetFromRows } from "../../core/schedule/sheet";
import { resolveStandard } from "../../core/standards/index";
import type { Standard } from "../../core/standards/port";
import { isRefusal } from "../../core/units/refusal";
import type { Bench } from "./bench";
import { seededSchedule } from "./seeded-schedule";

const ROWS = 100_000;
const ROWS_OF_AN_EDITED_SHEET = 10_000;
const RUNS = 5;
const EDITS = 20;

const bench: Bench = {
  name: "audit of a 100,000 x 19 matrix, all rules on",
  async run() {
    const standard = resolveStandard("BS8666:2005");
    if (isRefusal(standard)) throw new Error("no standard");
    const { matrix, planted } = seededSchedule(ROWS);
    const sheet = sheetFromRows("Schedule", matrix);
    const reading = best(() => readSchedule(sheet, standard));
    const audit = best(() => runAudit({ sheets: [sheet], standard }));
    const report = runAudit({ sheets: [sheet], standard });
    const rowsFound = new Set(report.findings.map(({ row }) => row)).size;
    return {
      figures: {
        rows: report.rows.bars,
        "rows with a planted mistake": planted,
        "rows with findings": rowsFound,
        "reading, ms": Math.round(reading),
        "reading and audit, ms": Math.round(audit),
        "rows a second": Math.round((1000 * ROWS) / audit),
        "re-check after one edit in 10,000 rows, ms": Math.round(editTime(standard) * 10) / 10,
      },
    };
  },
};

export default bench;

/** The median time of a re-check after one cell changed. */
function editTime(standard: Standard): number {
  const { matrix } = seededSchedule(ROWS_OF_AN_EDITED_SHEET);
  let report = runAudit({ sheets: [sheetFromRows("Schedule", matrix)], standard });
  const times: number[] = [];
  for (let edit = 0; edit < EDITS; edit += 1) {
    const row = 100 + edit * 450;
    const changed = edited(matrix, row, 8, 1000 + 5 * edit);
    const start = performance.now();
    report = recheck(report, changed, row, row);
    times.push(performance.now() - start);
  }
  return times.sort((a, b) => a - b)[EDITS >> 1] ?? 0;
}

function edited(matrix: readonly Cell[][], row: number, column: number, to: Cell): Sheet {
  const rows = matrix.slice();
  rows[row] = (matrix[row] ?? []).map((cell, place) => (place === column ? to : cell));
  return sheetFromRows("Schedule", rows);
}

function best(run: () => unknown): number {
  let least = Infinity;
  for (let at = 0; at < RUNS; at += 1) {
    const start = performance.now();
    run();
    least = Math.min(least, performance.now() - start);
  }
  return least;
}
