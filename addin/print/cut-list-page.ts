import { type CutListRow, type RefusedRow, refusedText, type SizePlan } from "../../core/cutting";
import { html, type Markup } from "./html";
import { printPage, type ScheduleHead } from "./print-page";

/** One size's plan and what the person at the shear does with it. */
export type CutListGroup = Pick<SizePlan, "size" | "grade" | "plan" | "list">;

/** The cut list of every size: stops in order, marks served, rests with their destination; bars in no plan first. */
export function cutListPage(
  groups: readonly CutListGroup[],
  head: ScheduleHead,
  refused: readonly RefusedRow[] = [],
): string {
  return printPage("Cut list", head, [
    html`<p class="warning">Guard closed, hands away from the blade, nobody in line with the off-cut. Set the rear support to the bar before cutting; take the bending tooling off first. The machine's plate says how many bars may be cut at once.</p>`,
    refusedSection(refused),
    ...groups.map(groupSection),
  ]);
}

/** Bars that nobody will find cut. */
function refusedSection(refused: readonly RefusedRow[]): Markup {
  if (refused.length === 0) return html``;
  return html`<section class="refused">
<h2>In no plan: ${refused.length === 1 ? "1 row" : `${refused.length} rows`}</h2>
<ul>${refused.map((row) => html`<li>${refusedText(row)}</li>`)}</ul>
</section>
`;
}

function groupSection({ size, grade, plan, list }: CutListGroup): Markup {
  const isBars = plan.boundIn === "bars";
  const bought = isBars ? counted(plan.barsBought, "bar") : `${metres(plan.stockLength)} m`;
  const bound = isBars ? counted(plan.lowerBound, "bar") : `${metres(plan.lowerBound)} m`;
  const proof = plan.provenLeast ? "proven least" : `no plan buys less than ${bound}`;
  const remnants = plan.bars - plan.barsBought;
  const own = remnants === 0 ? "" : ` and ${counted(remnants, "remnant")} on hand`;
  return html`<section>
<h2>Size ${[size === "" ? "not said" : size, grade].filter((part) => part !== null).join(" ")}</h2>
<p>${bought} to buy${own} for ${counted(plan.pieces, "piece")}, ${proof}; ${(plan.wasteRatio * 100).toFixed(1)} % of the stock is left over.</p>
<table><thead><tr><th class="number">Bars</th><th class="number">Stock mm</th><th>Stops, in order</th><th class="number">Rest mm</th><th>Rest goes to</th></tr></thead>
<tbody>${list.map(listRow)}</tbody></table>
</section>
`;
}

function listRow(row: CutListRow): Markup {
  const stops = row.stops.map(
    ({ length, perBar, marks }) =>
      html`<div><strong>${perBar} × ${millimetres(length)}</strong> ${marks.map(({ mark, count }) => `${mark} (${count})`).join(", ")}</div>`,
  );
  const from = row.fromRemnant ? html` remnant` : html``;
  return html`<tr><td class="number">${row.bars}</td><td class="number">${millimetres(row.stock)}${from}</td><td>${stops}</td><td class="number">${millimetres(row.offcut)}</td><td>${row.destination === "none" ? "-" : row.destination}</td></tr>
`;
}

const counted = (count: number, word: string): string => `${count} ${word}${count === 1 ? "" : "s"}`;
const millimetres = (length: number): string => String(Math.round(length * 10) / 10);
const metres = (length: number): string => (length / 1000).toFixed(3);
