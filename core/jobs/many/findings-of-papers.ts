import { isLaterRevision } from "../../schedule/revision-order";
import { isSameSize } from "../../shop/stock-of-size";
import { resolveStandard } from "../../standards/index";
import { counted } from "../../units/counted";
import { isRefusal } from "../../units/refusal";
import { defineJobFinding, type JobFinding, type JobPlace, placeOn } from "./job-finding";
import type { JobPapers, SizesHeld } from "./job-papers";
import type { ScheduleEntry } from "./schedule-entry";
import type { RegisterLine, ScheduleRegister } from "./schedule-register";

const missing = defineJobFinding("JOB107", "number-missing", "doubtful", "unsure");
const newer = defineJobFinding("JOB127", "register-says-newer", "unsafe", "unsure");
const older = defineJobFinding("JOB127", "register-says-older", "note", "unsure");
const inNoOrder = defineJobFinding("JOB127", "register-says-other", "doubtful", "unsure");
const unlisted = defineJobFinding("JOB128", "not-on-register", "note", "unsure");
const notHeld = defineJobFinding("JOB129", "size-not-in-stock", "doubtful", "unsure");

const MOST_NAMED = 12;
/** Share of the sizes in use that a list of stock must hold to be one of all that is stocked. */
const COVERS = 0.5;

/** What registers and lists of stock in a job's folder contradict its schedules in. */
export function findingsOfPapers(
  counted: readonly ScheduleEntry[],
  { registers, held }: JobPapers,
): JobFinding[] {
  return [...registers.flatMap((register) => ofRegister(register, counted)), ...ofStock(counted, held)];
}

/** Schedules beside a register, or in folders below it, that it lists: gaps in their numbers are no finding. */
export function listedBy(
  { registers }: JobPapers,
  entries: readonly ScheduleEntry[],
): ReadonlySet<ScheduleEntry> {
  return new Set(
    registers.flatMap((register) =>
      register.lines.flatMap((line) => beside(register, entries).filter((entry) => isOf(entry, line))),
    ),
  );
}

function ofRegister(register: ScheduleRegister, counted: readonly ScheduleEntry[]): JobFinding[] {
  const here = beside(register, counted);
  const found: JobFinding[] = [];
  const absent: RegisterLine[] = [];
  const known = new Set<ScheduleEntry>();
  for (const line of register.lines) {
    const own = here.filter((entry) => isOf(entry, line));
    for (const entry of own) known.add(entry);
    if (line.revision === null) continue;
    if (own.length === 0) absent.push(line);
    else found.push(...ofRevision(register, line, own));
  }
  // a list of other schedules is not the register of these
  if (known.size === 0) return [];
  if (absent.length > 0)
    found.push(
      missing(
        `the register lists ${named(absent.map(({ number }) => number))}, not here`,
        absent.map(({ row }) => placeOn(register, row)),
      ),
    );
  const strangers = here.filter((entry) => entry.isNumbered && !known.has(entry));
  if (strangers.length > 0 && strangers.length < known.size)
    found.push(
      unlisted(
        `${named([...new Set(strangers.map(({ number }) => number))])} not on the register: issued for use?`,
        strangers.map((entry) => placeOn(entry)),
      ),
    );
  return found;
}

/** The newest that lies here against the one that the register states. */
function ofRevision(
  register: ScheduleRegister,
  line: RegisterLine,
  own: readonly ScheduleEntry[],
): JobFinding[] {
  const newest = own.reduce((one, other) => (isLaterRevision(other.revision, one.revision) ? other : one));
  const here = (newest.revision ?? "").toUpperCase();
  const said = line.revision ?? "";
  // a file's name that says the register's revision is told of as that
  if (said === here || newest.fileRevision === said) return [];
  const places: JobPlace[] = [placeOn(register, line.row), placeOn(newest)];
  const dated = line.date === null ? "" : ` of ${line.date}`;
  const two = `the register has revision ${said}${dated} of ${newest.number}, here is ${here || "none"}`;
  if (isLaterRevision(said, here)) return [newer(`${two}: get the newer one before bars are cut`, places)];
  if (isLaterRevision(here, said)) return [older(`${two}, which is newer`, places)];
  return said === "-" || said === "0" ? [] : [inNoOrder(`${two}: which is newer?`, places)];
}

/** Sizes in use that no list of what is stocked holds. */
function ofStock(counted_: readonly ScheduleEntry[], lists: readonly SizesHeld[]): JobFinding[] {
  const found = new Map<string, ScheduleEntry[]>();
  const used = new Set<string>();
  for (const entry of counted_) {
    const own = lists.filter((list) => isBeside(list, entry));
    const standard = resolveStandard(entry.standard);
    if (own.length === 0 || isRefusal(standard)) continue;
    for (const size of entry.sizes) {
      used.add(size);
      if (own.some(({ sizes }) => sizes.some((one) => isSameSize(one, size, standard)))) continue;
      found.set(size, [...(found.get(size) ?? []), entry]);
    }
  }
  if (found.size === 0 || found.size > used.size * COVERS) return [];
  return [...found].map(([size, entries]) =>
    notHeld(
      `${size} is on no list of sizes in stock (${named([...new Set(lists.flatMap(({ sizes }) => sizes))])}): order it, or ask the designer; ${counted(entries.length, "schedule")}`,
      [...entries, ...lists.slice(0, 1)].map((place) => placeOn(place)),
    ),
  );
}

function beside(of: { readonly book: string }, entries: readonly ScheduleEntry[]): readonly ScheduleEntry[] {
  return entries.filter((entry) => isBeside(of, entry));
}

/** In the folder of a paper, or one below it. */
function isBeside(paper: { readonly book: string }, { book }: { readonly book: string }): boolean {
  return book.startsWith(paper.book.replace(/[^/\\]*$/, ""));
}

/** "3172-BS-014", or its end after a separator: "014". */
function isOf({ number }: ScheduleEntry, line: RegisterLine): boolean {
  const own = parts(number);
  const said = parts(line.number);
  return own === said || own.endsWith(` ${said}`);
}

const parts = (number: string): string =>
  number
    .toUpperCase()
    .replace(/[^\p{L}\p{N}]+/gu, " ")
    .trim();

function named(names: readonly string[]): string {
  const more = names.length > MOST_NAMED ? ` and ${names.length - MOST_NAMED} more` : "";
  return `${names.slice(0, MOST_NAMED).join(", ")}${more}`;
}
