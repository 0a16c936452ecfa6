import { notToldWords } from "../../../core/audit/not-told-words";
import { labelsOf, loadsOf, ticketsOf } from "../../../core/jobs";
import type { ScheduleReading } from "../../../core/schedule";
import { Workshop } from "../../../core/shop";
import { scheduleHead } from "../../../core/tickets";
import { isRefusal, type Refusal, refusalText } from "../../../core/units/refusal";
import { bundleLabelsPage } from "../../print/bundle-labels";
import { loadsPage } from "../../print/loads-page";
import type { PageHead } from "../../print/print-page";
import { ticketPage } from "../../print/ticket-page";
import { trialLogPage } from "../../print/trial-log-page";
import { barsOfPours } from "./bars-of-pours";
import { basisOf } from "./basis-of";
import type { PageKind, Pours } from "./engine";
import { heatsOf } from "./heats-of";
import { heldNotes } from "./held-notes";
import { barsRead, type KeptCheck } from "./kept-check";
import { makeCutList } from "./make-cut-list";
import { makeFindingsPage } from "./make-findings-page";
import type { PrintedPage } from "./printed-page";
import { settingsNotes } from "./settings-notes";

/** A page to print of a checked sheet, of all pours or of those chosen. Throws with words for the user where it cannot be made. */
export function makePage(kind: PageKind, kept: KeptCheck, pours: Pours): PrintedPage {
  const {
    sheet,
    settings,
    audit: { report },
  } = kept;
  const { standard } = report;
  const all = barsRead(kept);
  const reading = barsOfPours(kept, all, pours);
  const workshop = new Workshop(kept.shop, standard);
  const chosen = pours === null ? [] : [`only of ${pours.join(", ")}`];
  const said = [...chosen, ...heldNotes(all), ...settingsNotes(settings, sheet.name)];
  const head: PageHead = { ...scheduleHead(all), standard: standard.id, leftOut: said };
  const made = PAGES[kind]({ kept, workshop, head, reading, pours });
  return {
    ...made,
    notes: [...said, ...made.notes],
    sheet: sheet.name,
    fileName: `${fileWords(`${sheet.name} ${made.title}`)}.html`,
    basis: basisOf(kept),
  };
}

interface PageQuestion {
  readonly kept: KeptCheck;
  readonly workshop: Workshop;
  readonly head: PageHead;
  /** of the bars that the page is of */
  readonly reading: ScheduleReading;
  readonly pours: Pours;
}

type MadePage = Omit<PrintedPage, "fileName" | "sheet" | "basis">;

const HEATS_OF_ALL = "tickets, labels and loads say the heats of the whole sheet's cut list, not of this one";

const PLAIN = { refused: [], toBuy: [], remnants: null } as const;

const PAGES: Readonly<Record<PageKind, (asked: PageQuestion) => MadePage>> = {
  findings: ({ kept, reading, pours }) => ({
    ...makeFindingsPage(kept, "findings", reading, pours),
    notes: [],
    ...PLAIN,
  }),
  questions: ({ kept, reading, pours }) => ({
    ...makeFindingsPage(kept, "questions", reading, pours),
    notes: [],
    ...PLAIN,
  }),
  "wall chart": ({ workshop, head }) => ({
    title: "Compensated angles",
    html: trialLogPage(workshop, workshop.logRow, head),
    notes: [],
    ...PLAIN,
  }),
  tickets(asked) {
    const { tickets, notes, head } = ticketsAsked(asked);
    return { title: "Bending tickets", html: ticketPage(tickets, head), notes, ...PLAIN };
  },
  "cut list"(asked) {
    const made = makeCutList(asked);
    const isOther = asked.pours !== null && asked.workshop.shop.stock.some(({ heat }) => heat !== null);
    return isOther ? { ...made, notes: [...made.notes, HEATS_OF_ALL] } : made;
  },
  labels(asked) {
    const { bundles, notes, head } = bundlesAsked(asked);
    const html = bundleLabelsPage(bundles, head, asked.kept.audit.report.standard.unit);
    return { title: "Bundle labels", html, notes, ...PLAIN };
  },
  loads(asked) {
    const { bundles, notes, head } = bundlesAsked(asked);
    const made = answered(loadsOf(bundles, asked.workshop.shop));
    return {
      title: "Loading lists",
      html: loadsPage(made.loads, withLeftOut(head, made.notes), asked.kept.audit.report.standard.unit),
      ...PLAIN,
      refused: made.loads.left.map(
        ({ bundle: { item, number, of }, why }) =>
          `${item.mark ?? "no mark"}, bundle ${number} of ${of}: ${why} for the lorry`,
      ),
      notes: [...notes, ...made.notes],
    };
  },
};

function bundlesAsked(asked: PageQuestion) {
  const { tickets, notes, head } = ticketsAsked(asked);
  const made = answered(labelsOf(tickets, asked.workshop.shop.limits.hoist));
  return {
    bundles: made.bundles,
    notes: [...notes, ...made.notes],
    head: withLeftOut(head, made.notes),
  };
}

function answered<Answer>(answer: Answer | Refusal): Answer {
  if (isRefusal(answer)) throw new Error(refusalText(answer));
  return answer;
}

function ticketsAsked({ kept, workshop, reading, head }: PageQuestion) {
  const {
    audit: { report },
    sheet,
  } = kept;
  const sheets = report.sheets.map((each, index) => (index === 0 ? { ...each, reading } : each));
  const { tickets, notes } = ticketsOf([
    { report: { ...report, sheets }, sheets: [sheet], workshop, heats: heatsOf(kept) },
  ]);
  const notTold = report.waivers.map(notToldWords);
  return { tickets, notes: [...notes, ...notTold], head: { ...withLeftOut(head, notes), notTold } };
}

const withLeftOut = (head: PageHead, more: readonly string[]): PageHead => ({
  ...head,
  leftOut: [...(head.leftOut ?? []), ...more],
});

const fileWords = (words: string): string => words.replace(/[^\p{L}\p{N} .-]+/gu, "-").trim();
