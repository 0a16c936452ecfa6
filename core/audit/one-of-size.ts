import type { Finding } from "./finding";
import { SEVERITIES } from "./finding";
import sizeDigitsSwapped from "./rules/size-digits-swapped";
import sizeStray from "./rules/size-stray";
import unknownSize from "./rules/unknown-size";

const NO_SIZE: ReadonlySet<string> = new Set([unknownSize.code, sizeDigitsSwapped.code]);

/** One slip of a size is one finding: the surer one tells of its cell, with what the other found. */
export function withOneOfSize(findings: readonly Finding[]): readonly Finding[] {
  if (!findings.some(({ code }) => code === sizeStray.code)) return findings;
  const stray = new Map(
    findings.flatMap((one) => (one.code === sizeStray.code && one.cell !== null ? [[one.cell, one]] : [])),
  );
  const gone = new Set<Finding>();
  const told = findings.map((finding) => {
    const other = NO_SIZE.has(finding.code) && finding.cell !== null ? stray.get(finding.cell) : undefined;
    if (other === undefined) return finding;
    const [kept, left] = isSurer(finding, other) ? [finding, other] : [other, finding];
    gone.add(finding).add(other);
    return { ...kept, message: `${kept.message}; ${left.message}` };
  });
  return told.filter((finding) => !gone.has(finding));
}

function isSurer(one: Finding, other: Finding): boolean {
  const by = SEVERITIES.indexOf(one.severity) - SEVERITIES.indexOf(other.severity);
  return by === 0 ? one.outcome === "broken" : by < 0;
}
