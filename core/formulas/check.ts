import type { Finding } from "../audit/finding";
import { severityWords } from "../audit/finding-words";
import { holdsShapeCodes } from "../audit/holds-shape-codes";
import { runAudit } from "../audit/run-audit";
import type { ScheduleReading } from "../schedule/bar-row";
import { type Cell, sheetFromRows } from "../schedule/sheet";
import { shapeNamed } from "../shapes/shape-named";
import type { Standard } from "../standards/port";
import { defineRefusal, isRefusal } from "../units/refusal";
import { STANDARD_ARGUMENT } from "./bar-arguments";
import { errorCell, isBlankCell } from "./lift";
import { standardOfTable } from "./table-arguments";
import type { Block, WorksheetFunction } from "./worksheet-function";

const noHeader = defineRefusal(
  "schedule-has-no-header",
  "value",
  "no header row was found (rows read: {rows}): give the schedule with the row that names its columns, such as {words}",
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
    const asked = standardOfTable("CHECK", standardGiven, environment);
    if ("error" in asked) return asked.error;
    const rows = withoutBlankEnd(schedule);
    const report = runAudit({ sheets: [sheetFromRows("schedule", rows)], standard: asked.standard });
    const reading = report.sheets[0]?.reading;
    if (reading === undefined || !(reading.bars.length > 0 || isEmptyForm(reading))) {
      const words = (reading?.noHeader?.lookedFor ?? []).slice(0, WORDS_NAMED).join(", ");
      return [[errorCell(noHeader({ rows: rows.length, words }))]];
    }
    const verdicts: Cell[][] = rows.map(() => [null]);
    for (const { row, shape } of reading.bars) verdicts[row] = [verdictWithout(shape, asked.standard)];
    for (const [row, said] of findingsByRow(report.byRow)) {
      if (reading.rowClasses[row] === "bar") verdicts[row] = [said.join("; ")];
    }
    verdicts[0] = ["verdict"];
    return verdicts;
  },
};

/** Of a bar without a finding: a shape that the standard has no list of was not checked, so it is not ok. */
function verdictWithout(shape: string | null, standard: Standard): string {
  if (shape === null || holdsShapeCodes(standard) || !isRefusal(shapeNamed(standard, shape))) return "ok";
  return `note: shape ${shape} was not checked: ${standard.id} holds no list of shapes, write it as a path`;
}

/** A header with nothing under it yet but blanks and sums. */
function isEmptyForm({ tables, rowClasses }: ScheduleReading): boolean {
  const below = rowClasses.slice(rowClasses.lastIndexOf("heading") + 1);
  const isForm = tables.some(({ columns }) => columns.has("size"));
  return isForm && below.every((kind) => kind === "blank" || kind === "total");
}

function withoutBlankEnd(block: Block): Block {
  let end = block.length;
  while (end > 1 && (block[end - 1] ?? []).every(isBlankCell)) end -= 1;
  return block.slice(0, end);
}

/** Findings stand in order of row and severity already. */
function findingsByRow(findings: readonly Finding[]): ReadonlyMap<number, string[]> {
  const byRow = new Map<number, string[]>();
  for (const finding of findings) {
    const { row } = finding;
    if (row === null) continue;
    const said = `${severityWords(finding)}: ${finding.message}`;
    const known = byRow.get(row - 1);
    if (known === undefined) byRow.set(row - 1, [said]);
    else known.push(said);
  }
  return byRow;
}
