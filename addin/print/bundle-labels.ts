import type { Bundle, Bundles } from "../../core/totals";
import { counted } from "../../core/units/counted";
import type { LengthUnit } from "../../core/units/length-unit";
import { printMass } from "../../core/units/print-mass";
import { html, type Markup } from "./html";
import { isOfSeveral } from "./is-of-several";
import { type PageHead, printPage } from "./print-page";
import { setLength } from "./set-length";

/** Labels for every bundle and the loading list: last fixed is loaded first. */
export function bundleLabelsPage(bundles: Bundles, head: PageHead, unit: LengthUnit = "mm"): string {
  const isSeveral = isOfSeveral(bundles.bundles);
  const labels = bundles.bundles.map((bundle) => label(bundle, head, unit, isSeveral));
  const rows = bundles.loading.map((bundle) => loadingRow(bundle, unit, isSeveral));
  const mass = bundles.bundles.reduce((sum, bundle) => sum + bundle.mass, 0);
  return printPage("Bundle labels and loading list", head, [
    html`<section class="labels" aria-label="Bundle labels">${labels}</section>
<h2>Loading list</h2>
<p class="note">In the order of loading: what is fixed last goes on first. ${counted(bundles.bundles.length, "bundle")}, ${printMass(mass, unit, 1)}. Lift by rated slings, never by the tying wire.</p>
<table><thead><tr>${isSeveral ? html`<th>Schedule</th>` : html``}<th>Pour</th><th>Member</th><th>Mark</th><th>Bundle</th><th class="number">Bars</th><th class="number">Mass</th></tr></thead>
<tbody>${rows}</tbody></table>`,
  ]);
}

function label(bundle: Bundle, head: PageHead, unit: LengthUnit, isSeveral: boolean): Markup {
  const { item } = bundle;
  const mark = item.mark ?? "no mark";
  const revision = item.revision ?? head.revision;
  const reference = [
    item.schedule ?? (isSeveral ? null : head.schedule) ?? head.job ?? "schedule not named",
    revision === null ? "no revision" : `rev. ${revision}`,
  ];
  const warning = bundle.overLimit
    ? html`<p class="warning">One bar is above the lifting limit: lift by a rated hoist only.</p>`
    : html``;
  const held = (item.held ?? []).map(
    (text) => html`<p class="warning">Not to be made or sent until cleared: ${text}</p>`,
  );
  const asked = (item.asked ?? []).map(
    (text) => html`<p class="warning">To be asked about before it is made or sent: ${text}</p>`,
  );
  const waived = (item.waived ?? []).map((text) => html`<p class="waived">Not told: ${text}</p>`);
  const heats = item.heats ?? [];
  const ofHeats = heats.length === 0 ? html`` : html`<dt>Heat</dt><dd class="whole">${heats.join(", ")}</dd>`;
  const { remark = null } = item;
  const ofRemark =
    remark === null
      ? html``
      : html`<p class="remark">${remark.length > LONGEST_REMARK ? "Remark: see the ticket" : remark}</p>`;
  return html`<article class="label">
<div class="${mark.length > LONG_MARK ? "mark long" : "mark"}">${mark}</div>
<div class="part">bundle ${bundle.number} of ${bundle.of}<br><strong>${bundle.count}</strong> ${bundle.count === 1 ? "bar" : "bars"}</div>
<dl>
<dt>Member</dt><dd class="whole">${item.member ?? "-"}</dd>
<dt>Pour</dt><dd class="whole">${item.pour ?? "-"}</dd>
<dt>Size</dt><dd>${item.size}</dd><dt>Shape</dt><dd>${item.shape ?? "-"}</dd>
<dt>Length</dt><dd>${lengthWords(item.length, unit)}</dd><dt>Mass</dt><dd>${printMass(bundle.mass, unit, 1)}</dd>${ofHeats}
</dl>
${ofRemark}${warning}${held}${asked}${waived}
<p class="reference">${reference.join(", ")}</p>
</article>
`;
}

function loadingRow(bundle: Bundle, unit: LengthUnit, isSeveral: boolean): Markup {
  const { item } = bundle;
  return html`<tr>${isSeveral ? html`<td>${item.schedule ?? "-"}</td>` : html``}<td>${item.pour ?? "-"}</td><td>${item.member ?? "-"}</td><td>${item.mark ?? "-"}${holdWord(item)}</td><td>${bundle.number} of ${bundle.of}</td><td class="number">${bundle.count}</td><td class="number">${printMass(bundle.mass, unit, 1)}</td></tr>
`;
}

/** Behind the mark of a bar that is not to be made until somebody clears it. */
export const holdWord = ({ held = [] }: Bundle["item"]): string => (held.length === 0 ? "" : " HOLD");

/** characters that still stand large on one line */
const LONG_MARK = 8;
/** characters for which a label has room */
const LONGEST_REMARK = 200;
const lengthWords = (mm: number, unit: LengthUnit): string =>
  unit === "mm" ? `${setLength(mm, unit)} mm` : setLength(mm, unit);
