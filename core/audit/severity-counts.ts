import { type Finding, type Outcome, rowsBehind, SEVERITIES, type Severity } from "./finding";

export type SeverityCounts = Readonly<Record<Severity, Readonly<Record<Outcome, number>>>>;

/** Findings by severity and by whether they are sure. */
export function severityCounts(findings: readonly Finding[]): SeverityCounts {
  return counts(findings, (found) => found.length);
}

/** Rows with a finding, by severity and by whether it is sure; a sheet-wide finding counts as one row. */
export function rowCounts(findings: readonly Finding[]): SeverityCounts {
  return counts(findings, (found) => new Set(found.flatMap(placesOf)).size);
}

/**
 * Severities with their counts, the worst first; what is not sure is called so, and a note is no alarm.
 *
 * @example severityCountWords(severityCounts(findings)) // 0 unsafe, 1 perhaps unsafe, 0 unbendable, 2 off-standard, 0 doubtful
 */
export function severityCountWords(of: SeverityCounts): string {
  return SEVERITIES.filter((severity) => severity !== "note")
    .flatMap((severity) => {
      const { broken, unsure } = of[severity];
      return [`${broken} ${severity}`, ...(unsure === 0 ? [] : [`${unsure} perhaps ${severity}`])];
    })
    .join(", ");
}

function placesOf(finding: Finding): readonly string[] {
  const rows = rowsBehind(finding);
  return rows.length === 0 ? [finding.sheet] : rows.map((row) => `${row} ${finding.sheet}`);
}

function counts(findings: readonly Finding[], count: (found: readonly Finding[]) => number): SeverityCounts {
  const of = (severity: Severity) => ({
    broken: count(findings.filter((one) => one.severity === severity && one.outcome === "broken")),
    unsure: count(findings.filter((one) => one.severity === severity && one.outcome === "unsure")),
  });
  return {
    unsafe: of("unsafe"),
    unbendable: of("unbendable"),
    "off-standard": of("off-standard"),
    doubtful: of("doubtful"),
    note: of("note"),
  };
}
