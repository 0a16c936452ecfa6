import type { AuditReport } from "../../core/audit/audit-report";
import { type Finding, SEVERITIES } from "../../core/audit/finding";
import { doubtWords, severityWords } from "../../core/audit/finding-words";
import { notToldSummary } from "../../core/audit/not-told-words";
import { severityCounts, severityCountWords } from "../../core/audit/severity-counts";
import type { Sheet } from "../../core/schedule";
import { reckonTonnage } from "../../core/totals/reckon-tonnage";
import type { Streams } from "./streams";

/** What is certain of a severity, then what is perhaps so. */
const GROUPS = SEVERITIES.flatMap((severity) => [
  severityWords({ severity, outcome: "broken" }),
  ...(severity === "note" ? [] : [severityWords({ severity, outcome: "unsure" })]),
]);

/** Findings grouped by severity, the worst first, and a line that sums up. */
export function printFindings(report: AuditReport, sheets: readonly Sheet[], streams: Streams): void {
  for (const title of GROUPS) {
    const found = report.findings.filter((finding) => severityWords(finding) === title);
    if (found.length === 0) continue;
    streams.result(`${title.toUpperCase()} (${found.length})`);
    const width = found.reduce((most, finding) => Math.max(most, Math.min(28, placeOf(finding).length)), 0);
    for (const finding of found) {
      const message = `${finding.message}${doubtWords(finding)}`;
      streams.result(`  ${placeOf(finding).padEnd(width)}  ${message}  [${finding.code}]`);
      if (finding.fix !== null) {
        const review = finding.fix.safety === "safe" ? "" : " (review)";
        streams.result(`  ${"".padEnd(width)}  -> ${finding.fix.label}${review}`);
      }
    }
    streams.result("");
  }
  streams.result(summary(report, sheets));
}

/** Where a finding stands: "Sheet!F12", or the sheet alone. */
export function placeOf({ sheet, cell }: Finding): string {
  return cell === null ? sheet : `${sheet}!${cell}`;
}

function summary(report: AuditReport, sheets: readonly Sheet[]): string {
  const { bars, unread } = report.rows;
  const unreadRows = unread === 0 ? "" : `, ${unread} rows not read`;
  const notTold = notToldSummary(report.waivers);
  const read = report.sheets.flatMap(({ sheet: name, reading }) => {
    const sheet = sheets.find((one) => one.name === name);
    return sheet === undefined ? [] : [{ sheet, reading }];
  });
  // as the totals count them: without bars struck through or superseded
  const { total } = reckonTonnage(read, report.standard).tonnage;
  return (
    `${report.standard.id}: ${bars} bar rows checked${unreadRows}; ` +
    `${severityCountWords(severityCounts(report.findings))}; ${report.findings.length} findings in all` +
    `${notTold === null ? "" : `; ${notTold}`}; ${total.toFixed(3)} t`
  );
}
