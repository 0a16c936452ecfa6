import type { BarFacts } from "../bar/bar-facts";

/**
 * The pieces are cut so many from each bar that is bought: where their number is no multiple, the last bar is cut in part,
 * and nothing is wrong. Only where no word says that the two numbers are of members.
 */
export function isCutFromStock({ row }: BarFacts): boolean {
  const { members, each, total, table } = row;
  if (members === null || each === null || total === null || members < 1 || each < 1) return false;
  const isUnsaid = (["members", "each"] as const).every(
    (kind) => table.columns.get(kind)?.by === "arithmetic",
  );
  return isUnsaid && (Math.ceil(total / each) === members || Math.ceil(total / members) === each);
}
