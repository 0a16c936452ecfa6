import { doubtLead } from "../../../core/audit/finding-words";
import type { FindingView } from "../engine/audit-view";
import { SEVERITY_WORDS } from "../panels/check/severity-words";

const HEADER = ["Severity", "Sheet", "Row", "Cell", "Member", "Rule", "Finding", "Remedy", "Source"];

/** Findings as tab-separated text, a header line first, to be pasted into a sheet or a message. */
export function findingsTable(findings: readonly FindingView[]): string {
  const lines = findings.map((finding) => [
    SEVERITY_WORDS[finding.severity].word,
    finding.sheet,
    finding.row === null ? "" : String(finding.row),
    finding.cell ?? "",
    finding.member ?? "",
    `${finding.code} ${finding.rule}`,
    `${doubtLead(finding)}${finding.message}`,
    finding.fix?.label ?? "",
    finding.source ?? "",
  ]);
  return [HEADER, ...lines].map((line) => line.map(asCell).join("\t")).join("\r\n");
}

/** One line, and never a formula of the sheet it is pasted into. */
function asCell(text: string): string {
  const line = text.replace(/\s+/g, " ").trim();
  return /^[=+\-@]/.test(line) ? `'${line}` : line;
}
