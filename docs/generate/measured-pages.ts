import { MEASURED_CODES } from "../../core/audit/measured-codes";
import type { InspectionFinding } from "../../core/tickets/judge-inspection";

type Kind = InspectionFinding["code"];

interface KindWords {
  readonly severity: InspectionFinding["severity"];
  readonly summary: string;
  readonly why: string;
}

const WORDS: Readonly<Record<Kind, KindWords>> = {
  "out-of-tolerance": {
    severity: "off-standard",
    summary: "a length that was measured lies outside the tolerance",
    why: "The bar was made, and is shorter or longer than the standard's tolerance allows about the wanted length. The limits are those of the schedule as it stands now, not the ones that were printed on the sheet. Where the tolerance is neither published nor confirmed the finding is told as perhaps. Put the bar aside and ask the designer whether it may be used; find the cause before more are bent.",
  },
  "schedule-changed": {
    severity: "doubtful",
    summary: "the schedule wants another length than when the mark was drawn for measuring",
    why: "The sheet Inspection holds the length that was wanted when the sample was drawn. The schedule now wants another, so that the bar may be of an older revision. The measured length is judged by the new one; look whether the bar belongs to it.",
  },
  "not-read": {
    severity: "doubtful",
    summary: "what stands under measured is no length",
    why: "A text, an error or a sign that no length can be read from was not judged. Write the length in the schedule's unit, or leave the cell blank while it waits.",
  },
  "bar-not-found": {
    severity: "doubtful",
    summary: "the schedule no longer has the length that was measured",
    why: "Sheet and row of the line name a bar or a dimension that is not there now: rows were sorted, inserted or taken out after the sample was drawn. Nothing is judged by a neighbour. Draw the sample again, or put sheet and row right.",
  },
};

/** Names of what measured lengths may show, each with a page. */
export const MEASURED_NAMES = Object.keys(WORDS);

const kinds = Object.entries(WORDS) as [Kind, KindWords][];

/** Rows of the list of rules, for what is found on the sheet Inspection. */
export const measuredRows = (): string[] =>
  kinds.map(
    ([name, { severity, summary }]) =>
      `| ${MEASURED_CODES[name]} | [${name}](${name}.md) | ${severity} | ${summary} |`,
  );

/** A page for each kind of finding on measured lengths. */
export async function generate(): Promise<Map<string, string>> {
  return new Map(kinds.map(([name, words]) => [`rules/${name}.md`, page(name, words)]));
}

function page(name: Kind, { severity, summary, why }: KindWords): string {
  return [
    `# ${name}`,
    "",
    `${MEASURED_CODES[name]}, \`${severity}\`. ${summary}`,
    "",
    why,
    "",
    "It is judged on the sheet Inspection, which `inspect` writes, line by line; a blank is waiting. It cannot be waived: measure again, or put the sheet right.",
    "",
  ].join("\n");
}
