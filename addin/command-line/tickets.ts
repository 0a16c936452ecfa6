import {
  askedBars,
  checkBooks,
  heatsByRow,
  isAsked,
  isUnmakeable,
  labelsOf,
  plansWithHeats,
  shopNotes,
  ticketsOf,
} from "../../core/jobs";
import type { Ticket } from "../../core/tickets";
import { bundleLabelsPage } from "../print/bundle-labels";
import { ticketPage } from "../print/ticket-page";
import { trialLogPage } from "../print/trial-log-page";
import { answerOf } from "./answer-of";
import { bookAsked } from "./book-asked";
import type { Command, ExitCode } from "./command";
import { InputRefused } from "./input-refused";
import { filterFor, type JobAsked, jobAsked, narrowedTo } from "./job/job-asked";
import { heatsOfJob } from "./job/pieces-of-job";
import { JOB_OPTIONS, readJob } from "./job/read-job";
import { jobHead, ticketsOfJob } from "./job/ticket-job";
import { noteDecisions } from "./print-decisions";
import type { GivenOptions } from "./read-options";
import { READ_OPTIONS, STANDARD_OPTIONS } from "./standard-for";
import type { Streams } from "./streams";
import { bundleLimit, pageHead, withLeftOut } from "./ticket-pages";
import { refusePage, writePage } from "./write-page";

/** `tickets BOOK`: one bending ticket a mark, labels of the bundles, and the wall chart of angles. */
export const tickets: Command = {
  name: "tickets",
  usage:
    "tickets BOOK... --out FILE.html [--summary] [--pour NAME] [--size SIZES] [--read COLUMNS] [--labels FILE] [--bundle-limit KG] [--chart FILE] [--json]",
  summary: "bending tickets, bundle labels and the chart of compensated angles",
  options: {
    out: { type: "string" },
    summary: { type: "boolean" },
    labels: { type: "string" },
    "bundle-limit": { type: "string" },
    chart: { type: "string" },
    ...JOB_OPTIONS,
    sheet: { type: "string" },
    ...STANDARD_OPTIONS,
    ...READ_OPTIONS,
    json: { type: "boolean" },
  },
  async run(given, streams) {
    const pages = { out: given.text("out"), labels: given.text("labels"), chart: given.text("chart") };
    const targets = Object.values(pages).filter((target) => target !== null);
    if (targets.length === 0 && !given.flag("json"))
      throw new InputRefused(
        "name a page to write: --out FILE.html, --labels FILE.html or --chart FILE.html",
      );
    const many = jobAsked(given, streams);
    if (many !== null) return manyTickets(many, pages, given, streams);
    const { path, book, question } = bookAsked(given, streams, (path) => {
      for (const target of targets) refusePage(path, target);
    });
    const [answer] = checkBooks([book], question);
    const checked = answerOf(answer!);
    const { workshop, standard, report, sheets } = checked;
    const filter = filterFor(given, checked);
    refuseTooMany(
      askedBars(checked.schedules, filter).reduce((sum, { reading }) => sum + reading.bars.length, 0),
    );
    const all = ticketsOf([{ report, sheets, workshop, heats: heatsByRow(plansWithHeats(checked)) }]);
    const made = all.tickets.filter((ticket) => isAsked(filter, ticket));
    const { notes } = all;
    const said = [...checked.notes, ...shopNotes(workshop), ...notes];
    for (const note of said) streams.note(note);
    noteDecisions(report, streams);
    const labels =
      pages.labels === null
        ? null
        : answerOf(labelsOf(made, bundleLimit(given.text("bundle-limit"), workshop)));
    for (const note of labels?.notes ?? []) streams.note(note);
    const head = pageHead(made, report, standard, [...narrowedTo(filter), ...said]);
    const write = (target: string | null, page: () => string): void => {
      if (target === null) return;
      writePage(path, target, page());
      streams.note(`written: ${target}`);
    };
    write(pages.out, () => ticketPage(made, head));
    if (labels !== null)
      write(pages.labels, () =>
        bundleLabelsPage(labels.bundles, withLeftOut(head, labels.notes), standard.unit),
      );
    write(pages.chart, () => trialLogPage(workshop, workshop.logRow, head));
    if (given.flag("json")) streams.result(JSON.stringify({ standard: standard.id, tickets: made }));
    else for (const line of summary(made)) streams.result(line);
    return made.some(isUnmakeable) ? 1 : 0;
  },
};

/** Tickets of one book: a page of as many is a hundred megabytes, which is about what a browser opens and prints. */
const MOST = 10_000;

function refuseTooMany(bars: number): void {
  if (bars <= MOST) return;
  throw new InputRefused(
    `${bars} rows of bars are asked for, and a ticket is made of each, at most ${MOST} at once: name a pour, sizes or a sheet with --pour, --size or --sheet`,
  );
}

/** Tickets of a job: one page of all, by schedule and row; a chart of angles is one Shop sheet's. */
async function manyTickets(
  asked: JobAsked,
  pages: { readonly out: string | null; readonly labels: string | null; readonly chart: string | null },
  given: GivenOptions,
  streams: Streams,
): Promise<ExitCode> {
  if (pages.chart !== null)
    throw new InputRefused("--chart draws the trials of one workbook's Shop sheet: name one");
  for (const target of [pages.out, pages.labels])
    if (target !== null) for (const path of asked.named.paths) refusePage(path, target);
  const job = await readJob(asked.named.paths, asked.task, given, streams);
  try {
    const heats = heatsOfJob(asked, job);
    if (heats.groups.length > 0) for (const note of heats.pieces.notes) streams.note(note);
    const { books, unread, all, notes, isUnmakeable: isBad } = ticketsOfJob(asked, job, streams, heats.of);
    const [first] = books;
    if (first === undefined) throw new InputRefused("none of the books has a schedule");
    const head = jobHead(all, first.standard, [...narrowedTo(asked.filter), ...notes]);
    if (pages.labels !== null) {
      const { workshop } = heats.pieces;
      if (workshop === null) throw new InputRefused("none of the books has a schedule");
      const labels = answerOf(labelsOf(all, bundleLimit(given.text("bundle-limit"), workshop)));
      for (const note of labels.notes) streams.note(note);
      writePage(
        asked.named.paths[0]!,
        pages.labels,
        bundleLabelsPage(labels.bundles, withLeftOut(head, labels.notes), all[0]?.unit ?? "mm"),
      );
      streams.note(`written: ${pages.labels}`);
    }
    if (pages.out !== null) {
      writePage(asked.named.paths[0]!, pages.out, ticketPage(all, head));
      streams.note(`written: ${pages.out}`);
    }
    const { findings } = job.judged;
    if (given.flag("json"))
      streams.result(
        JSON.stringify({
          books: [...books, ...unread],
          job: { tickets: all.length, unreadable: unread, findings },
        }),
      );
    else for (const line of summary(all)) streams.result(line);
    return unread.length > 0 ? 2 : isBad ? 1 : 0;
  } finally {
    job.close();
  }
}

function summary(made: readonly Ticket[]): string[] {
  const bent = made.filter(({ bends }) => bends.length > 0);
  const trial = bent.filter(({ bends }) => bends.some(({ compensated }) => compensated.angle === null));
  const machine = bent.filter(({ machine }) => machine.name !== null);
  return [
    `${made.length} tickets, ${bent.length} with bends`,
    `${machine.length} have a bender that is known to make them; ${trial.length} need a trial bend first`,
    `${made.filter(isUnmakeable).length} are unsafe or cannot be made as they stand`,
  ];
}
