import { type Finding, SEVERITIES } from "../../core/audit/finding";
import { doubtWords, severityWords } from "../../core/audit/finding-words";

/** Characters of the longest note; a row with more to say points to the findings sheet. */
const LONGEST_NOTE = 1_500;

/** The note of a row in its cell: all findings of it, the worst first, how sure each is and what to do. */
export function rowNote(findings: readonly Finding[]): string {
  const rank = ({ severity }: Finding): number => SEVERITIES.indexOf(severity);
  const lines = [...findings]
    .sort((a, b) => rank(a) - rank(b))
    .map((finding) => {
      const fix = finding.fix === null ? "" : `\n  ${finding.fix.label}`;
      return `${severityWords(finding)} (${finding.code}): ${finding.message}${doubtWords(finding)}${fix}`;
    });
  const text = lines.join("\n");
  return text.length <= LONGEST_NOTE ? text : `${text.slice(0, LONGEST_NOTE)} ... see the findings sheet`;
}
