import { notToldWords } from "../../../core/audit/not-told-words";
import type { ScheduleReading, Sheet } from "../../../core/schedule";
import { readShop, type Shop, Workshop } from "../../../core/shop";
import { bundleItem, scheduleHead, ticketsOfAudit } from "../../../core/tickets";
import { makeBundles } from "../../../core/totals";
import { bundleLabelsPage } from "../../print/bundle-labels";
import type { ScheduleHead } from "../../print/print-page";
import { ticketPage } from "../../print/ticket-page";
import { trialLogPage } from "../../print/trial-log-page";
import { barsOfPours } from "./bars-of-pours";
import { basisOf } from "./basis-of";
import type { PageKind, Pours } from "./engine";
import { barsRead, type KeptCheck } from "./kept-check";
import { makeCutList } from "./make-cut-list";
import { makeFindingsPage } from "./make-findings-page";
import type { PrintedPage } from "./printed-page";
import { settingsNotes } from "./settings-notes";

/** A page to print of a checked sheet, of all pours or of those chosen. Throws with words for the user where it cannot be made. */
export function makePage(kind: PageKind, kept: KeptCheck, pours: Pours): PrintedPage {
  const { sheet, settings, report } = kept;
  const { standard } = report;
  const all = barsRead(kept);
  const reading = barsOfPours(kept, all, pours);
  const shop = kept.shop === null ? null : readShop(kept.shop, standard);
  const head: ScheduleHead = { ...scheduleHead(all), standard: standard.id };
  const made = PAGES[kind]({ kept, shop, head, sheet, reading });
  const chosen = pours === null ? [] : [`only of ${pours.join(", ")}`];
  return {
    ...made,
    notes: [...chosen, ...settingsNotes(settings, sheet.name), ...made.notes],
    sheet: sheet.name,
    fileName: `${fileWords(`${sheet.name} ${made.title}`)}.html`,
    basis: basisOf(kept),
  };
}

interface PageQuestion {
  readonly kept: KeptCheck;
  readonly shop: Shop | null;
  readonly head: ScheduleHead;
  readonly sheet: Sheet;
  /** of the bars that the page is of */
  readonly reading: ScheduleReading;
}

type MadePage = Omit<PrintedPage, "fileName" | "sheet" | "basis">;

const PLAIN = { refused: [], toBuy: [], remnants: null } as const;

const PAGES: Readonly<Record<PageKind, (asked: PageQuestion) => MadePage>> = {
  findings: ({ kept }) => ({ ...makeFindingsPage(kept, "findings"), notes: [], ...PLAIN }),
  questions: ({ kept }) => ({ ...makeFindingsPage(kept, "questions"), notes: [], ...PLAIN }),
  "wall chart": ({ kept, head }) => {
    const workshop = new Workshop(kept.shop, kept.report.standard);
    return {
      title: "Compensated angles",
      html: trialLogPage(workshop, workshop.logRow, head),
      notes: [],
      ...PLAIN,
    };
  },
  tickets(asked) {
    const { tickets, notes, head } = ticketsOf(asked);
    return { title: "Bending tickets", html: ticketPage(tickets, head), notes, ...PLAIN };
  },
  "cut list": ({ kept, ...asked }) =>
    makeCutList({ ...asked, shopSheet: kept.shop, standard: kept.report.standard }),
  labels(asked) {
    const limit = asked.shop?.limits.hoist ?? null;
    if (limit === null) {
      throw new Error(
        "no lifting limit is known, so no bundle can be made up: write Hoist or crane kg on the Shop sheet",
      );
    }
    const { tickets, notes, head } = ticketsOf(asked);
    const items = tickets.flatMap((ticket) => bundleItem(ticket) ?? []);
    const left = tickets.length - items.length;
    const bundles = makeBundles(items, limit);
    const leftOut = left === 0 ? [] : [`${left} rows without count, length or mass are in no bundle`];
    return {
      title: "Bundle labels",
      html: bundleLabelsPage(bundles, head, asked.kept.report.standard.unit),
      notes: [...notes, ...leftOut],
      ...PLAIN,
    };
  },
};

function ticketsOf({ kept, shop, sheet, reading, head }: PageQuestion) {
  const { report } = kept;
  const workshop = new Workshop(kept.shop, report.standard);
  const { tickets: all, dropped } = ticketsOfAudit(report, [sheet], workshop);
  const wanted = new Set(reading.bars.map(({ row }) => sheet.top + row + 1));
  const tickets = all.filter(({ row }) => wanted.has(row));
  const rows = dropped.flatMap(({ row }) => (wanted.has(row) ? [row] : [])).join(", ");
  const notes = [
    ...(shop === null ? ["the workbook has no Shop sheet: no bender, stock or trial is known"] : []),
    ...(rows === "" ? [] : [`rows struck through or superseded have none: ${rows}`]),
  ];
  const notTold = report.waivers.map(notToldWords);
  return { tickets, notes: [...notes, ...notTold], head: { ...head, notTold } };
}

const fileWords = (words: string): string => words.replace(/[^\p{L}\p{N} .-]+/gu, "-").trim();
