import type { ReadSheet } from "../../totals/reckon-tonnage";
import { type BarFilter, isAsked } from "./job-totals";

/** The schedules with the bars that are asked for alone. */
export function askedBars(schedules: readonly ReadSheet[], filter: BarFilter): ReadSheet[] {
  return schedules.map((schedule) => {
    const bars = schedule.reading.bars.filter(({ pour, size, sizeTyped }) =>
      isAsked(filter, { pour, size: size?.typed.trim() ?? sizeTyped?.trim() ?? "" }),
    );
    return { ...schedule, reading: { ...schedule.reading, bars } };
  });
}
