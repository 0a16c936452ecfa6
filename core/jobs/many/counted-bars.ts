import type { ReadSheet } from "../../totals/reckon-tonnage";
import { type BarFilter, isAsked } from "./job-totals";
import type { JudgedJob } from "./judge-job";

/** The schedules of a book of a job with the bars that count in it and are asked for, and no others. */
export function countedBars(
  book: string,
  schedules: readonly ReadSheet[],
  job: JudgedJob,
  filter: BarFilter = { pours: null, sizes: null },
): ReadSheet[] {
  return schedules.map((schedule) => {
    const { sheet, reading } = schedule;
    const bars = reading.bars.filter(
      ({ member, mark, pour, size, sizeTyped }) =>
        job.leftOut(book, { sheet: sheet.name, member, mark }) === null &&
        isAsked(filter, { pour, size: size?.typed.trim() ?? sizeTyped?.trim() ?? "" }),
    );
    return bars.length === reading.bars.length ? schedule : { ...schedule, reading: { ...reading, bars } };
  });
}
