import {
  checkBooks,
  heatsByRow,
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
import type { Command } from "./command";
import { InputRefused } from "./input-refused";
import { noteDecisions } from "./print-decisions";
import { STANDARD_OPTIONS } from "./standard-for";
import { bundleLimit, pageHead } from "./ticket-pages";
import { refusePage, writePage } from "./write-page";

/** `tickets BOOK`: one bending ticket a mark, labels of the bundles, and the wall chart of angles. */
export const tickets: Command = {
  name: "tickets",
  usage: "tickets BOOK --out FILE.html [--labels FILE] [--bundle-limit KG] [--chart FILE] [--json]",
  summary: "bending tickets, bundle labels and the chart of compensated angles",
  options: {
    out: { type: "string" },
    labels: { type: "string" },
    "bundle-limit": { type: "string" },
    chart: { type: "string" },
    sheet: { type: "string" },
    ...STANDARD_OPTIONS,
    json: { type: "boolean" },
  },
  async run(given, streams) {
    const pages = { out: given.text("out"), labels: given.text("labels"), chart: given.text("chart") };
    const targets = Object.values(pages).filter((target) => target !== null);
    if (targets.length === 0 && !given.flag("json"))
      throw new InputRefused(
        "name a page to write: --out FILE.html, --labels FILE.html or --chart FILE.html",
      );
    const { path, book, question } = bookAsked(given, streams, (path) => {
      for (const target of targets) refusePage(path, target);
    });
    const [answer] = checkBooks([book], question);
    const checked = answerOf(answer!);
    const { workshop, standard, report, sheets } = checked;
    const { tickets: made, notes } = ticketsOf([
      { report, sheets, workshop, heats: heatsByRow(plansWithHeats(checked)) },
    ]);
    for (const note of [...checked.notes, ...shopNotes(workshop), ...notes]) streams.note(note);
    noteDecisions(report, streams);
    const labels =
      pages.labels === null
        ? null
        : answerOf(labelsOf(made, bundleLimit(given.text("bundle-limit"), workshop)));
    for (const note of labels?.notes ?? []) streams.note(note);
    const head = pageHead(made, report, standard);
    const write = (target: string | null, page: () => string): void => {
      if (target === null) return;
      writePage(path, target, page());
      streams.note(`written: ${target}`);
    };
    write(pages.out, () => ticketPage(made, head));
    if (labels !== null) write(pages.labels, () => bundleLabelsPage(labels.bundles, head, standard.unit));
    write(pages.chart, () => trialLogPage(workshop, workshop.logRow, head));
    if (given.flag("json")) streams.result(JSON.stringify({ standard: standard.id, tickets: made }));
    else for (const line of summary(made)) streams.result(line);
    return made.some(isUnmakeable) ? 1 : 0;
  },
};

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
