import {
  askedBars,
  JOB_GROUPS,
  type JobGroup,
  openForJob,
  readSchedules,
  tonnageOf,
  tonnageReport,
} from "../../core/jobs";
import { namedGroups } from "../../core/totals";
import { answerOf } from "./answer-of";
import { bookAsked } from "./book-asked";
import type { Command } from "./command";
import { InputRefused } from "./input-refused";
import { tellJob } from "./job/check-job";
import { filterOf, jobAsked } from "./job/job-asked";
import { JOB_OPTIONS } from "./job/read-job";
import { didYouMean } from "./nearest-word";
import { printTonnage } from "./print-tonnage";
import { STANDARD_OPTIONS } from "./standard-for";

/** `tonnage BOOK`: tonnes by pour and size over every schedule of a file. */
export const tonnage: Command = {
  name: "tonnage",
  usage:
    "tonnage BOOK... [--by pour|member|schedule|date] [--pour NAME] [--size SIZES] [--sheet NAME] [--standard ID] [--own FILE] [--json | --jsonl]",
  summary: "tonnes by pour and size, of a book or of a whole job",
  options: {
    by: { type: "string" },
    ...JOB_OPTIONS,
    sheet: { type: "string" },
    ...STANDARD_OPTIONS,
    json: { type: "boolean" },
    jsonl: { type: "boolean" },
  },
  async run(given, streams) {
    const by = groupAsked(given.text("by"));
    const job = jobAsked(given, streams, { isJob: by !== null });
    if (job !== null) return tellJob(job, { tells: "tonnes", by }, given, streams);
    const { book, question } = bookAsked(given, streams);
    const read = answerOf(readSchedules(answerOf(openForJob(book, question))));
    const { reckoned, notes } = tonnageOf([
      { ...read, schedules: askedBars(read.schedules, filterOf(given)) },
    ]);
    for (const note of [...read.notes, ...notes]) streams.note(note);
    if (given.flag("json")) streams.result(JSON.stringify(tonnageReport(reckoned)));
    else if (reckoned.held !== null) streams.result(`no totals: ${reckoned.held}`);
    else printTonnage(namedGroups(reckoned), reckoned.groupedBy, streams);
    return 0;
  },
};

function groupAsked(by: string | null): JobGroup | null {
  if (by === null) return null;
  const known = JOB_GROUPS.find((group) => group === by.trim().toLowerCase());
  if (known === undefined)
    throw new InputRefused(`--by ${by}: give ${JOB_GROUPS.join(", ")}${didYouMean(by, [...JOB_GROUPS])}`);
  return known;
}
