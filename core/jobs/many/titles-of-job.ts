import { plain } from "../../audit/sheet-revision";
import { defineJobFinding, type JobFinding, placeOn } from "./job-finding";
import { pourKey } from "./names-of-job";
import { dateOf } from "./newest-schedules";
import type { ScheduleEntry } from "./schedule-entry";
import { jobsOf } from "./usual-job";

const titlesDiffer = defineJobFinding("JOB120", "titles-differ", "doubtful", "unsure");
const pouredBefore = defineJobFinding("JOB121", "poured-before-revision", "doubtful", "unsure");
const pourTwice = defineJobFinding("JOB122", "pour-on-two-days", "doubtful", "unsure");
const drawingTwice = defineJobFinding("JOB123", "drawing-number-twice", "doubtful", "unsure");

const steelDiffers = defineJobFinding("JOB125", "steel-differs", "doubtful", "unsure");
const coverTwice = defineJobFinding("JOB126", "cover-said-twice", "doubtful", "unsure");

const FEWEST_DRAWINGS = 4;

/** What the title blocks of a job's schedules contradict each other in: titles, days of pours, drawings, steel, covers. */
export function findingsOfTitles(counted: readonly ScheduleEntry[]): JobFinding[] {
  return [
    ...titles(counted),
    ...counted.flatMap(early),
    ...pourDays(counted),
    ...drawings(counted),
    ...steels(counted),
    ...counted.flatMap(covers),
  ];
}

/** Sheets of one schedule and revision under two titles. */
function titles(counted: readonly ScheduleEntry[]): JobFinding[] {
  const numbered = counted.filter(({ isNumbered, title }) => isNumbered && title !== null);
  return groupsBy(numbered, ({ key, revision }) => `${key.replace(/\/\d+$/, "")} ${revision ?? ""}`).flatMap(
    (all) => {
      const names = groupsBy(all, ({ title }) => plain(title ?? ""));
      if (names.length < 2) return [];
      const told = names.map(([one]) => `"${one!.title}"`).join(" and ");
      return [
        titlesDiffer(
          `${all[0]!.number} is called ${told}: which is it?`,
          names.map(([one]) => placeOn(one!)),
        ),
      ];
    },
  );
}

/** A pour that is dated before the list that it is poured by. */
function early(entry: ScheduleEntry): JobFinding[] {
  const [poured, listed] = [dateOf(entry.pourDate ?? ""), dateOf(entry.date ?? "")];
  if (poured === null || listed === null || poured >= listed) return [];
  return [
    pouredBefore(
      `${entry.number} is poured on ${entry.pourDate}, before its revision ${entry.revision ?? ""} of ${entry.date}: which day is wrong?`,
      [placeOn(entry)],
    ),
  ];
}

/** One pour with two days. */
function pourDays(counted: readonly ScheduleEntry[]): JobFinding[] {
  const jobOf = jobsOf(counted);
  const dated = counted.filter(({ pours, pourDate }) => pours.length === 1 && pourDate !== null);
  return groupsBy(dated, (entry) => `${jobOf(entry)} ${pourKey(entry.pours[0]!)}`).flatMap((all) => {
    const days = groupsBy(all, ({ pourDate }) => dateOf(pourDate!) ?? pourDate!);
    if (days.length < 2) return [];
    const told = days.map(([one]) => `${one!.pourDate} (${one!.number})`).join(" and ");
    return [
      pourTwice(
        `pour ${all[0]!.pours[0]} has two days: ${told}`,
        days.map(([one]) => placeOn(one!)),
      ),
    ];
  });
}

/** One drawing on two schedules where every other has its own: a title block that was copied. */
function drawings(counted: readonly ScheduleEntry[]): JobFinding[] {
  const numbered = counted.filter(
    ({ drawing, number }) => drawing !== null && plain(drawing) !== plain(number),
  );
  const jobOf = jobsOf(counted);
  const byDrawing = groupsBy(numbered, (entry) => `${jobOf(entry)} ${plain(entry.drawing!)}`);
  const shared = byDrawing.filter((all) => new Set(all.map(({ key }) => key.replace(/\/\d+$/, ""))).size > 1);
  if (byDrawing.length < FEWEST_DRAWINGS || shared.length !== 1) return [];
  return shared.map((all) => {
    const schedules = [...new Set(all.map(({ number }) => number))].join(" and ");
    return drawingTwice(
      `${schedules} say drawing ${all[0]!.drawing}, all others one of their own: was a title block copied?`,
      all.map((entry) => placeOn(entry)),
    );
  });
}

/** One member of two steels. */
function steels(counted: readonly ScheduleEntry[]): JobFinding[] {
  const jobOf = jobsOf(counted);
  const said = counted.filter(({ member, steel }) => member !== null && steel !== null);
  return groupsBy(said, (entry) => `${jobOf(entry)} ${plain(entry.member!)}`).flatMap((all) => {
    const names = groupsBy(all, ({ steel }) => steelName(steel!));
    if (names.length < 2) return [];
    const told = names.map(([one]) => `${steelName(one!.steel!)} (${one!.number})`).join(" and ");
    return [
      steelDiffers(
        `${all[0]!.member} is of two steels: ${told}; ask the designer which holds`,
        names.map(([one]) => placeOn(one!)),
      ),
    ];
  });
}

/** "B500B to BS 4449" is B500B: the standard that it is made to is no other steel. */
function steelName(steel: string): string {
  return (/\b[A-Z]*\s?\d{3}\s?[A-Z]*\b/i.exec(steel)?.[0] ?? steel).replace(/\s/g, "").toUpperCase();
}

/** One list that gives two covers for all of its bars. */
function covers(entry: ScheduleEntry): JobFinding[] {
  const [first, ...more] = entry.covers;
  const other = more.find(({ mm }) => mm !== first!.mm);
  if (other === undefined) return [];
  return [
    coverTwice(
      `${entry.number} says ${first!.mm} mm of cover and ${other.mm} mm: ask the designer which holds`,
      [placeOn(entry, first!.row), placeOn(entry, other.row)],
    ),
  ];
}

function groupsBy(
  entries: readonly ScheduleEntry[],
  of: (entry: ScheduleEntry) => string,
): (readonly ScheduleEntry[])[] {
  const groups = new Map<string, ScheduleEntry[]>();
  for (const entry of entries) {
    const group = groups.get(of(entry));
    if (group === undefined) groups.set(of(entry), [entry]);
    else group.push(entry);
  }
  return [...groups.values()];
}
