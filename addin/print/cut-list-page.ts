import type { CutListRow, CuttingPlan } from "../../core/cutting";
import { html, type Markup } from "./html";
import { printPage, type ScheduleHead } from "./print-page";

/** One size's plan and what the person at the shear does with it. */
export interface CutListGroup {
  readonly size: string;
  readonly plan: CuttingPlan;
  readonly rows: readonly CutListRow[];
}

/** The cut list of every size: stops in order, marks served, rests with their destination. */
export function cutListPage(groups: readonly CutListGroup[], head: ScheduleHead): string {
  return printPage("Cut list", head, [
    html`<p class="warning">Guard closed, hands away from the blade, nobody in line with the off-cut. Set the rear support to the bar before cutting; take the bending tooling off first. The machine's plate says how many bars may be cut at once.</p>`,
    ...groups.map(groupSection),
  ]);
}

function groupSection({ size, plan, rows }: CutListGroup): Markup {
  const bought = plan.boundIn === "bars" ? `${plan.bars} bars` : `${metres(plan.stockLength)} m of stock`;
  const bound = plan.boundIn === "bars" ? `${plan.lowerBound} bars` : `${metres(plan.lowerBound)} m`;
  const proof = plan.provenLeast ? "proven least" : `no plan can do with less than ${bound}`;
  return html`<section>
<h2>Size ${size}</h2>
<p>${bought} for ${plan.pieces} pieces, ${proof}; ${(plan.wasteRatio * 100).toFixed(1)} % of the stock is left over.</p>
<table><thead><tr><th class="number">Bars</th><th class="number">Stock mm</th><th>Stops, in order</th><th class="number">Rest mm</th><th>Rest goes to</th></tr></thead>
<tbody>${rows.map(listRow)}</tbody></table>
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

const millimetres = (length: number): string => String(Math.round(length * 10) / 10);
const metres = (length: number): string => (length / 1000).toFixed(3);
