import type { AuditReport, AuditSettings, Silence } from "../../core/audit";
import { LIMIT_WORDS } from "../../core/audit/limit-words";
import { ruleWords } from "../../core/audit/rule-words";
import { placeOf } from "./print-findings";
import type { Streams } from "./streams";

/** What the workbook's user decided on how it is checked: findings silenced, rules turned off, limits changed. */
export function printDecisions(report: AuditReport, settings: AuditSettings, streams: Streams): void {
  const silences = settings.silences.flatMap((silence) => silenceLines(silence, report, settings));
  section("SILENCED", settings.silences.length, silences, streams);
  const rules = settings.rulesOff.map((code) => `  ${code}  ${ruleWords(code)}`);
  section("RULES TURNED OFF", rules.length, rules, streams);
  const limits = LIMIT_WORDS.flatMap(({ name, words, unit }) => {
    const value = settings.limits[name];
    return value === null ? [] : [`  ${words.toLowerCase()}: ${value} ${unit}`];
  });
  section("LIMITS CHANGED", limits.length, limits, streams);
}

function section(title: string, count: number, lines: readonly string[], streams: Streams): void {
  if (count === 0) return;
  streams.result(`${title} (${count})`);
  for (const line of lines) streams.result(line);
  streams.result("");
}

function silenceLines(silence: Silence, report: AuditReport, { rulesOff }: AuditSettings): string[] {
  const { code, sheet, key, reason } = silence;
  const hidden = report.silenced.filter((each) => each.silence === silence);
  const said = hidden.map(({ finding }) => `  ${placeOf(finding)}  ${finding.message}  [${code}]`);
  if (said.length === 0) {
    const row = key === null ? "" : `, ${key}`;
    said.push(`  ${sheet}${row}  ${unusedWords(silence, report, rulesOff)}  [${code} ${ruleWords(code)}]`);
  }
  return [...said, `      reason: ${reason.replace(/\s+/g, " ")}`];
}

function unusedWords(silence: Silence, report: AuditReport, rulesOff: readonly string[]): string {
  if (rulesOff.includes(silence.code)) return "its rule is turned off";
  const isChecked =
    report.shopSheet === silence.sheet || report.sheets.some(({ sheet }) => sheet === silence.sheet);
  return isChecked ? "no longer applies: delete it" : "its sheet was not checked";
}
