import { type Finding, SEVERITIES } from "../../core/audit/finding";
import { doubtWords, severityWords } from "../../core/audit/finding-words";
import { notToldSummary } from "../../core/audit/not-told-words";
import { severityCounts, severityCountWords } from "../../core/audit/severity-counts";
import type { CheckedBook } from "../../core/jobs";
import type { Streams } from "./streams";

/** What is certain of a severity, then what is perhaps so. */
const GROUPS = SEVERITIES.flatMap((severity) => [
  severityWords({ severity, outcome: "broken" }),
  ...(severity === "note" ? [] : [severityWords({ severity, outcome: "unsure" })]),
]);

/** Findings grouped by severity, the worst first, and a line that sums up. */
export function printFindings(checked: CheckedBook, streams: Streams): void {
  const { report } = checked;
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
  streams.result(summary(checked));
}

/** Where a finding stands: "Sheet!F12", or the sheet alone. */
export function placeOf({ sheet, cell }: Finding): string {
  return cell === null ? sheet : `${sheet}!${cell}`;
}

function summary({ report, tonnage }: CheckedBook): string {
  const { bars, unread } = report.rows;
  const unreadRows = unread === 0 ? "" : `, ${unread} rows not read`;
  const notTold = notToldSummary(report.waivers);
  const { length: out } = tonnage.notInTotal;
  const notInTotal = out === 0 ? "" : `, ${out === 1 ? "1 row" : `${out} rows`} not in the total`;
  return (
    `${report.standard.id}: ${bars} bar rows checked${unreadRows}; ` +
    `${severityCountWords(severityCounts(report.findings))}; ${report.findings.length} findings in all` +
    `${notTold === null ? "" : `; ${notTold}`}; ${tonnage.held === null ? `${tonnage.tonnage.total.toFixed(3)} t` : "no total, it is held back"}${notInTotal}`
  );
}
