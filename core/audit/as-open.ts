import type { Finding } from "./finding";

const OF_DOCUMENT = /^(?:BEND|LEN|SHAPE)\d/;

/**
 * While it is asked which document the sheet goes by, what the one in force prints of legs, hooks, formers and lengths
 * is certain of no bar, and no change of the steel is offered.
 */
export function asOpen(finding: Finding): Finding {
  const rests = OF_DOCUMENT.test(finding.code) && finding.cite?.provenance === "published";
  const isFixKept = finding.fix === null || finding.fix.safety === "safe";
  if (!rests && isFixKept) return finding;
  return {
    ...finding,
    outcome: rests ? "unsure" : finding.outcome,
    fix: isFixKept ? finding.fix : null,
  };
}
