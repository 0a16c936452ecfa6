import { plain } from "../../audit/sheet-revision";
import type { ScheduleEntry } from "./schedule-entry";

/** A job's name without what else stands on its line: "Fen Lane, schedule 7, revision B" is Fen Lane. */
export function jobName(job: string): string {
  return plain(job.split(/[,;]/)[0] ?? job);
}

/** The job of each schedule as it is compared; one that says none is of the job that most others say. */
export function jobsOf(entries: readonly ScheduleEntry[]): (entry: ScheduleEntry) => string {
  const tally = new Map<string, number>();
  for (const { job } of entries)
    if (job !== null) tally.set(jobName(job), (tally.get(jobName(job)) ?? 0) + 1);
  const usual = [...tally].reduce((most, one) => (one[1] > most[1] ? one : most), ["", 0])[0];
  return ({ job }) => (job === null ? usual : jobName(job));
}
