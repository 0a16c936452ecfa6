import { counted } from "../../units/counted";
import { defineJobFinding, type JobFinding, type JobPlace, placeOn } from "./job-finding";
import { sameBars } from "./newest-schedules";
import type { MarkEntry, ScheduleEntry } from "./schedule-entry";
import { jobsOf } from "./usual-job";

const otherBar = defineJobFinding("JOB104", "mark-with-other-data", "doubtful", "broken");
const sameBar = defineJobFinding("JOB105", "bar-in-two-schedules", "doubtful", "unsure");
const otherMembers = defineJobFinding("JOB114", "members-differ", "doubtful", "unsure");
const repeated = defineJobFinding("JOB124", "mark-repeated", "doubtful", "unsure");
const sameList = defineJobFinding("JOB102", "schedule-twice", "doubtful", "unsure");

/** Rows told one by one for a pair of schedules; beyond that their number. */
const MOST_TOLD = 20;
const FEWEST_FOR_A_COPY = 3;
/** Schedules and marks of a job by which its habit shows, and how few of its marks may come again. */
const FEWEST_SCHEDULES = 4;
const FEWEST_MARKS = 20;
const FEW = 0.05;

interface Placed {
  readonly entry: ScheduleEntry;
  readonly mark: MarkEntry;
}

/**
 * The same mark of the same member in two schedules: with other data one of them is wrong, with the same data
 * it may be cut twice. Marks without a member start again in each schedule and are not compared one by one.
 */
export function findingsOfMarks(counted: readonly ScheduleEntry[]): JobFinding[] {
  const jobOf = jobsOf(counted);
  const first = new Map<string, Placed>();
  const members = new Map<string, Placed>();
  const byPair = new Map<string, JobFinding[]>();
  const tell = (one: ScheduleEntry, other: ScheduleEntry, finding: JobFinding): void => {
    const pair = `${finding.code}\n${one.book}\n${one.sheet}\n${other.book}\n${other.sheet}`;
    const known = byPair.get(pair);
    if (known === undefined) byPair.set(pair, [finding]);
    else known.push(finding);
  };
  const copies = copiedLists(counted);
  const isCopy = new Set(
    copies.flatMap(({ places }) => places.map(({ book, sheet }) => `${book}\n${sheet}`)),
  );
  for (const entry of counted) {
    for (const mark of entry.marks) {
      if (mark.member === null) continue;
      const key = `${jobOf(entry)}\n${mark.key}`;
      const known = first.get(key);
      if (known === undefined) first.set(key, { entry, mark });
      else if (known.entry !== entry && !isCopy.has(`${entry.book}\n${entry.sheet}`))
        tell(known.entry, entry, ofTwo(known, { entry, mark }));
      const member = `${jobOf(entry)}\n${mark.member.trim().toUpperCase()}`;
      const of = members.get(member);
      if (of === undefined) {
        if (mark.members !== null) members.set(member, { entry, mark });
      } else if (of.entry !== entry && mark.members !== null && mark.members !== of.mark.members) {
        tell(of.entry, entry, membersOf(of, { entry, mark }));
        members.set(member, { entry, mark });
      }
    }
  }
  return [...copies, ...[...byPair.values()].flatMap(atMost), ...againElsewhere(counted)];
}

/** Where nearly every mark stands for one bar of the whole job, those that stand for another bar elsewhere. */
function againElsewhere(counted: readonly ScheduleEntry[]): JobFinding[] {
  const jobOf = jobsOf(counted);
  const first = new Map<string, Placed>();
  const found: JobFinding[] = [];
  for (const entry of counted) {
    for (const mark of entry.marks) {
      const key = `${jobOf(entry)}\n${mark.mark.trim().toUpperCase()}`;
      const known = first.get(key);
      if (known === undefined) first.set(key, { entry, mark });
      // the same member is told of already
      else if (known.entry.key !== entry.key && (mark.member === null || known.mark.key !== mark.key))
        if (known.mark.print !== mark.print)
          found.push(
            repeated(
              `mark ${mark.mark} is another bar in ${known.entry.number} than in ${entry.number}, and hardly a mark of this job comes twice`,
              [placeOn(known.entry, known.mark.row), placeOn(entry, mark.row)],
            ),
          );
        else found.push(ofTwo(known, { entry, mark }));
    }
  }
  const isHabit = counted.length >= FEWEST_SCHEDULES && first.size >= FEWEST_MARKS;
  return isHabit && found.length <= first.size * FEW ? found : [];
}

function ofTwo(known: Placed, now: Placed): JobFinding {
  const places = [placeOn(known.entry, known.mark.row), placeOn(now.entry, now.mark.row)];
  const name = `mark ${now.mark.mark} of ${now.mark.member}`;
  if (known.mark.print === now.mark.print)
    return sameBar(
      `${name} stands in ${known.entry.number} and in ${now.entry.number}: is it counted twice?`,
      places,
    );
  const what =
    known.mark.size.toUpperCase() === now.mark.size.toUpperCase()
      ? "another shape, dimension or length"
      : `size ${known.mark.size} and ${now.mark.size}`;
  return otherBar(`${name} stands in ${known.entry.number} and in ${now.entry.number} with ${what}`, places);
}

function membersOf(known: Placed, now: Placed): JobFinding {
  return otherMembers(
    `${now.mark.member} is ${known.mark.members} members in ${known.entry.number} and ${now.mark.members} in ${now.entry.number}`,
    [placeOn(known.entry, known.mark.row), placeOn(now.entry, now.mark.row)],
  );
}

/** Lists with other numbers, or none, that hold the very same bars. */
function copiedLists(counted: readonly ScheduleEntry[]): JobFinding[] {
  const seen = new Map<string, ScheduleEntry>();
  const found: JobFinding[] = [];
  for (const entry of counted) {
    if (entry.marks.length < FEWEST_FOR_A_COPY) continue;
    const print = `${entry.marks.length} ${entry.marks[0]!.print} ${entry.marks.at(-1)!.print} ${entry.kg.toFixed(3)}`;
    const first = seen.get(print);
    if (first === undefined) seen.set(print, entry);
    else if (first.key !== entry.key && sameBars(first, entry) === entry.marks.length)
      found.push(
        sameList(
          `${entry.number} holds the same ${entry.marks.length} bars as ${first.number}: both count; is one a copy?`,
          [placeOn(first), placeOn(entry)],
        ),
      );
  }
  return found;
}

function atMost(found: readonly JobFinding[]): JobFinding[] {
  if (found.length <= MOST_TOLD) return [...found];
  const rest = found.slice(MOST_TOLD);
  const last = rest[0]!;
  const places: JobPlace[] = rest.flatMap((one) => one.places);
  return [
    ...found.slice(0, MOST_TOLD),
    { ...last, message: `${counted(rest.length, "more mark")} of the same two schedules likewise`, places },
  ];
}
