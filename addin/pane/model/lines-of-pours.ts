import type { TotalsView } from "../engine/totals-view";
import type { Line } from "./local-table";

/** The table of tonnes of the pours chosen, its last line their total and how many they are; null is all of them. */
export function linesOfPours(
  { table, groupedBy }: Pick<TotalsView, "table" | "groupedBy">,
  chosen: readonly string[] | null,
): readonly Line[] {
  const [head, ...lines] = table;
  if (chosen === null || head === undefined) return table;
  const all = lines.slice(0, -1);
  const kept = all.filter(([pour]) => chosen.includes(String(pour)));
  const total = head.map((_, column) => {
    if (column === 0) return `total of ${kept.length} of ${all.length} ${groupedBy}s`;
    const figures = kept.map((line) => line[column]).filter((figure) => typeof figure === "number");
    return figures.length === 0 ? "" : figures.reduce((sum, tonnes) => sum + tonnes, 0);
  });
  return [head, ...kept, total];
}
