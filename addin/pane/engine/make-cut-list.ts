import { notToldLines } from "../../../core/audit/not-told-words";
import { cutOf, refusedText, remnantBooking, type SizePlan } from "../../../core/cutting";
import {
  asksOf,
  cutListOf,
  holdsOf,
  isAmongHeld,
  notToMakeText,
  piecesNotToMake,
  piecesOf,
  piecesToAsk,
} from "../../../core/jobs";
import type { ScheduleReading } from "../../../core/schedule";
import type { Workshop } from "../../../core/shop";
import { tonnesOf } from "../../../core/units/print-mass";
import { isRefusal, refusalText } from "../../../core/units/refusal";
import { cutLengthWords } from "../../print/cut-length-words";
import { cutListPage } from "../../print/cut-list-page";
import type { PageHead } from "../../print/print-page";
import type { KeptCheck } from "./kept-check";
import type { PrintedPage } from "./printed-page";
import type { RemnantView } from "./remnant-view";

/** What a cut list is made of. */
interface CutListQuestion {
  readonly kept: KeptCheck;
  readonly reading: ScheduleReading;
  readonly workshop: Workshop;
  readonly head: PageHead;
}

/** The cut list of a schedule with what it would change on the Shop sheet. Throws where nothing can be cut. */
export function makeCutList(asked: CutListQuestion): Omit<PrintedPage, "fileName" | "sheet" | "basis"> {
  const { kept, reading, workshop, head } = asked;
  const { standard } = kept.audit.report;
  const schedules = [{ sheet: kept.sheet, reading }];
  const { groups, refused: all, supply, toBuy, notes } = cutListOf({ schedules, standard, workshop });
  // the page is of one sheet, which its head names
  const refused = all.map((row) => ({ ...row, sheet: null }));
  const asks = { schedules, standard, workshop };
  const { rows } = piecesOf(asks);
  const { byRow, waivers } = kept.audit.report;
  const notTold = notToldLines(waivers);
  const notToMake = piecesNotToMake(rows, holdsOf(byRow));
  const toAsk = piecesToAsk(rows, asksOf(byRow), notToMake);
  const words = refused.map((row) => refusedText(row, standard.unit));
  if (groups.length === 0)
    throw new Error(words.length === 0 ? NO_BARS : `nothing can be planned: ${words.join("; ")}`);
  const { endCrop, kerf } = supply;
  return {
    title: "Cut list",
    html: cutListPage(
      groups,
      { ...head, leftOut: [...(head.leftOut ?? []), ...notes], notTold },
      { refused, notToMake, toAsk, toBuy, endCrop, kerf, unit: standard.unit },
    ),
    refused: words,
    toBuy: toBuy.map(({ size, grade, length, bars, kilograms, provenLeast }) => ({
      size: [size, grade].filter((part) => part !== null).join(" "),
      stock: cutLengthWords(length, standard.unit) + (standard.unit === "mm" ? " mm" : ""),
      bars: String(bars),
      tonnes: kilograms === null ? "?" : tonnesOf(kilograms),
      kilograms: kilograms === null ? "?" : String(Math.round(kilograms)),
      provenLeast,
    })),
    notes: [
      ...notes,
      ...notToMake.map((row) => `not to be made until cleared: ${notToMakeText(row, false)}`),
      ...toAsk.map((row) => `to be asked about before they are made: ${notToMakeText(row, false)}`),
      ...notTold,
    ],
    remnants: remnantView(asked, groups, supply.leastRemnant, isAmongHeld(notToMake)),
  };
}

const NO_BARS = "nothing is to be cut: every count is 0";

function remnantView(
  {
    kept: {
      sheet,
      shop: shopSheet,
      audit: { report },
    },
  }: CutListQuestion,
  groups: readonly SizePlan[],
  leastRemnant: number,
  isHeld: (size: string, mark: string) => boolean,
): RemnantView {
  const cut = cutOf(sheet.name, groups, new Date().toISOString().slice(0, 10));
  const name = shopSheet?.name ?? null;
  const none = { shopSheet: name, changes: [], edits: [], headingRow: null, notes: [], leastRemnant, cut };
  if (shopSheet === null) return { ...none, problem: null };
  const booking = remnantBooking(shopSheet, report.standard, groups, leastRemnant, isHeld);
  if (isRefusal(booking)) return { ...none, problem: refusalText(booking) };
  return { ...none, ...booking, problem: null };
}
