import type { Finding } from "../audit/finding";
import { runAudit } from "../audit/run-audit";
import { type Cell, sheetFromRows } from "../schedule/sheet";
import { resolveStandard } from "../standards/index";
import { defineRefusal, isRefusal } from "../units/refusal";
import { STANDARD_ARGUMENT } from "./bar-arguments";
import { errorCell, isBlankCell } from "./lift";
import type { Block, WorksheetFunction } from "./worksheet-function";

const noHeader = defineRefusal(
  "schedule-has-no-header",
  "value",
  "no header row was found in the {rows} rows: give the schedule with the row that names its columns, such as {words}",
);

const WORDS_NAMED = 4;

/**
 * BAR.CHECK: one row for each row of the schedule, from its first to its last that is not blank. The
 * first says `verdict`; a bar says `ok` or `severity: message`, the worst first; other rows are blank.
 * Refuses a range in which no header is found.
 */
export const CHECK: WorksheetFunction = {
  name: "CHECK",
  description:
    "Verdict on every bar of a schedule: ok, or the severity and message of each finding, the worst first",
  args: [
    {
      name: "schedule",
      description: "The schedule with its header row",
      optional: false,
      lifts: "table",
    },
    STANDARD_ARGUMENT,
  ],
  call([schedule = [], standardGiven], environment) {
    const typed = standardGiven?.[0]?.[0] ?? null;
    const standard = resolveStandard(isBlankCell(typed) ? environment.defaultStandard : String(typed));
    if (isRefusal(standard)) return [[errorCell(standard)]];
    const rows = withoutBlankEnd(schedule);
    const report = runAudit({ sheets: [sheetFromRows("schedule", rows)], standard });
    const reading = report.sheets[0]?.reading;
    if (reading === undefined || reading.noHeader !== null || reading.bars.length === 0) {
      const words = (reading?.noHeader?.lookedFor ?? []).slice(0, WORDS_NAMED).join(", ");
      return [[errorCell(noHeader({ rows: rows.length, words }))]];
    }
    const verdicts: Cell[][] = rows.map(() => [null]);
    for (const { row } of reading.bars) verdicts[row] = ["ok"];
    for (const [row, said] of findingsByRow(report.findings)) {
      if (reading.rowClasses[row] === "bar") verdicts[row] = [said.join("; ")];
    }
    verdicts[0] = ["verdict"];
    return verdicts;
  },
};

function withoutBlankEnd(block: Block): Block {
  let end = block.length;
  while (end > 1 && (block[end - 1] ?? []).every(isBlankCell)) end -= 1;
  return block.slice(0, end);
}

/** Findings stand in order of row and severity already. */
function findingsByRow(findings: readonly Finding[]): ReadonlyMap<number, string[]> {
  const byRow = new Map<number, string[]>();
  for (const { row, severity, message } of findings) {
    if (row === null) continue;
    const said = `${severity}: ${message}`;
    const known = byRow.get(row - 1);
    if (known === undefined) byRow.set(row - 1, [said]);
    else known.push(said);
  }
  return byRow;
}
