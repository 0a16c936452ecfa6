import {
  type CutListRow,
  proofWords,
  type RefusedRow,
  refusedText,
  type SizePlan,
  type StockToBuy,
} from "../../core/cutting";
import { isAmongHeld, type NotToMake, notToMakeText } from "../../core/jobs";
import type { LengthUnit } from "../../core/standards";
import { counted } from "../../core/units/counted";
import { tonnesOf } from "../../core/units/print-mass";
import { cutLengthWords } from "./cut-length-words";
import { heatWords } from "./heat-words";
import { html, type Markup } from "./html";
import { type PageHead, printPage } from "./print-page";

/** One size's plan and what the person at the shear does with it. */
export type CutListGroup = Pick<SizePlan, "size" | "grade" | "plan" | "list">;

/** What a cut list rests on besides its plans. */
export interface CutListFacts {
  /** bars in no plan */
  readonly refused: readonly RefusedRow[];
  /** pieces of the plans that are not to be made until somebody clears them */
  readonly notToMake: readonly NotToMake[];
  /** pieces that are perhaps unsafe or unbendable, planned as any other */
  readonly toAsk: readonly NotToMake[];
  /** rows are of several sheets or books */
  readonly namesSheets?: boolean;
  readonly toBuy: readonly StockToBuy[];
  /** mm taken off each bar before the first piece */
  readonly endCrop: number;
  /** mm lost in each cut */
  readonly kerf: number;
  readonly unit: LengthUnit;
}

/** The cut list of every size: bars in no plan and stock to buy first, then stops in order, marks served and where rests go. */
export function cutListPage(groups: readonly CutListGroup[], head: PageHead, facts: CutListFacts): string {
  const { refused, toBuy, unit } = facts;
  return printPage("Cut list", head, [
    html`<p class="warning">Guard closed, hands as far from the blade as the machine's manual says, nobody in line with the off-cut. Set the rear support to the bar before cutting; take the bending tooling off first. The machine's plate says how many bars may be cut at once.</p>`,
    notToMakeSection(facts),
    toAskSection(facts),
    refusedSection(refused, unit),
    toBuySection(toBuy, unit),
    ...groups.map((group) => groupSection(group, facts)),
  ]);
}

/** Pieces that are planned, and must not be bent or sent as they stand. */
function notToMakeSection({ notToMake, namesSheets = false }: CutListFacts): Markup {
  if (notToMake.length === 0) return html``;
  return html`<section class="refused">
<h2>Not to be made until cleared: ${counted(notToMake.length, "row")}</h2>
<p>Their pieces stand in the plan below, marked HOLD.</p>
<ul>${notToMake.map((row) => html`<li>${notToMakeText(row, namesSheets)}</li>`)}</ul>
</section>
`;
}

/** Pieces that are planned as any other, and of which something is to be asked first. */
function toAskSection({ toAsk, namesSheets = false }: CutListFacts): Markup {
  if (toAsk.length === 0) return html``;
  return html`<section class="refused">
<h2>To be asked about before they are made: ${counted(toAsk.length, "row")}</h2>
<ul>${toAsk.map((row) => html`<li>${notToMakeText(row, namesSheets)}</li>`)}</ul>
</section>
`;
}

/** Bars that nobody will find cut. */
function refusedSection(refused: readonly RefusedRow[], unit: CutListFacts["unit"]): Markup {
  if (refused.length === 0) return html``;
  return html`<section class="refused">
<h2>In no plan: ${counted(refused.length, "row")}</h2>
<ul>${refused.map((row) => html`<li>${refusedText(row, unit)}</li>`)}</ul>
</section>
`;
}

function toBuySection(toBuy: readonly StockToBuy[], unit: LengthUnit): Markup {
  if (toBuy.length === 0) return html``;
  const known = toBuy.flatMap(({ kilograms }) => kilograms ?? []);
  const total = known.reduce((sum, kilograms) => sum + kilograms, 0);
  const sum = html`<tfoot><tr><th colspan="3">Together</th><td class="number">${tonnesOf(total)}</td></tr></tfoot>`;
  return html`<section>
<h2>Stock to buy</h2>
<table class="to-buy"><thead><tr><th>Size</th><th class="number">Stock ${unit === "mm" ? "mm" : "length"}</th><th class="number">Bars</th><th class="number">Tonnes</th></tr></thead>
<tbody>${toBuy.map(
    ({ size, grade, length, bars, kilograms }) =>
      html`<tr><td>${nameOf({ size, grade })}</td><td class="number">${cutLengthWords(length, unit)}</td><td class="number">${bars}</td><td class="number">${kilograms === null ? "?" : tonnesOf(kilograms)}</td></tr>`,
  )}</tbody>
${known.length === toBuy.length ? sum : html``}</table>
</section>
`;
}

function groupSection(group: CutListGroup, { endCrop, kerf, unit, notToMake }: CutListFacts): Markup {
  const { plan, list } = group;
  const isBars = plan.boundIn === "bars";
  const bought = isBars ? counted(plan.barsBought, "bar") : `${metres(plan.stockLength)} m`;
  const bound = isBars ? counted(plan.lowerBound, "bar") : `${metres(plan.lowerBound)} m`;
  const proof = proofWords(plan, bound);
  const remnants = plan.bars - plan.barsBought;
  const own = remnants === 0 ? "" : ` and ${counted(remnants, "remnant")} on hand`;
  const crop = endCrop > 0 ? ` Crop ${cutLengthWords(endCrop, unit)}${mm(unit)} off each bar first.` : "";
  const isAmong = isAmongHeld(notToMake);
  const isHeld = (mark: string): boolean => isAmong(group.size, mark);
  const saw = kerf > 0 ? ` Each cut takes ${cutLengthWords(kerf, unit)}${mm(unit)}.` : "";
  return html`<section>
<h2>Size ${nameOf(group)}</h2>
<p>${bought} to buy${own} for ${counted(plan.pieces, "piece")}, ${proof}; ${(plan.wasteRatio * 100).toFixed(1)} % of the stock is left over.${crop}${saw}</p>
<table><thead><tr><th class="number">Bars</th><th class="number">Stock${mm(unit)}</th><th>Stops, in order: pieces of each bar, marks (pieces in all)</th><th class="number">Rest${mm(unit)}</th><th>Rest goes to</th><th>Done</th></tr></thead>
<tbody>${list.map((row) => listRow(row, unit, isHeld))}</tbody></table>
</section>
`;
}

function listRow(row: CutListRow, unit: LengthUnit, isHeld: (mark: string) => boolean): Markup {
  const stops = row.stops.map(
    ({ length, perBar, marks }) =>
      html`<div><strong>${perBar} × ${cutLengthWords(length, unit)}</strong> ${marks.map(({ mark, count }) => `${mark} (${count})${isHeld(mark) ? " HOLD" : ""}`).join(", ")}</div>`,
  );
  const remnant = row.fromRemnant ? html` <b>remnant</b>` : html``;
  const heats = row.heats.length === 0 ? html`` : html`<div>${heatWords(row.heats)}</div>`;
  const from = html`${remnant}${heats}`;
  return html`<tr><td class="number">${row.bars}</td><td class="number">${cutLengthWords(row.stock, unit)}${from}</td><td class="stops">${stops}</td><td class="number">${cutLengthWords(row.offcut, unit)}</td><td>${row.destination === "none" ? "-" : row.destination}</td><td></td></tr>
`;
}

function nameOf({ size, grade }: Pick<CutListGroup, "size" | "grade">): string {
  return [size === "" ? "not said" : size, grade].filter((part) => part !== null).join(" ");
}

const mm = (unit: LengthUnit): string => (unit === "mm" ? " mm" : "");
const metres = (length: number): string => (length / 1000).toFixed(3);
