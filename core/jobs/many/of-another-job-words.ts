import type { OfAnotherJob } from "./job-totals";

const MOST_PLACES = 6;

/** Both figures of a total that may hold another job's steel. */
export function ofAnotherJobWords({ schedules, tonnes, without }: OfAnotherJob): string {
  const shown = schedules.slice(0, MOST_PLACES).map(({ book, sheet }) => `${book}, ${sheet}`);
  const more = schedules.length > MOST_PLACES ? ` and ${schedules.length - MOST_PLACES} more` : "";
  return `perhaps not of this job: ${tonnes.toFixed(3)} t of the total, on schedules that say another job (${shown.join("; ")}${more}); ${without.toFixed(3)} t without them`;
}
