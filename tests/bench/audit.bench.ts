import { RULES } from "../../core/audit/rules/index";
import { openAudit, recheck, runAudit } from "../../core/audit/run-audit";
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

/** The rules that an audit began with: those of the bar's own lengths, limits, counts and masses. */
const FIRST_RULES: ReadonlySet<string> = new Set([
  "former-too-small",
  "end-leg-short",
  "hook-tail-short",
  "straight-between-bends-short",
  "bends-overlap",
  "unknown-size",
  "unknown-shape",
  "unknown-grade",
  "dimension-missing",
  "dimension-extra",
  "dimension-off-step",
  "dimension-not-positive",
  "shape-limit-broken",
  "length-off-step",
  "length-differs",
  "total-differs",
  "mass-differs",
  "longer-than-stock",
  "wider-than-transport",
  "mark-repeated-otherwise",
  "many-bends",
  "radius-supplied-straight",
  "heavier-than-lift",
  "unit-slip-ten",
  "unit-slip-thousand",
]);

const bench: Bench = {
  name: "audit of a 100,000 x 19 matrix, all rules on",
  async run() {
    const standard = resolveStandard("BS8666:2005");
    if (isRefusal(standard)) throw new Error("no standard");
    const { matrix, planted } = seededSchedule(ROWS);
    const sheet = sheetFromRows("Schedule", matrix);
    const reading = best(() => readSchedule(sheet, standard));
    const rules = RULES.filter(({ name }) => FIRST_RULES.has(name));
    if (rules.length !== FIRST_RULES.size) throw new Error("a rule of the bench is no rule any longer");
    const first = best(() => runAudit({ sheets: [sheet], standard, rules }));
    const audit = best(() => runAudit({ sheets: [sheet], standard }));
    const report = runAudit({ sheets: [sheet], standard });
    const rowsFound = new Set(report.findings.map(({ row }) => row)).size;
    return {
      figures: {
        rows: report.rows.bars,
        "rows with a planted mistake": planted,
        "rows with findings": rowsFound,
        "reading, ms of processor": Math.round(reading),
        "reading, rows a second": perSecond(reading),
        "reading and 25 rules, rows a second": perSecond(first),
        [`reading and all ${RULES.length} rules, rows a second`]: perSecond(audit),
        "re-check after one edit in 10,000 rows, ms of processor": Math.round(editTime(standard) * 10) / 10,
      },
    };
  },
};

export default bench;

/** The median time of a re-check after one cell changed. */
function editTime(standard: Standard): number {
  const { matrix } = seededSchedule(ROWS_OF_AN_EDITED_SHEET);
  let audit = openAudit({ sheets: [sheetFromRows("Schedule", matrix)], standard });
  const times: number[] = [];
  for (let edit = 0; edit < EDITS; edit += 1) {
    const row = 100 + edit * 450;
    const changed = edited(matrix, row, 8, 1000 + 5 * edit);
    times.push(processorTime(() => (audit = recheck(audit, changed, row, row))));
  }
  return times.sort((a, b) => a - b)[EDITS >> 1] ?? 0;
}

function edited(matrix: readonly Cell[][], row: number, column: number, to: Cell): Sheet {
  const rows = matrix.slice();
  rows[row] = (matrix[row] ?? []).map((cell, place) => (place === column ? to : cell));
  return sheetFromRows("Schedule", rows);
}

function perSecond(ms: number): number {
  return Math.round((1000 * ROWS) / ms);
}

function best(run: () => unknown): number {
  let least = Infinity;
  for (let at = 0; at < RUNS; at += 1) least = Math.min(least, processorTime(run));
  return least;
}

/** ms of the processor, which a busy machine stretches less than the clock; garbage collection counts. */
function processorTime(run: () => unknown): number {
  const start = process.cpuUsage();
  run();
  const { user, system } = process.cpuUsage(start);
  return (user + system) / 1000;
}
