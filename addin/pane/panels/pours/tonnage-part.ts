import { html, nothing, type TemplateResult } from "lit";
import type { TotalsView } from "../../engine/totals-view";
import { linesOfPours } from "../../model/lines-of-pours";
import { tableCsv, tableText } from "../../model/local-table";
import type { PoursModel } from "../../model/pours-model";
import { svgElement } from "../svg-element";
import { notesList } from "./notes-list";
import { poursButton } from "./pours-button";

/** The total, of all and of the pours chosen; always in view. */
export function totalLine({ state: { totals, pours, sheet } }: PoursModel): TemplateResult {
  if (totals === null) return html`<p class="total">${sheet ?? "no sheet"}: not added up yet</p>`;
  if (totals.held !== null) return html`<p class="total">No total of ${totals.sheet}: it is held back</p>`;
  const typed = totals.asTyped === null ? "" : ` (${totals.asTyped} t by the lengths as typed)`;
  const all = html`<strong>${totals.total} t</strong> in ${totals.sheet}${typed}`;
  if (pours === null) return html`<p class="total">${all}</p>`;
  const sum = Number(linesOfPours(totals, pours).at(-1)?.at(-1)).toFixed(3);
  return html`<p class="total"><strong>${sum} t</strong> in ${pours.length} of ${totals.pours.length} chosen; ${all}</p>`;
}

/** Tonnes by pour and size: a table in which pours are chosen, a chart, and ways to take it along. */
export function tonnagePart(model: PoursModel): TemplateResult {
  const { totals, isBehind, pours } = model.state;
  if (totals !== null && totals.held !== null) return heldBack(model, totals);
  return html`
    <div class="tonnage">
      ${totals === null ? nothing : totalsTable(model, totals)}
      <div class="row">
        ${totals === null || isBehind ? poursButton(model, "reckon", "Add up", () => void model.addUp(), true) : nothing}
        ${
          totals === null
            ? nothing
            : html`
              ${poursButton(model, "copy-totals", "Copy", () => void model.copy(tableText(linesOfPours(totals, pours), "\t")))}
              ${poursButton(model, "save-totals", "CSV", () => model.host.save(`${totals.sheet} tonnage.csv`, "text/csv", tableCsv(linesOfPours(totals, pours))))}
            `
        }
        ${poursButton(model, "write-totals", "Write a Totals sheet", () => void model.writeTotals())}
      </div>
      ${question(model)}
    </div>
  `;
}

/** No figure is shown that may be wrong; the user says that the sheet is read right, or which column is not. */
function heldBack(model: PoursModel, { sheet, held, notes }: TotalsView): TemplateResult {
  return html`
    <div class="tonnage held-back" role="group" aria-label="Totals held back">
      <p>${capitalised(held ?? "")}.</p>
      <div class="row">
        ${poursButton(model, "confirm-reading", "It is read right: show the totals", () => void model.confirmReading(sheet))}
        ${poursButton(model, "correct-reading", "See what Check says of it", () => model.openReading())}
      </div>
      ${notesList(notes)}
    </div>
  `;
}

function question(model: PoursModel): TemplateResult | typeof nothing {
  const name = model.state.asksAboutTotals;
  if (name === null) return nothing;
  return html`
    <div class="question" role="group" aria-label="A Totals sheet is there already">
      <p>Sheet ${name} was written by Barwright before. What stands on it now, your own cells among it, would be lost.</p>
      <div class="row">
        ${poursButton(model, "replace-totals", "Write it anew", () => void model.writeTotals("replace"))}
        ${poursButton(model, "number-totals", "Keep it, add another", () => void model.writeTotals("number"))}
        ${poursButton(model, "keep-totals", "Leave all as it is", () => model.keepTotals())}
      </div>
    </div>
  `;
}

function totalsTable(model: PoursModel, totals: TotalsView): TemplateResult {
  const { pours } = model.state;
  const isChosen = (pour: string): boolean => pours === null || pours.includes(pour);
  const turn = (pour: string) => (): void => {
    const now = totals.pours.map((each) => each.pour).filter((each) => (each === pour) !== isChosen(each));
    model.choosePours(now);
  };
  const isOnly = (pour: string): boolean => pours !== null && pours.length === 1 && pours[0] === pour;
  return html`
    <p class="hint">Tonnes by the lengths that the dimensions make; waste is not in it. Pages, the copy and the CSV are of the ${totals.groupedBy}s ticked.</p>
    <div class="wide" role="region" aria-label="Tonnes by ${totals.groupedBy} and size" tabindex="0">
      <table>
        <thead>
          <tr>
            <th scope="col">${capitalised(totals.groupedBy)}</th>
            <th scope="col" class="number">Total</th>
            ${totals.sizes.map((size) => html`<th scope="col" class="number">${size}</th>`)}
          </tr>
        </thead>
        <tbody>
          ${totals.pours.map(
            ({ pour, dates, bySize, total }) => html`<tr>
              <th scope="row">
                <label><input type="checkbox" class="choose-pour" data-pour=${pour} .checked=${isChosen(pour)} @change=${turn(pour)} /> ${pour}${dates.length === 0 ? nothing : html` <small class="dates">${datesWords(dates)}</small>`}</label>
                <button
                  class="only-pour"
                  aria-label=${isOnly(pour) ? `all ${totals.groupedBy}s` : `only ${pour}`}
                  @click=${() => model.choosePours(isOnly(pour) ? [] : [pour])}
                  >${isOnly(pour) ? "all" : "only"}</button
                >
              </th>
              <td class="number"><strong>${total}</strong></td>
              ${bySize.map((tonnes) => html`<td class="number">${tonnes}</td>`)}
            </tr>`,
          )}
        </tbody>
        <tfoot>
          <tr>
            <th scope="row">Total</th>
            <td class="number">${totals.total}</td>
            ${totals.bySize.map((tonnes) => html`<td class="number">${tonnes}</td>`)}
          </tr>
        </tfoot>
      </table>
    </div>
    ${totals.costs === null ? nothing : costTable(totals.groupedBy, totals.costs)}
    <details class="chart">
      <summary>Chart</summary>
      ${svgElement(totals.chart)}
    </details>
    ${notesList(totals.notes)}
  `;
}

function costTable(groupedBy: string, costs: NonNullable<TotalsView["costs"]>): TemplateResult {
  const line = ({ pour, waste, hours, cost }: (typeof costs)[number]) =>
    html`<tr>
      <th scope="row">${pour}</th>
      ${[waste, hours, cost].map((figure) => html`<td class="number">${figure}</td>`)}
    </tr>`;
  return html`
    <p class="hint">By the rates of the Shop sheet, beside the net tonnes.</p>
    <div class="wide" role="region" aria-label="Cost by ${groupedBy}" tabindex="0">
      <table class="costs">
        <thead>
          <tr>
            <th scope="col">${capitalised(groupedBy)}</th>
            ${["Waste, t", "Hours", "Cost"].map((head) => html`<th scope="col" class="number">${head}</th>`)}
          </tr>
        </thead>
        <tbody>${costs.slice(0, -1).map(line)}</tbody>
        <tfoot>${costs.slice(-1).map(line)}</tfoot>
      </table>
    </div>
  `;
}

/** The first dates, and how many more there are. */
function datesWords(dates: readonly string[]): string {
  const [first, ...more] = dates;
  return more.length === 0 ? `${first}` : `${first} and ${more.length} more`;
}

const capitalised = (word: string): string => word.charAt(0).toUpperCase() + word.slice(1);
