import type { ReadSheet } from "../../totals/reckon-tonnage";
import type { JobBar } from "./job-bar";

/** Every bar of the schedules by what a filter goes by. */
export function filteredBy(
  schedules: readonly ReadSheet[],
): Pick<JobBar, "sheet" | "row" | "mark" | "pour" | "size">[] {
  return schedules.flatMap(({ sheet, reading }) =>
    reading.bars.map((bar) => ({
      ...{ sheet: sheet.name, row: sheet.top + bar.row + 1, mark: bar.mark },
      ...namesOf(bar),
    })),
  );
}

/** What a filter goes by of a bar as it was read. */
export function namesOf({
  pour,
  size,
  sizeTyped,
}: ReadSheet["reading"]["bars"][number]): Pick<JobBar, "pour" | "size"> {
  return { pour, size: size?.typed.trim() ?? sizeTyped?.trim() ?? "" };
}
