import type { Outcome, Severity } from "../../audit/finding";

/** Where something of a job stands. */
export interface JobPlace {
  readonly book: string;
  readonly sheet: string | null;
  /** the sheet's own row number, from 1 */
  readonly row: number | null;
}

/** What only several schedules together show. */
export interface JobFinding {
  readonly code: string;
  readonly name: string;
  readonly severity: Severity;
  readonly outcome: Outcome;
  readonly message: string;
  readonly places: readonly JobPlace[];
}

/** Declares what can be found in a job. Codes are never reused. */
export function defineJobFinding(
  code: string,
  name: string,
  severity: Severity,
  outcome: Outcome,
): (message: string, places: readonly JobPlace[]) => JobFinding {
  return (message, places) => ({ code, name, severity, outcome, message, places });
}

/** The place of a schedule, or of a row on it. */
export function placeOn(
  { book, sheet }: { book: string; sheet: string },
  row: number | null = null,
): JobPlace {
  return { book, sheet, row };
}

/** "north/S-101.xlsx, Sheet1 row 7" */
export function jobPlaceWords({ book, sheet, row }: JobPlace): string {
  return `${book}${sheet === null ? "" : `, ${sheet}`}${row === null ? "" : ` row ${row}`}`;
}
