import {
  allPapers,
  type Book,
  type BookDigest,
  digestBook,
  type JobTonnage,
  JobTotals,
  judgeJob,
} from "../../../core/jobs";
import { type Cell, sheetFromRows } from "../../../core/schedule";
import { isRefusal, refusalText } from "../../../core/units/refusal";

/** A schedule of an invented job, as its title block and rows say. */
export interface PlantedSchedule {
  readonly file: string;
  readonly sheet?: string;
  readonly number?: string | null;
  readonly revision?: string | null;
  readonly job?: string | null;
  readonly date?: string | null;
  /** "1 of 3" */
  readonly part?: string | null;
  readonly status?: string | null;
  readonly standard?: string | null;
  readonly head?: readonly string[];
  readonly bars: readonly (readonly Cell[])[];
}

const HEAD = ["Member", "Bar mark", "Type and size", "No. of mbrs", "No. in each", "Total no.", "Length mm"];
const HEAD_REST = ["Shape code", "A mm", "B mm", "C mm", "Pour"];

export type BarOf = (mark: string, size: string, total: number, length: number) => readonly Cell[];

/** Straight bars of one member in one pour. */
export const barsOf =
  (member: string, pour: string | null, members = 1): BarOf =>
  (mark, size, total, length) => [
    member,
    mark,
    size,
    members,
    total / members,
    total,
    length,
    "00",
    length,
    null,
    null,
    pour,
  ];

export function bookOf(planted: PlantedSchedule): Book {
  const {
    file,
    number = null,
    revision = null,
    job = "Salt Quay",
    date = null,
    part = null,
    status = null,
  } = planted;
  const facts: [string, string | null][] = [
    ["Job:", job],
    ["Schedule ref:", number],
    ["Revision:", revision],
    ["Date:", date],
    ["Sheet no:", part],
    ["Status:", status],
  ];
  const title = facts.flatMap(([label, value]): Cell[][] => (value === null ? [] : [[label, value]]));
  const name = planted.sheet ?? "Schedule";
  const sheet = sheetFromRows(name, [
    ...title,
    [],
    [...(planted.head ?? [...HEAD, ...HEAD_REST])],
    ...planted.bars,
  ]);
  return {
    name: file,
    sheets: [{ name, visibility: "visible" }],
    read: () => sheet,
    setting: (setting) => (setting === "Barwright.Standard" ? (planted.standard ?? null) : null),
  };
}

/** What a job makes of these files, each a book. */
export function jobOf(planted: readonly PlantedSchedule[]): {
  readonly digests: readonly BookDigest[];
  readonly codes: readonly string[];
  readonly messages: readonly string[];
  readonly tonnage: JobTonnage;
} {
  const digests = planted.map((one) => {
    const digest = digestBook(bookOf(one), one.file, { sheet: null, standard: null, explain: false });
    if (isRefusal(digest)) throw new Error(refusalText(digest));
    return digest;
  });
  const job = judgeJob(
    digests.flatMap(({ schedules }) => schedules),
    allPapers(digests),
  );
  const totals = new JobTotals(job, null);
  for (const digest of digests) totals.addBook(digest);
  return {
    digests,
    codes: job.findings.map(({ code }) => code),
    messages: job.findings.map(({ message }) => message),
    tonnage: totals.result(),
  };
}
