import type { Bundle, Load, Loads } from "../../core/totals";
import type { LengthUnit } from "../../core/units/length-unit";
import { printMass } from "../../core/units/print-mass";
import { holdWord } from "./bundle-labels";
import { cutLengthWords } from "./cut-length-words";
import { html, type Markup } from "./html";
import { isOfSeveral } from "./is-of-several";
import { type PageHead, printPage } from "./print-page";

/** A loading list for each lorry, and what goes on none. */
export function loadsPage({ loads, left }: Loads, head: PageHead, unit: LengthUnit): string {
  const bundles = [...loads.flatMap(({ loading }) => loading), ...left.map(({ bundle }) => bundle)];
  const isSeveral = isOfSeveral(bundles);
  return printPage("Loading lists", head, [
    html`<p class="warning">The lorry's own plate, the driver's lashing and the rules of the road govern. Lift by rated slings, never by the tying wire; nobody stands under a load.</p>`,
    heldSection(bundles, isSeveral),
    askedSection(bundles, isSeveral),
    leftSection(left, unit, isSeveral),
    ...loads.map((load) => loadSection(load, unit, isSeveral)),
  ]);
}

/** Bars that stand on the lists below, and must not leave the yard as they are. */
function heldSection(bundles: readonly Bundle[], isSeveral: boolean): Markup {
  const rows = barRows(bundles, isSeveral, ({ held = [] }) => held);
  if (rows.length === 0) return html``;
  return html`<section class="refused"><h2>Not to be made or sent until cleared</h2>
<p>They stand on the lists below, marked HOLD.</p><ul>${rows}</ul></section>
`;
}

/** Bars that are perhaps unsafe or unbendable. */
function askedSection(bundles: readonly Bundle[], isSeveral: boolean): Markup {
  const rows = barRows(bundles, isSeveral, ({ asked = [] }) => asked);
  if (rows.length === 0) return html``;
  return html`<section class="refused"><h2>To be asked about before they are made or sent</h2><ul>${rows}</ul></section>
`;
}

function barRows(
  bundles: readonly Bundle[],
  isSeveral: boolean,
  whysOf: (item: Bundle["item"]) => readonly string[],
): Markup[] {
  const items = [...new Set(bundles.map(({ item }) => item))].filter((item) => whysOf(item).length > 0);
  return items.map((item) => {
    const schedule = isSeveral ? `${item.schedule ?? "no schedule"} ` : "";
    return html`<li>${schedule}${item.mark ?? "no mark"} ${item.size}: ${whysOf(item).join("; ")}</li>`;
  });
}

function leftSection(left: Loads["left"], unit: LengthUnit, isSeveral: boolean): Markup {
  if (left.length === 0) return html``;
  const rows = left.map(
    ({ bundle, why }) =>
      html`<li>${isSeveral ? `${bundle.item.schedule ?? "no schedule"}, ` : ""}${bundle.item.mark ?? "no mark"}, bundle ${bundle.number} of ${bundle.of}: ${why} (${cutLengthWords(bundle.item.length, unit)}, ${printMass(bundle.mass, unit, 1)})</li>`,
  );
  return html`<section class="refused"><h2>On no lorry</h2><ul>${rows}</ul></section>
`;
}

function loadSection({ number, day, loading, mass }: Load, unit: LengthUnit, isSeveral: boolean): Markup {
  return html`<section>
<h2>Load ${number}: ${day ?? "no day written"}, ${printMass(mass, unit, 1)}</h2>
<p>In the order of loading: what is fixed last goes on first.</p>
<table><thead><tr>${isSeveral ? html`<th>Schedule</th>` : html``}<th>Pour</th><th>Member</th><th>Mark</th><th>Bundle</th><th class="number">Bars</th><th>Size</th><th class="number">Length</th><th class="number">Mass</th><th>Heat</th><th>On</th></tr></thead>
<tbody>${loading.map((bundle) => row(bundle, unit, isSeveral))}</tbody></table>
</section>
`;
}

function row({ item, count, mass, number, of }: Bundle, unit: LengthUnit, isSeveral: boolean): Markup {
  const heats = item.heats ?? [];
  return html`<tr>${isSeveral ? html`<td>${item.schedule ?? "-"}</td>` : html``}<td>${item.pour ?? "-"}</td><td>${item.member ?? "-"}</td><td>${item.mark ?? "-"}${holdWord(item)}</td><td>${number} of ${of}</td><td class="number">${count}</td><td>${item.size}</td><td class="number">${cutLengthWords(item.length, unit)}</td><td class="number">${printMass(mass, unit, 1)}</td><td>${heats.length === 0 ? "-" : heats.join(", ")}</td><td></td></tr>
`;
}
