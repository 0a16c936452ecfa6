import {
  checkBooks,
  heatsByRow,
  isAsked,
  isUnmakeable,
  labelsOf,
  loadsOf,
  plansWithHeats,
  shopNotes,
  toSendOf,
} from "../../core/jobs";
import { isOfSeveral } from "../print/is-of-several";
import { loadsPage } from "../print/loads-page";
import { answerOf } from "./answer-of";
import { bookAsked } from "./book-asked";
import type { Command } from "./command";
import { filterFor, jobAsked, narrowedTo } from "./job/job-asked";
import { loadJob } from "./job/load-job";
import { JOB_OPTIONS } from "./job/read-job";
import { noteDecisions } from "./print-decisions";
import { jsonLoads, lorryGiven, printLoads } from "./print-loads";
import { STANDARD_OPTIONS } from "./standard-for";
import { bundleLimit, pageHead } from "./ticket-pages";
import { refusePage, writePage } from "./write-page";

/** `loads BOOK`: bundles on lorries by the day of their pours, loaded in reverse order of fixing. */
export const loads: Command = {
  name: "loads",
  usage:
    "loads BOOK... [--summary] [--pour NAME] [--size SIZES] [--lorry-load KG] [--lorry-length LENGTH] [--bundle-limit KG] [--out FILE.html] [--sheet NAME] [--standard ID] [--own FILE] [--json]",
  summary: "lorry loads by day, each in reverse order of fixing",
  options: {
    summary: { type: "boolean" },
    "lorry-load": { type: "string" },
    "lorry-length": { type: "string" },
    "bundle-limit": { type: "string" },
    out: { type: "string" },
    ...JOB_OPTIONS,
    sheet: { type: "string" },
    ...STANDARD_OPTIONS,
    json: { type: "boolean" },
  },
  async run(given, streams) {
    const target = given.text("out");
    const job = jobAsked(given, streams);
    if (job !== null) return loadJob(job, given, streams);
    const { path, book, question } = bookAsked(given, streams, (path) => {
      if (target !== null) refusePage(path, target);
    });
    const checked = answerOf(checkBooks([book], question)[0]!);
    const { workshop, standard, report, sheets } = checked;
    const heats = heatsByRow(plansWithHeats(checked));
    const all = toSendOf([{ report, sheets, workshop, heats }]);
    const { notes } = all;
    const filter = filterFor(given, checked);
    const tickets = all.tickets.filter((ticket) => isAsked(filter, ticket));
    const lorry = lorryGiven(given, standard.unit);
    const labels = answerOf(labelsOf(tickets, bundleLimit(given.text("bundle-limit"), workshop)));
    const made = answerOf(loadsOf(labels.bundles, workshop.shop, lorry));
    const said = [...checked.notes, ...shopNotes(workshop), ...notes, ...labels.notes, ...made.notes];
    for (const note of said) streams.note(note);
    noteDecisions(report, streams);
    const head = pageHead(tickets, report, standard, [...narrowedTo(filter), ...said]);
    if (target !== null) {
      writePage(path, target, loadsPage(made.loads, head, standard.unit));
      streams.note(`written: ${target}`);
    }
    if (given.flag("json")) streams.result(JSON.stringify(jsonLoads(made.loads)));
    else {
      const isSummary = given.flag("summary");
      const isSeveral = isOfSeveral(labels.bundles.bundles);
      printLoads(made.loads, standard.unit, streams, { isSummary, isSeveral });
    }
    return made.loads.left.length > 0 || tickets.some(isUnmakeable) ? 1 : 0;
  },
};
