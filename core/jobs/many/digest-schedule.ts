import type { Standard } from "../../standards/port";
import { type ReadSheet, reckonTonnage } from "../../totals/reckon-tonnage";
import { tonnageReport } from "../tonnage-report";
import type { BookDigest } from "./book-digest";
import { jobBars } from "./job-bar";
import { scheduleEntry } from "./schedule-entry";

/** What a job keeps of a book of which one schedule is read already. */
export function digestSchedule(
  book: string,
  schedule: ReadSheet,
  standard: Standard,
): Pick<BookDigest, "book" | "schedules" | "bars" | "tonnage" | "papers"> {
  const bars = jobBars(schedule, standard);
  const entry = scheduleEntry(book, schedule, bars, { standard: standard.id, isOnly: true });
  return {
    book,
    bars,
    papers: { registers: [], held: [] },
    schedules: [entry],
    tonnage: tonnageReport(reckonTonnage([schedule], standard)),
  };
}
