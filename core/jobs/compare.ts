import type { BarRow, ScheduleReading } from "../schedule/bar-row";
import type { Sheet } from "../schedule/sheet";
import type { Standard } from "../standards/port";
import { compareRevisions, type RevisionComparison } from "../totals/compare-revisions";
import type { ReadSheet } from "../totals/reckon-tonnage";
import { factsToWeigh, massesOfBars } from "../totals/row-mass";
import { namesOf } from "./many/bar-names";
import { type BarFilter, isAsked } from "./many/job-totals";

/** The schedules of one revision, of one book or several. */
export interface Revision {
  readonly schedules: readonly (ReadSheet & {
    /** which schedule of a job it is, by what its revisions have in common */
    readonly key?: string;
  })[];
}

export interface CompareJob {
  readonly comparison: RevisionComparison;
  /** the sheet that a change stands on */
  sheetOf(change: RevisionComparison["changes"][number]): Sheet | undefined;
}

/**
 * What a newer revision changes, weighed by one standard; `released` are marks given out beyond those of a column. With
 * a filter a bar is told that either revision asks for, so that one that moves to another pour is a change of both.
 */
export function compareBooks(
  before: Revision,
  after: Revision,
  standard: Standard,
  released: readonly string[] = [],
  filter: BarFilter = { pours: null, sizes: null },
): CompareJob {
  const masses = new Map<BarRow, number>();
  const keys = new Map<ScheduleReading, string>();
  for (const { sheet, reading, standard: own = standard, key = "" } of [
    ...before.schedules,
    ...after.schedules,
  ]) {
    keys.set(reading, key);
    let place = 0;
    for (const mass of massesOfBars(factsToWeigh(sheet, reading, own))) {
      if (mass !== null) masses.set(reading.bars[place]!, mass);
      place += 1;
    }
  }
  const readings = ({ schedules }: Revision) => schedules.map(({ reading }) => reading);
  const comparison = compareRevisions({
    before: readings(before),
    after: readings(after),
    scheduleOf: (reading) => keys.get(reading) ?? "",
    isAsked: (bar) => isAsked(filter, namesOf(bar)),
    massOf: (bar) => masses.get(bar) ?? null,
    released: new Set(released),
  });
  return {
    comparison,
    sheetOf: ({ sheet: name, after: bar }) =>
      (bar === null ? before : after).schedules.find(({ reading }) => reading.sheet === name)?.sheet,
  };
}
