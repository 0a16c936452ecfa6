import { spawnSync } from "node:child_process";
import { existsSync, mkdtempSync, readFileSync, rmSync, statSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { openWorkbook } from "../../addin/xlsx/read/open-workbook";
import { type NewCell, writeNewWorkbook } from "../../addin/xlsx/write/new-workbook";
import type { Cell } from "../../core/schedule";
import { barwrightBundle } from "../_support/command-line";
import { findOffice, recalculateCommand } from "../_support/libre-office";
import type { Bench } from "./bench";
import { seededSchedule } from "./seeded-schedule";

const ROWS = 100_000;
const TIME = "/usr/bin/time";

interface Measured {
  readonly seconds: number;
  /** MB; null where GNU time is not installed */
  readonly peak: number | null;
}

/** `check --out` beside LibreOffice recalculating one plain formula a row of the same file. */
export default {
  name: "check a 100,000 x 19 workbook",
  async run() {
    const folder = mkdtempSync(join(tmpdir(), "barwright-bench-"));
    try {
      return { figures: measure(folder) };
    } finally {
      rmSync(folder, { recursive: true, force: true });
    }
  },
} satisfies Bench;

function measure(folder: string): Record<string, number | string> {
  const { matrix: rows, planted } = seededSchedule(ROWS);
  const plain = join(folder, "seeded.xlsx");
  writeFileSync(plain, writeNewWorkbook({ sheets: [{ name: "Schedule", rows, frozenRows: 1 }] }));
  const bundle = barwrightBundle();
  const copy = join(folder, "copy.xlsx");
  const runs = [0, 1].map(() => timed([process.execPath, bundle, "check", plain, "--json", "--out", copy]));
  const own = runs.reduce((best, run) => (run.seconds < best.seconds ? run : best));
  const figures: Record<string, number | string> = {
    "rows with a planted mistake": planted,
    "file, MB": round(statSync(plain).size / 1e6),
    "check --out, s": round(own.seconds),
    "check --out, peak MB": own.peak ?? "GNU time is not installed",
    "sheets of the copy": openWorkbook(readFileSync(copy)).sheets.length,
  };
  const office = findOffice();
  if (office === null) return { ...figures, LibreOffice: "skipped: soffice is not installed" };
  const withFormulas = join(folder, "formulas.xlsx");
  writeFileSync(withFormulas, writeNewWorkbook({ sheets: [{ name: "Schedule", rows: addFormula(rows) }] }));
  const out = join(folder, "out");
  const other = [0, 1]
    .map(() => timed(recalculateCommand(office, folder, withFormulas, out)))
    .reduce((best, run) => (run.seconds < best.seconds ? run : best));
  const recalculated = openWorkbook(readFileSync(join(out, "formulas.xlsx")))
    .read("Schedule")
    .valueAt(ROWS, 19);
  if (typeof recalculated !== "number" || recalculated <= 0)
    throw new Error("LibreOffice did not recalculate");
  return {
    ...figures,
    "LibreOffice, s": round(other.seconds),
    "LibreOffice, peak MB": other.peak ?? "GNU time is not installed",
    "time, ours / LibreOffice": round(own.seconds / other.seconds),
    "memory, ours / LibreOffice":
      own.peak === null || other.peak === null ? "" : round(own.peak / other.peak),
  };
}

/** One plain cut-length formula a row, its stored result wrong on purpose so that it must be computed. */
function* addFormula(rows: readonly Cell[][]): Generator<(Cell | NewCell)[]> {
  for (const [index, row] of rows.entries()) {
    const at = index + 1;
    const formula = `CEILING(I${at}+J${at}+K${at}-0.5*L${at}-32,25)`;
    yield index === 0 ? [...row, "cut"] : [...row, { value: 0, formula }];
  }
}

function timed(command: readonly string[]): Measured {
  const hasTime = existsSync(TIME);
  const [program, ...args] = hasTime ? [TIME, "-v", ...command] : command;
  const start = performance.now();
  const run = spawnSync(program!, args, { maxBuffer: 1024 * 1024 * 1024 });
  const seconds = (performance.now() - start) / 1000;
  const words = run.stderr.toString();
  if (run.status !== 0 && run.status !== 1) throw new Error(`${command.join(" ")}: ${words.slice(0, 2000)}`);
  const peak = /Maximum resident set size \(kbytes\): (\d+)/.exec(words);
  return { seconds, peak: peak === null ? null : Math.round(Number(peak[1]) / 1024) };
}

function round(value: number): number {
  return Math.round(value * 100) / 100;
}
