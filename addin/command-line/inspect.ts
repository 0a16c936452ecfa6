import { notToldLines } from "../../core/audit/not-told-words";
import {
  askedBars,
  checkBooks,
  filteredBy,
  heldRows,
  isAsked,
  isBroken,
  severeBars,
  severeWords,
  shopNotes,
  ticketsOf,
} from "../../core/jobs";
import { answerOf } from "./answer-of";
import { bookAsked } from "./book-asked";
import type { Command } from "./command";
import { InputRefused } from "./input-refused";
import { inspectBook, printInspection } from "./inspect-book";
import { inspectJob } from "./job/inspect-job";
import { filterFor, jobAsked } from "./job/job-asked";
import { JOB_OPTIONS } from "./job/read-job";
import { STANDARD_OPTIONS } from "./standard-for";
import { refuseTarget, writeCopy } from "./write-copy";

/** Marks between those that are drawn, where nothing is said. */
const USUAL_EVERY = 10;

/** `inspect BOOK`: draws marks to be measured onto a sheet, and judges what was measured. */
export const inspect: Command = {
  name: "inspect",
  usage:
    "inspect BOOK... [--summary] [--every N] [--out COPY.xlsx | FOLDER] [--pour NAME] [--size SIZES] [--sheet NAME] [--standard ID] [--own FILE] [--json]",
  summary: "marks drawn to be measured, and measured lengths against the tolerance",
  options: {
    every: { type: "string" },
    summary: { type: "boolean" },
    out: { type: "string" },
    ...JOB_OPTIONS,
    sheet: { type: "string" },
    ...STANDARD_OPTIONS,
    json: { type: "boolean" },
  },
  async run(given, streams) {
    const target = given.text("out");
    const every = everyGiven(given.text("every"));
    const job = jobAsked(given, streams);
    if (job !== null) return inspectJob(job, every, given, streams);
    const { book, question } = bookAsked(given, streams, (path) => {
      if (target !== null) refuseTarget(path, target);
    });
    const checked = answerOf(checkBooks([book], question)[0]!);
    const { workshop, standard, report, sheets } = checked;
    const { tickets, notes } = ticketsOf([{ report, sheets, workshop }]);
    for (const note of new Set([...checked.notes, ...shopNotes(workshop), ...notes])) streams.note(note);
    const filter = filterFor(given, checked);
    const drawn = tickets.filter((ticket) => isAsked(filter, ticket));
    const severe = severeWords(
      severeBars(
        heldRows(report, checked.schedules, workshop),
        filteredBy(askedBars(checked.schedules, filter)),
      ),
      checked.schedules.length > 1,
    );
    const ofSheets = new Set(notes);
    for (const note of [...severe, ...notToldLines(report.waivers)])
      if (!ofSheets.has(note)) streams.note(note);
    const inspected = inspectBook({ book, tickets, drawn, standard, every, target });
    if (target !== null && inspected.copy !== null) {
      writeCopy(target, inspected.copy);
      streams.note(`written: ${target}`);
    }
    if (given.flag("json")) streams.result(JSON.stringify(inspected.judged ?? inspected.sample));
    else printInspection(inspected, standard.unit, streams, given.flag("summary"));
    return isBroken(checked) ? 1 : 0;
  },
};

function everyGiven(option: string | null): number {
  const every = option === null ? USUAL_EVERY : Number(option);
  if (!Number.isInteger(every) || every < 1)
    throw new InputRefused(`--every ${option} is no count: give a whole number, 1 for every mark`);
  return every;
}
