import { auditSettings } from "../../../core/audit/audit-settings";
import type { Finding } from "../../../core/audit/finding";
import { runAudit } from "../../../core/audit/run-audit";
import { CORPUS } from "../corpus";
import { findingsOn, standardOf } from "../corpus-findings";
import type { CorpusSchedule } from "../corpus-schedule";
import { seeded } from "../seeded";
import type { Mistake, Planted } from "./mistake";
import { MISTAKES } from "./mistakes";

/** How a kind of mistake fared. */
export interface KindResult {
  readonly mistake: Mistake;
  readonly planted: number;
  readonly found: number;
  /** plantings that were missed, in words */
  readonly missed: readonly string[];
}

/** What the audit finds of what was planted, and what it says where nothing was. */
export interface AuditQuality {
  readonly kinds: readonly KindResult[];
  /** rows of the clean schedules, and findings above a note on them */
  readonly cleanRows: number;
  readonly cleanAlarms: readonly string[];
  /** untouched rows beside planted mistakes, without those that alter every row, and findings above a note on them */
  readonly besideRows: number;
  readonly besideAlarms: readonly string[];
}

const PLANTINGS = 10;
const MOST_TRIES = 400;
/** of a schedule that a mistake is put into: enough to show its habits, and quickly judged */
const BARS = 26;
const CODED = new Set(["uk-culvert", "uk-stair-2020"]);

/** Plants every kind of mistake in clean schedules by fixed seeds and counts hits by rule and cell. */
export function measureAuditQuality(): AuditQuality {
  const clean = CORPUS.filter(({ isClean }) => isClean);
  const hosts = clean.map((schedule) => {
    const bars = schedule.bars.slice(0, BARS);
    // the sums of a longer list are not those of its first bars
    return { ...schedule, bars, foot: bars.length < schedule.bars.length ? [] : schedule.foot };
  });
  const besideAlarms: string[] = [];
  let besideRows = 0;
  const kinds = MISTAKES.map((mistake) => {
    const random = seeded(7000 + mistake.number);
    const missed: string[] = [];
    let planted = 0;
    for (let tries = 0; tries < MOST_TRIES && planted < PLANTINGS; tries += 1) {
      const schedule = random.pick(hosts.filter((one) => CODED.has(one.name) || mistake.isGeneral === true));
      const at = random.between(1, schedule.bars.length - 2);
      const bar = schedule.bars[at];
      if (bar === undefined) continue;
      const mutant = mistake.plant({ schedule, at, bar, random });
      if (mutant === null) continue;
      planted += 1;
      const findings = auditOf(schedule, mutant);
      if (!findings.some((finding) => isHit(finding, mistake, mutant))) {
        missed.push(`${schedule.name}: ${saidOfRow(findings, mutant)}`);
      }
      // a yard's machines and a factor on every mass alter the other rows too
      if (mistake.judgedBy !== "sheet" && !mutant.sheets.some(({ name }) => name === "Shop")) {
        besideRows += schedule.bars.length - mutant.touched.length;
        besideAlarms.push(
          ...alarmsBeside(findings, mutant).map((alarm) => `${mistake.number} in ${schedule.name}, ${alarm}`),
        );
      }
    }
    return { mistake, planted, found: planted - missed.length, missed };
  });
  const cleanAlarms = clean.flatMap((schedule) =>
    findingsOn(schedule)
      .findings.filter(({ severity }) => severity !== "note")
      .map((finding) => `${schedule.name} ${wordsOf(finding)}`),
  );
  const cleanRows = clean.reduce((sum, { bars }) => sum + bars.length, 0);
  return { kinds, cleanRows, cleanAlarms, besideRows, besideAlarms };
}

function auditOf(schedule: CorpusSchedule, { sheets, limits }: Planted): readonly Finding[] {
  const settings = auditSettings.parse({ limits: limits ?? {} });
  return runAudit({ sheets, standard: standardOf(schedule.standard), settings }).findings;
}

function isHit(finding: Finding, { rules, judgedBy }: Mistake, { hit }: Planted): boolean {
  if (!rules.includes(finding.code)) return false;
  if (judgedBy === "sheet" || hit === null) return true;
  if (finding.sheet !== hit.sheet || finding.row !== hit.row) return false;
  return judgedBy === "row" || hit.cells.includes(finding.cell ?? "");
}

/** Findings above a note on rows of the schedule that the mistake does not touch. */
function alarmsBeside(findings: readonly Finding[], { touched }: Planted): string[] {
  return findings
    .filter(({ sheet, severity }) => sheet === "Schedule" && severity !== "note")
    .filter(({ row, outcome }) => row !== null && outcome === "broken" && !touched.includes(row))
    .map(wordsOf);
}

function saidOfRow(findings: readonly Finding[], { hit }: Planted): string {
  const said = findings.filter(({ sheet, row }) => hit !== null && sheet === hit.sheet && row === hit.row);
  return `expected in ${hit?.cells.join(" or ") ?? "the sheet"}, said ${said.map(wordsOf).join("; ") || "nothing"}`;
}

function wordsOf({ code, cell, message }: Finding): string {
  return `${code} ${cell}: ${message}`;
}
