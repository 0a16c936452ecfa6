import type { ScheduleReading } from "../../../core/schedule";

/** Said on every page of a sheet whose columns may not be read right. */
export function heldNotes({ held }: ScheduleReading): string[] {
  return held === null
    ? []
    : [`lengths, counts and masses may be read wrong, totals are held back: ${held.reason}`];
}
