import { type AuditSettings, readAsCorrected, runAudit, settingsFromText } from "../../../core/audit";
import { notToldWords } from "../../../core/audit/not-told-words";
import type { ScheduleReading, Sheet } from "../../../core/schedule";
import { readShop, type Shop, Workshop } from "../../../core/shop";
import type { Standard } from "../../../core/standards";
import { bundleItem, scheduleHead, ticketsOfAudit } from "../../../core/tickets";
import { makeBundles } from "../../../core/totals";
import { bundleLabelsPage } from "../../print/bundle-labels";
import type { ScheduleHead } from "../../print/print-page";
import { ticketPage } from "../../print/ticket-page";
import { NO_BESIDES, sheetsToRead } from "../desk/besides";
import { makeCutList } from "./make-cut-list";
import type { PrintedPage } from "./printed-page";
import { settingsNotes } from "./settings-notes";
import type { PageKind, YardQuestion } from "./yard-desk";

/** One of the yard's pages for a schedule. Throws with words for the user where it cannot be made. */
export function makePage(kind: PageKind, question: YardQuestion, standard: Standard): PrintedPage {
  const { sheet } = question;
  const settings = settingsFromText(question.settings);
  const reading = readAsCorrected(sheet, standard, settings);
  if (reading.bars.length === 0) {
    throw new Error(`sheet ${sheet.name} holds no bars of a schedule: choose the sheet that does`);
  }
  const shop = question.shop === null ? null : readShop(question.shop, standard);
  const head: ScheduleHead = { ...scheduleHead(reading), standard: standard.id };
  const made = PAGES[kind]({ question, standard, shop, head, sheet, reading, settings });
  const notes = [...settingsNotes(settings, sheet.name), ...made.notes];
  return { ...made, notes, sheet: sheet.name, fileName: `${fileWords(`${sheet.name} ${made.title}`)}.html` };
}

interface PageQuestion {
  readonly question: YardQuestion;
  readonly standard: Standard;
  readonly shop: Shop | null;
  readonly head: ScheduleHead;
  readonly sheet: Sheet;
  readonly reading: ScheduleReading;
  readonly settings: AuditSettings;
}

type MadePage = Omit<PrintedPage, "fileName" | "sheet">;

const PLAIN = { refused: [], toBuy: [], remnants: null } as const;

const PAGES: Readonly<Record<PageKind, (asked: PageQuestion) => MadePage>> = {
  tickets(asked) {
    const { tickets, notes, head } = ticketsOf(asked);
    return { title: "Bending tickets", html: ticketPage(tickets, head), notes, ...PLAIN };
  },
  "cut list": ({ question, ...asked }) => makeCutList({ ...asked, shopSheet: question.shop }),
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
      html: bundleLabelsPage(bundles, head, asked.standard.unit),
      notes: [...notes, ...leftOut],
      ...PLAIN,
    };
  },
};

function ticketsOf({ question, standard, shop, sheet, settings, head }: PageQuestion) {
  const sheets = sheetsToRead(sheet, question.shop, question.besides ?? NO_BESIDES);
  const report = runAudit({ sheets, only: sheet.name, standard, settings });
  const { tickets, dropped } = ticketsOfAudit(report, [sheet], new Workshop(question.shop, standard));
  const rows = dropped.map(({ row }) => row).join(", ");
  const notes = [
    ...(shop === null ? ["the workbook has no Shop sheet: no bender, stock or trial is known"] : []),
    ...(dropped.length === 0 ? [] : [`rows struck through or superseded have none: ${rows}`]),
  ];
  const notTold = report.waivers.map(notToldWords);
  return { tickets, notes: [...notes, ...notTold], head: { ...head, notTold } };
}

const fileWords = (words: string): string => words.replace(/[^\p{L}\p{N} .-]+/gu, "-").trim();
