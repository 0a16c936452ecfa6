import type { ScheduleReading } from "../schedule/bar-row";
import { readSchedule } from "../schedule/read-schedule";
import type { Sheet } from "../schedule/sheet";
import type { Standard } from "../standards/port";
import type { AuditSettings } from "./audit-settings";

/** A schedule read as its user corrected its columns and confirmed its guesses, by what the workbook keeps. */
export function readAsCorrected(
  sheet: Sheet,
  standard: Standard,
  { readings }: AuditSettings,
): ScheduleReading {
  return readSchedule(
    sheet,
    standard,
    readings.find((reading) => reading.sheet === sheet.name),
  );
}
