import { isLaterRevision } from "../../schedule/revision-order";
import { KG_PER_UNIT } from "../../units/unit-table";
import { defineJobFinding, type JobFinding, placeOn } from "./job-finding";
import type { ScheduleEntry } from "./schedule-entry";

/** Whether a schedule is in the totals of its job, and what keeps it out. */
export interface Standing {
  /** null where all of it counts */
  readonly because: string | null;
  /** keys of marks that a later, shorter list replaces; null where all or none of it is left out */
  readonly replaced: ReadonlySet<string> | null;
}

const COUNTS: Standing = { because: null, replaced: null };
/** Of an older list's marks, how many a later one must hold to stand in its whole place. */
const REISSUE = 0.5;
/** Of the marks of two lists, how many must be the same bars for one to be a copy. */
const COPY = 0.95;
const MOST_MARKS = 8;
/** How near a written sum, rounded by hand, comes to what it sums. */
const SAME_SUM = 0.002;

const older = defineJobFinding("JOB101", "older-revision", "note", "broken");
const twice = defineJobFinding("JOB102", "schedule-twice", "doubtful", "broken");
const perhapsTwice = defineJobFinding("JOB102", "schedule-twice", "doubtful", "unsure");
const otherBars = defineJobFinding("JOB103", "number-used-twice", "doubtful", "unsure");
const orderUnknown = defineJobFinding("JOB111", "revisions-not-in-order", "doubtful", "unsure");
const bothSummed = defineJobFinding("JOB119", "revisions-added-up", "doubtful", "unsure");
const datesTurned = defineJobFinding("JOB116", "newer-revision-dated-earlier", "doubtful", "unsure");
const dropped = defineJobFinding("JOB117", "marks-gone-in-revision", "note", "broken");

/**
 * Which schedules of a job count: of several revisions of one number the newest, of the same schedule twice
 * the first. Where that cannot be told both count, and a finding says so.
 */
export function newestSchedules(entries: readonly ScheduleEntry[]): {
  readonly standing: ReadonlyMap<ScheduleEntry, Standing>;
  readonly findings: readonly JobFinding[];
} {
  const standing = new Map<ScheduleEntry, Standing>(entries.map((entry) => [entry, COUNTS]));
  const findings: JobFinding[] = [];
  for (const all of groups(entries).values()) if (all.length > 1) judgeGroup(all, standing, findings);
  return { standing, findings };
}

function groups(entries: readonly ScheduleEntry[]): Map<string, ScheduleEntry[]> {
  const byKey = new Map<string, ScheduleEntry[]>();
  for (const entry of entries) byKey.set(entry.key, [...(byKey.get(entry.key) ?? []), entry]);
  return byKey;
}

function judgeGroup(
  all: readonly ScheduleEntry[],
  standing: Map<ScheduleEntry, Standing>,
  findings: JobFinding[],
): void {
  all.forEach((entry, index) => {
    const later = newestAfter(entry, all);
    if (later !== null) {
      standing.set(entry, supersede(entry, later, findings));
      for (const other of all) findings.push(...addedUp(entry, later, other));
    }
    for (const first of all.slice(0, index)) {
      if (standing.get(first)?.because !== null || standing.get(entry)?.because !== null) continue;
      const found = twoOfOneNumber(first, entry);
      if (found === null) continue;
      findings.push(found);
      if (found.code === "JOB102" && found.outcome === "broken")
        standing.set(entry, { because: `the same schedule as ${first.book}, which counts`, replaced: null });
    }
  });
}

/** The newest of those that come after this one and have something in common with it. */
function newestAfter(entry: ScheduleEntry, all: readonly ScheduleEntry[]): ScheduleEntry | null {
  let newest: ScheduleEntry | null = null;
  for (const other of all) {
    if (other === entry || !isLaterRevision(other.revision, entry.revision)) continue;
    if (sharedMarks(entry, other) === 0 && entry.marks.length > 0) continue;
    if (newest === null || isLaterRevision(other.revision, newest.revision)) newest = other;
  }
  return newest;
}

function supersede(entry: ScheduleEntry, later: ScheduleEntry, findings: JobFinding[]): Standing {
  const { number, revision } = entry;
  const places = [placeOn(entry), placeOn(later)];
  const old = revision ?? "none";
  if (entry.date !== null && later.date !== null && isEarlier(later.date, entry.date))
    findings.push(
      datesTurned(
        `${number}: revision ${later.revision} is dated ${later.date}, before revision ${old} of ${entry.date}: is it the newer one?`,
        places,
      ),
    );
  const keys = new Set(later.marks.map(({ key }) => key));
  const shared = sharedMarks(entry, later);
  if (shared < entry.marks.length * REISSUE) {
    const because = `${shared} of its ${entry.marks.length} marks stand on revision ${later.revision} in ${later.book}, which counts for them`;
    findings.push(older(`${number} revision ${old}: ${because}; its other marks still count`, places));
    return { because, replaced: keys };
  }
  const because = `revision ${later.revision} in ${later.book} is newer and counts`;
  findings.push(older(`${number} revision ${old} is not counted: ${because}`, places));
  const gone = entry.marks.filter(({ key }) => !keys.has(key)).map(({ mark }) => mark);
  if (gone.length > 0) {
    const more = gone.length > MOST_MARKS ? ` and ${gone.length - MOST_MARKS} more` : "";
    findings.push(
      dropped(
        `${number}: revision ${later.revision} no longer has ${gone.slice(0, MOST_MARKS).join(", ")}${more} of revision ${old}`,
        places,
      ),
    );
  }
  return { because, replaced: null };
}

/** A line that sums to the tonnes of the older and the newer revision together. */
function addedUp(entry: ScheduleEntry, later: ScheduleEntry, on: ScheduleEntry): JobFinding[] {
  const both = entry.kg + later.kg;
  const isBoth = (value: number): boolean => Math.abs(value - both) < both * SAME_SUM;
  const sum = on.sums.find((value) => isBoth(value) || isBoth(value * KG_PER_UNIT.t));
  if (sum === undefined || entry.kg === 0 || later.kg === 0) return [];
  return [
    bothSummed(
      `a sum of ${sum} on ${on.book} is what revision ${entry.revision ?? "none"} and ${later.revision} of ${entry.number} weigh together`,
      [placeOn(on), placeOn(entry), placeOn(later)],
    ),
  ];
}

/** Two that both count so far: the same list, another under the same number, or revisions without an order. */
function twoOfOneNumber(first: ScheduleEntry, entry: ScheduleEntry): JobFinding | null {
  const places = [placeOn(first), placeOn(entry)];
  const { number } = entry;
  const shared = sharedMarks(first, entry);
  const isOtherRevision = (first.revision ?? "") !== (entry.revision ?? "");
  if (isOtherRevision) {
    if (shared === 0)
      return otherBars(
        `${first.number} revision ${first.revision ?? "none"} and ${number} revision ${entry.revision ?? "none"} have no mark in common: both count; is one numbered wrong?`,
        places,
      );
    if (isLaterRevision(first.revision, entry.revision) || isLaterRevision(entry.revision, first.revision))
      return null;
    return orderUnknown(
      `${number}: nobody can say which is newer of revision ${first.revision ?? "none"} and ${entry.revision ?? "none"}: both count`,
      places,
    );
  }
  const revision = entry.revision === null ? "" : ` revision ${entry.revision}`;
  const most = Math.max(first.marks.length, entry.marks.length);
  const isCopy = most > 0 && sameBars(first, entry) >= most * COPY;
  if (
    isCopy &&
    sameBars(first, entry) === most &&
    first.marks.length === entry.marks.length &&
    entry.isNumbered
  )
    return twice(`${number}${revision} stands here twice with the same bars: it is counted once`, places);
  if (isCopy)
    return perhapsTwice(`${number}${revision} seems to stand here twice: both count; leave one out`, places);
  if (!entry.isNumbered) return null;
  return otherBars(
    `${number}${revision} stands on two lists with other bars (${shared} marks in common): both count; which one holds?`,
    places,
  );
}

function sharedMarks(one: ScheduleEntry, other: ScheduleEntry): number {
  const keys = new Set(other.marks.map(({ key }) => key));
  return one.marks.filter(({ key }) => keys.has(key)).length;
}

/** Bars that both lists hold with the same size, shape, dimensions and count. */
export function sameBars(one: ScheduleEntry, other: ScheduleEntry): number {
  const held = new Set(other.marks.map(({ key, print, count }) => `${key}\n${print}\n${count}`));
  return one.marks.filter(({ key, print, count }) => held.has(`${key}\n${print}\n${count}`)).length;
}

/** By the calendar where both are written year first or day first alike; else unknown, which is false. */
function isEarlier(a: string, b: string): boolean {
  const [one, other] = [dateOf(a), dateOf(b)];
  return one !== null && other !== null && one < other;
}

/** Year, month and day as one text that sorts; null where it may be two days or is none. */
export function dateOf(text: string): string | null {
  const iso = /^(\d{4})-(\d{2})-(\d{2})/.exec(text.trim());
  if (iso !== null) return `${iso[1]}${iso[2]}${iso[3]}`;
  const dayFirst = /^(\d{1,2})[./](\d{1,2})[./](\d{4})$/.exec(text.trim());
  // 3/4/2026 is March or April: only what cannot be both is read
  if (dayFirst === null || (Number(dayFirst[1]) <= 12 && !text.includes("."))) return null;
  return `${dayFirst[3]}${dayFirst[2]!.padStart(2, "0")}${dayFirst[1]!.padStart(2, "0")}`;
}
