import { plain } from "../../audit/sheet-revision";
import { defineJobFinding, type JobFinding, placeOn } from "./job-finding";
import { fileWords, type ScheduleEntry } from "./schedule-entry";
import { jobName } from "./usual-job";

const poursAlike = defineJobFinding("JOB106", "pours-written-differently", "doubtful", "unsure");
const numberMissing = defineJobFinding("JOB107", "number-missing", "doubtful", "unsure");
const otherStandard = defineJobFinding("JOB108", "other-standard", "doubtful", "unsure");
const otherUnit = defineJobFinding("JOB109", "other-unit", "doubtful", "unsure");
const sameFile = defineJobFinding("JOB110", "file-name-twice", "doubtful", "unsure");
const fileDiffers = defineJobFinding("JOB112", "file-name-differs", "doubtful", "broken");
export const OTHER_JOB = "JOB113";
const otherJob = defineJobFinding(OTHER_JOB, "other-job", "doubtful", "unsure");
const withdrawn = defineJobFinding("JOB115", "said-withdrawn", "doubtful", "unsure");
const nothing = defineJobFinding("JOB118", "nothing-counted", "doubtful", "broken");

const FEWEST_FOR_A_GAP = 3;
const WIDEST_GAP = 3;

/** What names, numbers and habits of the schedules of a job say together. */
export function findingsOfNames(
  all: readonly ScheduleEntry[],
  counted: readonly ScheduleEntry[],
  /** on a register, which says itself what is missing */
  listed: ReadonlySet<ScheduleEntry>,
): JobFinding[] {
  return [
    ...pours(counted),
    ...missingNumbers(all.filter((entry) => !listed.has(entry))),
    ...missingParts(counted),
    ...odd(
      counted,
      ({ standard }) => standard,
      (entry, usual) =>
        otherStandard(`${entry.number} goes by ${entry.standard}, others of the job by ${usual}`, [
          placeOn(entry),
        ]),
    ),
    ...odd(
      counted,
      ({ lengthUnit }) => lengthUnit,
      (entry, usual) =>
        otherUnit(
          `lengths of ${entry.number} are read in ${entry.lengthUnit}, others of the job in ${usual}`,
          [placeOn(entry)],
        ),
    ),
    ...odd(
      counted,
      ({ job }) => (job === null ? null : jobName(job)),
      (entry, usual) =>
        otherJob(`${entry.number} says job ${entry.job}, others here say ${spelt(counted, usual)}`, [
          placeOn(entry),
        ]),
    ),
    ...sameFileNames(counted),
    ...counted.flatMap((entry) => ofOne(entry)),
  ];
}

/** "P1", "P 1", "P01" and "Pour no. 1" as one. */
export function pourKey(pour: string): string {
  return pour
    .toUpperCase()
    .replace(/[^\p{L}\p{N}]+/gu, "")
    .replace(/^(?:POUR|P)(?:NO|NR)?(?=\d)/, "")
    .replace(/^0+(?=\d)/, "");
}

function pours(counted: readonly ScheduleEntry[]): JobFinding[] {
  const spellings = new Map<string, Map<string, { as: string; entry: ScheduleEntry }>>();
  for (const entry of counted) {
    for (const pour of entry.pours) {
      const known = spellings.get(pourKey(pour)) ?? new Map();
      spellings.set(pourKey(pour), known);
      const own = pour.trim().toLowerCase();
      if (!known.has(own)) known.set(own, { as: pour, entry });
    }
  }
  return [...spellings.values()]
    .filter((known) => known.size > 1)
    .map((known) => {
      const written = [...known.values()];
      const names = written.map(({ as }) => `"${as}"`).join(", ");
      const places = written.map(({ entry }) => placeOn(entry));
      return poursAlike(`pours written ${names} are counted apart: are they one pour?`, places);
    });
}

/** Numbers that are left out of a run: S-101, S-102, S-104. */
function missingNumbers(all: readonly ScheduleEntry[]): JobFinding[] {
  const series = new Map<
    string,
    { numbers: Set<number>; digits: number; entries: ScheduleEntry[]; prefix: string }
  >();
  for (const entry of all) {
    const found = entry.isNumbered ? /^(.*?)(\d{1,6})$/.exec(entry.number.trim()) : null;
    if (found === null) continue;
    const [, prefix = "", digits = ""] = found;
    // not by the job: some title blocks say it and some do not, and other jobs number otherwise
    const key = plain(prefix);
    const known = series.get(key) ?? { numbers: new Set(), digits: digits.length, entries: [], prefix };
    series.set(key, known);
    known.numbers.add(Number(digits));
    known.entries.push(entry);
  }
  return [...series.values()].flatMap(({ numbers, digits, entries, prefix }) => {
    const run = [...numbers].sort((a, b) => a - b);
    if (run.length < FEWEST_FOR_A_GAP) return [];
    const gone: number[] = [];
    for (let at = 1; at < run.length; at += 1) {
      const gap = run[at]! - run[at - 1]! - 1;
      if (gap > WIDEST_GAP) continue;
      for (let number = run[at - 1]! + 1; number < run[at]!; number += 1) gone.push(number);
    }
    // numbers that are mostly gaps are no run
    if (gone.length === 0 || gone.length >= run.length) return [];
    const names = gone.map((number) => `${prefix}${String(number).padStart(digits, "0")}`);
    const told =
      names.length > 12 ? `${names.slice(0, 12).join(", ")} and ${names.length - 12} more` : names.join(", ");
    const ends = [entries[0]!, entries.at(-1)!].map((entry) => placeOn(entry));
    return [numberMissing(`no schedule ${told} is here, though the numbers run past it`, ends)];
  });
}

/** Sheets 1 and 3 of 3 without sheet 2. */
function missingParts(counted: readonly ScheduleEntry[]): JobFinding[] {
  const byNumber = new Map<string, ScheduleEntry[]>();
  for (const entry of counted) {
    if (entry.part === null || !entry.isNumbered) continue;
    const key = entry.key.replace(/\/\d+$/, "");
    byNumber.set(key, [...(byNumber.get(key) ?? []), entry]);
  }
  return [...byNumber.values()].flatMap((entries) => {
    const held = new Set(entries.map(({ part }) => part!.sheet));
    const last = Math.max(...entries.map(({ part }) => part!.of ?? part!.sheet));
    const gone = Array.from({ length: Math.min(last, 200) }, (_, at) => at + 1).filter(
      (sheet) => !held.has(sheet),
    );
    // sheet numbers that do not say of how many may count the whole job
    if (gone.length === 0 || (entries.length < 2 && entries[0]!.part!.of === null)) return [];
    const words = `sheet${gone.length === 1 ? "" : "s"} ${gone.join(", ")} of ${last}`;
    return [
      numberMissing(
        `${entries[0]!.number}: ${words} not here`,
        entries.map((entry) => placeOn(entry)),
      ),
    ];
  });
}

/** Schedules that differ from what the job does most often. */
function odd(
  counted: readonly ScheduleEntry[],
  of: (entry: ScheduleEntry) => string | null,
  tell: (entry: ScheduleEntry, usual: string) => JobFinding,
): JobFinding[] {
  const tally = new Map<string, number>();
  for (const entry of counted) {
    const value = of(entry);
    if (value === null) continue;
    tally.set(value, (tally.get(value) ?? 0) + 1);
  }
  if (tally.size < 2) return [];
  const [usual] = [...tally].reduce((most, one) => (one[1] > most[1] ? one : most));
  return counted
    .filter((entry) => of(entry) !== null && of(entry) !== usual)
    .map((entry) => tell(entry, usual));
}

function spelt(counted: readonly ScheduleEntry[], job: string): string {
  return counted.find((entry) => entry.job !== null && jobName(entry.job) === job)?.job ?? job;
}

function sameFileNames(counted: readonly ScheduleEntry[]): JobFinding[] {
  const byName = new Map<string, Map<string, ScheduleEntry>>();
  for (const entry of counted) {
    const name = (entry.book.split(/[/\\]/).pop() ?? "").toLowerCase();
    const known = byName.get(name) ?? new Map();
    byName.set(name, known);
    if (!known.has(entry.book)) known.set(entry.book, entry);
  }
  return [...byName.entries()]
    .filter(([, known]) => known.size > 1)
    .map(([, known]) => {
      const entries = [...known.values()];
      const name = entries[0]!.book.split(/[/\\]/).pop();
      return sameFile(
        `${name} lies in ${known.size} folders and each counts: is one an older or a copied file?`,
        entries.map((entry) => placeOn(entry)),
      );
    });
}

function ofOne(entry: ScheduleEntry): JobFinding[] {
  const found: JobFinding[] = [];
  const { number, blockRevision, fileRevision } = entry;
  if (blockRevision !== null && fileRevision !== null && blockRevision !== fileRevision)
    found.push(
      fileDiffers(
        `the file's name says revision ${fileRevision}, its title block ${blockRevision}: the block counts`,
        [placeOn(entry)],
      ),
    );
  const stem = fileWords(entry.book).rest;
  if (entry.isNumbered && isNumberLike(stem) && isNumberLike(number) && otherNumber(stem, number))
    found.push(
      fileDiffers(`the file's name says ${stem}, its title block ${number}: the block counts`, [
        placeOn(entry),
      ]),
    );
  if (entry.withdrawn !== null)
    found.push(withdrawn(`${number} calls itself ${entry.withdrawn}, and still counts`, [placeOn(entry)]));
  if (entry.held !== null) found.push(nothing(`${number} is in no total: ${entry.held}`, [placeOn(entry)]));
  else if (entry.kg === 0) found.push(nothing(`${number} has no bar that can be weighed`, [placeOn(entry)]));
  return found;
}

/** "S-101": letters, then a number. */
const isNumberLike = (text: string): boolean => /^[\p{L}]{1,6}[\s_-]?\d{1,6}$/u.test(text.trim());

/** The same letters with another number. */
function otherNumber(one: string, other: string): boolean {
  const [a, b] = [plain(one), plain(other)];
  return a !== b && a.replace(/\d+$/, "") === b.replace(/\d+$/, "");
}
