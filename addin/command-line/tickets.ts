import type { AuditReport } from "../../core/audit/audit-report";
import { notToldWords } from "../../core/audit/not-told-words";
import { runAudit } from "../../core/audit/run-audit";
import type { Workshop } from "../../core/shop";
import type { Standard } from "../../core/standards";
import { bundleItem, type Ticket, ticketsOfAudit } from "../../core/tickets";
import { type Bundles, makeBundles } from "../../core/totals";
import { bundleLabelsPage } from "../print/bundle-labels";
import type { ScheduleHead } from "../print/print-page";
import { ticketPage } from "../print/ticket-page";
import { trialLogPage } from "../print/trial-log-page";
import { auditSettingsOf } from "./audit-settings-of";
import type { Command } from "./command";
import { InputRefused } from "./input-refused";
import { type Book, openBook } from "./open-book";
import { noteDecisions } from "./print-decisions";
import { readSheets, sayPassedOver, saySettingsUsed, withOtherSheets } from "./read-schedules";
import { readShopSheet } from "./read-shop-sheet";
import { standardFor } from "./standard-for";
import type { Streams } from "./streams";
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
    standard: { type: "string" },
    json: { type: "boolean" },
  },
  async run(given, streams) {
    const [path, more] = given.positionals;
    if (path === undefined || more !== undefined) throw new InputRefused("name one .xlsx or .csv file");
    const pages = { out: given.text("out"), labels: given.text("labels"), chart: given.text("chart") };
    const targets = Object.values(pages).filter((target) => target !== null);
    if (targets.length === 0 && !given.flag("json"))
      throw new InputRefused(
        "name a page to write: --out FILE.html, --labels FILE.html or --chart FILE.html",
      );
    for (const target of targets) refusePage(path, target);
    const book = openBook(path);
    const standard = standardFor(given.text("standard"), book.setting("Barwright.Standard"));
    const workshop = readShopSheet(book, standard, streams);
    if (workshop.sheet === null)
      streams.note("the book has no Shop sheet: no bender, stock or trial is known");
    const { made, report } = makeAll(book, given.text("sheet"), standard, workshop, streams);
    const limit = pages.labels === null ? null : bundleLimit(given.text("bundle-limit"), workshop);
    const head = pageHead(made, report, standard);
    const write = (target: string | null, page: () => string): void => {
      if (target === null) return;
      writePage(path, target, page());
      streams.note(`written: ${target}`);
    };
    write(pages.out, () => ticketPage(made, head));
    write(pages.labels, () => bundleLabelsPage(bundlesOf(made, limit ?? 0, streams), head, standard.unit));
    write(pages.chart, () => trialLogPage(workshop, workshop.logRow, head));
    if (given.flag("json")) streams.result(JSON.stringify({ standard: standard.id, tickets: made }));
    else for (const line of summary(made)) streams.result(line);
    return made.some(isUnmakeable) ? 1 : 0;
  },
};

function makeAll(
  book: Book,
  only: string | null,
  standard: Standard,
  workshop: Workshop,
  streams: Streams,
): { readonly made: readonly Ticket[]; readonly report: AuditReport } {
  const sheets = readSheets(book, only);
  const settings = auditSettingsOf(book);
  saySettingsUsed(sheets, settings, streams);
  const report = runAudit({ sheets: withOtherSheets(book, sheets), only, standard, settings });
  const read = report.sheets.map(({ sheet, reading }) => ({
    sheet: sheets.find(({ name }) => name === sheet)!,
    reading,
  }));
  sayPassedOver(read, streams);
  const { tickets, dropped } = ticketsOfAudit(report, sheets, workshop);
  for (const { name } of sheets) {
    const rows = dropped.filter(({ sheet }) => sheet === name).map(({ row }) => row);
    if (rows.length > 0)
      streams.note(`no ticket for rows struck through or superseded: ${name} ${rows.join(", ")}`);
  }
  noteDecisions(report, streams);
  return { made: tickets, report };
}

function pageHead(made: readonly Ticket[], report: AuditReport, standard: Standard): ScheduleHead {
  const head = made[0]?.head ?? null;
  return {
    job: head?.job ?? null,
    schedule: head?.schedule ?? null,
    revision: head?.revision ?? null,
    standard: standard.id,
    notTold: report.waivers.map(notToldWords),
  };
}

function bundleLimit(option: string | null, workshop: Workshop): number {
  const limit = option === null ? workshop.shop.limits.hoist : Number(option);
  if (limit === null)
    throw new InputRefused(
      "no lifting limit is known: give --bundle-limit KG, or write it on the Shop sheet as Hoist or crane kg",
    );
  if (!(limit > 0) || !Number.isFinite(limit))
    throw new InputRefused(`--bundle-limit ${option} is no mass: give kilograms, over 0`);
  return limit;
}

function bundlesOf(made: readonly Ticket[], limit: number, streams: Streams): Bundles {
  let left = 0;
  const items = made.flatMap((ticket) => {
    const item = bundleItem(ticket);
    if (item === null) left += 1;
    return item ?? [];
  });
  if (left > 0) streams.note(`${left} bar rows without count, length or mass: they are in no bundle`);
  return makeBundles(items, limit);
}

/** Something broken that may hurt, or a bar that cannot be made as it stands. */
function isUnmakeable({ warnings, order }: Ticket): boolean {
  const severe = warnings.some(
    ({ severity, unsure }) => !unsure && (severity === "unsafe" || severity === "unbendable"),
  );
  return severe || (order.kind === "blocked" && order.sure);
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
