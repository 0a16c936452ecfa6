import {
  cutOf,
  cuttingSupply,
  planBySize,
  refusedText,
  remnantBooking,
  rowsToCut,
  type SizePlan,
  stockToBuy,
} from "../../../core/cutting";
import type { ScheduleReading, Sheet } from "../../../core/schedule";
import type { Shop } from "../../../core/shop";
import type { Standard } from "../../../core/standards";
import { isRefusal, refusalText } from "../../../core/units/refusal";
import { cutLengthWords } from "../../print/cut-length-words";
import { cutListPage } from "../../print/cut-list-page";
import type { ScheduleHead } from "../../print/print-page";
import type { PrintedPage } from "./printed-page";
import type { RemnantView } from "./remnant-view";

/** What a cut list is made of. */
export interface CutListQuestion {
  readonly sheet: Sheet;
  readonly reading: ScheduleReading;
  readonly shop: Shop | null;
  readonly shopSheet: Sheet | null;
  readonly standard: Standard;
  readonly head: ScheduleHead;
}

/** The cut list of a schedule with what it would change on the Shop sheet. Throws where nothing can be cut. */
export function makeCutList(asked: CutListQuestion): Omit<PrintedPage, "fileName" | "sheet" | "basis"> {
  const { sheet, reading, shop, standard, head } = asked;
  const { rows, refused: unread, notes } = rowsToCut(sheet, reading, standard);
  const supply = cuttingSupply(shop, standard);
  const planned = planBySize(rows, supply);
  const refused = [...planned.refused, ...unread];
  const words = refused.map((row) => refusedText({ ...row, sheet: null }, standard.unit));
  if (planned.groups.length === 0)
    throw new Error(words.length === 0 ? NO_BARS : `nothing can be planned: ${words.join("; ")}`);
  const toBuy = stockToBuy(planned.groups, standard);
  return {
    title: "Cut list",
    html: cutListPage(planned.groups, head, {
      refused: refused.map((row) => ({ ...row, sheet: null })),
      toBuy,
      endCrop: supply.endCrop,
      kerf: supply.kerf,
      unit: standard.unit,
    }),
    refused: words,
    toBuy: toBuy.map(({ size, grade, length, bars, kilograms, provenLeast }) => ({
      size: [size, grade].filter((part) => part !== null).join(" "),
      stock: cutLengthWords(length, standard.unit) + (standard.unit === "mm" ? " mm" : ""),
      bars: String(bars),
      tonnes: kilograms === null ? "?" : (kilograms / KILOGRAMS_PER_TONNE).toFixed(3),
      kilograms: kilograms === null ? "?" : String(Math.round(kilograms)),
      provenLeast,
    })),
    notes: [...planned.notes, ...notes],
    remnants: remnantView(asked, planned.groups, supply.leastRemnant),
  };
}

const KILOGRAMS_PER_TONNE = 1000;
const NO_BARS = "nothing is to be cut: every count is 0";

function remnantView(
  { sheet, shopSheet, standard }: CutListQuestion,
  groups: readonly SizePlan[],
  leastRemnant: number,
): RemnantView {
  const cut = cutOf(sheet.name, groups, new Date().toISOString().slice(0, 10));
  const name = shopSheet?.name ?? null;
  const none = { shopSheet: name, changes: [], edits: [], headingRow: null, notes: [], leastRemnant, cut };
  if (shopSheet === null) return { ...none, problem: null };
  const booking = remnantBooking(shopSheet, standard, groups, leastRemnant);
  if (isRefusal(booking)) return { ...none, problem: refusalText(booking) };
  return { ...none, ...booking, problem: null };
}
