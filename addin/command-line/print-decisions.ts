import type { AuditReport, AuditSettings, NotTold, Waiver } from "../../core/audit";
import { decidedWords } from "../../core/audit/decided-words";
import { LIMIT_WORDS } from "../../core/audit/limit-words";
import { hiddenWords, notToldSummary } from "../../core/audit/not-told-words";
import { ruleWords } from "../../core/audit/rule-words";
import { placeOf } from "./print-findings";
import type { Streams } from "./streams";

/** What somebody decided on how the workbook is checked: findings waived, rules turned off, limits changed. */
export function printDecisions(report: AuditReport, settings: AuditSettings, streams: Streams): void {
  const waivers = settings.waivers.flatMap((waiver) => waiverLines(waiver, report));
  section("WAIVED", settings.waivers.length, waivers, streams);
  const off = report.waivers.filter(({ because }) => because.kind === "rule off");
  const rules = off.flatMap((each) => [`  ${each.rule}  ${ruleWords(each.rule)}`, ...underLines(each)]);
  section("RULES TURNED OFF", off.length, rules, streams);
  const limits = report.waivers.flatMap((each) =>
    each.because.kind === "limit" ? limitLines(each, each.because) : [],
  );
  section("LIMITS CHANGED", limits.length / 2, limits, streams);
}

/** Says in notes that something is not told, and that the exit code does not count it. */
export function noteDecisions(report: AuditReport, streams: Streams): void {
  const summary = notToldSummary(report.waivers);
  if (summary !== null) streams.note(`${summary}: each with its reason, name and date in the result`);
  const waived = report.waivers
    .flatMap(({ findings }) => findings)
    .filter(({ outcome }) => outcome === "broken");
  const count = (severity: string) => waived.filter((finding) => finding.severity === severity).length;
  const unsafe = count("unsafe");
  const unbendable = count("unbendable");
  if (unsafe + unbendable > 0)
    streams.note(`not counted in the exit code: ${unsafe} unsafe and ${unbendable} unbendable, not told`);
}

function section(title: string, count: number, lines: readonly string[], streams: Streams): void {
  if (count === 0) return;
  streams.result(`${title} (${count})`);
  for (const line of lines) streams.result(line);
  streams.result("");
}

function waiverLines(waiver: Waiver, report: AuditReport): string[] {
  const { code, sheet, key } = waiver;
  const known = report.waivers.find(({ because }) => because.kind === "waiver" && because.waiver === waiver);
  const said = (known?.findings ?? []).map(
    (finding) => `  ${placeOf(finding)}  ${finding.message}  [${code}]`,
  );
  if (said.length === 0) {
    const row = key === null ? "" : `, ${key}`;
    said.push(`  ${sheet}${row}  ${unusedWords(waiver, report)}  [${code} ${ruleWords(code)}]`);
  }
  return [...said, `      ${decidedWords(waiver)}`];
}

function limitLines(each: NotTold, { limit, value }: { limit: string; value: number }): string[] {
  const words = LIMIT_WORDS.find(({ name }) => name === limit);
  return [`  ${words?.words.toLowerCase()}: ${value} ${words?.unit}`, ...underLines(each)];
}

function underLines(each: NotTold): string[] {
  return [`      ${decidedWords(each)} (${hiddenWords(each)})`];
}

function unusedWords(waiver: Waiver, report: AuditReport): string {
  const isChecked =
    report.shopSheet === waiver.sheet || report.sheets.some(({ sheet }) => sheet === waiver.sheet);
  return isChecked ? "no longer applies: delete it" : "its sheet was not checked";
}
