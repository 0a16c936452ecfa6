import type { ScheduleReading } from "../schedule/bar-row";
import { openSchedule } from "../schedule/read-schedule";
import type { ScheduleSession } from "../schedule/schedule-session";
import type { Sheet } from "../schedule/sheet";
import type { Standard } from "../standards/port";
import type { AuditSettings } from "./audit-settings";

/** A schedule read as its user corrected its columns and confirmed its guesses, by what the workbook keeps. */
export function readAsCorrected(sheet: Sheet, standard: Standard, settings: AuditSettings): ScheduleReading {
  return openAsCorrected(sheet, standard, settings, true).reading;
}

/** The same, to be carried on after an edit; `isOnce` where none follows. */
export function openAsCorrected(
  sheet: Sheet,
  standard: Standard,
  { readings }: AuditSettings,
  isOnce: boolean,
): ScheduleSession {
  return openSchedule(
    sheet,
    standard,
    readings.find((reading) => reading.sheet === sheet.name),
    isOnce,
  );
}
