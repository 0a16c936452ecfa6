import type { ReadSheet } from "../../totals/reckon-tonnage";
import type { JobBar } from "./job-bar";
import { type BarFilter, isAsked } from "./job-totals";

/** The schedules with the bars that are asked for alone. */
export function askedBars(schedules: readonly ReadSheet[], filter: BarFilter): ReadSheet[] {
  return schedules.map((schedule) => {
    const bars = schedule.reading.bars.filter((bar) => isAsked(filter, namesOf(bar)));
    const isPart = bars.length < schedule.reading.bars.length;
    return { ...schedule, reading: { ...schedule.reading, bars }, ...(isPart && { isPart }) };
  });
}

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
