import type { BarFacts } from "./bar-facts";

const OF_COUNT_OR_LENGTH: ReadonlySet<string> = new Set(["total", "each", "members", "length"]);

/** mm in all of a row that gives metres and neither a count nor a length: what lies on the yard and is cut on site. */
export function metresAlone(facts: BarFacts): number | null {
  const { length, totalLength = null, problems } = facts.row;
  if (totalLength === null || !(totalLength > 0) || length !== null || facts.count !== null) return null;
  if (facts.computedLength !== null) return null;
  const isUnread = problems?.some(({ field }) => OF_COUNT_OR_LENGTH.has(field)) === true;
  return isUnread ? null : totalLength;
}
