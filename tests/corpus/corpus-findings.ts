import type { Finding } from "../../core/audit/finding";
import { runAudit } from "../../core/audit/run-audit";
import { resolveStandard } from "../../core/standards/index";
import type { Standard } from "../../core/standards/port";
import { isRefusal } from "../../core/units/refusal";
import { sheetOfBytes } from "./corpus-bytes";
import type { CorpusSchedule } from "./corpus-schedule";

/** What an audit says of one schedule, as it is kept for review. */
export interface KeptFindings {
  readonly standard: string;
  readonly bars: number;
  /** one line a rule and outcome; "sheet" stands for a finding about no one cell */
  readonly findings: readonly { readonly code: string; readonly outcome: string; readonly cells: string }[];
}

/** All findings on the bytes of a schedule. */
export function findingsOn(schedule: CorpusSchedule): { bars: number; findings: readonly Finding[] } {
  const { rows, findings } = runAudit({
    sheets: [sheetOfBytes(schedule)],
    standard: standardOf(schedule.standard),
  });
  return { bars: rows.bars, findings };
}

export function keptFindings(schedule: CorpusSchedule): KeptFindings {
  const { bars, findings } = findingsOn(schedule);
  const cells = new Map<string, string[]>();
  for (const { code, outcome, cell } of findings) {
    const key = `${code} ${outcome}`;
    cells.set(key, [...(cells.get(key) ?? []), cell ?? "sheet"]);
  }
  return {
    standard: schedule.standard,
    bars,
    findings: [...cells].sort().map(([key, places]) => {
      const [code = "", outcome = ""] = key.split(" ");
      return { code, outcome, cells: places.join(" ") };
    }),
  };
}

export function standardOf(id: string): Standard {
  const standard = resolveStandard(id);
  if (isRefusal(standard)) throw new RangeError(`no standard ${id}`);
  return standard;
}
