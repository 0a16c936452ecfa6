import type { ReadSheet } from "../../totals/reckon-tonnage";
import { namesOf } from "./bar-names";
import { type BarFilter, isAsked } from "./job-totals";

/** The schedules with the bars that are asked for alone. */
export function askedBars(schedules: readonly ReadSheet[], filter: BarFilter): ReadSheet[] {
  return schedules.map((schedule) => {
    const bars = schedule.reading.bars.filter((bar) => isAsked(filter, namesOf(bar)));
    const isPart = bars.length < schedule.reading.bars.length;
    return { ...schedule, reading: { ...schedule.reading, bars }, ...(isPart && { isPart }) };
  });
}
