import { SEVERITIES } from "../../core/audit/finding";
import { doubtWords, severityWords } from "../../core/audit/finding-words";
import { notToldLine, notToldSummary } from "../../core/audit/not-told-words";
import { severityCounts, severityCountWords } from "../../core/audit/severity-counts";
import type { CheckedBook, CheckReport, ToldFinding, TonnageReport } from "../../core/jobs";
import { counted } from "../../core/units/counted";
import type { Weight } from "./heading-colour";
import type { Streams } from "./streams";

/** What is certain of a severity, then what is perhaps so. */
const GROUPS = SEVERITIES.flatMap((severity) => [
  severityWords({ severity, outcome: "broken" }),
  ...(severity === "note" ? [] : [severityWords({ severity, outcome: "unsure" })]),
]);

/** Findings grouped by severity, the worst first, and a line that sums up. */
export function printFindings(checked: CheckedBook, bars: number, streams: Streams): void {
  printGroups(checked.report.findings, streams);
  // who waived what, and why, stands above
  printSummary(checked, bars, streams, notToldSummary(checked.report.waivers));
}

/** The line that sums up `bars` of a book. */
export function printSummary(
  { report, tonnage }: CheckedBook,
  bars: number,
  streams: Streams,
  notTold = notToldLine(report.waivers),
): void {
  const { held, notInTotal, tonnage: sums } = tonnage;
  const total = held === null ? sums.total : null;
  streams.result(
    summaryWords(
      { ...report, rows: { ...report.rows, bars }, standard: report.standard.id },
      { total, notInTotal },
      notTold,
    ),
  );
}

/** Findings grouped by severity, the worst first. */
export function printGroups(findings: readonly ToldFinding[], streams: Streams): void {
  for (const title of GROUPS) {
    const found = findings.filter((finding) => severityWords(finding) === title);
    if (found.length === 0) continue;
    streams.result(`${title.toUpperCase()} (${found.length})`, weightOf(found[0]!));
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
}

function weightOf({ severity, outcome }: ToldFinding): Weight {
  if (outcome === "unsure" || severity === "doubtful" || severity === "note") return "lesser";
  return severity === "off-standard" ? "contrary" : "grave";
}

/** Where a finding stands: "Sheet!F12", or the sheet alone. */
export function placeOf({ sheet, cell }: Pick<ToldFinding, "sheet" | "cell">): string {
  return cell === null ? sheet : `${sheet}!${cell}`;
}

/** A line that sums up a book's audit. */
export function summaryWords(
  { standard, rows, findings }: Pick<CheckReport, "standard" | "rows" | "findings">,
  { total, notInTotal }: Pick<TonnageReport, "total" | "notInTotal">,
  notTold: string | null,
): string {
  const unreadRows = rows.unread === 0 ? "" : `, ${counted(rows.unread, "row")} not read`;
  return (
    `${standard}: ${counted(rows.bars, "bar row")} checked${unreadRows}; ` +
    `${severityCountWords(severityCounts(findings))}; ${counted(findings.length, "finding")} in all` +
    `${notTold === null ? "" : `; ${notTold}`}; ${tonnesWords({ total, notInTotal })}`
  );
}

/** What a book weighs, and how many of its rows are not in that. */
export function tonnesWords({ total, notInTotal }: Pick<TonnageReport, "total" | "notInTotal">): string {
  const out = notInTotal.length === 0 ? "" : `, ${counted(notInTotal.length, "row")} not in the total`;
  return `${total === null ? "no total, it is held back" : `${total.toFixed(3)} t`}${out}`;
}
