import { notToldLines } from "../../core/audit/not-told-words";
import {
  askedBars,
  checkBooks,
  costReport,
  costsOf,
  filteredBy,
  heldRows,
  isBroken,
  JOB_GROUPS,
  type JobGroup,
  noneInTotal,
  severeBars,
  severeWords,
  tonnageOf,
  tonnageReport,
} from "../../core/jobs";
import { namedGroups } from "../../core/totals";
import { answerOf } from "./answer-of";
import { bookAsked } from "./book-asked";
import type { Command, ExitCode } from "./command";
import { copyWithTotals, onlySchedule } from "./copy-with-totals";
import { InputRefused } from "./input-refused";
import { tellJob } from "./job/check-job";
import { filterFor, type JobAsked, jobAsked } from "./job/job-asked";
import { JOB_OPTIONS } from "./job/read-job";
import { didYouMean } from "./nearest-word";
import { printCosts } from "./print-costs";
import { printTonnage } from "./print-tonnage";
import type { GivenOptions } from "./read-options";
import { READ_OPTIONS, STANDARD_OPTIONS } from "./standard-for";
import type { Streams } from "./streams";
import { refuseKind, refuseTarget, writeCopy } from "./write-copy";

/** `tonnage BOOK`: tonnes by pour and size over every schedule of a file. */
export const tonnage: Command = {
  name: "tonnage",
  usage:
    "tonnage BOOK... [--by pour|member|schedule|date] [--out FILE.xlsx] [--summary] [--pour NAME] [--size SIZES] [--sheet NAME] [--standard ID] [--own FILE] [--read COLUMNS] [--json | --jsonl]",
  summary: "tonnes by pour and size, of a book or of a whole job",
  options: {
    by: { type: "string" },
    out: { type: "string" },
    summary: { type: "boolean" },
    ...JOB_OPTIONS,
    sheet: { type: "string" },
    ...STANDARD_OPTIONS,
    ...READ_OPTIONS,
    json: { type: "boolean" },
    jsonl: { type: "boolean" },
  },
  async run(given, streams) {
    const by = groupAsked(given.text("by"));
    const target = given.text("out");
    const targets = target === null ? [] : [target];
    const job = jobAsked(given, streams, { isJob: by !== null, targets });
    if (job !== null) return jobTonnage(job, by, target, given, streams);
    const { book, question } = bookAsked(given, streams, (path) => {
      if (target !== null) refuseTarget(path, target);
    });
    const read = answerOf(checkBooks([book], question)[0]!);
    const filter = filterFor(given, read);
    const schedule = onlySchedule(read);
    if (target !== null) {
      const whole = given.texts("pour") === null && given.texts("size") === null;
      if (schedule === null || book.workbook === null || !whole) {
        const one = jobAsked(given, SILENT, { isJob: true })!;
        await jobTonnage(one, by, target, given, SILENT);
      } else {
        refuseKind(book.workbook, target);
        writeCopy(target, copyWithTotals(book.workbook, schedule, read));
      }
      streams.note(`written: ${target}`);
    }
    const asked = askedBars(read.schedules, filter);
    const { reckoned, notes } = tonnageOf([{ ...read, schedules: asked }]);
    const costs = costsOf({ ...read, schedules: asked }, reckoned);
    const severe = severeBars(heldRows(read.report, read.schedules, read.workshop), filteredBy(asked));
    const ofBars = severeWords(severe, read.schedules.length > 1);
    const said = [
      ...read.notes,
      ...notes,
      ...(costs?.notes ?? []),
      ...ofBars,
      ...notToldLines(read.report.waivers),
    ];
    for (const note of said) streams.note(note);
    if (given.flag("json")) {
      const priced = costs === null ? {} : { costs: costReport(costs.priced) };
      streams.result(JSON.stringify({ ...tonnageReport(reckoned), ...priced, ...severe, notes: said }));
    } else if (reckoned.held !== null) streams.result(`no totals: ${reckoned.held}`);
    else {
      const isSummary = given.flag("summary");
      printTonnage(namedGroups(reckoned), reckoned.groupedBy, streams, isSummary);
      if (costs !== null) printCosts(costs.priced, reckoned.groupedBy, streams, isSummary);
    }
    const none = noneInTotal(reckoned);
    if (none !== null) streams.note(none);
    if (none !== null) return 2;
    return isBroken(read) ? 1 : 0;
  },
};

const nothing = (): void => undefined;
/** One book answers in its own shape, though its workbook is made as that of a job. */
const SILENT: Streams = { result: nothing, note: nothing, piece: nothing, progress: nothing };

/** A job's tonnes, and its workbook where one is asked for. */
function jobTonnage(
  job: JobAsked,
  by: JobGroup | null,
  target: string | null,
  given: GivenOptions,
  streams: Streams,
): Promise<ExitCode> {
  if (target !== null) {
    for (const path of job.named.paths) refuseTarget(path, target);
    if (!/\.xlsx$/i.test(target))
      throw new InputRefused(`--out ${target}: the totals of a job are a workbook, so name it .xlsx`);
  }
  return tellJob(job, { tells: "tonnes", by, workbook: target }, given, streams);
}

function groupAsked(by: string | null): JobGroup | null {
  if (by === null) return null;
  const known = JOB_GROUPS.find((group) => group === by.trim().toLowerCase());
  if (known === undefined)
    throw new InputRefused(`--by ${by}: give ${JOB_GROUPS.join(", ")}${didYouMean(by, [...JOB_GROUPS])}`);
  return known;
}
